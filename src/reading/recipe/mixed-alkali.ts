/** Both alkalis in one weight: "152 g of NaOH and KOH mixed", "lye (NaOH + KOH) 130 g". Nobody knows how much of each. */
import { rawText } from '../text/scan.ts';
import { isIngredient, isMark, isWeight, spoken, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Assembly } from './rows.ts';

const alkaliAt = (token: Token | undefined): string | null =>
  isIngredient(token) && token.meaning.kind === 'alkali' && token.meaning.id !== 'unsaid' ? token.meaning.id : null;

/** What may stand between the two names and their weight. */
const mixed = /^(?:mixed|together|both|in|total|altogether|combined|mix|blend)$/;
const longestWay = 6;

/** Asks how much of each there is, where one weight stands beside the two. */
export function askOfMixture(assembly: Assembly): void {
  const { tokens, prims } = assembly.source;
  for (let k = 0; k + 2 < tokens.length; k++) {
    const [one, other] = [alkaliAt(tokens[k]), alkaliAt(tokens[k + 2])];
    if (one === null || other === null || one === other) continue;
    if (!isMark(tokens[k + 1], '+&') && !/^(?:and|plus)$/.test(wordAt(tokens, k + 1))) continue;
    let at = k + 3;
    while (at - k <= longestWay && (isMark(tokens[at], '):=') || mixed.test(spoken(tokens[at])))) at++;
    const before = /^(?:of|the)$/.test(wordAt(tokens, k - 1)) ? k - 2 : k - 1;
    if (![before, at].some((near) => isWeight(tokens[near]))) continue;
    assembly.doubts.push({
      id: 'which-alkali',
      said: rawText(prims, tokens[k]?.from ?? 0, tokens[k + 2]?.to ?? 0),
      why: 'The two are in one weight, and each does another amount of work: I need to know how much of each it is.',
    });
    return;
  }
}
