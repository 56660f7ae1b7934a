/** Every doubt of the reader as the one question asked back: what is missing, and what was understood so far. */
import type { Catalogue } from '../catalogue/types.ts';
import type { Doubt, RecipeReading } from '../reading/reading.ts';
import { number, percent, readMass, type Style } from '../units/print.ts';
import { untilClear } from './cautions.ts';
import type { Context, Refusal } from './define.ts';
import { clipped, listed, nameOf, ofName } from './phrases.ts';
import { soFar } from './read-line.ts';

type Code = 'unclear' | 'impossible' | 'refused';

interface Question {
  readonly code?: Code;
  readonly ask: string;
  readonly hint: string;
  readonly candidates?: readonly string[];
  /** What was understood so far would only mislead. */
  readonly whole?: true;
}

interface Around {
  readonly reading: RecipeReading;
  readonly catalogue: Catalogue;
  readonly style: Style;
}

/** The doubt with this id; some share one shape under several ids. */
type Of<Id extends Doubt['id'], D extends Doubt = Doubt> = D extends Doubt ? (Id extends D['id'] ? D : never) : never;

const unitWord: Readonly<Record<string, string>> = { g: 'grams', kg: 'kilograms', oz: 'ounces', lb: 'pounds' };

const isAlkali = (of: string): boolean => /hydroxide|^lye$/i.test(of);

const names = (ids: readonly string[], catalogue: Catalogue): readonly string[] =>
  ids.map((id) => nameOf(id, catalogue));

const oneOf = (candidates: readonly string[]): string =>
  candidates.length > 0 ? `Answer with one of: ${candidates.join(', ')}; or the name on its label.` : '';

const oddSuperfat = (value: number, style: Style): Question =>
  value < 0
    ? {
        code: 'refused',
        ask: `A superfat of ${percent(value, style)} means soap with free alkali in it, and that burns skin. I won’t work it out.`,
        hint: 'Ask for 0 % or more; 5 % is usual for skin.',
      }
    : {
        code: 'impossible',
        ask: `A superfat of ${percent(value, style)} can’t be: it is the share of the fat that is left over, from 0 to less than 100 %.`,
        hint: 'Write the superfat you want, for example 5 %.',
      };

/** A superfat given as an option that no soap can have; null for any other. */
export function superfatRefusal(value: number | undefined, style: Style): Refusal<'caustic'> | null {
  if (value === undefined || (value >= 0 && value < 0.99)) return null;
  const { code = 'impossible', ask, hint } = oddSuperfat(value, style);
  return { code, message: ask, hint, candidates: [], caution: untilClear };
}

/** A command without anything to work on. */
export const whichRecipe = (example: string): Refusal<'caustic'> => ({
  code: 'unclear',
  message: 'Which recipe? Paste it after the word, or alone.',
  hint: `For example: ${example}`,
  candidates: [],
  caution: untilClear,
});

