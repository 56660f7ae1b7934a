/** Notations of laboratories, kitchens and cards, written as a plain list; figures that they hold beside it, set aside. */
import { ALKALI_MOLAR_MASS } from '../../engine/chemistry.ts';
import type { Aside } from './book-columns.ts';

interface Rule {
  /** Without it the pattern matches nowhere. */
  readonly needs: string;
  readonly pattern: RegExp;
  readonly as: string;
  /** Why what is dropped is none of the recipe; empty where no figure is. */
  readonly why: string;
}

const unit = '(?:k?g|gr|grams?|dag|oz|ounces?|lbs?|pounds?)';
const number = '\\d+(?:[.,]\\d+)?';
const pack = '(?:tub|jar|tin|bottle|bag|pack|packet|block|can|carton|canister|bar)';
/** The pattern is made when a post first needs it: most never do. */
const rule = (needs: string, source: string, as: string, why = '', flags = 'gi'): Rule => {
  let made: RegExp | undefined;
  return {
    needs,
    get pattern() {
      made ??= new RegExp(source, flags);
      return made;
    },
    as,
    why,
  };
};

/** `my "163 g" of lye`: a weight in quotes, which is one all the same. */
const inQuotes = (open: string, close: string): Rule =>
  rule(open, `(?<=[\\s(])${open}(${number} ?${unit})${close}(?=[\\s,.;:!?)])`, '$1');

