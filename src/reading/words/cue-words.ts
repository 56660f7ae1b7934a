import { bitsOf } from './signal-words.ts';

/**
 * What the words of one sentence may say, a bit each: the patterns of a sentence are tried only where it has one of the
 * words without which none of them matches.
 */
export const cue = {
  /** Of which batch it tells (`tellings.ts`). */
  told: 1,
  once: 2,
  others: 4,
  later: 8,
  mine: 16,
  numbered: 32,
  /** It puts something right, or takes it back (`stance.ts`). */
  right: 64,
  back: 128,
  lack: 256,
  /** So much was taken. */
  taken: 4096,
  /** What was copied is of another page. */
  page: 512,
  breakingOff: 1024,
  /** All amounts times so much (`made-size.ts`). */
  all: 2048,
  /** It was planned so (`planned.ts`). */
  plan: 8192,
  /** What something is that has a name of several kinds (`kind-told.ts`). */
  saying: 16384,
  /** What a figure is for that is not of the recipe (`other-use.ts`). */
  otherUse: 32768,
  /** What others say of a share (`elsewise.ts`). */
  hearsay: 65536,
  /** A vessel. */
  pot: 131072,
  /** Words of which two or three stand together in what tells of another batch (`tellings.ts`): "my recipe was". */
  batchOf: 262144,
  wasOf: 524288,
  my: 1048576,
  fromBy: 2097152,
  /** A figure that is put right before the list it stands in (`right-ahead.ts`). */
  ahead: 4194304,
  /** There was less of something (`less-there.ts`). */
  less: 8388608,
  /** It tells of now or of another time (`stance.ts`), or of what is left. */
  time: 16777216,
  rest: 33554432,
  /** Something changes (`changes.ts`), or a part of it; "for it", "with me". */
  changes: 67108864,
  shared: 134217728,
  forWith: 268435456,
  /** What somebody meant to do. */
  meant: 536870912,
  /** It is said against what was said before. */
  insists: 1073741824,
} as const;

/** Every word in the plural as well. */
const andMany = (list: string): string => list.replace(/\S+/g, '$& $&s');

/** What a recipe is written on, and who may have made another one. */
export const papers =
  'recipe book card sheet leaflet video blog website page printout magazine calendar booklet instruction calc calculator plan app slip note handout chart';
/** "The batch before this": of an earlier one. */
export const batchBefore =
  '(?:(?:batch|loaf|soap|one|try|time|go|attempt|round|pot) before (?:this|that|it|last)|(?:two|three|four|a few|few|#) (?:batches|loaves|soaps|tries|pots|goes) (?:ago|back|before this)|…ago)(?: (?:one|batch|loaf|soap))?';

export const relations =
  'sister brother mother mum mom mam dad father aunt auntie uncle gran granny grandma grandmother nan neighbour neighbor friend colleague cousin teacher husband wife daughter son sis bro mama papa nana grandad grandpa grandfather hubby girlfriend boyfriend gf bf partner mate flatmate roommate housemate coworker niece nephew boss buddy';
/** By what a figure is known to be for something else than the pot, or of a soap called after its ingredient. */
export const uses = {
  purposes:
    'cheese frying fryer cooking baking cake cakes bread pancakes breakfast lunch dinner supper salad salads popcorn curry candle candles lotion balm balms hair lamp lamps dog dogs chickens birds furniture boots saddle bath massage yogurt yoghurt porridge pastry pie pies biscuits cookies roasting roast potatoes chips dumplings',
  called: 'one ones bar bars soap soaps loaf batch',
  ofAir: 'hygrometer humid humidity moisture battery damp fog rain cloud sunny',
  theirs: 'hers theirs',
  others: 'her his their cousin aunt uncle friend neighbour neighbor sister brother colleague she he',
  drinking: 'drunk drank drink drinking sipping sipped hiccups cheers',
  checking: 'checked check tested test calibrated calibrate verified compared',
  filling:
    'each take takes took hold holds held fit fits fill fills filled filling measured measuring volume capacity brim weighs weighed',
  waiting: 'still waiting waits untouched unopened spare sits stands',
} as const;
/** Acids by their ids that are sold by their strength. */
export const vinegars: ReadonlySet<string> = new Set(['vinegar', 'acetic-acid']);
/** By what a sentence says what something is. */
const saying =
  'is its thats which says said reads states lists label labelled labeled made ingredient ingredients contains only pure just all mean meant meaning means called being';
export const seasons =
  'spring summer autumn fall winter january february march april may june july august september october november december';

