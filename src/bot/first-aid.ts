/**
 * Whether a text tells of an accident with lye or raw soap: in an eye, on the skin, swallowed, breathed in.
 *
 * Words become letters of what they mean, in four languages and with slips of the fingers, and short patterns over
 * those letters tell an accident from a recipe ("a splash of castor oil"), an instruction ("do not breathe the fumes",
 * "if it gets on your skin, rinse") and a bar that zaps. In doubt first aid: it costs a moment. All looks are bounded,
 * so that time is linear in the length of the text.
 */

import { edits } from '../commands/nearest.ts';
import type { Harm } from '../commands/safety.ts';

const words: Readonly<Record<string, string>> = {
  // A alkali; S soap, which only bites when it is raw
  A: 'lye naoh koh caustic hydroxide batter chemical alkali lauge natronlauge kalilauge seifenlauge atznatron soude lessive sosa lejia',
  S: 'soap soaps soaping bar bars seife savon jabon sapone',
  // where it went: E eye, P part of the body, T airways, Y what is worn, G the room
  E: 'eye eyes eys eyse eyeball eyeballs eyelid eyelids lens lenses contacts auge augen oeil loeil yeux ojo ojos occhi occhio',
  P: 'hand hands hnd hnds hadn finger fingers fingertip fingertips fingernail nail thumb thumbs knuckles arm arms forearm forearms elbow wrist wrists shoulder leg legs foot feet toe toes knee knees shin thigh thighs skin face forehead cheek cheeks chin lip lips mouth tongue neck belly stomach lap front ear ears nose head scalp haut bein gesicht fuss mund main mains peau bras visage bouche mano manos piel cara brazo boca jambe pierna pelle viso',
  T: 'throat lung lungs chest hals lunge gorge poumons garganta pulmones',
  Y: 'glove gloves shoe shoes sleeve sleeves sock socks boot boots shirt jeans trousers pants apron',
  G: 'floor bench counter table kitchen stove sink carpet worktop boden',
  W: 'me myself him himself herself us them themselves mir mich',
  O: 'my his her their our both bare barefoot wet mein meine meiner meinem meinen die der den dem seine la les ma mes mon sa ses el los mi mis su sus il',
  y: 'your yours',
  t: 'the a an one left right',
  z: 'it some this that something',
  i: 'in into ins im dans en negli nell',
  o: 'on onto over down auf uber sur sobre sulla',
  f: 'for con with wear wearing protection mask goggles fur pour para per',
  // whom
  C: 'son sons daughter daughters boy boys girl girls child children kid kids baby toddler toddlers grandma grandpa grandson granddaughter grandmother grandfather mum mom dad husband wife partner friend neighbor neighbour someone somebody roommate dog dogs puppy cat cats kitten pet hen chicken bird sohn tochter kind hund katze fils fille enfant chien hijo hija nino nina perro gato figlio figlia',
  b: 'touched bit bitten stepped crawled grabbed played chewing',
  // what happened: R has happened, s may yet; the same for H and h (with u, a burn), D and d
  R: 'splashed splattered spattered sprayed squirted spurted spilled spilt spat spit flicked splat faceful eyeful gespritzt spritzte spritzer verschuttet eclaboussure eclabousse eclaboussee gicle salpico salpicado salpicadura salpicaduras schizzata schizzato',
  s: 'splash splashes splashing splatter spill spills spilling',
  r: 'got gets get getting went ran came hit fell flew landed jumped knocked tipped touching handling dripped poured dropped stuck rubbed leaked soaked bekommen gekommen gelaufen recu tombe coule cayo',
  H: 'burned burnt burns burning burnin stings stinging stung blistered blistering blisters peeling bleeding tingling tingle watering brennt verbrannt veratzt brule brulee queme quemo quemado bruciato',
  h: 'sting hurt hurts hurting sore blister itch red raw numb slippery irritated swollen crying',
  u: 'burn verbrennung brulure quemadura ustione',
  D: 'drank drunk swallowed swallows swallowing ingested ingesting gulped sipped sip mouthful getrunken verschluckt geschluckt avale avalee bu trago tragado bebio bebido ingerito bevuto',
  d: 'swallow drink ingest',
  L: 'ate eaten licked licks licking lapped chewed tasted eats gefressen gegessen geleckt leche mange comio lamio',
  B: 'breathed breathing inhaled inhaling sniffed lungful eingeatmet respire respirado inhalado inalato',
  V: 'fumes fume vapour vapor vapours vapors steam mist dust gas dampfe dampf laugendampfe staub vapeurs vapores vapori',
  K: 'cough coughing coughed choking choked dizzy wheezing wheeze sick nauseous rash headache faint fainted husten huste asthma toux tos cantbreathe cantsee',
  v: 'vinegar rinse rinsing flush wash washing essig vinaigre vinagre',
  // what makes it none
  N: 'dont never avoid avoids avoiding without nothing no not none prevent prevents protect protects careful keep keeps didnt hasnt wont nicht keine kein ne pas evitar evite non',
  j: 'harsh hard gentle mild easy bad good kind soft nice',
  M: 'will would might may gonna gunna does going shall want wants',
  F: 'if case unless falls wenn si',
  Q: 'what how who should was que comment cosa wer',
  // q: what is told by a phrase
  q: 'palm palms aid firstaid accident everywhere breathe see fire',
  X: 'poisoned poisoning vergiftet intoxicado',
  '-': 'and but so then because und aber et mais y pero',
};

