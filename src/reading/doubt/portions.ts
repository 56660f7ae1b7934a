/**
 * A part or a multiple of what was listed, where no rule heard it: "so a third of that", "I upped the whole sheet by a
 * half", "the coconut went in twofold"; and a list of one mould, bar or kilo beside lye for all of them. What is cut,
 * cured, paid, told twice or stirred for half an hour is none.
 */
import type { PutRight } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { relations } from '../words/cue-words.ts';
import { isAny, isFat } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { weighedAt, weighedThings } from '../words/weighed.ts';
import { letterOf } from './lettered.ts';
import { isSmallTalk } from './small-talk.ts';

const any = (words: string): string => `(?:${words.trim().replace(/\s+/g, '|')})`;
const softly = `(?:${any('only just exactly precisely about roughly simply really actually then now so in fact good a an one the over bit little')} )*`;
const number = `(?:[BQ…]|${any('two three four five six seven eight nine ten')})(?: and a (?:half|third|quarter))?`;
const portion = `(?:half|halves|thirds?|quarters?|fifths?|tenths?|eighths?|sixths?|double|twice|thrice|triple|treble|quadruple|[a-z]+fold|${number} (?:times|x|×)|[x×] (?:[BQ…]|two|three|four)|Q|P(?= (?:of|hers|his|the size)\\b)|1 / [2-9])`;
const sheet = any(
  'recipe card list sheet page batch lot amounts? quantit(?:y|ies) figures? weights? numbers? rows? lines? items? ingredients? entries formula measures? original',
);
const owner = any(
  'the this that these those my our her his their its all each every both any single full whole entire',
);
const fats = any('oils? fats? butters?');
/** All of the list, or something in it. */
const all = `(?:everything|every ?thing|it all|all that|all this|(?:all|each|every one) of (?:it|that|them|these|those|this)|(?:${owner} )+(?:[a-z]+ )?${sheet}|(?:every|each) (?:single )?(?:one|thing)|the (?:whole )?(?:lot|thing)|all ${sheet})\\b`;
const some = `(?:(?:${owner} |of )*(?:(?:[a-z]+ |[B#…] )?${fats}|F|L|lye|caustic)\\b(?! (?:[a-z]+ )?(?:jug|jar|tub|bottle|bag|tin|cost|price)))`;
const pronoun = '(?:it|that|this|them|those|these)\\b';
const changed = any(
  'halved doubled tripled trebled quadrupled quartered multiplied scaled upscaled downscaled upsized downsized enlarged quintupled',
);
const does = any(
  'made make making makes did do doing need needed needing want wanted wanting took take taking used use using weighed weigh weighing put cooked cook mixed mix mixing poured fill filled filling melted measured went tipped reckoned cut has have had holds contains',
);
const end =
  '(?= ?(?:$|[-,.;:!()–—]|and\\b|so\\b|because\\b|as\\b(?! much| many)|since\\b|for\\b|today\\b|this\\b|in\\b|here\\b|now\\b))';

