/** An older recipe told beside the one that is meant: "last spring: … no need to look at it. New: …, check the new one". */

/** A whole recipe in a post. */
export interface Part {
  readonly from: number;
  readonly to: number;
  /** It stands behind quote marks, where another part stands behind none. */
  readonly quoted?: boolean;
}

type Age = 'old' | 'new';

/** What stands before the first figure of a recipe tells its age. */
const reach = 90;
const ages: Readonly<Record<Age, RegExp>> = {
  old: /\b(?:old|older|previous(?:ly)?|last (?:week|month|year|time|batch|spring|summer|autumn|fall|winter)|used to|before|originally|original|former|first version|back then|where i started|years ago|yesterday)\b/i,
  new: /\b(?:new|newer|current|now|today|tonight|this (?:time|week|weekend|morning|evening)|latest|updated|revised|changed|tomorrow|halved|doubled|tripled|trebled|scaled (?:up|down)|mine|my (?:own )?version)\b/i,
};

const one = '(?: one| recipe| version| batch| list)?';
const asking =
  'check(?:ed|ing)?|judge|look(?:ing)? at|verify|about|mean|meant|asking|want|need|take|use|review|right(?! ?(?:hand|page|side|column|is|was|=))|ok|only|just';
const upTo = '\\b[^.?!\\n]{0,40}\\b';
const newest =
  "new|newer|current|latest|updated|revised|(?:second|last|lower|bottom)(?=(?: one| recipe| version| batch| list)?\\s*(?:[.?!,;:)\\n]|$))|today['’]?s|tonight['’]?s";
const own = 'mine|my (?:own|version|one)';
const pointed: Readonly<Record<Age, RegExp>> = {
  // "on the right is mine:" is a heading, "the lower one is mine" says whose it is
  new: new RegExp(
    `\\b(?:(?:${asking})${upTo}(?:${newest}|${own})|is(?![^.?!\\n]*:[ \\t]*(?:\\n|$))${upTo}(?:${newest})|is(?=[^.!\\n]*\\?)${upTo}(?:${own}))${one}(?![ ]?(?:spring|summer|autumn|fall|winter|week|month|year|time|night|to|soap|here))\\b`,
    'i',
  ),
  old: new RegExp(
    `\\b(?:${asking}|is)${upTo}(?<!\\bnot (?:the |that |my |your )?)(?:old|older|previous|original|first|upper|top|quoted) (?:one|recipe|version|batch|list)\\b`,
    'i',
  ),
};
/** Said right behind a recipe: it is not meant. */
const dismissed =
  /\b(?:no need to (?:look|check)|(?:don['’]?t|needn['’]?t|do not|not) (?:need to |have to )?(?:check|look at|mind|worry|bother|ask(?:ing)?)|ignore (?:that|it|this)|never ?mind|that one (?:was|is|worked|went)|(?:was|is|were) (?:all )?(?:used up|gone|fine|lovely|great|perfect))\b/i;
const several =
  /\b(?:both|either|which (?:one|of|is (?:right|better|correct))|compar\w*|(?:difference|better)\b(?=[^.!\n]*\?))/i;
const both = /\bboth (?:recipes?|of|are|lyes?|batches|versions|ok|right)\b/i;

const amount = (): RegExp => /\d\s*(?:k?g|oz|lbs?|pounds?|ounces?|grams?|ml)(?!\p{L})/iu;

/** Said of a recipe by whoever makes it. */
const byOwner = /\b(?:i|i['’](?:m|ve|d|ll)|me|my|mine|we|our|ours)\b/i;

/**
 * The age that the words before a recipe's first amount tell; they stand behind place `since`. A quote is old beside
 * a recipe that its writer calls their own.
 */
function ageOf(post: string, { from, to, quoted }: Part, since: number, isAnswered: boolean): Age | null {
  if (quoted !== undefined && isAnswered) return quoted ? 'old' : 'new';
  const first = from + Math.max(0, post.slice(from, to).search(amount()));
  const words = post.slice(Math.max(since, first - reach), first);
  const [old, fresh] = [ages.old.test(words), ages.new.test(words)];
  return old === fresh ? null : old ? 'old' : 'new';
}

/** The recipe that is meant, where the post tells an older one beside it. */
export function meantOf(post: string, parts: readonly Part[]): Part | null {
  const [first, second] = parts;
  if (parts.length !== 2 || !first || !second) return null;
  const isAnswered = [first, second].some(
    ({ from, to, quoted }) => quoted === false && byOwner.test(post.slice(from, to)),
  );
  const of = [ageOf(post, first, 0, isAnswered), ageOf(post, second, first.to, isAnswered)];
  const talk = `${post.slice(0, first.from)}\n${post.slice(first.to)}`;
  if (both.test(talk)) return null;
  const isDismissed = dismissed.test(post.slice(first.to, Math.max(second.from, first.to + reach)));
  const [old, fresh] = [pointed.old.test(talk), pointed.new.test(talk)];
  if (old === fresh && !isDismissed) {
    if (fresh || several.test(talk) || of.includes(null) || of[0] === of[1]) return null;
    return of[0] === 'new' ? first : second;
  }
  if (old && !fresh) return isDismissed ? null : of[1] === 'old' && of[0] !== 'old' ? second : first;
  // the older one is told first, where nothing says otherwise
  if (of[0] === 'new' && of[1] !== 'new') return isDismissed ? null : first;
  return second;
}