const rules: readonly Rule[] = [
  inQuotes('"', '"'),
  inQuotes('“', '”'),
  // "m(NaOH, w = 0.98) = 140 g": a share as a fraction of one
  rule('= 0', '(?<=\\([^()\\n]{2,40}\\b)w = 0[.,](\\d\\d)(?= *\\))', '$1 %'),
  // "m(KOH, 85 % pellets) = 116 g", "V(water) = 165 mL": the sign of a quantity, and of what
  rule(
    '(',
    '(?<![A-Za-z\\d])(?:[mV][\\d₀-₉]? ?|mass|vol(?:ume)?|[Mv])\\(([^()\\n]{2,40})\\)[ \\t]*[=:]',
    '$1 =',
    '',
    'g',
  ),
  // "09/11 – 500 g olive": a date over a list, and no range
  rule(
    '/',
    `^([ \\t]*(?:0\\d|[12]\\d|3[01])/(?:0\\d|[12]\\d|3[01])(?:/\\d{2,4})?)[ \\t]*[–—-][ \\t]+(?=${number} ?${unit})`,
    '$1: ',
    '',
    'gm',
  ),
  // "sesame oil 1 pao = 250 g": the kitchen's own measure
  rule(
    '=',
    `^([ \\t]*[-*•]?[ \\t]*\\p{L}[\\p{L} ]{2,30}?)[ \\t:]+1 (?!(?:g|kg|oz|lb|l|ml|dl|cl|part|cup|tsp|tbsp|pint|quart|pound|ounce|litre|liter|kilo|stone|tin|can|jar|tub|bottle|bag|box|pack|packet|pot|sachet|jug|block|bar|stick|brick)\\b)\\p{Ll}{2,12} = (?=${number} ?${unit}[ \\t]*$)`,
    '$1 ',
    'the kitchen’s own measure',
    'gmu',
  ),
  // "Of caustic soda, 4 oz. Of carrot juice, well strained, 4 oz": what a sentence begins with is what it weighs
  rule(
    'Of ',
    `(?<=(?:^|[.!?:;"“”'(])\\s*)Of (?!(?:course|late|this|that|these|those|it|them|which|all|what|my|both|each)\\b)(\\p{L}+(?: \\p{L}+){0,2}?)(?:, (?!and\\b)\\p{L}[\\p{L} ]{2,24})?[,:] *(?=${number} ?${unit}\\b\\.? *(?:exactly|each|in all|[.,;\\n]|$))`,
    '$1 ',
    '',
    'gmu',
  ),
  // "M = 40.00 g/mol", "ρ(water) = 0.998 g/mL"
  rule(
    'g/',
    `,?[ \\t]{0,3}(?<![\\p{L}\\d])(?:M|ρ|rho|density)(?:_?\\p{L}{0,5}|\\([^()\\n]{2,40}\\)) ?[=:] ?${number} ?k?g/(?:mol|ml|l|cm3|cm³|m3|m³)(?![\\p{L}\\d])`,
    '',
    'a constant of the substance',
    'giu',
  ),
  // "lye solution, 50 % NaOH by weight: 284 g"
  rule(
    'by ',
    '(\\d ?%[ \\t]+(?:of[ \\t]+)?(?:NaOH|KOH|lye|caustic(?: soda)?|(?:sodium|potassium) hydroxide)),?[ \\t]+by (?:weight|mass)\\b',
    '$1',
    '',
    'gi',
  ),
  // "lard is out of the question, so the same kilo in palm"
  rule('question', '\\b(is|are|was|were) out of the question\\b', '$1 out'),
  rule(
    'the same ',
    '(?<!\\b(?:took|taken|used|put in|weighed|melted) )\\bthe same (?:half )?(?:kilo|kg|pound)s? (?:in|of)\\b',
    'the same weight of',
  ),
  // "olive oil pure and simple" is of no other kind
  rule('pure and', ' ?\\bpure and simple\\b', ''),
  // "a cup-sized trial" measures nothing
  rule('-size', '\\b(?:cup|mug|pint|litre|gallon|spoon|thimble)-sized?\\b', 'small'),
  rule('b.', '\\b(cocoa|shea|mango|kokum) b\\.(?=[ :]*\\d)', '$1 butter'),
  rule('wt', '\\boz\\.? ?wt\\b\\.?', 'oz'),
  // "1/ 140 into 300": the number of a step
  rule('/ ', '^([ \\t]*\\d{1,2})/[ \\t]+(?=\\p{L}|\\d{2})', '$1. ', '', 'gmu'),
  // "+7d no zap"
  rule('d', '(?<=^|\\n|[.;] )\\+(\\d{1,3}) ?d\\b(?! *[=:])', 'day $1:'),
  rule('card', `\\b${number} ?[x×] ?${number}(?=[ -](?:index |recipe )?cards?\\b)`, '', 'the size of a card'),
  rule(
    'G',
    '\\b(?:OG|FG|SG|(?:original |final |specific )?gravity)\\b[^().;\\n\\d]{0,16}[01]\\.\\d{3}(?:[^().;\\n\\d]{0,20}[01]\\.\\d{3})?\\b',
    '',
    'the gravity of a brew',
  ),
  rule(
    'alance',
    `(?<=\\b(?:balance|scales?)\\b[^.\\n\\d]{0,16})(?:±|\\+/-) ?${number} ?m?g\\b`,
    '',
    'what a scale shows',
  ),
  rule(
    'through',
    `\\b(?:go|goes|going|get|gets) through (?:about )?${number} ?(?:l|lit(?:re|er)s?|bars?|pieces?|${unit}) (?:a|per|each|every) (?:day|week|month|year)\\b`,
    '',
    'what is used up',
  ),
  rule(
    'paste',
    '\\b\\d+ parts? (?:of )?(?:the |soap )*paste ?(?::|to|and|with|in|\\+) ?\\d+ parts? (?:of )?(?:\\p{L}+ )?water\\b',
    '',
    'it thins the soap',
    'giu',
  ),
  rule(
    'soap',
    `\\b${number} ?${unit}\\b(?= (?:of )?(?:the |my )?(?:old|leftover|left-over|grated|shredded|cubed|finished|cured) soaps?\\b)`,
    '',
    'soap that is done',
  ),
  // "250 g of cured offcuts", which go into a new soap in pieces
  rule(
    'of ',
    `\\b${number} ?${unit}\\b(?= of (?:the |my |some )?(?:(?:old|cured|dried|finished|leftover|last year['’]?s) )?(?:soap )?(?:offcuts|off-cuts|trimmings|soap (?:scraps|ends|bits|pieces|shavings|curls|cubes))\\b)`,
    '',
    'soap that is done',
  ),
  // "confetti (old soap): 250 g"
  rule(
    ' soap',
    `(?<=\\b(?:old|cured|leftover|already|finished) soap(?: \\p{L}+){0,2}\\)?[ \\t]*[:=–-]?[ \\t]*)${number} ?${unit}\\b(?=[ \\t]*(?:$|[,.;]))`,
    '',
    'soap that is done',
    'gimu',
  ),
  // "one cup flakes, one cup washing soda": of a powder that is made of the soap
  rule(
    'flakes',
    `\\b(?:an? |one |two |three |four |half an? |${number} ?)(?:cups?|mugs?|scoops?|parts?|handfuls?|(?:table|tea)?spoons?|tbsp|tsp)(?: of)?(?= (?:the |dried |dry |grated |soap )*flakes\\b[^\\n]{0,60}(?<!caustic )(?:washing soda|soda ash|borax|soda crystals|per (?:wash|load)))`,
    '',
    'soap that is done',
  ),
  // "O.O. 500": initials of an oil
  ...['O', 'o'].map((o) =>
    rule(
      `.${o}`,
      `(?<=(?<![\\p{L}.])(?:\\p{L}\\.){0,2}\\p{L})\\.(?=(?:\\p{L}\\.){0,2}${o}\\b\\.?(?:[ \\t]*[:=–-]?[ \\t]*\\d|[ \\t]*(?:$|[,;])))`,
      '',
      '',
      'gmu',
    ),
  ),
  // "I like 6 percent over"
  rule(
    'over',
    "(?<=(?:^|[.!?;]\\s)(?:(?:i|we|i'd|would|like|want|prefer|aim|for|at|to|make|it|with|use|usually|about|around|please|go|my|and) ){0,6})(\\d+(?:[.,]\\d+)? ?(?:%|per ?cent)) over(?= *(?:[.!]|$|please\\b))",
    '$1 superfat',
    '',
    'gim',
  ),
  rule(
    'pour',
    `\\b(?:weigh-?in|weigh(?:ed|s)|weight|mass) (?:at|when|before) (?:the )?pour\\w* (?:of |was |is )?${number} ?${unit}\\b`,
    '',
    'what went into the mould',
  ),
  rule('code', '^[ \\t]*\\[?bar ?code\\]?[: \\t][^\\n]*$', '', 'a barcode', 'gim'),
  rule('trimmed', `\\btrimmed to ${number} ?${unit}\\b`, 'trimmed', 'the weight of one bar'),
  // "EDIT 2: the olive is 540 g": the number of a correction
  ...['dit', 'DIT', 'pdate', 'PDATE', 'orrection', 'ORRECTION'].map((needs) =>
    rule(
      needs,
      '^([ \\t]*[*_([]{0,2}(?:edit(?:ed)?|update|correction)) ?#?[1-9](?=[ \\t]*[*_)\\]]{0,2}[ \\t]*[:–-][ \\t]*[^\\s\\d])',
      '$1',
      'the number of a correction',
      'gim',
    ),
  ),
  // "coconut: the whole 250 g tub"
  ...['whole', 'entire', 'full', 'complete', 'all of'].map((needs) =>
    rule(
      needs,
      `(?<=[:=–-] ?)(?:(?:all of )?(?:the|a|an|my|one) ${needs}|all of (?:the|a|my|one)) (${number} ?${unit}) ${pack}\\b(?=[ \\t]*(?:[.,;)\\n]|$))`,
      '$1',
    ),
  ),
  // "a third of the new 300 g jar"
  ...['half', 'hird', 'uarter'].map((needs) =>
    rule(
      needs,
      `\\b((?:half|thirds?|quarters?)(?: of)? (?:the|a|my)) (?:(?:new|full|fresh|big|small|little|whole|unopened|old) )+(?=${number} ?${unit} ${pack}\\b)`,
      '$1 ',
    ),
  ),
  // "olive: a new kilo, 380 g left now"
  rule('kilo', '(?<=[:=–-] ?)(?:a|one) (new|full|fresh|whole|unopened|sealed) kilo(?=, \\d)', 'a kilo, $1'),
  // "dissolved at 50 % (half and half by weight)", "ready dissolved, half and half by weight"
  ...['alf and half', 'alf-and-half', 'qual parts', 'qual weights'].map((needs) =>
    rule(
      needs,
      '(?<=50 ?(?:%|per ?cent)[^.\\n\\d]{0,24})\\s*\\((?:so |that is |thats |i\\.?e\\.? )?(?:half[ -]and[ -]half|equal (?:parts|weights))(?:,? by weight)?\\)',
      '',
    ),
  ),
  ...['alf and half by w', 'alf-and-half by w', 'qual parts by w'].map((needs) =>
    rule(
      needs,
      '(?<=\\b(?:dissolved|solution|stock|premixed|pre-mixed|ready[ -]mixed)\\b[^.\\n\\d%]{0,16}?)[(,]?\\s*(?:half[ -]and[ -]half|equal parts),? by weight(?![^.\\n]{0,16}%)\\)?',
      ' at 50%',
    ),
  ),
  // "154 g net, into 340 g of water"
  rule('net', `(?<=\\d ?${unit}) net\\b(?=,? in(?:to)? ${number} ?${unit}\\b)`, ''),
  // "the lye's 71 g and the water's 150"
  ...["'s ", '’s '].map((needs) =>
    rule(
      needs,
      `\\b(lye|naoh|koh|caustic|soda|hydroxide|water|milk|oil|butter|lard|tallow|olive|coconut|palm|castor)${needs}(?=(?:only |just |about |now )?${number} ?${unit}\\b)`,
      '$1 is ',
    ),
  ),
  // "ma lye's 71g fur 350g lard": as some people say it
  rule('fur ', `\\bfur (?=(?:the |ma |ma' )?${number} ?${unit}\\b)`, 'for '),
];

