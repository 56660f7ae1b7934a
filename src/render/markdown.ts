import type { Answer, Fault } from '../answer/types.ts';
import { grid, listed } from './grid.ts';
import { drawAll, type Extent, type Format, pieces } from './pieces.ts';
import { gap } from './plain.ts';

/** Columns of a code block that a phone shows without breaking its lines. */
const narrow = 34;

/** Breaks what a chat would make live even where a backslash does not: mentions, and links with a name. */
const zeroWidthSpace = '\u200b';

/** An address that holds no character with a meaning is left whole, so that a source can be followed. */
const address = /https?:\/\/[A-Za-z0-9./?=&%#+-]+/g;

const live = /[\\`*_~|[\]@<]|:\/\//;

const escapeProse = (text: string): string =>
  !live.test(text)
    ? text
    : text
        .replace(/[\\`*_~|[\]]|:(?=\/\/)/g, '\\$&')
        .replace(/@/g, `@${zeroWidthSpace}`)
        .replace(/</g, `\\<${zeroWidthSpace}`);

/** Text as the chat shows it letter by letter: no format, no mention, no link with a name, no heading, no list. */
function escapeMarkdown(text: string): string {
  let out = '';
  let from = 0;
  for (const { 0: found, index } of text.includes('://') ? text.matchAll(address) : []) {
    const end = index + found.length;
    if (/[^\s(]/.test(text[index - 1] ?? ' ') || !/^[).,;]{0,3}(?:\s|$)/.test(text.slice(end, end + 4))) continue;
    out += escapeProse(text.slice(from, index)) + found;
    from = index + found.length;
  }
  const escaped = out + escapeProse(text.slice(from));
  if (!/^\s*(?:[#>+-]|\d+[.)])/m.test(escaped)) return escaped;
  return escaped.replace(/^(\s*)([#>+-])/gm, '$1\\$2').replace(/^(\s*\d+)([.)])(?=\s|$)/gm, '$1\\$2');
}

/** Text of a code block, where no backslash works. */
const escapeCode = (text: string): string => text.replace(/[`@<]/g, `$&${zeroWidthSpace}`);

/** What a person would type; a back-tick would end the code, so that such a text stands in prose. */
const typed = (text: string): string => (text.includes('`') ? escapeMarkdown(text) : `\`${escapeCode(text)}\``);

const bold = (text: string): string => (text === '' ? '' : `**${escapeMarkdown(text).replaceAll('\n', '**\n**')}**`);

/** A label in bold is a name that the eye can run down. */
const named = (label: string, value: string): string =>
  label === '' ? escapeMarkdown(value) : value === '' ? bold(label) : `${bold(label)}: ${escapeMarkdown(value)}`;

const lines = (parts: readonly string[]): string => parts.filter((part) => part !== '').join('\n');

/** The Markdown of chats such as Discord, which has no tables. */
export const markdown: Format = {
  gap,
  draw: {
    lead: ({ text }) => bold(text),
    text: ({ text }) => escapeMarkdown(text),
    facts: ({ rows }) => lines(rows.map(({ label, value }) => named(label, value))),
    table: (table) => {
      const aligned = grid(table, narrow);
      // An empty code block is none: its back-ticks would open one over what follows.
      if (aligned?.every((line) => line.trim() === '')) return escapeMarkdown(table.caption);
      return lines([
        escapeMarkdown(table.caption),
        ...(aligned
          ? ['```', ...aligned.map(escapeCode), '```']
          : listed(table).map(({ name, cells }) => named(name, cells))),
      ]);
    },
    steps: ({ steps, from }) => lines(steps.map((step, i) => `${from + i}. ${escapeMarkdown(step)}`)),
    list: ({ title, items }) => lines([bold(title), ...items.map((item) => `- ${escapeMarkdown(item)}`)]),
    picture: ({ alt }) => `Picture: ${escapeMarkdown(alt)}`,
    file: ({ name, about }) => named(`File ${name}`, about),
    assumption: ({ text }) => escapeMarkdown(text),
    warning: ({ text }) => `**Mind:** ${escapeMarkdown(text)}`,
    caution: ({ text }) => `> ${escapeMarkdown(text).replaceAll('\n', '\n> ')}`,
    actions: ({ actions }) =>
      `→ ${actions
        .map(({ label, request }) =>
          label.toLowerCase() === request.toLowerCase() ? typed(request) : `${escapeMarkdown(label)} ${typed(request)}`,
        )
        .join(' · ')}`,
  },
};

export const renderMarkdown = (said: Answer | Fault, extent: Extent): string => drawAll(markdown, pieces(said, extent));
