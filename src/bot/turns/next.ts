import type { Answer, Fault } from '../../answer/types.ts';
import { untilClear } from '../../commands/cautions.ts';
import { type Context, nothingMore } from '../../commands/define.ts';
import type { RecipeReading } from '../../reading/reading.ts';
import type { Session } from './store.ts';

/** Next steps said without their command word: "double it", "post it nicely", "why 97?", "start over", "that's wrong". */

const talk = `(?:ok|okay|so|and|now|great|thanks|thank you|thx|cool|please|pls|hm+|well|then|hey|hi|nah|no|nope|sorry|actually|oops|wait|could you|can you|would you|will you|can i|could i|i'?d like to|let'?s|let me|i want to|lyeward)`;
const lead = String.raw`^\W*(?:${talk}[\s,.!:]+)*`;
const it = `(?:(?:this|that) (?:recipe|batch|lot)|it|this|that|the (?:recipe|batch|whole thing|lot)|my (?:recipe|batch)|everything|them)`;

const makeSteps = (): readonly (readonly [string, RegExp])[] => [
  [
    'restart',
    new RegExp(
      `${lead}(?:start (?:over|again|afresh|from scratch|anew)|reset|clear (?:${it}|all|context)|forget (?:${it}|all|about it|my recipe)|new (?:recipe|conversation)|restart|scrap (?:that|it))\\W*(?:${talk}\\W*)*$`,
      'i',
    ),
  ],
  [
    'report',
    new RegExp(
      `${lead}(?:(?:that|this|it|the answer|your answer)(?:'?s| is| was| looks| can'?t be) ?(?:all |just |completely |plain )?(?:wrong|incorrect|not (?:right|correct|true)|right|a mistake|false)|you(?:'re| are| got (?:it|that)) wrong|wrong(?: answer)?|report(?: (?:it|this|that|a (?:mistake|problem|bug)))?)(?:[,. ]+with my words)?\\W*$`,
      'i',
    ),
  ],
  [
    'scale',
    new RegExp(
      // "no scale here" is what somebody weighs on; "no, scale it" is not
      `(?!\\W*no scales?\\b(?! (?:it|this|that|to|up|down)\\b))${lead}(?:re)?(?:scal(?:e|ing)|size|resize)\\b|${lead}(?:double|halve|triple|treble|quadruple)(?: (?:${it}))?\\s*(?:[:.!?]|$|please|pls|plz|\\n|to\\b|for\\b)|${lead}(?:make|do|give me) (?:it )?(?:half|double|twice|triple|three times|\\d+(?:[.,]\\d+)? times|a (?:half|double)) ?(?:of )?(?:${it}|as much|the size)?\\W*$|${lead}(?:half|twice|double) (?:${it})\\W*$|${lead}\\d+(?:[.,]\\d+)?\\s*(?:x|times)(?: (?:${it}))?\\W*$`,
      'i',
    ),
  ],
  [
    'recipe',
    new RegExp(
      `${lead}(?:save|keep|store) (?:(?:${it}) )?(?:as|under)\\b|${lead}(?:save|keep) (?:${it})\\W*$|${lead}(?:(?:list|show(?: me)?) )?(?:all )?my recipes\\W*$`,
      'i',
    ),
  ],
  ['settings', new RegExp(`${lead}(?:(?:list|show(?: me)?|what are) )?my (?:settings|preferences)\\W*$`, 'i')],
  [
    'summary',
    new RegExp(
      `${lead}(?:summar(?:y|i[sz]e)\\b|(?:post|share|print|publish|format) (?:${it})\\b|(?:write|type) (?:${it})(?: (?:up|out|down))?\\b|(?:give|show|send) me (?:the )?(?:whole |full |finished |complete |final )?(?:recipe|summary)\\b|(?:the )?(?:full|whole|complete|final) recipe\\b|recipe (?:card|please)\\b|something (?:i|we) can (?:post|share)\\b)`,
      'i',
    ),
  ],
  [
    'solution',
    new RegExp(
      `${lead}(?:how (?:hot|warm) (?:will|does|would|is) (?:it|that|this|the (?:lye|solution|mix))(?: (?:get|be|become|going to (?:get|be)))?|what temperature (?:will|does) (?:it|the (?:lye|solution))|how much ice\\b|(?:the )?heat of (?:this|the|that) solution)`,
      'i',
    ),
  ],
  [
    'explain',
    new RegExp(
      `${lead}(?:explain\\b|why\\W*$|why (?:only |just |exactly |is it |is that |not )?[\\d.,]+|why so (?:much|little|high|low|many)\\b|why (?:is|are|was|were) (?:it|that|the (?:super ?fat|lye|alkali|water|naoh|koh|range|number|figure|answer|amount))\\b|how (?:sure|certain|accurate|exact|reliable|confident|precise|safe a guess)\\b|how did you (?:get|calculate|work|arrive|come|find)\\b|(?:show|see|give)(?: me)?(?: the| your)? (?:working|workings|work|maths?|calculations?|formula|steps|reckoning|sums)\\b|where (?:does|do|did) (?:that|this|it|the|those|these|you)\\b[^\\n]{0,40}\\b(?:from|come)\\b|where'?s (?:that|this|it|the \\w+) from\\b|what(?:'s| is) (?:that|this|it|the \\w+) based on\\b|(?:what(?:'s| is) (?:the|your) )?sources?\\W*$|what makes (?:it|that) (?:unsure|uncertain)|what(?:'?s| is| was)(?: the| my| its)? (?:super ?fat|(?:lye )?concentration|(?:lye )?strength|(?:water|lye|water to lye|water:lye) ratio|ratio|iodine value|(?:batch|total) (?:weight|size)|glycerol|total fatty matter|demand)\\W*$|what (?:super ?fat|concentration|strength|ratio) is (?:it|that|this)\\b|how much (?:does|will|would) (?:it|that|this|the (?:batch|soap|whole thing)|everything) weigh\\b|(?:the )?(?:batch|total) (?:weight|size)\\W*$)`,
      'i',
    ),
  ],
];
/** Made for the first text that may be one of them. */
let steps: ReturnType<typeof makeSteps> | null = null;

