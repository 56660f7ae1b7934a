/**
 * Fats of which the lye seems to be asked for, though a weight stands beside its name that may well be it: "I typed 85 g of
 * lye into my log, but I'd really used 103 g". What set that weight aside took it for something else.
 */
import type { RecipeReading } from '../reading.ts';
import { ofOthersLye } from '../story/others-lye.ts';
import { gramsOf } from '../text/weights.ts';

const alkali = '(?:lye|naoh|koh|caustic(?: soda| potash)?|(?:sodium|potassium) hydroxide|soda flakes)';
const unit = '(?:k?g|gr|grams?|gms?|oz|ounces?|lbs?|pounds?)';
const weighed = new RegExp(
  `\\b(\\d+(?:[.,]\\d+)?) ?(${unit})\\b[^.!?;\\n]{0,20}\\b${alkali}\\b|\\b${alkali}\\b[^.!?;\\n]{0,20}?\\b(\\d+(?:[.,]\\d+)?) ?(${unit})\\b`,
  'gi',
);
/** It is asked for, or told of another pot. */
const asked = new RegExp(
  `\\bhow (?:much|many)\\b|\\b(?:what|which|need|needed|work out|calculate|reckon|tell me|give me|figure out)\\b[^.!?\\n]*\\b${alkali}\\b|\\b${alkali}\\b[^.!\\n]{0,30}(?:\\?|\\b(?:please|pls|needed)\\b)|\\b${alkali} (?:for|to)\\b`,
  'i',
);
/** Alkali to its fats. */
const [least, most] = [0.04, 0.26];

/** The weight that may be it; null where none is. */
export function lyeLost(post: string, { fats, after, alkali: taken, doubts, fates }: RecipeReading): string | null {
  if (taken.length > 0 || doubts.length > 0 || fats.length === 0 || asked.test(post)) return null;
  const sum = [...fats, ...after].reduce((all, { grams }) => all + grams, 0);
  const isAside = (figure: string): boolean => {
    const own = fates.filter(({ text }) => text === figure);
    return own.length > 0 && own.every(({ fate, why }) => fate === 'aside' && why !== ofOthersLye);
  };
  for (const [, a, ofA = '', b, ofB = ''] of post.matchAll(weighed)) {
    const [figure, of] = [a ?? b ?? '', ofA || ofB];
    const share = gramsOf(figure, of) / sum;
    if (share > least && share < most && isAside(figure)) return `${figure} ${of}`;
  }
  return null;
}

const unknown =
  "(?:forgot|forgotten|did ?n['’]?t|did not|have ?n['’]?t|never|no idea|do ?n['’]?t know|do not know|not know|ca(?:n|nn)['’o]?t (?:remember|recall|say)|lost)";
const untold = new RegExp(
  `\\b(?:the |my )?${alkali} (?:was|is|went in|stayed|weighed|i (?:took|used|put in)) (?:exactly |just )?(?:the same|as (?:always|usual|last|before)|like (?:last|always)|the usual)|\\b${unknown}\\b[^.!?\\n]{0,40}\\b${alkali}\\b|\\b${alkali} (?:[a-z]+ ){0,3}(?:went in|is in|was put in|i put in)\\b[^.!?\\n]{0,40}\\b${unknown}\\b|\\b${alkali} (?:[a-z]+ ){0,2}(?:not|never) (?:been )?(?:written|noted|recorded|weighed)\\b`,
  'i',
);
/** "I forgot how much lye I put in": nobody is asked. */
const forgotten = new RegExp(
  `\\b(${unknown}\\b[^.!?\\n]{0,20}) how (?:much|many)\\b(?![^.!?\\n]*\\b(?:needs?|should|to|must|would|will|do i|takes?|wants?)\\b)`,
  'gi',
);
const judged =
  /\b(?:too much|too little|enough|ok|okay|good|bad|right|fine|safe|all right|alright|problem|in trouble|works?(?: out)?)\b[^.!\n]*\?/i;

/** "Lye was the same as last time. Too much or ok?": some went in, and nobody says how much. */
export const lyeUntold = (post: string, { fats, alkali: taken, doubts }: RecipeReading): boolean =>
  taken.length === 0 &&
  doubts.length === 0 &&
  fats.length > 0 &&
  !asked.test(post.replace(forgotten, '$1')) &&
  untold.test(post) &&
  judged.test(post);
