/** What rules look for in a post, a bit each, and the words that give it. */
export const signal = {
  ratio: 1,
  percent: 2,
  temperature: 4,
  /** Less than one, in figures or words. */
  part: 8,
  negative: 16,
  equals: 32,
  /** Roles. */
  price: 64,
  /** A solution mixed before. */
  stock: 128,
  equal: 256,
  bars: 512,
  mould: 1024,
  /** Words. */
  every: 2048,
  following: 4096,
  using: 8192,
  thinning: 16384,
  store: 32768,
  for: 65536,
  selling: 131072,
  parting: 262144,
  including: 524288,
  ofIt: 1048576,
  /** A soap that is cooked: by what is said of it, or how it looks. */
  cooking: 4194304,
  /** Words of buying and keeping, and those that are so only beside others. */
  buying: 8388608,
  keeping: 16777216,
  /** Words without which no sentence of a post can take anything back. */
  turning: 33554432,
  both: 67108864,
  /** Words, or beginnings of them, of which one stands in each sentence that takes anything back or says when it was so. */
  retelling: 134217728,
  /** Words of which one stands in each sentence that begins to tell of another batch. */
  telling: -2147483648,
  /** The name of a unit, whatever it measures. */
  unit: 268435456,
  /** Of a piece of soap that is tried in water. */
  trying: 536870912,
  /** Words that may tell that a cook is over. */
  cooked: 1073741824,
  /** "How much". */
  asking: 2097152,
} as const;

/** The words of each. */
const wordsOf: Partial<Readonly<Record<keyof typeof signal, string>>> = {
  part: 'half third quarter fifth sixth eighth tenth',
  every: 'per every each',
  following: 'after afterwards once when post past following',
  using: 'ended finished wound ending came used using use uses took take takes taking need needed needs weighed',
  cooked:
    'vaseline potato potatoes mash translucent glassy glossy shiny waxy satiny zap zaps zapping zapped done ready finished neutral gekocht fertig verseift cuit cuite cocido hecho cotto cotta gaar klaar gotowe ugotowane off tongue',
  trying: 'test tested testing dissolve dissolved dissolving diluted dilute sample tried',
  thinning: 'paste sample samples dilute diluted dilutes diluting thin thinned thinning',
  store: 'cupboard pantry larder cellar storeroom stash fridge freezer jar tub tin bag bottle bucket',
  buying:
    'bought purchased purchase purchases ordered inventory stocktake unopened delivery delivered shopping cupboard pantry larder cellar storeroom stash supplies stockpile leftovers haul',
  keeping: 'stock store shelf shelves home hand over have got',
  for: 'for',
  asking: 'how',
  selling: 'sell sells sold selling buy bought pay paid charge charged',
  parting: 'split divide divided cut separate separated slice sliced',
  including: 'includes included including incl contains thereof',
  cooking:
    'heat lid flame cook cooks cooked cooking gekocht kochen cuire cuit cuite cuisson cocido cotto schongarer crockpot crock slowcooker cooker hp zap zaps zapped zapping tongue gel gelled oven applesauce vaseline potato potatoes mash translucent glassy',
  ofIt: 'it that them those which this left remained',
  turning:
    'cant couldnt nah naw early soon leaving sticking nil zero nothing saving keeping holding plan planned wanted intended hoped threw thrown chucked binned bin rancid spoilt finished gone empty missing yes label kept times double twice triple doubled tripled trebled halved quadrupled everything hang hold ah oh hm hmm forget ignore wrong half third thirds quarter quarters dont wont mine those where wherever everywhere anywhere still im am none ran run became becomes turned turns only topped made uses takes edit edited correction corrected erratum oops whoops woops sorry scratch strike mean meant wait typo mistyped misread mistake update updated instead place rather replace replaced replacing swap swapped swapping substitute substituted sub subbed switch switched switching exchange exchanged exchanging trade traded trading change changed old previous not no nope never didnt minus without out skip skipped remove removed omit omitted delete deleted drop dropped ditch ditched forgot scrap scrapped says say thinks reckons swears claims insists recommends would now today time end actually really used once originally first formerly previously said wrote told typed posted had was before until yesterday last earlier compared there normally usually otherwise thought reckoned mentioned started scale',
  both: 'both',
  telling:
    'back started began starting new beginner beginners learning learned learnt class classes course courses workshop workshops lesson lessons years months weeks yesterdays ignore forget disregard scrap never ago before bar bars if original originally no nos recipe recipes book books card sheet leaflet video blog website page printout magazine calendar booklet instruction instructions calc calculator plan planned app slip note notes handout chart theory target supposed wanted meant intended going one last previous earlier old former other first next later day used her hers his theirs their sister sisters brother brothers mother mothers mum mums mom moms mam dad dads father fathers aunt aunts auntie aunties uncle uncles gran grans granny grannys grandma grandmas grandmother grandmothers nan nans neighbour neighbours neighbor neighbors friend friends colleague cousin teacher husband wife daughter son sis bro mama papa nana grandad grandpa grandfather hubby girlfriend boyfriend gf bf partner mate mates flatmate flatmates roommate roommates housemate coworker niece nephew boss buddy he she they others people folk folks makers soapers comparison put puts did thinks reckons group groups batch nr number team version rev revision ver v loaf pot try go attempt round test trial experiment exp sample lot second third fourth fifth 1st 2nd 3rd 4th 5th spring summer autumn fall winter january february march april may june july august september october november december',
  retelling:
    'nah naw early soon leaving sticking nil zero nothing saving keeping holding plan intended hoped meant threw thrown chucked binned bin rancid spoilt finished empty missing yes label checked times everything double twice triple doubled tripled trebled halved quadrupled all amounts figures weights numbers lot ah hm hmm wrong damn blast bother arg argh nope half third thirds quarter quarters those these wont mine her still im am none ran run became becomes turned turns only topped toped made uses takes no not now out left kept gone off without minus instead place lieu rather sub subbed subbing should really actually dont didnt havent couldnt cant where wherever everywhere anywhere for today time end reality truth went raised increased lowered cut corrected upped bumped ended settled use used using take took once last usual usually normally otherwise previous previously earlier compared there original originally first formerly said says thinks reckons swears claims insists recommends would wrote told typed posted had was were ignore then before old yesterday recipe book card calculator calc sheet calls asks printed planned wanted supposed p oh hers his theirs taken expected so scale scales weighs weighed came comes down thought reckoned mentioned',
};
/** Beginnings of words that give the last one, too. */
const retold =
  'ps edit correction erratum oops whoops woops sorry scratch strike mean make wait hang hold typo mistyped misread bad mistake finger update never skip remov omit delet ditch scrap drop forget forgot reduced replac swap substitut exchang chang cancel switch trad'.split(
    ' ',
  );

const words: ReadonlyMap<string, number> = bitsOf(wordsOf, signal);

/** What a word is listed for. */
export const listed = (word: string): number => words.get(word) ?? 0;

/** What a word by itself gives. */
export const ofWord = (word: string): number =>
  listed(word) | (retold.some((begin) => word.startsWith(begin)) ? signal.retelling : 0);

/** Every word with the bits of all lists that it is in. */
export function bitsOf<Name extends string>(
  lists: Partial<Readonly<Record<Name, string>>>,
  bit: Readonly<Record<Name, number>>,
): ReadonlyMap<string, number> {
  const bits = new Map<string, number>();
  for (const name of Object.keys(lists) as Name[])
    for (const word of lists[name]?.split(' ') ?? []) bits.set(word, (bits.get(word) ?? 0) | bit[name]);
  return bits;
}