const letterOf = new Map(
  Object.entries(words).flatMap(([letter, all]) => all.split(' ').map((word) => [word, letter])),
);

/** Words worth recognising through a slip of the fingers, and real words that are no such slip. */
const slippable =
  'splashed splash splattered swallowed spilled inhaled breathed breathing burning coughing fumes caustic hydroxide'.split(
    ' ',
  );
const otherwise = new Set(
  'slashed flashed spelled smashed stashed plashed splayed breaded breather turning buying following wallowed bathing boiling brewing breaking fumed famous spoiled'.split(
    ' ',
  ),
);

function slip(word: string): string | null {
  if (word.length < 5 || otherwise.has(word)) return null;
  const allowed = word.length < 8 ? 1 : 2;
  const meant = slippable.find(
    (known) => known[0] === word[0] && Math.abs(known.length - word.length) <= allowed && edits(known, word) <= allowed,
  );
  return meant === undefined ? null : (letterOf.get(meant) ?? null);
}

/** Turns of phrase that are one word in meaning. */
const phrases: readonly (readonly [RegExp, string])[] = [
  [/\b(?:can ?not|cant) (breathe|see)(?= ?(?:$|[.,!?;\n]|properly|anything|well|now|and|lye))/g, 'cant$1'],
  [/\bcant stop (\w+ing)/g, '$1'],
  [/\b(?:not sure|dont know|do not know|dont see|not wearing|without (?:any )?(?:gloves|goggles))/g, 'x'],
  [/\bkeeps? (\w+ing)\b/g, '$1'],
  [/\b(?:first ?aid|(?:lye|caustic|soap) accident)\b/g, 'poisoned'],
  [/\b(?:raw|fresh|hot|uncured) (?:\w+ )?soap/g, 'batter'],
  [/\b(?:sick of|out of my hands|hands?[ -]on|(?:by|on|at|in|first|second) hand)\b/g, 'x'],
  [/\b(?:hand|face|foot|skin|body)[ -](?:soap|bar|cream|wash|stir)\w*/g, 'x'],
  [/\bmy palms?\b(?! (?:oil|kernel))/g, 'my hand'],
  [/\bskin off\b/g, 'burned'],
  [/\bon fire\b/g, 'burning'],
  [/\boh no\b/g, 'x'],
  [/\bsoda caustica\b/g, 'lye'],
  [/\b(?:year|month|yr)s? old\b/g, 'child'],
  [/\beverywhere\b/g, 'over me'],
];

