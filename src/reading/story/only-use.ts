/**
 * What is there, and how much of it goes in: "the coconut bucket has 700 g in it but I'll only use 500 g", "I have 700 g of
 * coconut in the tub and will take just 500 g". Where the fat has no other weight, that is what goes in.
 */
import { alike, type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isFat, isIngredient, spoken, wordOrStop } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { placeFor, vessels } from './by-difference.ts';
import { isPlain, rowsOf, weightAt } from './tale.ts';

const use =
  '(?:(?:but|and|though|yet|only|so|of which|of that|,|;|-|–|—) )+(?:(?:i|we|ill|im|ive|well|id|will|ll|shall|am|have|going to|plan to|want to|would like to|can|could|only|just|really|then|now|today|of it|of that) )*(?:use|used|using|take|took|taking|need|needed|put in|put|want|melt|melted|weighed out|go with|went with) (?:only |just |exactly |in |out )*(?<less>#)(?! (?:(?:of )?(?:the |my )?(?!it\\b|that\\b|this\\b)@|more|extra|(?:of (?:it|that) )?(?:for|on|in|up) (?!(?:this|it\\b|here|mine|soap|now|today|tonight|(?:the|my|this|a|our) (?:soap|batch|pot|recipe|one)))))';
const inIt = `(?: (?:in it|in there|inside|left|of it|still|in (?:the|my|a) (?:[a-z]+ )?${vessels}|in (?:the )?stock|at home|here|in all|in total|now|over))*`;
const ways = [
  `(?<x>@)(?: oil| butter)?(?: ${vessels})?(?: (?:still|now|only))? (?:has|had|holds|held|contains|contained|is|was) (?:still |about |around )*(?<more>#)${inIt} ?${use}`,
  `\\b(?:have|ve|ive|got|theres|there (?:is|are|was|were)|had) (?:still |about |around |got |a )*(?<more>#) (?:of )?(?:the |my )?(?<x>@)${inIt} ?${use}`,
].map((way) => new RegExp(way, 'd'));
/** "So that's 460 g". */
const leaves = /^[^@#?]{0,40}\b(?:so|leaves|leaving|makes|thats|left)\b[^@#?]{0,20}#/;
const open = /\b(?:if|last (?:time|batch|year|month|week)|next|usually|normally|always|he|she|they|each|per|every)\b/;

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
      !isFat(tokens[name]) ||
      !(weightAt(tokens, more, less) > weightAt(tokens, less, less))
    )
      continue;
    if (rowsOf(tokens, tokens[name], tokens.length).some(({ figure }) => figure !== more && figure !== less)) continue;
    return { name, more, less };
  }
  return null;
}

/** The list with what goes in of what is there. */
export function onlyUse(cut: Cut): { readonly tokens: readonly Token[]; readonly told: readonly PutRight[] } {
  const { tokens } = cut;
  if (!tokens.some((token) => cues.test(spoken(token)))) return { tokens, told: [] };
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures < 2 || sentence.names === 0) continue;
    const text = sentence.text.replace(/[@#]/g, (sign, place: number) => {
      const token = tokens[sentence.tokenAt(place)];
      if (sign === '@') return isIngredient(token) ? '@' : '&';
      return isPlain(token) ? '#' : '…';
    });
    const found = foundIn(tokens, text, (place) => sentence.tokenAt(place));
    if (!found) continue;
    out ??= [...tokens];
    const { name, more, less } = found;
    const [was, is, fat] = [tokens[more] as Figure, tokens[less] as Figure, tokens[name]];
    for (let k = Math.min(name, more); k < less; k++) {
      const one = out[k];
      if (one && k !== name && (one.t === 'word' || one.t === 'name')) out[k] = asFiller(one);
    }
    out[less] = endsDotted(is) ? wordOrStop(is) : asAside(is, 'said before');
    const at = more < name ? more : placeFor(tokens, name, [more, less]);
    const stand = out[at] ?? was;
    if (at !== more) out[more] = wordOrStop(was);
    const numbers = [...was.quantity.numbers, ...(endsDotted(is) ? is.quantity.numbers : [])];
    const value = alike(is.quantity, was.quantity).value;
    out[at] = { ...was, from: stand.from, to: stand.to, quantity: { ...withValue(was.quantity, value), numbers } };
    told.push({
      text: `I took ${written(is.quantity)} of ${fat?.t === 'name' ? fat.text : ''}, of the ${written(was.quantity)} that are there, as the post says.`,
      gone: [was.quantity],
      from: sentence.from,
      to: sentence.to,
      settles: true,
    });
  }
  return { tokens: out ?? tokens, told };
}

/** Words of which one stands in each sentence that says so. */
const cues = /^(?:us(?:e|ed|ing)|take|took|taking|need|needed|put|want|melt|melted|weighed|go|went)$/;