/** The words of each. */
const wordsOf: Partial<Readonly<Record<keyof typeof cue, string>>> = {
  told: `${andMany(papers)} planned theory target paper supposed written original comparison`,
  once: `${seasons} ignore forget disregard scrap never ago before last previous earlier old former other another different first used yesterdays started began starting new beginner beginners learning learned learnt back class classes course courses workshop workshops lesson lessons for`,
  others: `${andMany(relations)} her his their hers theirs he she they others people folk folks makers soapers`,
  later: 'next planned plan plans if later day',
  mine: 'ours about taking using doing making putting scale scales proper right correct final corrected true mine pot version new current what do make made take use bowl pan put took used weighed did done poured went weigh only had real actual fact this me like want prefer now today tonight yesterday reality really actually second third fourth 2nd 3rd 4th',
  numbered:
    'group groups batch no nr number team version rev revision ver v recipe loaf pot try go attempt round test trial experiment exp sample lot first second third fourth fifth 1st 2nd 3rd 4th 5th',
  right: 'cant cannot couldnt no not p ps scratch strike should make wait oh hang hold bad update early soon',
  back: 'make scratch strike only wait no',
  lack: 'none ran run out topped toped place made instead',
  taken:
    'scale scales only weighed real actual really took used fact pot now today new currently this had measured put poured went ended settled decided chose come came gone dropped cut moved down up reduced lowered raised upped use take',
  page: andMany(
    'page recipe batch one list card sheet column notebook book line soap bar side leaf table figure amount number',
  ),
  breakingOff:
    'hang hold wait sorry oops whoops woops no nope ah oh arg argh damn blast bother forget ignore scratch strike wrong',
  plan: 'going meant supposed planned intended gonna plan wanted hoped thought should would shouldve wouldve',
  all: 'everything all overall lot amounts figures weights numbers doubled tripled trebled halved quadrupled double twice triple half',
  saying,
  otherUse: Object.values(uses).join(' '),
  batchOf: 'bar bars one recipe batch version lye water soap loaf',
  wasOf: 'was were had used',
  my: 'my',
  fromBy: 'from of by',
  meant: 'planned meant wanted intended going',
  less: 'left remaining only just short empty all ran run running gave ended enough more that went gone got again afresh anew',
  ahead:
    'not instead rather should must ought meant supposed typo really actually means mean but read say says said wrote write typed where when if make put use take oops whoops woops sorry correction edit erratum wrong mistake mistyped',
  time: 'but plan meant intended hoped now today time instead end reality truth went changed reduced raised increased lowered cut corrected upped dropped bumped ended settled actually only really used once last usual usually normally otherwise previous previously earlier compared there original originally first formerly said says uses takes thinks reckons swears claims insists recommends would wrote told typed posted misread had was were ignore forget then before old yesterday recipe book card calculator calc sheet calls asks printed planned wanted supposed hers his theirs taken expected not never so left scale scales turned came comes down weighed weighs thought reckoned mentioned',
  rest: 'left remains remained there theres stuff scale scales turned came comes boiled went shrank shrunk melted cooked down weighed got',
  changes:
    'still wrote typed finished empty out left kept gone off no not without minus scratch strike instead place lieu none ran run became becomes turned turns rather should mean meant really actually dont didnt havent couldnt cant wont where sub subbed subbing forgot forget edit correction sorry oops whoops now where wherever everywhere anywhere',
  insists: 'yes yeah actually really fact turned end all indeed sorry oops whoops wait label checked found kept now',
  shared:
    'is was are were has have been be now became become becomes gets got went goes turned instead place lieu for sub subbed subbing',
  forWith: 'for with in',
  hearsay: 'say says told heard read more most max maximum over above beyond under below past',
};

/** Beginnings of words that put something right. */
const begins = 'edit correction erratum oops whoops woops sorry meant typo mistyped misread mistake finger'.split(' ');

const words: ReadonlyMap<string, number> = bitsOf(wordsOf, cue);

/** Beginnings of words that change something, and of those that may exchange a part of it. */
const changing = 'skip remov omit delet ditch scrap drop cancel replac swap substitut exchang chang switch trad'.split(
  ' ',
);

/** What a word by itself may say. */
export function cuesOf(word: string): number {
  const isChange = changing.some((begin) => word.startsWith(begin));
  const listed = (words.get(word) ?? 0) | (isChange ? cue.changes | cue.shared : 0);
  if (word.startsWith('hm')) return listed | cue.breakingOff;
  return begins.some((begin) => word.startsWith(begin)) ? listed | cue.right | cue.back : listed;
}
