/** The words that make a correction. */

/** What would be another question, or another recipe's verdict, and not a correction of this one. */
export const another =
  /\b(how (much|many|long|hot|big|do|does|can)|when|why|which|where|convert|is (my|it|this|that) (lye|right|ok|okay|correct|enough|fine|too)|enough|what (is|are|does|water|amount|weight|ratio|strength)|what's (the|a)|(would|do|should|shall) i need|explain|summary|scale (?:it|this|that|to|for|up|down|the)|double|halve|triple|cool|flash)\b/i;

export const cues = {
  correcting:
    /^\W*(no|nope|nah|sorry|oops|whoops|actually|wait|hang on|correction|i meant|i mean|my mistake|not|ah|argh|oh|make (that|it)|change|it was|it is|it's|its|should)\b|\b(i meant|i mean|meant|should be|should have been|was|were|wrong|mistake|typo|instead|rather|swap|replace|replaced|substitute|switch|change|changed|use|using|try|make (that|it|the))\b|^\W*(and|but|what (about|if)|how about)\b/i,
  adding: /\b(add|adding|added|plus|also|another|include|extra|more|forgot|put in|increase|raise|up)\b|^\W*and\b/i,
  lessening: /\b(less|reduce|lower|decrease|cut)\b/i,
  removing:
    /\b(without|leave (out|off)|left out|remove|drop|omit|skip|take out|minus|forget|ditch|lose|except|delete|no more|don'?t (use|have)|have no|out of|ran out of)\b/i,
  swapping:
    /\b(instead|not|rather than|swap\w*|replac\w*|substitut\w*|switch\w*|chang\w*|should be|should have been|was|were|meant|in place of)\b|→|->|=>|\buse\b.*\bfor\b/i,
  plainly:
    /^\W*(no|nope|sorry|oops|whoops|actually|i meant|i mean|make that|change|replace|swap|substitute|switch|without|add|remove|leave out|drop|omit|take out)\b|\binstead\b/i,
  after: /\bafter\b/i,
  part: /\b(half|third|quarter|some|part)\b/i,
} as const;

/** "not 200 g", "from 200 to": the figure that no longer counts. */
export const outdated =
  /,?\s*\b(?:and )?(?:not|instead of|rather than)\s+(?:the\s+)?\d+(?:[.,]\d+)?\s*(?:%|[a-z]{1,6}\b)?|\bfrom\s+\d[\d.,]*\s*(?:%|[a-z]{1,3}\b)?\s+(?=to\b)/i;

/** Words beside which a lone figure can only be the one that was spoken of before. */
const beside = new Set(
  `a about actually again all also an and are at be been but can change changed could correct correction for from go had have how i if in instead
   is it its just let lets make mean meant more my need no not now of ok okay oops only or please pls rather really say should sorry that the then
   there this to try up use used using wait want was we what whats whoops will with would wrong typo mistake you super fat superfat left over
   fats oils fat oil total amount weight pure purity solution strength water lye alkali ratio by much please thanks instead hang on`.split(
    /\s+/,
  ),
);
/** A lone figure up to this is a superfat in per cent rather than a weight. */
export const mostSuperfat = 20;

export const isLone = (text: string): boolean =>
  (text.toLowerCase().match(/\p{L}[\p{L}']*/gu) ?? []).every(
    (word) => beside.has(word.replaceAll("'", '')) || unitLike.test(word),
  );
const unitLike = /^(g|gr|grams?|kg|kilos?|oz|ounces?|lbs?|pounds?|percent|naoh|koh|x)$/;
