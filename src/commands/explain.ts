import type { Block } from '../answer/types.ts';
import { clockTime } from './clock.ts';
import { type Context, defineCommand, type Refusal } from './define.ts';
import type { Step, Working } from './kept.ts';
import { capital } from './phrases.ts';
import { reckoned } from './recipe-in.ts';

export const explain = defineCommand({
  id: 'explain',
  summary: 'Where a figure of my last answer comes from, and how sure it is.',
  // its caution is that of the answer it explains
  risk: 'plain',
  options: {},
  examples: [
    { say: 'explain the superfat of 500 g lard, 66 g NaOH, 150 g water', about: 'a figure of a recipe' },
    { say: 'explain how sure is it: 500 g lard, 66 g NaOH, 150 g water', about: 'what makes it unsure' },
  ],
  run: ({ text }, context) => {
    const found = workingsFor(text, context);
    if (!found.ok) return found;
    const { workings, question } = found;
    const at = workings.findIndex(({ steps }) => choose(question, steps) !== null);
    const { steps, at: from, caution } = workings[at] ?? { steps: [], at: null, caution: [] };
    const chosen = choose(question, steps);
    if (!chosen) return { ok: false, fault: ofWhat(workings[0]?.steps ?? [], context.last.said !== null) };
    const chain = chainOf(chosen, steps);
    return {
      ok: true,
      value: {
        title: 'The working',
        lead: `${capital(chosen.name)}: ${chosen.shown}.`,
        body: bodyOf(chosen, chain),
        details: [{ kind: 'list', title: 'The whole reckoning', items: steps.map(lineOf) }],
        assumptions: from === null ? [] : [`I took my answer from ${clockTime(from, context.zone)}.`],
        warnings: [],
        caution,
        actions: [{ label: 'the whole reckoning', request: 'details' }],
        result: {
          steps: [...chain, chosen].map(({ formula, inputs, value, unit, source }) => ({
            formula,
            inputs,
            value,
            unit,
            source,
          })),
        },
      },
    };
  },
});

type Found =
  | {
      readonly ok: true;
      readonly workings: readonly Working[];
      readonly question: string;
    }
  | { readonly ok: false; readonly fault: Refusal };

/** The reckoning of a recipe in the text, or those of the last answers. */
function workingsFor(text: string, context: Context): Found {
  const { fats, alkali } = context.read(text);
  const said = context.last.workings;
  // one fat alone may be a line of the last answer, unless its lye is asked for
  const isLine = alkali.length === 0 && fats.length < 2 && said.length > 0 && !lyeFor.test(text);
  if (fats.length === 0 || isLine) return { ok: true, workings: said, question: text };
  const ran = reckoned(text, {}, context);
  if (!ran.ok) return ran;
  // The question stands in words, the recipe in figures.
  const steps = ran.value.working?.() ?? [];
  return {
    ok: true,
    workings: [{ at: null, steps, caution: ran.value.caution }],
    question: text.split(/[:\n]|\d/)[0] ?? '',
  };
}

/** "the lye for 500 g lard". */
const lyeFor = /\b(?:lye|alkali|naoh|koh|hydroxide)\b[^.?!\n]{0,40}\bfor\b\s*\d/i;

function ofWhat(steps: readonly Step[], answered: boolean): Refusal<'plain'> {
  const has = steps.length > 0;
  return {
    code: 'unclear',
    message: has
      ? 'Which figure? I find none like that in my last answer.'
      : answered
        ? 'My last answer has no reckoning to show.'
        : 'Which figure? I have given you no answer yet.',
    hint: has
      ? 'Name it, or write the figure as I wrote it.'
      : 'Ask me something first, or put a recipe behind the word "explain".',
    candidates: steps.slice(0, 4).map(({ name }) => `explain ${name}`),
    caution: [],
  };
}

