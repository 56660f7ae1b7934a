/**
 * Less than was planned of what is named with the plan: "I was going to stir in 100 g of shea, but stopped at 50 g",
 * "the castor was meant to be 80 g, I left it at 60". Where it stopped counts.
 */

import { alike, type PutRight, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isIngredient, isRole, setApart, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { isPlain, isSum, type Name, rowsOf, weightAt } from './tale.ts';

const stopped =
  '(?:stopped|quit|halted|gave up|left (?:it|that|things) (?:at|with)|called it (?:a day|quits)|held off|drew the line|got (?:only )?(?:as far as|to|up to)|(?:only|just) (?:got|made it|managed|reached))';
/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set('stopped quit halted gave left called held drew got only just'.split(' '));
const planned =
  /\b(?:(?:was|were|am|had been|been) (?:just |about |really )?(?:going|meant|supposed|planning|about|aiming|hoping|intending)\b|(?:was|were|had) to (?:be|go|have)\b|plan(?:ned)?\b|meant\b|wanted\b|intended\b|hoped\b|aimed\b|set out\b|target\b|goal\b|should have\b|would have\b)/;
const short = new RegExp(
  `(?<pre>[^@#?.;]{0,80})(?:(?<a>#)(?: of)?(?: the| my| fresh| melted)* (?<x>@)|(?<y>@)(?<mid>[^@#?.;]{0,40})(?<c>#))(?<then>[^@#?]{0,70}?)\\b${stopped}(?: (?!for\\b)[a-z]+){0,3}? (?<b>#)(?: (?:of (?:it|that|them)|already|then|because|since|as|when|which|so|and|but|[.,;!)]|(?=$))|(?= *$))`,
  'd',
);
/** Nobody has done it, or it stops for now. */
const open =
  /\?|\b(?:if|next|usually|normally|last (?:time|batch|year|month)|then (?:went on|carried on|added the rest)|the rest (?:later|after)|for now|degrees?|minutes?|hours?)\b/;
const goesOn =
  /\b(?:then|later|after)[^.]{0,30}\b(?:the (?:rest|other|remaining)|went on|carried on|anyway)\b|\b(?:the (?:rest|other half|remaining)) (?:went|goes|came|of it)\b/;

/** The list with what it stopped at. */
export function stoppedShort(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0) continue;
    const story = joinedAt(sentences, k, 2);
    const match = short.exec(story.text);
    const groups = match?.indices?.groups;
    if (!match || !groups || match.index >= story.turn) continue;
    const { pre = '', mid = '', then = '' } = match.groups ?? {};
    const tail = story.text.slice(match.index + match[0].length);
    if (!planned.test(`${pre}${mid}${then}`) || open.test(match[0]) || goesOn.test(tail)) continue;
    const place = (...names: string[]): number =>
      story.tokenAt(names.map((one) => groups[one]?.[0]).find((one) => one !== undefined) ?? 0);
    const [name, more, less] = [place('x', 'y'), place('a', 'c'), place('b')];
    const [thing, was, now] = [tokens[name], tokens[more], tokens[less]];
    if (!isIngredient(thing) || !isPlain(was) || !isPlain(now)) continue;
    if (!(weightAt(tokens, less, more) < weightAt(tokens, more, more))) continue;
    // "castor 80 g" in the list, and below it what became of that
    const rows = rowsOf(tokens, thing, tokens.length).filter(({ figure }) => figure !== more && figure !== less);
    const isListed = (like: number): boolean =>
      rows.every(({ figure }) => isSum(weightAt(tokens, figure, figure), weightAt(tokens, like, figure)));
    if (!isListed(more) && !isListed(less)) continue;
    out ??= [...tokens];
    const start = story.tokenAt(match.index);
    for (let at = start; at < less; at++) {
      const token = out[at];
      if (token && (token.t === 'word' || (token.t === 'name' && !isIngredient(token) && !isRole(token, 'after'))))
        out[at] = asFiller(token);
    }
    out[less] = setApart(now, 'said before');
    const spare = endsDotted(now) ? now.quantity.numbers : [];
    const countsAt = (figure: number): void => {
      const row = tokens[figure] as Figure;
      const quantity = { ...alike(now.quantity, was.quantity), text: written(now.quantity) };
      (out as Token[])[figure] = { ...row, quantity: { ...quantity, numbers: [...row.quantity.numbers, ...spare] } };
    };
    for (const figure of rows.length > 0 ? rows.map((row) => row.figure) : [more]) countsAt(figure);
    if (rows.length > 0) {
      out[more] = asAside(was, 'planned');
      out[name] = asFiller(thing as Name);
    }
    told.push({
      text: `I took ${written(now.quantity)} of ${thing.text}, not ${written(was.quantity)}, as the post stops there.`,
      gone: [was.quantity],
      from: start,
      to: less + 1,
      settles: true,
    });
  }
  return { tokens: out ?? tokens, told };
}