/** The large patterns of sizes are compiled only for texts that may be meant. */
const sizing = /scal|siz|doubl|halv|half|tripl|trebl|quadrup|twice|times|\dx|\d x/i;

/** Longer texts are posts, and so are those of several lines or figures. */
const longest = 160;
const isTalk = (text: string): boolean =>
  text.length <= longest && !text.trim().includes('\n') && (text.match(/\d+(?:[.,]\d+)?/g)?.length ?? 0) <= 2;

/** A size may also stand behind its recipe: "… 230 g water - scale it to 1 kg of oils please". */
const scaledAtLast =
  /(?:^|[\n;,.!–—-]\s*)(?:(?:please|can you|could you|now|and|then)\s+)*(?:(?:re)?scale|resize)\s+(?:it|this|that|to|up|down|by|for|the recipe)\b[^\n;]*$|\n\s*(?:double|halve|triple)\s+(?:it|this|that)\W*$|[.!?]\s+(?:please |(?:can|could) you )?(?:double|halve|triple) (?:it|this|that)(?: please| pls| for me)*\s*[.!?]/i;

// "no big enough scale for the oils" is to weigh on, "double that in water" the water's weight
/** "I need 12 bars of 100 g, scale it: …", "my mould is 10 x 3 x 3 in, scale this recipe to fit. …" */
const scaledAtFirst =
  /(?<!\b(?:(?:a|an|the|my|your|our|no) (?:[\w-]+ ){0,2}|little |good |kitchen |digital |\w+y ))\b(?:(?:re)?scale|resize) (?:it|this|that|everything|to|up|down|by|for|my|the)\b(?! ?(?:the |my )?(?:lye|oils?|fats?|water|small|tiny|big)\b(?! (?:batch|recipe|mou?ld))) ?|(?<!\b(?:water|milk|liquid|lye)\b[ ,:=-]*(?:is |was |at |of |about )?)(?<!(?:^|[^\w.,])(?!(?:to|and|please|pls|then|now|so|you|i|we|just|lets|let's|me|could|can|grams?|oz|kg|lbs?)\b)[a-z]+ (?=\w+ that))\b(?:double|halve|triple) (?:it|this|that(?! (?!(?:please|pls|and|to|for|recipe|batch|lot|lye|naoh|with|then|so|all|again|weight|amount|in|of|as)\b)[a-z]))\b(?! (?:again |weight )?(?:in|of|as|for) (?:the )?(?:water|milk|liquid|lye|weight)\b| (?:weight|amount)\b| of (?!it\b|all\b|everything\b)[a-z])/i;

/** "Scaling up for the fair (60 bars @ $7):" over the weights of so many, and no size that they are to have. */
const scaledFor =
  /^\W{0,8}scaling (?:up |down )?for (?:the|my|our|an?|this|next) (?![^\n]{0,160}(?:\b(?:to|by|into|of) \d|mou?ld|\btin\b|loaf|\bbox\b|\d ?[x×]))/i;
const isScaled = (text: string): boolean =>
  scaledFor.test(text) && text.split('\n').filter((line) => /\d/.test(line)).length > 2;

/** What stands before the recipe: up to the first colon, line end or full stop. */
const headOf = (text: string): string => /^(?:[^:\n.]|\.(?=\d))*/.exec(text)?.[0] ?? '';

/** The command that a text of a few words asks for; null where it is none of these. */
export function nextStep(written: string): string | null {
  const text = written.slice(0, longest + 1).replace(/[’‘]/g, "'");
  const [first = ''] = text.trim().split('\n');
  const talks = isTalk(text);
  const mayScale = sizing.test(written);
  if (mayScale && (scaledAtLast.test(written.slice(-longest).trimEnd()) || scaledAtFirst.test(headOf(text))))
    return 'scale';
  if ((!talks && !mayScale) || isScaled(written)) return null;
  steps ??= makeSteps();
  for (const [command, pattern] of steps) {
    // a size may stand before its recipe
    const said = command === 'scale' ? first.slice(0, longest) : talks ? text : '';
    if (said !== '' && (command !== 'scale' || (mayScale && sizing.test(said))) && pattern.test(said)) return command;
  }
  return null;
}

/** A size without a word for scaling, where a recipe went before: "12 bars of 100 g", "my 10 x 3 x 3 inch mould". */
export function isSize(text: string, kind: string): boolean {
  if (text.length > longest || /\b(how|what(?! about| if)|why|when|convert|lye|superfat)\b/i.test(text)) return false;
  if (/\bwater\b/i.test(text) && kind !== 'mould') return false;
  const starts = new RegExp(
    `${lead}(?:but |what (?:about|if) )?(?:to|for|into|in|my|a|the|make|fill|fits?|does (?:it|this|that) fit|will (?:it|this|that) fit|i|i'?ve|we|with|enough|only|use up|twelve|ten|six|eight)\\b|${lead}(?:but |what (?:about|if) )?\\d`,
    'i',
  ).test(text);
  if (!starts) return false;
  if (kind === 'at-hand') return /\b(have|got|left|use up)\b/i.test(text);
  if (kind === 'weight') return new RegExp(`${lead}(?:to|into|for) `, 'i').test(text);
  return kind !== 'factor';
}

/** "is it safe?", "how much water?": the last recipe's answer once more. */
export const asksAgain = (text: string): boolean =>
  new RegExp(
    `${lead}(?:(?:is|was|are|would) (?:${it}|my lye|the lye) (?:be )?(?:safe|ok|okay|fine|good|right|alright|correct)(?: (?:now|then|to use))?|how much (?:water|lye|naoh|koh|alkali|sodium hydroxide)(?: (?:do i need|should i use|is that|is it|in total|then|now|for (?:that|this|it)))?|check (?:it|that) again|again)\\W*$`,
    'i',
  ).test(text);

/** Back to the recipe before the last correction. */
export const takesBack = (text: string): boolean =>
  new RegExp(
    `${lead}(?:undo(?: (?:${it}))?|go back|back(?: to (?:the )?(?:original|first|previous|last|old)(?: one| recipe| version)?)?|revert(?: (?:${it}))?|as (?:it was )?before|the (?:original|previous)(?: one| recipe)?(?: again)?|put (?:it|that) back|never ?mind)\\W*$`,
    'i',
  ).test(text);

/** "and 350?" that fits nothing which was said before: asked, as far as anything was said. */
export function loneFigure(text: string, { recipe, figure }: Session): Fault | null {
  const [said] = text.match(/\d+(?:[.,]\d+)?\s*(?:%|[a-z]{1,3}\b)?/i) ?? [];
  const lone =
    /^\W*(?:(?:and|or|no|for|at|with|to|make|that|it|what|about|if|then|ok)\W+)*\d+(?:[.,]\d+)?\s*(?:%|[a-z]{1,3}\b)?\W*$/i;
  if (!said || !lone.test(text) || !(recipe || figure)) return null;
  return {
    code: 'unclear',
    message: `What is the ${said.trim()} of?`,
    hint: 'Say it with its name, for example "350 g water" or "8 % superfat".',
    candidates: [],
    caution: [],
  };
}

/** Words that only make sense of something said before: "no, …", "rest same", "typed that wrong", "210 not 120". */
const pointsBack =
  /^\W*(?:(?:oh|ah|hi|hey|and|um|argh|so)\W+)*(?:no|nope|nah|sorry|oops|whoops|wait|correction|i meant?|my (?:mistake|bad)|edit)\b|\b(?:the )?(?:rest|everything else|all (?:the )?(?:else|others?)) (?:is |are |stays? |remains? |was )*(?:the )?(?:same|as (?:is|it was|before)|unchanged)\b|\b(?:typed|wrote|written|said|posted|put|gave|copied)\b[^.\n]{0,25}\b(?:wrong|wrongly|earlier|before|above)\b|\b(?:typo|i meant|correction)\b|\b(?:make (?:that|it)|should(?:'ve| have)? (?:be|been|said|read)|change (?:it|that|the)) \b|\d\s?[a-z%]{0,4}[,;]? (?:not|instead of) \d/i;
const asksAnew = /\b(?:how (?:much|many|long|hot|do|does|can)|what|when|why|which|where|convert|explain)\b|\?/i;

const weighedIn = ({ fats, after, liquids, alkali, waterGrams }: RecipeReading): number =>
  fats.length + after.length + liquids.length + alkali.length + (waterGrams === null ? 0 : 1);

/** "Sorry, coconut is 210 g not 120, rest same" with no recipe in sight: whichever it corrects is not here. */
export function ofNothing(text: string, { recipe, figure, pending }: Session, { read }: Context): Fault | null {
  if (recipe || figure || pending || text.length > longest) return null;
  // a whole recipe is read anyway, and sooner than the large patterns are got ready
  if ((text.match(/\d+/g)?.length ?? 0) > 2 && weighedIn(read(text)) > 1) return null;
  if (!pointsBack.test(text) || asksAnew.test(text)) return null;
  const reading = read(text);
  const { others, alkaliNamed, superfat, doubts } = reading;
  const weighed = weighedIn(reading);
  // "no, palm kernel" weighs nothing, and names one thing all the same
  const named = weighed + others.length + alkaliNamed.length + doubts.length + (superfat === null ? 0 : 1);
  if (weighed > 1 || (named === 0 && !/\d|^\W*(?:no|nope|sorry|i meant?)\W+\p{L}/iu.test(text))) return null;
  return {
    code: 'unclear',
    message: 'I have no recipe here that this could change.',
    hint: 'Paste the whole recipe, with the change in it.',
    candidates: [],
    caution: untilClear,
  };
}

export const isThanks = (text: string): boolean =>
  /^\W*(?:(?:ok|okay|great|perfect|wonderful|lovely|brilliant|super|cool|nice|good|got it|thanks?|thank you|thank u|thx|ty|cheers|ta|danke|merci|gracias|grazie|bye|many|so much|very much|a lot|lots|that helps|helpful|much appreciated|appreciated|you|all|for (?:that|your help|the help))\W*)+$/i.test(
    text,
  );

export const welcome: Answer = {
  command: 'help',
  title: 'You’re welcome',
  lead: 'You’re welcome. Happy soaping.',
  ...nothingMore,
  result: {},
};