const folded = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}%.]+/gu, ' ')
    .trim()} `;

/** The figures of a text, as written and as numbers. */
const figuresIn = (text: string): readonly { readonly value: number; readonly places: number }[] =>
  [...text.matchAll(/\d+(?:[.,]\d+)?/g)].map(([figure]) => ({
    value: Number(figure.replace(',', '.')),
    places: /[.,](\d+)$/.exec(figure)?.[1]?.length ?? 0,
  }));

/** Whether the step finds, or shows, this figure to the digits that were typed. */
function shows(step: Step, value: number, places: number): boolean {
  const meets = (one: number): boolean => Math.abs(one - value) <= 0.5 * 10 ** -places + 1e-9;
  if (meets(step.value) || Math.floor(step.value * 10 ** places) / 10 ** places === value) return true;
  const shown = step.shown.replace(/(\d)\u202f(?=\d)/g, '$1');
  return figuresIn(shown).some((one) => one.value === value);
}

/** The longest words of the text that ask for this step, in letters. */
function askedBy(text: string, step: Step): number {
  return Math.max(
    0,
    ...[step.name, ...step.asked]
      .map(folded)
      .filter((words) => text.includes(words))
      .map((words) => words.length),
  );
}

/** What is asked for: by its figure, by its words, or the main one where nothing is named. Null for a figure that is not there. */
export function choose(text: string, steps: readonly Step[]): Step | null {
  const words = folded(text);
  const figures = figuresIn(text);
  const byWords = (among: readonly Step[]): Step | null => {
    const ranked = among.map((step) => ({ step, length: askedBy(words, step) })).sort((a, b) => b.length - a.length);
    return ranked[0] && ranked[0].length > 0 ? ranked[0].step : null;
  };
  const [figure] = figures;
  const whole = steps.find(
    (step) =>
      askedBy(words, step) > 0 && folded(step.name).trim() === folded(text.replace(/^\W*explain\b/i, '')).trim(),
  );
  if (whole) return whole;
  if (figure) {
    const showing = figures.length === 1 ? steps.filter((step) => shows(step, figure.value, figure.places)) : [];
    return (
      byWords(showing) ??
      showing.find((step) => Math.abs(step.value - figure.value) <= 0.5 * 10 ** -figure.places) ??
      showing[0] ??
      null
    );
  }
  const found = byWords(steps);
  // "how sure?" of a figure that has no step of its own for it
  if (!found && sureness.test(text)) return steps[0] ?? null;
  return found ?? (names(words) ? null : (steps[0] ?? null));
}

const sureness = /\b(sure|unsure|certain|uncertain|accurate|exact|reliable|precise|trust)\b/i;

/** Words that name no figure. */
const nameless = new Set(
  `a again all an and answer answers are arrive at based be been calculate calculated calculation calculations can come comes compute could
   derive did do does explain explained exactly figure figures find for formula found from get give go got have help hey hi how i in is it
   its know last make makes math maths me mean means more my no number numbers of ok okay on out please pls reckon reckoned reckoning result s
   see show shown so source sources steps sums tell that the their them then these they this those to too understand us value values was we
   were what what's where which why with work worked working workings you your result thing wrong correct why's where's how's much little high low many`.split(
    /\s+/,
  ),
);

/** Whether the question names something that no step is called by. */
const names = (words: string): boolean => words.split(' ').some((word) => word !== '' && !nameless.has(word));

/** The steps that a step builds on, in the order of reckoning. */
function chainOf(step: Step, steps: readonly Step[]): readonly Step[] {
  const seen = new Set<Step>();
  const visit = (one: Step): void => {
    for (const name of one.from ?? []) {
      const before = steps.find((other) => other.name === name);
      if (before && before !== step && !seen.has(before)) {
        visit(before);
        seen.add(before);
      }
    }
  };
  visit(step);
  return [...seen];
}

const lineOf = ({ name, shown }: Step): string => `${capital(name)}: ${shown}`;

/** A reckoning of many fats is long: its first lines, the rest behind details. */
const mostLines = 5;

function bodyOf(chosen: Step, chain: readonly Step[]): Block[] {
  const text = (line: string): Block => ({ kind: 'text', text: line });
  const direct = chain.filter(({ name }) => chosen.from?.includes(name));
  const shown = chain.length <= mostLines ? chain : direct;
  return [
    ...(chosen.sure ? [text(chosen.sure)] : []),
    text(`Formula: ${chosen.formula}.`),
    ...(shown.length > 0 ? [{ kind: 'list' as const, title: 'From', items: shown.map(lineOf) }] : []),
    ...(chosen.range ? [text(chosen.range)] : []),
    text(`Source: ${chosen.source.replace(/\.$/, '')}.`),
  ];
}
