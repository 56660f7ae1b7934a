/** First step of reading: the text as a person sees it, in plain characters, with nothing invisible left. */
export interface Cleaned {
  readonly text: string;
  /** A figure may be shown in another order than it is stored: direction controls stand around digits. */
  readonly disordered: boolean;
  /** Passages that were crossed out (`~~…~~`, `<s>`), with the figures in them. */
  readonly struck: readonly string[];
}

const entities: Readonly<Record<string, string>> = {
  nbsp: ' ',
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  frac12: '½',
  frac14: '¼',
  frac34: '¾',
  deg: '°',
  times: '×',
  ndash: '–',
  mdash: '—',
  thinsp: ' ',
  ensp: ' ',
  emsp: ' ',
  bull: '•',
  middot: '·',
  pound: '£',
  euro: '€',
  uuml: 'ü',
  ouml: 'ö',
  auml: 'ä',
  szlig: 'ß',
  eacute: 'é',
  egrave: 'è',
  eth: 'ð',
  ntilde: 'ñ',
  percnt: '%',
  shy: '',
  zwnj: '',
  zwj: '',
  lrm: '',
  rlm: '\u200f',
  hellip: '…',
  rsquo: '’',
  lsquo: '‘',
};

const fractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅐': '1/7',
  '⅑': '1/9',
  '⅒': '1/10',
};

/** Code points of zero in the digit rows that phones and keyboards produce. */
const zeros = [0x0660, 0x06f0, 0x0966, 0x09e6, 0xff10, 0x1d7ce, 0x1d7d8, 0x1d7e2, 0x1d7ec, 0x1d7f6];

function decodeEntities(text: string): string {
  return text.replace(/&(#x[0-9a-f]{1,6}|#[0-9]{1,7}|[a-z0-9]{2,8});/gi, (whole, name: string) => {
    if (name[0] !== '#') return entities[name] ?? entities[name.toLowerCase()] ?? whole;
    const code = name[1]?.toLowerCase() === 'x' ? Number.parseInt(name.slice(2), 16) : Number(name.slice(1));
    return code > 0 && code <= 0x10ffff && !(code >= 0xd800 && code <= 0xdfff) ? String.fromCodePoint(code) : whole;
  });
}

/** HTML to lines and tab-separated cells; text without tags is left alone. */
function fromHtml(text: string, struck: string[]): string {
  if (
    !/<\/?(table|tr|td|th|br|li|ul|ol|p|div|span|b|i|strong|em|s|del|strike|h[1-6]|tbody|thead|code|pre|script|style)\b[^<>]*>/i.test(
      text,
    )
  )
    return text;
  return text
    .replace(/<(script|style)\b[^<>]*>/gi, '\n<$1>')
    .replace(/<(s|del|strike)>([^<>]{0,400})<\/\1>/gi, (_whole, _tag, inside: string) => {
      struck.push(inside);
      return ' ';
    })
    .replace(/\r?\n(?=\s*<\/?(?:td|th|tr|table|tbody|thead))/gi, '')
    .replace(/<\/(td|th)>\s*/gi, '\t')
    .replace(/<(br|\/tr|\/p|\/div|\/li|\/h[1-6]|\/table|li|p|h[1-6]|tr|div)\b[^<>]*>/gi, '\n')
    .replace(/<\/?[a-z][a-z0-9]*\b[^<>]{0,300}>/gi, ' ');
}

/** Embeddings, overrides and isolates before a digit of their line, and right-to-left marks beside one. */
function isDisordered(text: string): boolean {
  return /[\u202a-\u202e\u2066-\u2068][^\n\d\u202a-\u202e\u2066-\u2068]*\d|\d[\u200f\u061c]|[\u200f\u061c]\d/u.test(
    text,
  );
}

/** Zero-width characters, direction controls, soft hyphens, variation selectors and tags. */
function invisible(code: number): boolean {
  return (
    (code >= 0x200b && code <= 0x200f) ||
    (code >= 0x202a && code <= 0x202e) ||
    (code >= 0x2060 && code <= 0x206f) ||
    (code >= 0xfe00 && code <= 0xfe0f) ||
    (code >= 0xe0000 && code <= 0xe007f) ||
    code === 0xad ||
    code === 0x61c ||
    code === 0x180e ||
    code === 0xfeff
  );
}