const words: { readonly [Id in Doubt['id']]: (doubt: Of<Id>, around: Around) => Question } = {
  disordered: () => ({
    ask: 'A figure in this post is shown in another order than it is stored, so I can’t trust it.',
    hint: 'Type the amounts again by hand, without copying them.',
  }),
  'two-recipes': ({ parts }) => {
    const candidates = ['the first', 'the second', 'the third', 'the fourth'].slice(0, parts);
    return {
      ask: `I see ${parts > 2 ? 'several' : 'two'} recipes in this post. Which one?`,
      hint:
        parts > 0
          ? `Answer ${listed(
              candidates.map((one) => `"${one}"`),
              'or',
            )}.`
          : 'Paste the one you mean, alone.',
      candidates,
      whole: true,
    };
  },
  corrected: ({ said, adding }) => ({
    ask: adding
      ? `Are these what the scale showed with everything in it ("${said}")? Then each fat weighs less.`
      : `You also write "${said.replace(/[\s.,;:!]+$/, '')}". What goes into the pot in the end?`,
    hint: adding
      ? 'Paste the recipe once more with what each fat weighs by itself.'
      : 'Paste the recipe once more as it is in the pot, with its figures.',
  }),
  negative: ({ said, of }) => ({
    code: 'impossible',
    ask: `${said.replace('-', '−')} of ${ofName(of)}: an amount can’t be below nothing.`,
    hint: `Write the amount of ${ofName(of)} again.`,
  }),
  zero: ({ said, of }) => ({
    ask: `${said} of ${ofName(of)}: is none of it in the pot, or is a figure missing?`,
    hint: `Write how much ${ofName(of)} it is, or leave that line out.`,
  }),
  'superfat-odd': ({ value }, { style }) => oddSuperfat(value, style),
  'strength-odd': ({ said }) => ({
    code: 'impossible',
    ask: `A lye solution of ${said} can’t be: sodium hydroxide dissolves to about 50 %.`,
    hint: 'Write the strength you want, for example 33 %.',
  }),
  'purity-odd': ({ said }) => ({
    code: 'impossible',
    ask: `A purity of ${said} can’t be.`,
    hint: 'Look at the label: sodium hydroxide (NaOH) is sold at 97 to 100 %, potassium hydroxide (KOH) at 85 to 100 %.',
  }),
  'unknown-fat': ({ said, candidates }, { catalogue }) => ({
    ask: `I don’t know "${said}". What is it?`,
    hint:
      candidates.length > 0
        ? `Is it one of these? If not, ask the supplier for its saponification value.`
        : 'Look at the label for another name, or ask the supplier for its saponification value.',
    candidates: names(candidates, catalogue),
  }),
  'unheld-fat': ({ said, candidates }, { catalogue }) => ({
    ask: `I know of "${said}" but hold no trusted saponification value for it, so I can’t reckon its alkali.`,
    hint: `Ask the supplier for its saponification value${
      candidates.length > 0 ? `; its nearest relatives here are ${listed(names(candidates, catalogue))}` : ''
    }.`,
  }),
  'ambiguous-name': ({ said, candidates, why }, { catalogue }) => ({
    ask: `Which one is "${said}"? ${why}`,
    hint: oneOf(names(candidates, catalogue)),
    candidates: names(candidates, catalogue),
  }),
  'which-alkali': ({ said, why }, { catalogue }) => {
    const typed = said.toLowerCase();
    const known = why ?? catalogue.ambiguous.find(({ names: all }) => all.includes(typed))?.why;
    return {
      ask: `Which alkali is "${said}"?${known ? ` ${known}` : ''}`,
      hint: 'Look at the label: NaOH is sodium hydroxide (hard bars), KOH is potassium hydroxide (soft and liquid soap).',
      candidates: ['NaOH', 'KOH'],
    };
  },
  'alkali-volume': ({ said }) => ({
    ask: `How much does "${said}" weigh? Dry alkali by volume can be off by a third.`,
    hint: 'Weigh it and tell me the grams. Is it a solution? Then tell me its strength in per cent too.',
  }),
  'alkali-percent': ({ said, of }) => ({
    ask: `What is the ${said} at the ${ofName(of)}: how pure it is, or how strong its solution?`,
    hint: 'Answer for example "pure", "90 % pure" or "50 % solution".',
    candidates: [`${said} pure`, `${said} solution`],
  }),
  'stock-strength': ({ said }) => ({
    ask: `How strong is the lye solution (${said})?`,
    hint: 'Answer with its alkali by weight, for example "50 %".',
    candidates: ['50 %', '33 %'],
  }),
  'no-unit': ({ units }, { reading }) => {
    const bare = reading.doubts.flatMap((one) => (one.id === 'no-unit' ? [one.said] : []));
    const candidates = units.length > 0 ? units.map((unit) => unitWord[unit] ?? unit) : ['grams', 'ounces'];
    return {
      ask: `In which unit? I read ${bare.join(', ')}, and ${units.length > 1 ? 'more than one unit elsewhere' : 'no unit'}.`,
      hint: `Answer ${listed(
        candidates.map((one) => `"${one}"`),
        'or',
      )}, or paste it again with units.`,
      candidates,
    };
  },
  range: ({ said, of }) => ({
    ask: `${said} of ${ofName(of)}: which figure shall I take?`,
    hint: 'Answer with one amount, the one you weigh.',
  }),
  decimal: ({ said, readings: [first, second] }, { style }) => ({
    ask: `Is "${said}" ${readMass(first, style)} or ${readMass(second, style)}?`,
    hint: 'Answer with the one you mean.',
    candidates: [readMass(first, style), readMass(second, style)],
  }),
  'two-amounts': ({ of, said }) => {
    const amounts = [...new Set(said.map((one) => one.replace(/[.,;:]+$/, '')))];
    const isShare = amounts.some((one) => one.includes('%'));
    const candidates = isShare ? amounts : [...amounts, 'both'];
    return {
      ask:
        amounts.length === 1
          ? `${ofName(of)} stands ${said.length} times with ${amounts[0]}. Does it count once, or all together?`
          : `${amounts.length === 2 ? 'Two' : 'Several'} amounts of ${ofName(of)}: ${listed(amounts)}. Which one${isShare ? '' : ', or both together'}?`,
      hint: `Answer ${listed(
        candidates.map((one) => `"${one}"`),
        'or',
      )}.`,
      candidates,
    };
  },
  'no-amount': ({ of }) => ({
    ask: `How much ${ofName(of)}?`,
    hint: isAlkali(of)
      ? 'Answer with its weight, for example "105 g"; or write "lye" before the fats, and I work it out.'
      : 'Answer with its weight, for example "250 g", or "none".',
  }),
  'units-disagree': ({ said, also, of }) => ({
    ask: `${said} and ${also} of ${ofName(of)} are not the same weight. Which one counts?`,
    hint: 'Answer with the one you weigh.',
    candidates: [said, also],
  }),
  'total-disagrees': ({ said, sum }, { style }) => ({
    ask: `The total says ${said}, the lines make ${readMass(sum, style)}. Is a line missing or wrong?`,
    hint: 'Check each line against your notes and paste it again; or answer "no total" to go by the lines.',
    candidates: ['no total'],
  }),
  'shares-disagree': ({ of, said, weighed }, { style }) => ({
    ask: `For ${ofName(of)} the post says ${percent(said, style)}, its weight is ${percent(weighed, style)} of the fats. Which counts?`,
    hint: 'Answer "weights", or paste it again with the right figures.',
    candidates: ['weights'],
  }),
  'shares-sum': ({ sum }, { style }) => ({
    ask: `The shares of the fats make ${percent(sum, style)}, not 100 %.`,
    hint: 'Paste it again with shares that make 100 %, or with weights.',
  }),
  'shares-total': () => ({
    ask: 'How much fat altogether? I read shares and no total weight.',
    hint: 'Answer with the weight of all the fats, for example "1000 g".',
  }),
  unplaced: ({ said }) => ({
    ask: `What is the ${said} of?`,
    hint: 'Answer with the name that belongs to it, or paste it again with each amount beside its name.',
  }),
  'two-readings': ({ first, second }) => {
    const short = first.length < 30 && second.length < 30;
    return {
      ask: `I can read this in two ways: ${first}; or ${second}.`,
      hint: short ? 'Answer with the one you mean.' : 'Paste it again, one ingredient on a line.',
      candidates: short ? [first, second] : [],
    };
  },
  implausible: ({ alkaliGrams, fatGrams }, { style }) => ({
    ask: `${readMass(alkaliGrams, style)} alkali for ${readMass(fatGrams, style)} fat is far from what any soap takes.`,
    hint: `Check units and decimal points: ${number(fatGrams, 0, style)} g of usual fats take about ${number(fatGrams * 0.14, 0, style)} g sodium hydroxide (NaOH).`,
  }),
};

