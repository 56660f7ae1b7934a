import { describe, expect, it } from 'vitest';

/** One person's way of talking through an adapter: what was said, one after the other, and what came back. */
export interface Talk {
  /** A conversation of one person in one place. */
  readonly together: (turns: readonly string[]) => Promise<readonly string[]>;
  /** The same words, each in a conversation of its own. */
  readonly apart: (turns: readonly string[]) => Promise<readonly string[]>;
}

const recipe = '500 g olive oil, 200 g coconut oil, 98 g NaOH, 230 g water';

/** What every adapter owes a conversation: the core remembers, the adapter says who speaks and where. */
export function holdsConversations(name: string, { together, apart }: Talk): void {
  describe(`${name} holds conversations`, () => {
    it('a next step works on the last recipe and names it', async () => {
      const [, scaled = ''] = await together([recipe, 'double it']);
      expect(scaled).toMatch(/196 g sodium hydroxide/);
      expect(scaled).toMatch(/your recipe from \d\d:\d\d/);
    });

    it('a correction changes it', async () => {
      const [, corrected = ''] = await together([recipe, 'no, the water was 250 g']);
      expect(corrected).toMatch(/your recipe from \d\d:\d\d(?: UTC)?, with 250 g water/);
    });

    it('the answer to a question completes the request', async () => {
      const [asked = '', weighed = ''] = await together(['lye for 500 olive 200 coconut', 'grams']);
      expect(asked).toMatch(/In which unit\?/);
      expect(weighed).toMatch(/99 g sodium hydroxide/);
    });

    it('"start over" forgets', async () => {
      const [, , after = ''] = await together([recipe, 'start over', 'double it']);
      expect(after).toMatch(/Which recipe\?/);
    });

    it('and mixes no two of them', async () => {
      const [, after = ''] = await apart([recipe, 'double it']);
      expect(after).toMatch(/Which recipe\?/);
    });
  });
}