/** What other characters stand for, one for one; a no-break space is kept apart until figures have been looked at. */
const plainForms: ReadonlyMap<string, string> = new Map(
  [
    ['\u00a0\u2009\u202f', '\u202f'],
    ['\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u200a\u205f\u3000', ' '],
    ['\u2010\u2011\u2012\u2013\u2014\u2015\u2212\ufe58\ufe63\uff0d', '-'],
    ['\u2018\u2019\u201b\u2032\u00b4', "'"],
    ['\u201c\u201d\u201e\u201f\u2033\u00ab\u00bb', '"'],
    ['×✕✖⨯', '×'],
    ['\u2044\u2215', '/'],
    ['º˚', '°'],
    ['≈∼', '~'],
    ['…', ' ... '],
    ['→⟶➔➜➝➞⇒⇨⟹', ' -> '],
    ['ß', 'ss'],
  ].flatMap(([from = '', to = '']) => [...from].map((char) => [char, to] as const)),
);

/** Characters that are remembered, at the most. */
const mostKnown = 1000;
const formsKnown = new Map(plainForms);

function plainCharacter(char: string): string {
  let form = formsKnown.get(char);
  if (form === undefined) {
    form = plainForm(char);
    if (formsKnown.size < mostKnown) formsKnown.set(char, form);
  }
  return form;
}

/** The plain form of one character; a fraction waits for `spelledFractions`, which looks at the figure before it. */
function plainForm(char: string): string {
  const code = char.codePointAt(0) ?? 0;
  if (code < 0x80 || invisible(code)) return '';
  if (fractions[char]) return char;
  const zero = zeros.find((start) => code >= start && code < start + 10);
  if (zero !== undefined) return String(code - zero);
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCharCode(code - 0xfee0);
  if (/\p{L}|\p{Sc}|[°µ²³]/u.test(char)) return char.normalize('NFKC');
  return /\p{M}/u.test(char) ? char : ' • ';
}

/** `1½` as `1 1/2`. */
const spelledFractions = (text: string): string =>
  text.replace(/[\u00bc-\u00be\u2150-\u215e]/g, (char, at: number) => {
    const before = text[at - 1] ?? '';
    return `${/\d/.test(before) || fractions[before] ? ' ' : ''}${fractions[char] ?? ' • '}`;
  });

/** What stands for a digit that could not be read or shown. */
const blot = /(?<=\d)[\u2588\u2591-\u2593\ufffd]+|[\u2588\u2591-\u2593\ufffd]+(?=\d)/g;

/** Printable ASCII, a tab or the end of a line. */
const isPlain = (code: number): boolean => (code >= 32 && code < 127) || code === 10 || code === 9;

const characterAt = (text: string, k: number): string => String.fromCodePoint(text.codePointAt(k) ?? 0);

/** The characters of a text that are not plain, each once. */
function strangeIn(text: string): string {
  let found = '';
  for (let k = 0; k < text.length; k++) {
    if (isPlain(text.charCodeAt(k))) continue;
    const char = characterAt(text, k);
    if (!found.includes(char)) found += char;
    k += char.length - 1;
  }
  return found;
}

function withPlainForms(text: string): string {
  let plain = '';
  let from = 0;
  for (let k = 0; k < text.length; k++) {
    if (isPlain(text.charCodeAt(k))) continue;
    const char = characterAt(text, k);
    plain += text.slice(from, k) + plainCharacter(char);
    k += char.length - 1;
    from = k + 1;
  }
  return from === 0 ? text : plain + text.slice(from);
}

/** Everything but printable ASCII, tabs and line ends in its plain form; `strange`: what of such there is, each once. */
function plainCharacters(text: string, strange: string): string {
  const read = /[\u2588\u2591-\u2593\ufffd]/.test(strange) ? text.replace(blot, '?') : text;
  const plainer = withPlainForms(read);
  const plain = /[\u00bc-\u00be\u2150-\u215e]/.test(strange) ? spelledFractions(plainer) : plainer;
  // a no-break space groups digits; anywhere else it is a space
  return plain.includes('\u202f') ? plain.replace(/(\d)\u202f(?=\d{3}(?!\d))/g, '$1').replaceAll('\u202f', ' ') : plain;
}

/** Letters without their accents, lower case: `Karité` and `karite` are one word. */
export function fold(word: string): string {
  const lower = word.toLowerCase();
  for (let k = 0; k < lower.length; k++)
    if (lower.charCodeAt(k) >= 0x80) return lower.normalize('NFD').replace(/\p{M}/gu, '');
  return lower;
}

