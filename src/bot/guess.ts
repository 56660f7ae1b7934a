import type { Context } from '../commands/define.ts';
import { questionOf } from '../commands/everyday.ts';
import { heatQuestion, speaksOfHeat } from '../reading/heat/ask.ts';
import type { RecipeReading } from '../reading/reading.ts';
import { wantsOwnLye, wishesAlkali } from '../reading/recipe/asks.ts';
import { mouldSize } from '../reading/words/aside.ts';

/** Asked for before the work: what to wear, to mix in, to do with a spill. */
const precautions =
  /\b(?:gloves?|goggles|face ?shield|apron|mask|protective|precautions?|ventilat\w+|fumes?|spills?|store|storage|hazard\w*|danger\w*|what (?:to|do i|should i) wear|schutz\w*|handschuhe|lunettes|gants|guantes|gafas)\b/i;

/** Words of a question that is about a recipe but not whether its lye is right. */
const asksOther =
  /\b(?:how (?:do i|to|hot|warm|cool|long|soon|much (?:ice|water|scent|fragrance|eo|extra|more)|many)|when (?:can|may|do|should|is|will)|what (?:temp\w*|concentration|strength|size)|(?<!\b(?:the|my|a|an|new|old|our|his|her|this|kitchen|digital|cheap|good|postal|letter|enough) )scal(?:e|ing)\b(?! (?:is|was|shows?|showed|reads?|says?|said|weighs|only|goes|has|broke|that|of \d))|resize|double(?! (?:that|boiler|the water|the lye))|halve|triple|twice the|mou?ld|convert|summar\w+|explain|flash ?point|(?:need|want|for) \d+ bars|too (?:hot|cold|warm)|melted enough|i(?:'?ve| have)? only (?:have|got)|false trace|instead of (?:water|ice))\b/i;

/** Asked about the pot, with no figure that a reckoning could start from. */
const cooling = /\b(?:how long|when|is|has|until|till)\b[^.?!]*\bcool(?:ed|s)?\b/i;

/** "start a batch of garden bar", "set a timer for 15 min", "my reminders" */
const batches =
  /^\W*(?:(?:please|let'?s|can (?:we|i)|i want to)\W+)*(?:start|begin) (?:a |an |the |my |another |new )*batch\b/i;
const reminds =
  /^\W*(?:(?:please|can you|could you)\W+)*(?:(?:set|start|add|cancel|list|show)\b(?: me)?(?: an?| my| the| another| all)*\s+)?(?:my |all )?(?:reminders?|timers?|alarms?)\b(?! (?:is|was|are|were|went|rang|has|had)\b)|^\W*tell me (?:in|at|on) \d/i;

/** Where a sentence ends, "step 2. Lye right?" too; "3.5" and "1. Melt" go on. */
const sentenceEnd = /(?<=[^\d\s][.!?]+)\s+|(?<=[a-z] \d+\.)\s+(?=[A-Z])|(?<=\?)\s*|\n+/;

/** A sentence that wants something. */
const asking =
  /\?|^\W*(?:(?:so|and|but|ok|okay|hi|hey|hello|please|pls|also|now|then|or|questions?|first|second|third|otherwise)\W+)*(?:how|what|which|when|why|can|could|should|would|will|is|are|does|do|did|may|must|tell|explain|give|show|walk|help|calculate|convert|how's|what's)\b|\bhow (?:hot|warm|long|much|many|do i|to|soon|big)\b|^\W*(?:blend|mix\w*|final|peak|end|combined) temp\w* (?:of|when|if|after)\b|\bwhat (?:temp\w*|will|would|should|do i)\b|\b(?:whether|wonder(?:ing)? if|(?:like|want|need) to know|any ideas?)\b/i;

/** What a recipe is judged by, or points at. */
const judgeable =
  /\b(?:\d+|lyes?|naoh|koh|caustic|alkali|hydroxide|soda|potash|super ?fat(?:ted)?|sf|recipe|batch|figures?|numbers?|amounts?|quantit(?:y|ies)|maths?|sums?|calculations?|ratio|fats?|oils?|it|this|that|these|those|them|all|everything|mine|i|we|s?he|they|who|which)\b/i;
const judging =
  /\b(?:ok|okay|oki|right|alright|fine|correct|good|sane|sound|enough|too (?:much|little|strong|weak|harsh|mild|heavy|low|high)|(?:lye )?heavy|off|wrong|mistake|safe|usable|fits?|match(?:es)?|agrees?|add up|go together|work(?:s|ed)? out|how (?:does|do|did|is) (?:the|my|our|this) (?:lye|naoh|koh|caustic|alkali|super ?fat|recipe)(?: \w+)? (?:looks?|come (?:out|up)|turn out|fare|stand)|what(?:'s| is)? (?:the |my |its )?(?:real |true |actual )?super ?fat|super ?fat|(?:(?:is|was) (?:it|that)|about) (?:the|my) (?:lye|recipe|water|fats?|oils?|amounts?|figures|numbers|weights|quantities|sums?))\b/i;
const checking =
  /\b(?:(?:double|cross|re)[- ]?)?(?:check|verify|judge|reckon|review|confirm|look (?:at|over)|go over|proof-?read)\b[^.?!\n]{0,60}\b(?:lyes?|naoh|koh|caustic|alkali|super ?fat|recipe|figures?|numbers?|amounts?|maths?|sums?|it|this|that|these|them|mine)\b/i;
/** "ok?", "thoughts?", "does it?" behind a recipe. */
const bare =
  /^\W*(?:is (?:it|this|that) |are (?:they|these) |am i )?(?:ok|okay|good|fine|all right|alright|safe) to (?:combine|mix|pour|blend|use|go(?: on| ahead)?|proceed|carry on)\W*$|^\W*(?:(?:is|does|would|will|looks?|all|so|that|this|it|any|your|you|reckon|sounds?|seems?|be|do|still|and)\W+)*(?:ok|okay|right|alright|fine|good|correct|thoughts|opinions?|doable|it|think)\W*$/i;
/** Of warmth, time, size or scent, which other commands answer. */
const elsewise =
  /\d ?(?:°|º|degrees?|[cf]\b|min|hours?|hrs?)|\b(?:temp\w*|hot|hotter|warm\w*|cold|cool\w*|heat\w*|melt\w*|ice|boil\w*|how (?:long|soon|many|much|big|do|to)|when|minutes|hours?|days?|weeks?|pot|crock|cooker|mou?ld\w*|loaf|flash\w*|scents?|fragrance|eos?|lavender|essential|trace|gel|stages?|pour|add|bars|scale|double(?![- ]?check)|jug|bowl|glass|plastic|alumini?um|convert|explain)\b/i;

const sentencesOf = (text: string): readonly string[] => text.split(sentenceEnd).filter((one) => one.trim() !== '');

/** No pattern of asking or checking fits without one of these: looked for first, as large patterns are slow to get ready. */
const inquiring =
  '? how wh can could should would will is are do did may must tell explain give show walk help calculat convert know idea wonder temp check verify judge reckon review confirm look go proof'.split(
    ' ',
  );
const holds = (text: string, parts: readonly string[]): boolean => {
  const lower = text.toLowerCase();
  return parts.some((part) => lower.includes(part));
};

/** Whether a recipe is there to be judged: somebody asks for it, or nobody asks anything. */
function wantsJudging(text: string): boolean {
  if (!holds(text, inquiring)) return true;
  const asked = sentencesOf(text);
  if (asked.some((one) => checking.test(one) && !elsewise.test(one))) return true;
  const questions = asked.filter((one) => asking.test(one));
  return questions.length === 0 || questions.some((one) => one.split(clauseEnd).some(judges));
}

/** "is 147 right for what went in, and how much is left at the end?" */
const clauseEnd = /[,;:]\s|\s(?:and|or|but)\s/;

/** "Tell me what the numbers come to", "what do my figures say?": of all that is listed. */
const comesTo =
  /\b(?:what|how)\b[^.?!\n]{0,12}\b(?:numbers|figures|amounts|quantities|recipe|maths?|sums?|(?:it|this|that|these)(?: all)?)\b[^.?!\n]{0,8}\b(?:comes?|amounts?|adds?|works?|look|looks|says?|tells?|gives?|makes?)\b(?: (?:to|out|up|at|like|me|us|as|of|please|all|with|that|this|it|in|now))*\W*$/i;

const judges = (sentence: string): boolean =>
  (comesTo.test(sentence) && !elsewise.test(sentence)) ||
  bare.test(sentence) ||
  (judging.test(sentence) && judgeable.test(sentence) && !elsewise.test(sentence));

/** Lines from which on a text is a post rather than a question. */
const post = 4;

/** A whole recipe that asks nothing else is there to be checked; as a post of many lines it may tell of temperatures. */
function isRecipe(text: string, { fats, alkali }: RecipeReading): boolean {
  if (fats.length === 0 || alkali.length === 0) return false;
  if (wantsJudging(text)) return true;
  if (asksOther.test(text)) return false;
  return text.trim().split('\n').length >= post || !speaksOfHeat(text);
}

/** "Please check my numbers", "is the cupful of lye right?", of a recipe that was read in part only: check asks for the rest. */
const ofAlkali = /\b(?:lyes?|naoh|koh|caustic|alkali|hydroxide)\b/i;
function isJudged(text: string, { fats, doubts }: RecipeReading): boolean {
  if (doubts.length === 0 || !holds(text, inquiring)) return false;
  return sentencesOf(text).some(
    (one) => !elsewise.test(one) && ((fats.length > 1 && checking.test(one)) || (ofAlkali.test(one) && judges(one))),
  );
}

/** "How much of each alkali do I weigh?", beneath fats that are weighed. */
const asksAlkali =
  /\b(?:how much|what|which)\b[^.?!\n]{0,30}\b(?:lye|naoh|koh|alkalis?|caustic|hydroxide|potash)\b(?![^.?!\n]*\b(?:hot|hotter|warm|temp\w*|cool\w*|ice|strength|solution|concentration)\b)/i;

/** "Lye pls", "lye for equal parts coconut, olive". */
const terse = /\b(?:lye|naoh|koh) (?:pls|plz|please|needed)\b|^\W*(?:lye|naoh|koh) for\b/i;
/** A row that is left to be filled in: "Lye (g) ....", "NaOH: ?". */
const blankRow =
  /^[^\S\n]*(?:[-*•|] ?)?(?:lye|naoh|koh|caustic soda|alkali)(?:[^\S\n]*[([]?(?:g|grams|oz)[)\]]?)?[\s:=|]*(?:\.{2,}|_{2,}|…+|\?+|-{2,})[^a-z\d\n]*$/im;
const wantsAlkali = (text: string, { fats, alkali }: RecipeReading): boolean =>
  fats.length > 1 && alkali.length === 0 && (asksAlkali.test(text) || terse.test(text) || blankRow.test(text));

const alkaliWished =
  /\b(?:lye|naoh|koh|alkali|caustic(?: soda)?|hydroxide|potash)\b[^.?!\n]{0,20}(?:\?|\b(?:needed|wanted|required|please|pls)\b)/i;
/** "How much fragrance?" */
const asksOfScent =
  /\b(?:scents?|scented|fragrance|fo|eos?|perfume|essential|blend)\b[^.!\n]*\?|\b(?:how much|how many|what|which|need|want)\b[^.?!\n]*\b(?:scents?|fragrance|fo|eos?|perfume|essential)\b/i;
/** Shares that make no whole, or have no total, weigh nothing yet: it is a recipe, whatever it says of a scent. */
const isShared = (text: string, { fats, alkali, doubts }: RecipeReading): boolean =>
  fats.length + alkali.length === 0 &&
  doubts.some(({ id }) => id === 'shares-sum' || id === 'shares-total') &&
  (asksAlkali.test(text) ||
    alkaliWished.test(text) ||
    wishesAlkali(text) ||
    !(asksOfScent.test(text) || asksOther.test(text)));

/** Something that is no fat and no lye, as a share: a scent, perhaps. */
const speaksOfScent = (text: string, { others, fats, alkali }: RecipeReading): boolean =>
  others.length > 0 && fats.length === 0 && alkali.length === 0 && /%|percent/i.test(text);

/** "My mould is 25 x 8 x 7 cm, how much oil?": a size for a recipe that is still to be named. */
const speaksOfMould = (text: string, { fats, alkali, fates }: RecipeReading): boolean =>
  fats.length === 0 &&
  alkali.length === 0 &&
  /\bmou?lds?\b|\bloaf\b/i.test(text) &&
  fates.some(({ why }) => why === mouldSize);

/** "350 F in celsius", whatever it is for. */
const turned =
  /\d\s*(?:°|º|degrees?|deg)?\s*(?:f|c|fahrenheit|celsius)\s*(?:in|to|into|as|=|->|→)\s*(?:°|º|degrees?)?\s*(?:celsius|centigrade|fahrenheit|c|f)\b/i;

/** "My usual again, with the lye down by three grams because …": told at length, and no unit asked for. */
const isStory = (text: string): boolean =>
  text.trim().split(/\s+/).length > 25 &&
  !/\b(?:convert\w*|how (?:many|much)|turn\w*|what is|what['’]?s)\b/i.test(text);

/** What a text without a command word asks for; null where nothing is recognised. */
export function guess(text: string, context: Context): string | null {
  const { read, reader } = context;
  if (/^\W*(hi|hello|hey|help|\?+|what can you do|start)\W*$/i.test(text)) return 'help';
  if (holds(text, ['batch']) && batches.test(text)) return 'batch';
  if (holds(text, ['remind', 'timer', 'alarm', 'tell me']) && reminds.test(text)) return 'remind';
  if (wantsOwnLye(text, read(text))) return 'lye';
  if (isRecipe(text, read(text))) return 'check';
  if (wantsAlkali(text, read(text)) || isShared(text, read(text))) return 'lye';
  if (isJudged(text, read(text))) return 'check';
  if (turned.test(text) && questionOf(text, null, context)?.kind === 'convert') return 'convert';
  // "When are my oils at 45 °C" is no question about the melting points of fats.
  const warm = speaksOfHeat(text) || speaksOfScent(text, read(text)) ? heatQuestion(reader(), text, read(text)) : null;
  if (warm) return warm;
  const question = questionOf(text, null, context);
  // "lye for 500 g oil, 5 %": the fat has no name yet, and 5 % is no strength
  const nameless = read(text).doubts.some(({ id }) => id === 'ambiguous-name');
  const aside = question?.kind === 'convert' && isStory(text);
  if (question && question.kind !== 'lye' && !(question.kind === 'strength' && nameless) && !aside)
    return question.kind;
  const reading = read(text);
  const scent = speaksOfHeat(text) ? null : heatQuestion(reader(), text, reading);
  if (scent) return scent;
  if (speaksOfMould(text, reading)) return 'scale';
  const { fats, after, alkali, doubts } = reading;
  if (alkali.length > 0) return 'check';
  if (fats.length > 0 || after.length > 0 || doubts.length > 0) return 'lye';
  if (cooling.test(text)) return 'cool';
  if (precautions.test(text)) return 'safety';
  return question === null && !asksAlkali.test(text) ? null : 'lye';
}

/** Commands that a recipe may follow, whatever stands between. */
const ofRecipe: ReadonlySet<string> = new Set([
  'check',
  'lye',
  'recipe',
  'convert',
  'acid',
  'strength',
  'share',
  'worth',
  'fat',
]);
const takesRecipe: ReadonlySet<string> = new Set(['cook', 'scale', 'summary', 'solution', 'mix', 'cool', 'scent']);
/** What a request says of the recipe behind it. */
const pointing =
  /\b(?:this|it|these|those|following|below|please|for|to|with|recipe|soap|my|mine|down|up|double|half|twice)\b/i;

/** What is said of a scale to weigh on, behind the word. */
const weighsOn =
  /^s?\s+(?:reads?|reading|says?|said|shows?|showed|showing|is|was|were|isnt|wasnt|only|broke|died|goes|zeroed|tared|reset|has|had|display|batter(?:y|ies)|(?:on|under|with) (?:the |my |an? )?(?:empty )?(?:bowl|pot|pan|jug|table))\b/i;

/** Words of commands that a list has over its rows: "Share of oils for 1000 g:", "fat | per cent". */
const headings: ReadonlySet<string> = new Set(['share', 'fat']);
const headsList = (rest: string): boolean =>
  rest
    .split('\n')
    .slice(1)
    .filter((line) => /\p{L}{3}/u.test(line) && /\d/.test(line)).length > 1;

/**
 * "Report and a plea. 420 g lard …", "Cook number four: …": the word of a command (`id`) that opens a sentence without a
 * figure, before a whole recipe that nobody asks anything else of. `rest`: what stands behind the word.
 */
export function opensTalk(text: string, rest: string, id: string, context: Context): boolean {
  if (/^\W*[/!]/.test(text)) return false;
  if (headings.has(id) && headsList(rest)) return /^(?:check|lye)$/.test(guess(text, context) ?? '');
  if (ofRecipe.has(id)) return false;
  // "Scale reads 1.2 kg lard": what they weigh on
  if (id === 'scale' && weighsOn.test(rest)) return context.read(text).fats.length > 0;
  const heading = /^[^.:!?\n\d]*(?=[.:!?\n])/.exec(rest)?.[0] ?? '';
  if (!/\p{L}{2}/u.test(heading) || (takesRecipe.has(id) && pointing.test(heading))) return false;
  const { fats, alkali } = context.read(text);
  return fats.length > 1 && alkali.length > 0 && guess(text, context) === 'check';
}