/** Said behind a list, by which what is in the pot is another size of it. */
const size: readonly string[] = [
  // "a quarter of the card", "twice the lye", "1.6 times both"
  `(?<!\\w)${portion} (?:of |as much of |as much |the size of |over )?(?:(?!the weight\\b)${all}|both\\b|each\\b(?! other)|(?:lines?|rows?|amounts?|hers|his|theirs)\\b)`,
  `\\b${does} (?:in )?${softly}${portion} (?:of |as much |as much of )?${some}`,
  `\\b${does} (?:in )?${softly}${portion} (?:of )?${pronoun}`,
  // "made ten percent more"
  `\\b${does} ${softly}(?:${portion}|P) (?:more|less|extra)\\b(?! (?:W|F|L|X|(?:of )?(?:the )?(?:water|lye)))`,
  // "I need only half", "made x2", "the coconut went in twofold", "of the lye twice as much"
  `\\b(?:i|we|ive|im|weve|were) (?:[a-z]+ )?${does} ${softly}(?!thirds|halves|quarters)${portion} ?(?=$|[,.;!)–—]|- )`,
  `^(?:so )?${does} ${softly}[x×] (?:B|Q|…)`,
  `\\b${some} (?:[a-z]+ ){0,3}(?:at|in|with|by|to)? ?${softly}(?:twice|double|${portion}) (?:as much(?! as\\b)|the (?:amount|weight|quantity)|that|of that)\\b`,
  `\\b${portion} (?:as much|the (?:amount|weight|quantity)) (?:of )?${some}(?! as\\b)`,
  // "so a third", "which is half of that"
  `\\b(?:so|thus|therefore|hence|thats|that is|which is|meaning) ${softly}${portion}(?: (?:of )?${pronoun}| (?:size|batch|recipe|amounts?))?${end}`,
  // "doubled the card", "the oils were halved"
  `\\b${changed} (?:up |down |on )?(?:[a-z]+ ){0,2}?(?:${all}|${some})`,
  `\\b(?:${all}|${some}) (?:(?:was|were|is|are|got|get|has|have|been|all|then|just|simply|to be|taken|comes?|came|went|goes|in|put|i|we|ive|weve|had) )*(?:${changed}\\b|(?!thirds|halves|quarters)${portion}${end})`,
  `\\b(?:i|we|ive|weve|and|then|so|but) (?:have |had |then |just |simply |also )*${changed} ${pronoun}${end}`,
  `\\b(?:multipl(?:y|ied)|divided?|scaled|upscaled|downscaled|enlarged|shrunk|upped|reduced|increased|raised|lowered|cut|brought|took) (?:${all}|${pronoun}|(?:${owner} |of )*(?:${fats}|F))? ?(?:up |down |back )*(?:by|to|with|times) ${softly}(?:${portion}|${number}|P)(?! [FLWX])`,
  `\\b${all} (?:by|in) (?:half|two|three|four|B|Q)${end}`,
  `^for (?:me|us|mine|my batch) [x×] (?:B|Q|…)`,
  // "a tenth less of everything", "added ten percent to every line"
  `\\b(?:${portion}|P|B) (?:less|more|extra)(?: of)? (?:${all}|both\\b|each\\b)|\\badded ${softly}(?:${portion}|P) to (?:${all}|${some})`,
  `\\b(?:made|make|making|did|do|doing|used?|took|want|need) (?:only |just )?P of (?:it|that|this|the)\\b`,
  `\\b(?:mines?|its|this is|that is|thats|mine (?:is|was)|my (?:batch|pot) (?:is|was)) ${softly}${changed}${end}`,
  `\\b(?:mine|my (?:batch|pot|version|soap)|this(?: one| batch)?|in (?:the|my) pot) (?:is|was|are) ${softly}(?:${portion}(?= (?:of|hers|his|theirs)\\b)|${all} times) `,
  `\\b(?:shrank|shrunk|upped|reduced|enlarged) (?:${all}|${pronoun})`,
  `\\b${some} (?:times|x|×) ${number}(?! @)`,
  `\\btimes (?:that|this|as much|of (?:it|that)|two|three|four|five|one and)\\b`,
  // "half quantities", "a double batch", "one and a half recipes"
  `\\b(?:half|double|triple|treble|quarter)(?: |-| - )(?:of )?(?:a )?(?:batch(?:es)?|recipes?|quantit(?:y|ies)|amounts|lot|load|(?<!^\\( half )size)\\b`,
  `\\b${number} (?:batches|lots|loads|recipes|portions|rounds|helpings) (?:of (?:it|this|that|the above)\\b(?! in (?:the|there))|in (?:one|a single|the same)|at (?:once|one go)|together|worth)\\b`,
  `\\b(?:batch|recipe|lot|card|list) and a half\\b|\\b(?:one|…|#) and a half (?:batches|recipes|lots|cards|lists)\\b|\\bhalf as much again\\b|\\bthe same again\\b`,
];
/** What somebody else does, another day, or nobody yet; or what goes by halves beside the list. */
const not = new RegExp(
  `\\?|\\b(?:at least|if|would|could|should|might|may|shall|can|next|last (?:time|batch|week|month|year|spring|summer|autumn|winter|one)|previous(?:ly)?|(?<!\\bat )once|ago|usually|normally|always|never|sometimes|often|usual|in (?:spring|summer|autumn|winter|fall)|january|february|march|april|june|july|august|september|october|november|december|christmas|nearly|almost|instead of|(?:half|double|twice|times|Q) the (?:weight|size) of|(?:lot|batch|one|recipe|loaf|today|made(?: it)?|is|are) as (?:written|it stands|listed)|poured (?:[a-z]+ )?(?:half|a third|some|part) of (?:it|this|that|them) (?:in|into|in to) (?:the|a|my|another|one)|not|didnt|dont|cannot|cant|without|whether|wanted to|thought|tempted|he|she|they|per cent|checked|double (?:-|checked?|boiler|period|page|sided)|(?:weigh|check|measur|count|siev|filter|tar)[a-z]* (?:[a-zFLWX]+ ){0,4}twice|${any(relations)} (?:[a-z]+ )?(?:makes|made|does|did|takes|took|uses|used)|price[ds]?|costs?|cure[ds]?|curing|trace|traced|thick|batter|paste|dilut[a-z]+|hours?|minutes?|weeks?|days?|months?|scents?|fragrance|perfume|essential|colou?r(?:ed)?|mica|clay|swirl|bottles?|bag|packets?|tubs?|jars?|space|room|read|version|edition|chapter|counted|looked|went over|strained|rendered|washed|cleaned|melted twice|sold|sell|gave|give away|split|divided (?:it|the [a-z]+|that) (?:in|into|up|between|among)|rest|remainder|remaining|other (?:half|third|part)|first half|second half|pieces?|slices?|already (?:doubled|halved|scaled))\\b`,
);

interface Made {
  readonly size: readonly RegExp[];
}
let made: Made | null = null;