const count = '(?:\\d+|one|two|three|four|five|six|seven|eight|nine|ten)';
const counts = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const countOf = (said: string): number => Math.max(counts.indexOf(said.toLowerCase()), Number.parseInt(said, 10) || 0);
const partsOf = new RegExp(`\\b(${count}) parts? (?:of )?(?=(\\p{L}+))`, 'giu');
const partsAre = new RegExp(
  `\\b(${count}) parts? (?:of )?(\\p{L}+)(?: \\p{L}+){0,2} ?(?:=|is|are|\\(=?) ?(${number}) ?(${unit})\\b`,
  'giu',
);

/** "5 parts olive = 500 g, 4 parts coconut = 400 g": what the weights say again; where they do not, both stay. */
function withoutParts(text: string): { readonly text: string; readonly dropped: readonly string[] } {
  const rows = /\bparts?\b[^\n]{0,40}(?:=|is|are|\()/i.test(text) ? [...text.matchAll(partsAre)] : [];
  const each = rows.map(([, parts = '', , weight = '']) => Number(weight.replace(',', '.')) / countOf(parts));
  const units = new Set(rows.map((row) => row[4]));
  const [first = 0] = each;
  if (rows.length < 2 || units.size > 1 || each.some((one) => Math.abs(one - first) > 0.015 * first))
    return { text, dropped: [] };
  const known = new Map(rows.map(([, parts = '', name = '']) => [name.toLowerCase(), countOf(parts)]));
  const dropped: string[] = [];
  const rest = text.replace(partsOf, (found: string, parts: string, name: string) => {
    if (known.get(name.toLowerCase()) !== countOf(parts)) return found;
    dropped.push(found.trim());
    return '';
  });
  return { text: rest, dropped };
}

const moles = new RegExp(`[,;]?[ \\t]{0,3}n\\((NaOH|KOH)\\) ?[=:] ?(${number}) ?mol(?![a-z/])`, 'g');

/** "n(NaOH) = 3.50 mol" behind its weight: what that says again; where it does not, it stays. */
function withoutMoles(text: string, told: Aside[]): string {
  return text.replace(moles, (said: string, alkali: string, figure: string, at: number) => {
    const grams = ALKALI_MOLAR_MASS[alkali === 'NaOH' ? 'naoh' : 'koh'] * Number(figure.replace(',', '.'));
    const before = text.slice(Math.max(text.lastIndexOf('\n', at - 1), at - 80), at);
    const weight = new RegExp(`${alkali}[^\\d]{0,20}= ?(${number}) ?g\\b`).exec(before)?.[1];
    if (!weight || Math.abs(Number(weight.replace(',', '.')) - grams) > 0.015 * grams) return said;
    told.push({ text: said, why: 'the weight says it, too' });
    return '';
  });
}

const lyeParts =
  /\(?\b(\d{1,2}) ?%? ?(?:parts? )?(?:of )?(?:NaOH|KOH|lye|caustic(?: soda)?)(?: ?[:+/,] ?| to | and )(\d{1,2}) ?%? ?(?:parts? )?(?:of )?(?:\w+ )?water\b\)?|\b(\d{1,2}) ?[:/] ?(\d{1,2}) ?\((?:NaOH|KOH|lye|caustic(?: soda)?)(?: ?[:+/] ?| to )(?:\w+ )?water\)/gi;
const solution = /\b(?:stock|solution|master ?batch|masterbatched|premix(?:ed)?|lye water)\b/i;

/** "Lye stock (50 NaOH : 50 water)": how strong it is, in the line of a solution. */
function solutionOf(text: string, told: Aside[]): string {
  if (!solution.test(text)) return text;
  return text.replace(/^.*$/gm, (line) => {
    if (!solution.test(line)) return line;
    return line.replace(lyeParts, (said: string, a?: string, b?: string, c?: string, d?: string) => {
      const [lye, water] = [Number(a ?? c), Number(b ?? d)];
      const isWhole = lye + water === 100 || (lye === water && lye === 1);
      const strength = (100 * lye) / (lye + water);
      const others = line.replace(said, '').match(/\d+(?:[.,]\d+)?(?= ?(?:%|per ?cent))/g) ?? [];
      if (!isWhole || others.some((one) => Number(one.replace(',', '.')) !== strength)) return said;
      told.push({ text: others.length > 0 ? said : String(water), why: 'how the solution was mixed' });
      return others.length > 0 ? '' : `(${strength} %)`;
    });
  });
}

/** The post in plain notation, and what was dropped from it. */
export function plainly(post: string): { readonly text: string; readonly told: readonly Aside[] } {
  const told: Aside[] = [];
  let text = post;
  for (const rule of rules) {
    if (!text.includes(rule.needs)) continue;
    const { pattern, as, why } = rule;
    if (why !== '') for (const [found] of text.matchAll(pattern)) told.push({ text: found, why });
    text = text.replace(pattern, as);
  }
  const { text: rest, dropped } = withoutParts(
    solutionOf(text.includes('mol') ? withoutMoles(text, told) : text, told),
  );
  told.push(...dropped.map((one) => ({ text: one, why: 'the weights say it, too' })));
  return { text: rest, told };
}