/** Lines that were broken by their width, as hyphens at their ends tell, put together again. */
const unwrapped = (text: string): string =>
  text.includes('-\n') && /\p{Ll}-\n\p{Ll}/u.test(text)
    ? text.replace(/(\p{Ll})-\n(?=\p{Ll})/gu, '$1').replace(/(\p{Ll}|\d)\n(?=\p{Ll})/gu, '$1 ')
    : text;

const dictated: Readonly<Record<string, string>> = {
  comma: ',',
  semicolon: ';',
  colon: ':',
  period: '.',
  'full stop': '.',
  'question mark': '?',
  'exclamation mark': '!',
  'new line': '\n',
  'new paragraph': '\n\n',
};

/** Signs that were dictated as words, where more than one of them can be nothing else. */
function spokenSigns(text: string): string {
  const sure = text.match(/\b(?:comma|full stop|question mark|exclamation mark|new (?:line|paragraph))\b/gi);
  return sure && sure.length > 1
    ? text.replace(
        /[ \t]?\b(comma|semicolon|colon|period|full stop|question mark|exclamation mark|new line|new paragraph)\b/gi,
        (word, name: string) => dictated[name.toLowerCase()] ?? word,
      )
    : text;
}

/** "I.e.": no end of a sentence. */
const thatIs = /\bi\. ?e\.,?(?= )/gi;

/** Pictures that people of a chat write for the name of an oil. */
const pictured: ReadonlyMap<string, string> = new Map([
  ['🫒', 'olive'],
  ['🥥', 'coconut'],
  ['🌴', 'palm'],
  ['🥑', 'avocado'],
  ['🌻', 'sunflower'],
]);

/** "🫒 oil 600 g"; one that stands beside its name adorns it. */
const namedPictures = (text: string): string =>
  text.replace(/(?<before>\p{L}*[ ]?)(?<sign>🫒|🥥|🌴|🥑|🌻)[ ]?(?=(?:oil|butter)\b)/giu, (whole, before, sign) => {
    const name = pictured.get(sign) ?? '';
    return before.trim().toLowerCase() === name ? whole : `${before}${name} `;
  });

/** Words in which a figure stands for its sound. */
const sounded: ReadonlyMap<string, string> = new Map([
  ['gr8', 'great'],
  ['l8r', 'later'],
  ['m8', 'mate'],
  ['h8', 'hate'],
  ['2day', 'today'],
  ['2nite', 'tonight'],
  ['b4', 'before'],
]);
const withWords = (text: string): string =>
  text.replace(/(?<![\p{L}\d-])(?:gr8|l8r|m8|h8|2day|2nite|b4)(?![\p{L}\d])/gu, (word) => sounded.get(word) ?? word);
/** "How much lye 4 that", "how much koh 4 1000 g olive". */
const withFor = (text: string): string =>
  text.replace(
    /(?<=\b(?:(?:how )?much (?:lye |naoh |koh )?|enough |right |ok |okay |good |correct |(?:lye|naoh|koh|water|need|safe|fine) ))4(?= (?:\d{2}|(?:that|this|these|it|the|my|a)\b))/gi,
    'for',
  );

/** The text in plain characters; time linear in its length. */
export function clean(input: string): Cleaned {
  const struck: string[] = [];
  let text = input.includes('\r') ? input.replace(/\r\n?/g, '\n') : input;
  if (/[<&]/.test(text)) text = decodeEntities(fromHtml(text, struck));
  const strange = strangeIn(text);
  const disordered = /[\u061c\u200f\u202a-\u202e\u2066-\u2068]/.test(strange) && isDisordered(text);
  if (strange.includes('\u20e3')) text = text.replace(/[0-9]\ufe0f?\u20e3/gu, ' • ');
  if (/[🫒🥥🌴🥑🌻]/u.test(strange)) text = namedPictures(text);
  if (/[lmhrb][48]|2[dn]/.test(text)) text = withWords(text);
  if (text.includes(' 4 ')) text = withFor(text);
  if (text.includes('~~'))
    text = text.replace(/~~([^~\n]{1,200})~~/g, (_whole, inside: string) => {
      struck.push(inside);
      return ' ';
    });
  const plain = strange ? plainCharacters(text, strange) : text;
  return {
    text: spokenSigns(unwrapped(/i\. ?e\./i.test(plain) ? plain.replace(thatIs, 'ie') : plain)),
    disordered,
    struck,
  };
}