/** Without one of these a sentence says nothing of a size. */
const cues =
  /\b(?:hal(?:f|ves|ved)|thirds?|quarter(?:s|ed)?|fifths?|tenths?|eighths?|sixths?|double[sd]?|twice|thrice|tripled?|trebled?|quadrupled?|quintupled|[a-z]+fold|times|multiplied|scaled|upscaled|downscaled|upsized|downsized|enlarged|shrunk|upped|reduced|increased|raised|lowered|divided?|multiply|percent|less|more|batches|lots|loads|recipes|portions|again|x)\b|×|%|\/ ?[2-9]/;

/** "Two thirds", "twice", "1.5". */
const isPortion = (token: Token): boolean =>
  token.t === 'quantity' &&
  (/^(?:twice|double|thrice)\b/i.test(token.quantity.text) ||
    (token.quantity.dim === 'bare' &&
      !token.quantity.text.includes('%') &&
      !Number.isInteger(token.quantity.value) &&
      token.quantity.value >= least));
const least = 0.1;
/** What is a smaller share is one of superfat, or of scent. */
const leastShare = 0.1;

/** The list is of one, and one is asked about. */
const asListed =
  /\b(?:single (?:batch|lot|one|loaf|recipe)\b(?! (?:is|was) all\b)|(?:one|each) (?:batch|lot)|for each|own pot|a year|every (?:winter|spring|summer|autumn|fall|week|month|year|day))\b|\bsingle :/;

/** Figures in a sentence that tells the amounts anew. */
const ownList = 2;

/** "Three moulds." */
const isCount = (token: Token): boolean =>
  token.t === 'quantity' && token.quantity.dim === 'bare' && token.quantity.value < mostMoulds;
const mostMoulds = 13;
const weightsIn = (tokens: readonly Token[], { from, to }: Pick<Sentence, 'from' | 'to'>): number =>
  tokens.slice(from, to).filter((token) => token.t === 'quantity' && !isPortion(token) && !isCount(token)).length;

/** "… and I made ten percent more", behind the rows of its own sentence. */
const sized = /\b(?:made|make|making|did|doing|halved|doubled|tripled)\b/;

/** The token behind the last weight of its rows. */
function behindRows(tokens: readonly Token[], { from, to }: Sentence): number {
  for (let k = to - 1; k >= from; k--) if (isFat(tokens[k]) && weighedAt(tokens, k)) return k + 1;
  return from;
}

/** The words that tell so; null where none do. */
export function portionUnheard(cut: Cut, back: readonly PutRight[]): string | null {
  const { tokens, prims } = cut;
  const sentences = sentencesOf(cut);
  const mayTell = sentences.map(
    ({ text, figures, from, to }) => cues.test(text) || (figures > 0 && isAny(tokens, from, to, isPortion)),
  );
  if (!mayTell.includes(true)) return null;
  if (sentences.some(({ text }) => asListed.test(text))) return null;
  const weighed = weighedThings(tokens);
  const isRow = (sentence: Sentence): boolean =>
    tokens.slice(sentence.from, sentence.to).some((token, k) => isFat(token) && weighedAt(tokens, sentence.from + k));
  const rows = sentences.map(isRow);
  for (const [k, sentence] of sentences.entries()) {
    if (!mayTell[k] || isSmallTalk(tokens, sentence)) continue;
    // the amounts stand behind it: they are those of this size
    const from = rows[k] ? behindRows(tokens, sentence) : sentence.from;
    if (rows[k] && !sized.test(sentence.text.slice(sentence.placeOf(from)))) continue;
    if (
      !rows.slice(0, k + 1).includes(true) ||
      rows.slice(k + 1).includes(true) ||
      weightsIn(tokens, { from, to: sentence.to }) >= ownList
    )
      continue;
    if (back.some(({ from, to }) => from < sentence.to && to > sentence.from)) continue;
    const all = sentence.text.replace(/[@#]/g, (sign, place: number) => {
      const token = tokens[sentence.tokenAt(place)];
      if (sign === '@') return letterOf(token, weighed);
      if (token?.t !== 'quantity') return sign;
      const { dim } = token.quantity;
      return dim === 'percent'
        ? token.quantity.value >= leastShare
          ? 'P'
          : sign
        : isPortion(token) && !(rows[k] && /^\d/.test(token.quantity.text))
          ? 'Q'
          : dim === 'bare'
            ? 'B'
            : sign;
    });
    // "the card is 600 g lard and 240 g coconut, and I made ten percent more"
    const text = all.slice(0, sentence.placeOf(from)).replace(/./g, '_') + all.slice(sentence.placeOf(from));
    if (not.test(text.replace(/\bdont (?:have|own|need)\b/g, ''))) continue;
    // "I was making half. I halved the oils …"
    if (/\b(?:was|were) (?:making|doing|mixing)\b/.test(text) && back.length > 0) continue;
    made ??= { size: size.map((one) => new RegExp(one)) };
    for (const tells of made.size) {
      const found = tells.exec(text);
      if (!found) continue;
      const [first, last] = [found.index, found.index + found[0].trimEnd().length - 1].map(
        (place) => tokens[sentence.tokenAt(place)],
      );
      if (first && last) return rawText(prims, first.from, last.to);
    }
  }
  return null;
}