/** Lower case without accents, quotes and invisible signs; plain text is spared the slow part. */
function foldedOf(text: string): string {
  const lower = text.toLowerCase();
  const plain = /^[\0-\x7f]*$/.test(lower)
    ? lower
    : lower
        .replace(/œ/g, 'oe')
        .replace(/ß/g, 'ss')
        .normalize('NFKD')
        .replace(/[\p{M}\p{Cf}’‘´]/gu, '');
  return plain.replace(/['`]/g, '').replace(/[^\S\n]+/g, ' ');
}

function inPhrases(folded: string): string {
  let text = folded;
  for (const [phrase, meaning] of phrases) text = text.replace(phrase, meaning);
  return text;
}

/** One letter a word: of its meaning, `x` for any other, `,` and `.` for what ends a clause or a sentence. */
function lettersOf(folded: string): string {
  let letters = '';
  for (const [token] of folded.matchAll(/[a-z0-9\u0080-\uffff]+|[.!?;:\n|,]/g)) {
    const first = token.charCodeAt(0);
    if (token === ',') letters += ',';
    else if (first < 48 || first === 58 || first === 59 || first === 63 || first === 124) letters += '.';
    // amounts stand between words without parting them
    else if (!/^(?:\d|(?:g|kg|oz|ml|lb)$)/.test(token)) letters += letterOf.get(token) ?? slip(token) ?? 'x';
  }
  return letters;
}

/** A part of the own (or somebody's) body, with one word between: "my left hand". */
const part = 'O{1,2}[xt]?[PE]';

type Told = Harm | 'any';

/** In the order in which the worse is looked for first. */
const accidents: Readonly<Record<Told, readonly RegExp[]>> = {
  swallowed: [
    /D[^.,-]{0,8}[AS]/g,
    /Dz[^.]{0,10}A/g,
    /[AS][^.,]{0,4}D/g,
    /dx{0,2}A/g,
    /C[^.]{0,4}D[^.]{0,8}A/g,
    /C[^.,]{0,4}b[^.,]{0,5}[AS]/g,
    /C[^.,]{0,3}ri[tO]?A/g,
    /L[^.,-]{0,2}A/g,
    /C[^.]{0,6}L[^.,]{0,6}[AS]/g,
    /C[^.]{0,6}[AS][^.,]{0,6}L/g,
  ],
  eyes: [
    /[ARrs][^.N]{0,8}i[Ot]*x?[Ot]?E/g,
    /S[^.N]{0,8}iO[xt]?E/g,
    /(?:O|^|[.,])Ex?[Hh]/g,
    /R[^.N]{0,6}OE/g,
    /A\W{1,6}E(?=\W|$)/g,
    /Q[^.]{0,4}v[^.]{0,4}[EP]/g,
  ],
  inhaled: [
    /B[^.,N]{0,4}[VA]/g,
    /[VA][^.,]{0,3}B/g,
    /[VA][^.]{0,10}K/g,
    /K[^.]{0,8}[VA]/g,
    /[VA][^.]{0,8}T[^.]{0,3}[Hhu]/g,
    /T[^.]{0,3}[Hhu][^.]{0,8}[VA]/g,
    new RegExp(`${part}[^.]{0,2}[Hhu][^.]{0,8}V`, 'g'),
    /[AV][^.,Nf]{0,6}OT/g,
    /VrW/g,
  ],
  skin: [
    new RegExp(`A[^.,jNf]{0,8}${part}`, 'g'),
    new RegExp(`(?<!f)${part}[^.,jNf]{0,8}A`, 'g'),
    new RegExp(`R[^.N]{0,8}[oi]${part}`, 'g'),
    new RegExp(`[AS][^.N]{0,6}r[^.N]{0,6}[oi]${part}`, 'g'),
    /A[^.,jNf]{0,6}O+x?Y/g,
    /[rb][^.N]{0,4}A[^.N]{0,6}[Hh]/g,
    /A[oi]P(?!H)/g,
    /H[Ot]{1,2}x?P/g,
    /PHA/g,
    /[Hu]oO?P/g,
    /AH(?:$|[.,])/g,
    /LS/g,
    /b[^.,N]{0,3}O[^.,]{0,2}A/g,
    new RegExp(`u[^.]?[oi]?${part}`, 'g'),
    /(?:O|^|[.,-])[xt]?[PE][^.,]{0,2}[Hhu][^.]{0,8}[AS]/g,
    /O[xt]?P[xO]?H/g,
    /RP/g,
    /A[oi]?[PE](?:$|[.,])/g,
    /A[^.]{0,12}P[xO]h/g,
    /Q[^.]{0,6}A[^.f]{0,6}[PE]/g,
    /Q[^.]{0,6}F[^.]{0,8}[PE]/g,
    new RegExp(`[AS][^.]{0,12}${part}[^.]{0,2}[Hh]`, 'g'),
    /P[^.]{0,3}A[^.]{0,2}H/g,
    /A[^.N]{0,8}oW/g,
    /[RH]W/g,
    /[Rs][^.,-]{0,3}A/g,
    /A[^.,M]{0,2}R/g,
    /Au(?!P)/g,
  ],
  any: [/X/g, /C[^.]{0,3}[Hh][^.]{0,4}A/g],
};

/** A warning or a wish before it in its clause, or a condition without a question: no accident. */
function isTold(letters: string, from: number, to: number): boolean {
  const before = letters.slice(Math.max(0, from - 40), from);
  const clause = before.slice(Math.max(before.lastIndexOf('.'), before.lastIndexOf(','), before.lastIndexOf('-')) + 1);
  const here = letters.slice(from, to);
  if (/N.{0,6}$/.test(clause) || /N/.test(here)) return false;
  // "will it leave lye on my skin", "does lye burn": asked of what may be
  if (/M[tz]?x?$/.test(clause) || /^.?M/.test(here)) return false;
  const sentence = before.slice(before.lastIndexOf('.') + 1);
  return !/F/.test(sentence) || /Q/.test(sentence) || /O/.test(here);
}

/** In a message that is no recipe, alkali and a body in one breath are enough, in whatever words. */
const together = /A[^.]{0,12}[EPTKDB]|[EPTKDB][^.]{0,12}A/;

/** A body, or what happens to one: without a word of it there is nothing to look for. */
const bodily = /[qEPTYWCbHhuDdLBVKXRs]/;

/** What a text tells of; `any` where it does not say how lye hurt; null where it tells of no accident. */
export function accidentIn(text: string): Told | null {
  const folded = foldedOf(text);
  if (!bodily.test(lettersOf(folded))) return null;
  const letters = lettersOf(inPhrases(folded));
  for (const told of Object.keys(accidents) as Told[]) {
    for (const pattern of accidents[told]) {
      for (const { 0: found, index } of letters.matchAll(pattern)) {
        if (isTold(letters, index, index + found.length)) return told;
      }
    }
  }
  const isRecipe = (text.match(/\d+/g) ?? []).length > 1;
  const isNear = (sentence: string): boolean => together.test(sentence) && !/[NMjfFvy]/.test(sentence);
  return !isRecipe && letters.split('.').some(isNear) ? 'any' : null;
}
