/** What the engine refuses, in words. */
import type { Catalogue } from '../catalogue/types.ts';
import type { EngineFault, EngineFaultKind } from '../engine/fault.ts';
import { number } from '../units/print.ts';
import { untilClear } from './cautions.ts';
import type { Refusal } from './define.ts';
import { nameOf } from './phrases.ts';

type Words = readonly [message: string, hint: string];

const percent = (share: number): string => `${number(share * 100, 1)} %`;

/** `figure` is a stable word and often an id: "fat olive-oil-virgin". */
const nameIn = (figure: string, catalogue: Catalogue): string => {
  const [, id] = figure.split(' ');
  return id ? nameOf(id, catalogue) : figure;
};

const words: Readonly<Record<EngineFaultKind, (fault: EngineFault, name: string) => Words>> = {
  'no-fat': () => ['I see no fat to cook with the alkali.', 'Paste the whole recipe: each fat with its weight.'],
  'no-alkali': () => ['I see no alkali with an amount.', 'Add the weight of your NaOH or KOH, or ask "lye" for it.'],
  'unknown-fat': (_, name) => [`I hold no value for the fat in ${name}.`, 'Leave it out, or name another.'],
  negative: (_, name) => [`${name}: an amount can’t be below nothing.`, 'Write the amount again.'],
  'not-finite': (_, name) => [`${name}: that is no number I can reckon with.`, 'Write the amount again.'],
  'too-little': ({ value, range }, name) => [
    `${number(value, value < 0.1 ? 3 : 1)} g of ${name} is too little for this scale.`,
    range ? 'Make a larger batch, or tell me of a finer scale, for example step=0.01g.' : 'Write the amount again.',
  ],
  'too-much': ({ value }, name) => [
    `${number(value, 0)} g of ${name} is more than I can believe.`,
    'Check the unit and the decimal point.',
  ],
  'superfat-out-of-range': ({ value }) => [
    `A superfat of ${percent(value)} can’t be: it is the share of the fat that is left over.`,
    'Ask for 0 % up to less than 100 %; 5 % is usual.',
  ],
  'purity-out-of-range': ({ value }) => [
    `A purity of ${percent(value)} can’t be.`,
    'Look at the label: NaOH is sold at 97 to 100 %, KOH at 85 to 100 %.',
  ],
  'concentration-out-of-range': ({ value, figure, range }) => {
    const isRatio = figure.endsWith('ratio');
    const said = isRatio ? `${number(value, 2)} g water to 1 g alkali` : percent(value);
    return range && (isRatio ? value < range[0] : value > range[1])
      ? [
          `Too little water (${said}): the alkali would not dissolve surely.`,
          'Use at least as much water as alkali; 2 g to 1 g is usual.',
        ]
      : [`So much water (${said}) makes no soap solution.`, 'Usual is 25 to 40 % alkali in the solution.'];
  },
  'step-out-of-range': ({ value }) => [
    `A scale that shows steps of ${number(value, 5)} g can’t be used here.`,
    'Tell me the smallest step it shows, for example step=0.1g.',
  ],
  'split-out-of-range': () => [
    'The shares of the two alkalis must make 100 %.',
    'Say for example koh=60%: the rest is sodium hydroxide (NaOH).',
  ],
  'nothing-to-scale': () => ['There is nothing to scale.', 'Paste the recipe with its weights.'],
};

export function refused(fault: EngineFault, catalogue: Catalogue): Refusal<'caustic'> {
  const [message, hint] = words[fault.kind](fault, nameIn(fault.figure, catalogue));
  const code = fault.kind === 'no-fat' || fault.kind === 'no-alkali' ? 'unclear' : 'impossible';
  return {
    code,
    message: message.charAt(0).toUpperCase() + message.slice(1),
    hint,
    candidates: [],
    caution: untilClear,
  };
}
