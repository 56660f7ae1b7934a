import { edits } from '../commands/nearest.ts';
import { lines } from './first-aid-lines.ts';

/** The letter of a known word. */
function letterOf(word: string): string | undefined {
  const at = lines.indexOf(`\n${word}:`);
  return at < 0 ? undefined : lines.charAt(at + word.length + 2);
}

/** Words of the first need, recognised through two slips of the fingers. */
const first = new Set(
  'splashed splash splattered swallowed spilled inhaled breathed breathing burning coughing fumes hydroxide'.split(' '),
);

/** By initial: long words of what bites, where and how, recognised through one slip. */
const slippable = new Map<string, readonly (readonly [word: string, letter: string, allowed: number])[]>();

function slippableBy(initial: string): readonly (readonly [word: string, letter: string, allowed: number])[] {
  const known = slippable.get(initial);
  if (known) return known;
  const all = lines.matchAll(new RegExp(`\\n(${initial}[a-z0-9]{4,}):(.)`, 'g'));
  const made = Array.from(all, ([, word = '', letter = '']) => [word, letter, allowedIn(word, letter)] as const);
  const some = made.filter(([, , allowed]) => allowed > 0);
  slippable.set(initial, some);
  return some;
}

function allowedIn(word: string, letter: string): number {
  if (first.has(word)) return word.length > 7 ? 2 : 1;
  return word.length >= 7 - Number(letter === 'L') && 'AEPRHDBKL'.includes(letter) ? 1 : 0;
}

/** Whether two words can be so few edits apart: what is alike at both ends leaves little between. */
function isNear(a: string, b: string, allowed: number): boolean {
  if (Math.abs(a.length - b.length) > allowed) return false;
  let alike = 0;
  while (alike < b.length && a[alike] === b[alike]) alike++;
  for (let end = 1; end <= b.length - alike && a.at(-end) === b.at(-end); end++) alike++;
  return (allowed > 1 || alike >= b.length - 2) && edits(a, b) <= allowed;
}

/** Real words that are no such slip. */
const otherwise = new Set(
  [
    'slashed flashed spelled smashed stashed plashed splayed breaded breather turning buying following wallowed',
    'bathing',
    'boiling brewing breaking fumed famous spoiled blending cooking steaming starting stopped reverse contact',
    'contacts',
    'blended blinded blankets skilled slipped sorted stuffed scattered breeding respite investing invested bubbles',
    'bubble',
    'strayed streaking collapse buttons',
    'gesucht schenken schenke schmelzt spitze spitzen spitzer gespitzt schulte gestrichen getippt verpatzt',
    'demande demander derange poignee poignees oseille caisses molles chenille oreiller debord panoui',
    'tomillo tratado trazado parado quedada mesilla barrilla barrica respirador barrida',
  ]
    .join(' ')
    .split(' '),
);

/** The letter of a word that a slip, an ending or a compound makes out of a known one. */
function derived(word: string): string {
  // "hens", "spaniels"
  if (word.length > 3 && word.endsWith('s') && letterOf(word.slice(0, -1)) === 'C') return 'C';
  if (word.length < 5 || otherwise.has(word)) return 'x';
  // German puts words together: "Laugenmischen", "hochgespritzt"
  if (/^lauge|[a-z]lauge$|^seifenleim/.test(word)) return 'A';
  if (/(?:gespritzt|gelaufen|gekippt|geschwappt|geschuttet|getropft|gekleckert|spritzer|spritzt)$/.test(word))
    return 'R';
  if (/^seifen/.test(word)) return 'S';
  if (/(?:finger|fingern|schenkel|knochel)$/.test(word)) return 'P';
  const meant = slippableBy(word.slice(0, 1)).find(([known, , allowed]) => isNear(known, word, allowed));
  return meant === undefined ? 'x' : meant[1];
}

/** Words whose letters are remembered, at the most. */
const mostFound = 5000;
const found = new Map<string, string>();

/** The letter of a word's meaning; `x` for any other. */
export function meaningOf(word: string): string {
  const known = found.get(word);
  if (known !== undefined) return known;
  const own = letterOf(word);
  const letter = own ?? derived(word);
  if (found.size >= mostFound) found.clear();
  found.set(word, letter);
  return letter;
}
