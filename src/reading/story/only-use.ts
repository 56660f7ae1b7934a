/**
 * What is there, and how much of it goes in: "the coconut bucket has 700 g in it but I'll only use 500 g", "I have 700 g of
 * coconut in the tub and will take just 500 g". Where the fat has no other weight, that is what goes in.
 */

import { alike, type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isIngredient, setApart, spoken, wordOrStop } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { placeFor, vessels } from './by-difference.ts';
import type { Heard } from './heard.ts';
import { partOfStock } from './part-of-stock.ts';
import { joinedAt } from './story.ts';
import { isPlain, rowsOf, weightAt } from './tale.ts';

const use =
  '(?:(?:but|and|though|yet|only|so|of which|of that|,|;|-|–|—) )+(?:(?:i|we|ill|im|ive|well|id|will|ll|shall|am|have|going to|plan to|want to|would like to|can|could|only|just|really|then|now|today|of it|of that) )*(?:use|used|using|take|took|taking|need|needed|put in|put|want|melt|melted|weighed out|go with|went with) (?:only |just |exactly |in )*(?<less>#)(?! (?:(?:of )?(?:the |my )?(?!it\\b|that\\b|this\\b)@|more|extra|(?:of (?:it|that) )?(?:for|on|in|up) (?!(?:this|it\\b|here|mine|soap|now|today|tonight|(?:the|my|this|a|our) (?:soap|batch|pot|recipe|one)))))';
const inIt = `(?: (?:in it|in there|inside|left|of it|still|in (?:the|my|a) (?:[a-z]+ )?${vessels}|in (?:the )?stock|at home|here|in all|in total|now|over))*`;
const packed =
  '(?<x>@)[^@#?.]{0,12}\\b(?:sold|comes?|came|packed|packaged)\\b[^@#?.]{0,16}\\bin (?:an? |big |small |just |only )*';
const packs = `${vessels}(?:s|es)?`;
const source = '(?:from|of|out of) (?:it|that|one|this|there|them|the (?:bag|tub|tin|box|bottle|jar|pack|packet))';
const took =
  '(?:i|we) (?:(?:have|had|just|only|now) )*(?:took|take|taken|used|use|weighed|weighed out) (?:out |only |just )*(?<less>#)';
const drawn = `[^@#?.]{0,20}[,;.:–-] (?:(?:and|so|but) )?(?=[^@?.]{0,60}${source})(?:${source} )?${took}(?! (?:of )?@)`;
const ways = [
  `(?<x>@)(?: oil| butter)?(?: ${vessels})?(?: (?:still|now|only))? (?:has|had|holds|held|contains|contained|is|was) (?:still |about |around )*(?<more>#)${inIt} ?${use}`,
  `\\b(?:have|ve|ive|got|theres|there (?:is|are|was|were)|had) (?:still |about |around |got |a )*(?<more>#) (?:of )?(?:the |my )?(?<x>@)${inIt} ?${use}`,
  // "is sold in bags of 1 kg, from it I took 117 g", "comes in 1 kg bags. I took 117 g from one"
  `${packed}${packs} of (?<more>#)${drawn}`,
  `${packed}(?<more>#) ${packs}${drawn}`,
].map((way) => new RegExp(way, 'd'));
/** "So that's 460 g". */
const leaves = /^[^@#?]{0,40}\b(?:so|leaves|leaving|makes|thats|left)\b[^@#?]{0,20}#/;
const open = /\b(?:if|last (?:time|batch|year|month|week)|next|usually|normally|always|he|she|they|each|per|every)\b/;

const near = 2;

/** A fat or an alkali, however it is called. */
const isStuff = (token: Token | undefined): boolean =>
  isIngredient(token) && /^(?:fat|alkali|ambiguous)$/.test(token.meaning.kind);

interface Found {
  readonly name: number;
  readonly more: number;
  readonly less: number;
}

/** What a sentence tells so. */
function foundIn(tokens: readonly Token[], text: string, tokenAt: (place: number) => number): Found | null {
  for (const way of ways) {
    const found = way.exec(text);
    const groups = found?.indices?.groups;
    if (!found || open.test(text.slice(0, found.index + found[0].length))) continue;
    const [name, more, less] = ['x', 'more', 'less'].map((group) => tokenAt(groups?.[group]?.[0] ?? 0)) as [
      number,
      number,
      number,
    ];
    if (
      leaves.test(text.slice(found.index + found[0].length)) ||
      !isStuff(tokens[name]) ||
      !(weightAt(tokens, more, less) > weightAt(tokens, less, less))
    )
      continue;
    if (rowsOf(tokens, tokens[name], tokens.length).some(({ figure }) => figure !== more && figure !== less)) continue;
    return { name, more, less };
  }
  return null;
}

/** The list with what goes in of what is there. */
export function onlyUse(cut: Cut): Heard {
  const { tokens } = cut;
  if (!tokens.some((token) => cues.test(spoken(token)))) return { tokens, told: [] };
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0) continue;
    const story = joinedAt(sentences, k, sentence.figures > 1 ? 1 : near);
    const text = story.text.replace(/[@#]/g, (sign, place: number) => {
      const token = tokens[story.tokenAt(place)];
      if (sign === '@') return isIngredient(token) ? '@' : '&';
      return isPlain(token) ? '#' : '…';
    });
    const found = foundIn(tokens, text, story.tokenAt) ?? partOfStock(out ?? tokens, sentence.from, sentence.to);
    if (!found) continue;
    out ??= [...tokens];
    const { name, more, less } = found;
    const [was, is, fat] = [tokens[more] as Figure, tokens[less] as Figure, tokens[name]];
    for (let k = Math.min(name, more); k < less; k++) {
      const one = out[k];
      if (one && k !== name && (one.t === 'word' || one.t === 'name')) out[k] = asFiller(one);
    }
    out[less] = setApart(is, 'said before');
    const at = more < name ? more : placeFor(tokens, name, [more, less]);
    const stand = out[at] ?? was;
    if (at !== more) out[more] = wordOrStop(was);
    const numbers = [...was.quantity.numbers, ...(endsDotted(is) ? is.quantity.numbers : [])];
    const value = alike(is.quantity, was.quantity).value;
    out[at] = { ...was, from: stand.from, to: stand.to, quantity: { ...withValue(was.quantity, value), numbers } };
    told.push({
      text: `I took ${written(is.quantity)} of ${fat?.t === 'name' ? fat.text : ''}, of the ${written(was.quantity)} that are there, as the post says.`,
      gone: [was.quantity],
      from: story.from,
      to: Math.max(sentence.to, less + 1),
      settles: true,
    });
  }
  return { tokens: out ?? tokens, told };
}

/** Words of which one stands in each sentence that says so. */
const cues = /^(?:us(?:e|ed|ing)|take|took|taking|need|needed|put|want|melt|melted|weighed|go|went)$/;
