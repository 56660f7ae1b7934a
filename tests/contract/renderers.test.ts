// What every renderer owes every answer, over arbitrary answers with hostile strings. The judges are parsers by other
// authors: parse5 (WHATWG HTML) for the HTML, discord-markdown-parser for the Markdown.

import * as fc from 'fast-check';
import { type DefaultTreeAdapterTypes, parseFragment } from 'parse5';
import { describe, expect, test } from 'vitest';
import type { Answer, Fault } from '../../src/index.ts';
import { html, renderHtml } from '../../src/render/html.ts';
import { renderJson } from '../../src/render/json.ts';
import { markdown, renderMarkdown } from '../../src/render/markdown.ts';
import { pages } from '../../src/render/pages.ts';
import { drawAll, type Format, pieces } from '../../src/render/pieces.ts';
import { plain, renderPlain } from '../../src/render/plain.ts';
import { renderTerminal } from '../../src/render/terminal.ts';
import { answer, dataLine, fault, seen, stringsOf } from './answers.ts';
import { markdownText, marksOf } from './markdown-read.ts';

const runs = { numRuns: 400 };
const anything = fc.oneof({ weight: 4, arbitrary: answer }, { weight: 1, arbitrary: fault });
const extent = fc.record({ details: fc.boolean() });

/** What a person sees of a string, less its spaces: no control, no invisible character. */
type Node = DefaultTreeAdapterTypes.ChildNode;
const nodesOf = (fragment: string): readonly Node[] => {
  const below = (node: Node): Node[] => [node, ...('childNodes' in node ? node.childNodes.flatMap(below) : [])];
  return parseFragment(fragment).childNodes.flatMap(below);
};
const htmlText = (fragment: string): string =>
  nodesOf(fragment)
    .map((node) => ('value' in node ? node.value : ''))
    .join('');

interface Chat {
  readonly name: string;
  readonly render: (said: Answer | Fault, extent: { details: boolean }) => string;
  readonly format: Format;
  /** What a person reads of it. */
  readonly read: (drawn: string) => string;
}

const chats: readonly Chat[] = [
  { name: 'plain', render: renderPlain, format: plain, read: (drawn) => drawn },
  { name: 'markdown', render: renderMarkdown, format: markdown, read: markdownText },
  { name: 'html', render: renderHtml, format: html, read: htmlText },
];

describe.each(chats)('$name', ({ render, format, read }) => {
  test('shows every string of the answer, figures and cautions among them', () => {
    fc.assert(
      fc.property(anything, extent, (said, { details }) => {
        const shown = seen(read(render(said, { details })));
        for (const text of stringsOf(said, details)) expect(shown).toContain(seen(text));
      }),
      runs,
    );
  });

  test('pages: none too long, each with the whole caution, nothing lost', () => {
    fc.assert(
      fc.property(anything, extent, fc.integer({ min: 60, max: 900 }), (said, { details }, room) => {
        const cautions = pieces(said, { details }).filter(({ kind }) => kind === 'caution');
        const caution = drawAll(format, cautions);
        const max = caution.length + room;
        const all = pages(said, format, { details, max });
        const bodies = all.map((page) => {
          expect(page.length).toBeLessThanOrEqual(max);
          if (all.length === 1) {
            expect(page).toContain(caution);
            return page;
          }
          const number = page.lastIndexOf('(');
          expect(page.slice(number)).toMatch(new RegExp(`^\\(\\d+/${all.length}\\\\?\\)`));
          const at = caution === '' ? number : page.lastIndexOf(caution);
          expect(at).toBeGreaterThanOrEqual(0);
          return page.slice(0, at);
        });
        const shown = seen(bodies.map(read).join(''));
        const guarded = new Set<string>(said.caution);
        for (const text of stringsOf(said, details)) if (!guarded.has(text)) expect(shown).toContain(seen(text));
      }),
      runs,
    );
  });
});

test('a page that cannot hold its caution is refused, never sent without', () => {
  const said: Fault = {
    code: 'unclear',
    message: 'In which unit?'.repeat(40),
    hint: '',
    candidates: [],
    caution: ['Goggles, gloves, long sleeves.'],
  };
  expect(() => pages(said, plain, { details: false, max: 35 })).toThrow(RangeError);
});

