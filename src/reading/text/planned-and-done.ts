/**
 * Rows with two figures each, of which one was planned and the other one done: "plan / done" over "olive 500 / 520", "first
 * number = recipe, second = what I actually weighed". What was done is in the pot.
 */
import type { Aside } from './book-columns.ts';

const number = '\\d+(?:[.,]\\d+)?';
const unit = '(?:grams?|gr|gms?|g|kg|oz|ounces?|lbs?|ml)';
const sign = '(?:\\/|\\||-{1,2}>|=>|→|➔|⟶|>|\\bvs\\.?(?= ))';
const row = new RegExp(
  `^(?<name>[ \\t]*(?:[-*•·][ \\t]*)?[A-Za-z][^\\d\\n|/>→➔⟶]*?)[ \\t]*(?<a>${number})[ \\t]*(?<ua>${unit}\\b\\.?)?[ \\t]*(?<sign>${sign})[ \\t]*(?<b>${number})[ \\t]*(?<ub>${unit}\\b\\.?)?[ \\t]*[,;.]?[ \\t]*$`,
  'i',
);
/** A row of one figure, among those of two. */
const single = new RegExp(`^[ \\t]*(?:[-*•·][ \\t]*)?[A-Za-z][^\\d\\n]{0,40}${number}[ \\t]*${unit}?\\b`, 'i');
const done =
  /\b(?:done|did|made|used|weighed|measured|actual(?:ly)?|real(?:ly|ity)?|poured|mine|went in(?:to)?|got|took|taken|was|in (?:the|my) pot|scales?|today)\b/i;
const planned =
  /\b(?:plan(?:ned)?|recipes?|book|card|target|goal|should|wanted|original|paper|sheet|list|calc\w*|printed|theory|supposed|meant|intended|planning|wish|asked|bought|old)\b/i;
const ends = (left: string, right: string): string =>
  `(?<![a-z])(?:the )?${left}\\b(?<l>[^.;\\n]*?)[,;&–—-]*\\s*(?:and |while |but )?(?<![a-z])(?:the )?${right}\\b(?<r>[^.;\\n]*)`;
const legends = [
  ends('(?:first|1st|left)', '(?:second|2nd|last|right|other)'),
  ends('(?:before the (?:slash|arrow|bar|stroke|line))', '(?:behind(?: it)?|after(?: it)?)'),
].map((pattern) => new RegExp(pattern, 'i'));
/** It is the plan that is asked about. */
const asksOfPlan =
  /\b(?:check|judge|look at|about|is|was)\b[^.?!\n]{0,24}(?<!not (?:at )?the )\b(?:plan(?:ned)?|book|card|first (?:one|figures?|numbers?|column)|left (?:one|column))\b/i;
const inUnit = new RegExp(`\\b(?:in )?(?<unit>${unit})\\b`, 'i');
const least = 3;
const mayHold = new RegExp(`\\d[ \\t]*${unit}?\\.?[ \\t]*${sign}[ \\t]*\\d`, 'i');

/** Which of two labels tells what was done; -1 where they do not say. */
function doneOf(left: string, right: string): 0 | 1 | -1 {
  const [l, r] = [left, right].map((label) => ({ done: done.test(label), planned: planned.test(label) }));
  if (l?.done && r?.planned && !r.done) return 0;
  if (r?.done && l?.planned && !l.done) return 1;
  return -1;
}

interface Legend {
  readonly meant: 0 | 1;
  /** The lines outside of the rows, without the words that say it. */
  readonly line: number;
  readonly rest: string;
}

/** What the lines outside of the rows say of the two. */
function legendIn(lines: readonly string[], isRow: (k: number) => boolean): Legend | null {
  for (const [line, text] of lines.entries()) {
    if (isRow(line)) continue;
    const cells = text.replace(/^[\s(]+|[\s):]+$/g, '').split(new RegExp(` *${sign} *`));
    const [left = '', right = ''] = cells;
    const head = cells.length === 2 && text.length <= longest && !/\d/.test(text) ? doneOf(left, right) : -1;
    if (head >= 0) return { meant: head as 0 | 1, line, rest: unitOf(text) };
    for (const legend of legends) {
      const found = legend.exec(text);
      const meant = found ? doneOf(found.groups?.['l'] ?? '', found.groups?.['r'] ?? '') : -1;
      if (found && meant >= 0)
        return { meant: meant as 0 | 1, line, rest: text.replace(found[0], unitOf(found[0])).replace(/^\W+$/, '') };
    }
  }
  return null;
}
const longest = 80;
const unitOf = (text: string): string => {
  const said = inUnit.exec(text)?.groups?.['unit'];
  return said ? `all in ${said}` : '';
};

/** The post with what was done in each row, and what was only planned. */
export function withoutPlanned(post: string): { readonly text: string; readonly told: readonly Aside[] } {
  const nothing = { text: post, told: [] };
  if (!mayHold.test(post)) return nothing;
  const lines = post.split('\n');
  const rows = lines.map((line) => row.exec(line));
  const [first, last] = [rows.findIndex((one) => one !== null), rows.findLastIndex((one) => one !== null)];
  const found = rows.filter((one) => one !== null);
  const isMixed = lines.some((line, k) => k > first && k < last && !rows[k] && single.test(line));
  if (found.length < least || isMixed || new Set(found.map(({ groups }) => groups?.['sign'])).size > 1) return nothing;
  const legend = legendIn(lines, (k) => rows[k] !== null);
  const around = lines.filter((_, k) => !rows[k]).join('\n');
  if (!legend || asksOfPlan.test(around)) return nothing;
  const gone: string[] = [];
  const text = lines.map((line, k) => {
    const { name, a = '', ua, b = '', ub } = rows[k]?.groups ?? {};
    if (name === undefined) return k === legend.line ? legend.rest : line;
    gone.push(legend.meant === 0 ? b : a);
    return `${name} ${legend.meant === 0 ? a : b} ${(legend.meant === 0 ? (ua ?? ub) : (ub ?? ua)) ?? ''}`.trimEnd();
  });
  return { text: text.join('\n'), told: [{ text: gone.join(', '), why: 'what was planned, and not what was done' }] };
}