/** The order in which doubts are asked: what spoils every figure first, what a later answer may settle last. */
const order = Object.keys(words) as readonly Doubt['id'][];

export const inAskedOrder = (doubts: readonly Doubt[]): readonly Doubt[] =>
  [...doubts].sort((a, b) => order.indexOf(a.id) - order.indexOf(b.id));

function worded(doubt: Doubt, around: Around): Question {
  return (words[doubt.id] as (doubt: Doubt, around: Around) => Question)(doubt, around);
}

/** The one question that matters most, or null where the post is clear. */
export function mostPressing(reading: RecipeReading, context: Context): Refusal<'caustic'> | null {
  const [doubt] = inAskedOrder(reading.doubts);
  if (!doubt) return null;
  const style: Style = { ...context.style, massUnit: reading.ounces ? 'oz' : context.style.massUnit };
  const around = { reading, catalogue: context.catalogue, style };
  const said =
    'said' in doubt && typeof doubt.said === 'string' ? ({ ...doubt, said: clipped(doubt.said) } as Doubt) : doubt;
  const { code = 'unclear', ask, hint, candidates = [], whole } = worded(said, around);
  const understood = code === 'unclear' && !whole ? soFar(reading, context.catalogue, style) : '';
  return {
    code,
    message: ask,
    hint: [hint, understood].filter((part) => part !== '').join('\n'),
    candidates,
    caution: untilClear,
  };
}
