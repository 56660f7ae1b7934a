/**
 * What was left of a fat that something was steeped in: "infused 400 g olive oil with calendula, after straining I got
 * 365 g back", "soaked annatto in 400 g sunflower. Strained: 365 g", "got 465 g back and used 400 g of it". Where the
 * fat has a row of its own besides, `figures/steeped.ts` hears it.
 */

import { type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isFat, isIngredient, spoken, wordOrStop } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { joinedAt, type Story } from './story.ts';
import { isPlain, rowsBefore, rowsOf, weightAt } from './tale.ts';

const steeping =
  /\b(?:infus(?:ed?|ing|ion)|steep(?:ed|ing)?|macerat(?:ed?|ing)|soak(?:ed|ing)|(?:filled|packed|stuffed) (?:a|the|my) (?:[a-z]+ )?(?:jar|bottle)|on the (?:windowsill|sunny sill))\b/;
const straining =
  '(?:strain(?:ed|ing)?|filter(?:ed|ing)?|siev(?:ed|ing)|press(?:ed|ing)?|squeez(?:ed|ing)|drain(?:ed|ing))';
/** What came of it. */
const came = new RegExp(
  `\\b${straining}\\b[^#?]{0,60}?(?<a>#)|(?<b>#)[^@#?.]{0,30}\\b(?:after|when|once|from) [^@#?.]{0,20}\\b${straining}\\b|\\b(?:got|had|gave|came|were|was|leaving|left) (?:me |only |just |about |with |us )*(?<c>#)(?: (?:of (?:it|that)|of (?:the )?@|@))? (?:\\w+ ){0,2}?(?:back|out|left)\\b`,
  'd',
);
const using =
  /\b(?:us(?:ed|e|ing)|took|take|put|poured|weighed|went in with)(?: in| only| just| out| exactly)* (?<d>#)(?! (?:of )?(?!it\b|that\b|this\b)@)/d;
/** More was poured to it, or nobody has done it. */
const otherwise =
  /\b(?:topp?ed|top(?:ping)? (?:it )?up|made up|refilled|added (?:fresh|more|new)|fresh|more|another|if|would|should|could|next|usually|normally|always|instead|never|again|wax|water)\b/;
/** Nobody knows what then was in the pot. */
const toppedUp = /\b(?:topp?ed|top(?:ping)?|made|filled) (?:it |that |them )?up\b|\brefilled\b/;
const nothing = /\b(?:nothing|not|never) (?:was |been )?(?:topp?ed up|added|refilled|made up|more)\b/g;
/** Sentences that tell it, and the share that comes out, at the least. */
const most = 3;
const leastOut = 0.5;

interface Found {
  readonly whole: number;
  readonly name: number;
  readonly less: number;
  readonly used: number;
  readonly to: number;
}

function textOf(tokens: readonly Token[], story: Story): string {
  return story.text.replace(/[@#]/g, (sign, place: number) => {
    const token = tokens[story.tokenAt(place)];
    if (sign === '@') return isFat(token) ? '@' : '&';
    return isPlain(token) ? '#' : '…';
  });
}

/** "Coconut 135 g, olive 400 g that I infused", "I infused 400 g olive": the one before it, or right behind it. */
function steepedIn(sentence: Sentence, rows: readonly Weighed[]): Weighed | undefined {
  const at = sentence.tokenAt(sentence.text.search(steeping));
  const behind = rows.find((row) => Math.min(row.at, row.figure) > at);
  const before = rows.findLast((row) => Math.max(row.at, row.figure) < at);
  return behind && Math.min(behind.at, behind.figure) - at <= near ? behind : (before ?? behind);
}
/** "Infused all of the 400 g olive". */
const near = 4;

function foundAt(tokens: readonly Token[], sentences: readonly Sentence[], k: number): Found | 'topped' | null {
  const sentence = sentences[k];
  if (!sentence || !steeping.test(sentence.text)) return null;
  const story = joinedAt(sentences, k, most);
  const text = textOf(tokens, story);
  const rows = rowsBefore(tokens, story.to).filter(({ at }) => at >= story.from && isFat(tokens[at]));
  const row = steepedIn(sentence, rows);
  if (!row || row.at >= sentence.to || rowsOf(tokens, tokens[row.at], tokens.length).length > 1) return null;
  const begin = sentence.placeOf(Math.max(row.at, row.figure)) + 1;
  const match = came.exec(text.slice(begin));
  const groups = match?.indices?.groups;
  const place = (groups?.['a'] ?? groups?.['b'] ?? groups?.['c'])?.[0];
  if (!match || place === undefined) return null;
  const less = story.tokenAt(begin + place);
  // another fat is weighed before
  const from = Math.max(row.at, row.figure);
  if (rows.some(({ at, figure }) => figure !== less && Math.min(at, figure) > from && Math.min(at, figure) < less))
    return null;
  if (otherwise.test(text.slice(begin, begin + match.index + match[0].length))) return null;
  const share = weightAt(tokens, less, row.figure) / weightAt(tokens, row.figure, row.figure);
  if (!(share > leastOut && share < 1) || isNamedElse(tokens, less, row.at)) return null;
  // "and used 350 g of it"
  const behind = begin + match.index + match[0].length;
  const clause = text.slice(behind).replace(/(?:@ #|# (?:of )?@|\?).*/, '');
  if (otherwise.test(clause.replace(nothing, ''))) return toppedUp.test(clause) ? 'topped' : null;
  const taken = using.exec(clause)?.indices?.groups?.['d']?.[0];
  const used = taken === undefined ? less : story.tokenAt(behind + taken);
  if (!(weightAt(tokens, used, row.figure) <= weightAt(tokens, less, row.figure))) return null;
  return { whole: row.figure, name: row.at, less, used, to: Math.max(used, less) + 1 };
}

/** "360 g of shea", where olive was strained. */
function isNamedElse(tokens: readonly Token[], figure: number, name: number): boolean {
  const at = spoken(tokens[figure + 1]) === 'of' ? figure + 2 : figure + 1;
  const [other, own] = [tokens[at], tokens[name]];
  if (!isIngredient(other) || (tokens[figure] as Figure).quantity.text.endsWith('.')) return false;
  return !(isIngredient(own) && other.meaning.id === own.meaning.id);
}

/** The list with what came out in the place of what was steeped. */
export function strained(cut: Cut): Heard {
  const { tokens } = cut;
  const sentences = sentencesOf(cut);
  let out: Token[] | null = null;
  let unheard: string | null = null;
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    const found = foundAt(tokens, sentences, k);
    if (!found) continue;
    if (found === 'topped') {
      const last = sentences[Math.min(k + most, sentences.length) - 1];
      unheard ??= rawText(
        cut.prims,
        tokens[sentence.from]?.from ?? 0,
        tokens[(last?.to ?? sentence.to) - 1]?.from ?? 0,
      );
      continue;
    }
    out ??= [...tokens];
    const { whole, name, less, used, to } = found;
    const [was, now] = [tokens[whole] as Figure, tokens[used] as Figure];
    const spare: number[] = [];
    for (const at of new Set([less, used])) {
      const one = out[at] as Figure;
      const isEnd = endsDotted(one);
      if (isEnd) spare.push(...one.quantity.numbers);
      out[at] = isEnd ? wordOrStop(one) : asAside(one, at === used ? 'said before' : 'what was strained');
    }
    for (let at = Math.max(whole, name) + 1; at < to; at++) {
      const one = out[at];
      if (one?.t === 'name' && (one.meaning.kind === 'role' || isFat(one))) out[at] = asFiller(one);
    }
    const left = withValue(was.quantity, weightAt(tokens, used, whole));
    out[whole] = { ...was, quantity: { ...left, numbers: [...was.quantity.numbers, ...spare] } };
    const fat = tokens[name];
    told.push({
      text: `I took ${written(now.quantity)} of ${fat?.t === 'name' ? fat.text : ''}, not ${written(was.quantity)}, which was steeped and strained, as the post says.`,
      gone: [was.quantity],
      from: sentence.from,
      to: sentences.find((one) => one.to >= to)?.to ?? to,
      settles: true,
    });
  }
  return { tokens: out ?? tokens, told, unheard };
}