describe('plain', () => {
  test('each caution stands word for word, in JSON too', () => {
    fc.assert(
      fc.property(answer, fc.array(dataLine, { minLength: 1, maxLength: 3 }), (said, caution) => {
        const text = renderPlain({ ...said, caution }, { details: false });
        for (const line of caution) expect(text).toContain(line);
        const json = JSON.parse(renderJson({ ...said, caution })) as { text: string; caution: string[] };
        expect(json.text).toBe(text);
        expect(json.caution).toEqual(caution);
      }),
      runs,
    );
  });

  test('JSON holds cautions that its text holds, whatever they are', () => {
    fc.assert(
      fc.property(answer, (said) => {
        const line = renderJson(said);
        expect(line).not.toContain('\n');
        const json = JSON.parse(line) as { text: string; caution: string[] };
        expect(json.caution).toHaveLength(said.caution.length);
        for (const caution of json.caution) expect(json.text).toContain(caution);
      }),
      runs,
    );
  });

  test('holds no control and no direction control; what right-to-left letters could turn is held in place', () => {
    fc.assert(
      fc.property(anything, (said) => {
        const text = renderPlain(said, { details: true });
        expect(text).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e\u2066-\u2069\u200f\u061c]/u);
        expect(text).not.toMatch(/[\p{Script=Arabic}\p{Script=Hebrew}] *\d/u);
      }),
      runs,
    );
  });
});

describe('terminal', () => {
  test('its only control sequences are its own colours, and without colour there is none', () => {
    fc.assert(
      fc.property(anything, extent, fc.integer({ min: 20, max: 100 }), (said, { details }, columns) => {
        const coloured = renderTerminal(said, { details, columns, colour: true });
        const bare = renderTerminal(said, { details, columns, colour: false });
        expect(bare).not.toMatch(/[^\P{Cc}\n]/u);
        // biome-ignore lint/suspicious/noControlCharactersInRegex: the sequence under test
        expect(coloured.replace(/\x1b\[(1|2|22|31|35|39)m/g, '')).toBe(bare);
        for (const text of stringsOf(said, details)) expect(seen(bare)).toContain(seen(text));
      }),
      runs,
    );
  });
});

describe('markdown', () => {
  const live = ['user', 'role', 'channel', 'everyone', 'here', 'emoji', 'timestamp', 'slashCommand', 'guildNavigation'];
  const dress = ['link', 'autolink', 'em', 'underline', 'strikethrough', 'spoiler', 'heading', 'subtext'];

  test('mentions nobody, dresses nothing, hides no address behind a name', () => {
    fc.assert(
      fc.property(anything, extent, (said, { details }) => {
        const text = renderMarkdown(said, { details });
        for (const { type, content, target } of marksOf(text)) {
          expect([...live, ...dress]).not.toContain(type);
          if (type === 'url') expect(content).toEqual([{ type: 'text', content: target }]);
        }
        // Servers look for mentions before any Markdown is read, so that no escape counts.
        expect(text).not.toMatch(/<[@#:/]|<a:|<t:|<id:|@everyone|@here|@&/);
      }),
      runs,
    );
  });

  test('a typed list mark, number or quote at the start of a line stays what was typed', () => {
    const text = (content: string): Answer => ({ ...blank, body: [{ kind: 'text', text: content }] });
    const body = (content: string) => renderMarkdown(text(content), { details: false }).split('\n').slice(1).join('\n');
    expect(body('- 5 g')).toBe('\\- 5 g');
    expect(body('# five')).toBe('\\# five');
    expect(body('450. g\n2) x')).toBe('450\\. g\n2\\) x');
    expect(body('> x')).toBe('\\> x');
    expect(body('97.5 g, 1 450 g')).toBe('97.5 g, 1 450 g');
  });
});

const blank: Answer = {
  command: 'check',
  title: 'Check',
  lead: 'Your lye fits.',
  body: [],
  details: [],
  assumptions: [],
  warnings: [],
  caution: [],
  actions: [],
  result: {},
};

describe('html', () => {
  // Matrix client-server API v1.16, 11.3.1.7 `m.room.message` msgtypes: the elements and attributes clients should take.
  const allowed = new Set(
    'del h1 h2 h3 h4 h5 h6 blockquote p a ul ol sup sub li b i u strong em s code hr br div table thead tbody tr th td caption pre span img details summary'.split(
      ' ',
    ),
  );
  const attributes = new Set(['ol start']);

  test('holds only elements of the subset, and no mention', () => {
    fc.assert(
      fc.property(anything, extent, (said, { details }) => {
        const text = renderHtml(said, { details });
        for (const node of nodesOf(text)) {
          if (!('tagName' in node)) {
            expect(node.nodeName).toBe('#text');
            continue;
          }
          expect(allowed).toContain(node.tagName);
          for (const { name } of node.attrs) expect(attributes).toContain(`${node.tagName} ${name}`);
        }
        expect(htmlText(text)).not.toMatch(/@[^\u200b]/);
      }),
      runs,
    );
  });
});
