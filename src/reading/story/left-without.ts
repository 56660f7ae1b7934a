/**
 * "Castor I did not put at the end", "castor was not at home so I made it without", "everything as written, only the castor
 * not": a fat of the list that is not in the pot, and nothing for it, heard by what its clauses say. Where it is only told
 * that there was none, others ask what came for it.
 */
import { once } from '../once.ts';
import { written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { areOne, mentionsAt, rowsIn } from './mentions.ts';
import { isPlain, type Name } from './tale.ts';

const the = '(?:the |my |any |this )?';
const no = '(?:did ?nt|did not|havent|hadnt|hasnt|have not|had not|has not|never|not|wasnt|isnt|was not|is not)';
const end =
  '(?=$| ?[,.;!)–—-]| (?:at the end|in the end|at all|this time|today|so|and|but|because|as|since|cause|cos|at home|in the house|to|into|inside|there|in(?= (?:it|the (?:pot|soap|mix|end)|there|mine|this|my)\\b| ?[,.;!)]| $|$)|after all|afterwards)\\b)';
/** That it is not in. */
const out = once(() =>
  [
    `\\bF (?:i |we |was |is |has |had |then |just |also |simply )*${no} (?:[a-z]+ ){0,2}(?:put|add|added|use|used|go|went|gone|take|taken|make|made|in|inside|get|melt in)(?: (?:it|in|into|to))*${end}`,
    `\\b(?:i|we) (?:have )?${no} (?:[a-z]+ ){0,1}(?:put|add|added|use|used|take|taken)(?: in)? ${the}F${end}`,
    `\\bF (?:(?:i|we|was|is|have|has|had|been|got|just|then|simply|also|now) )*(?:left (?:it )?(?:out|away|off)|skipped|omitted|forgotten|forgot|dropped|not in)${end}|\\bF (?:is|was|stays|stayed|got|has been|had been) (?:all |completely |now )?out${end}`,
    `\\b(?:left (?:out|away|off)|skipped|omitted|forgot|minus|dropped|leaving out|skipping)(?: to (?:put|add|use|melt|weigh))?(?: in)? ${the}F${end}`,
    `\\bleft ${the}F (?:out|away|off)${end}`,
    `\\b(?:made|did|cooked|mixed|poured)(?: it| this| the soap| the batch| all| everything)* without ${the}F${end}`,
    `\\bno F (?:in (?:it|there|mine|this|the pot|the soap)|went in|inside)\\b|\\b(?:mine|it|this|this one|the pot|my soap) (?:has|had|is|was|there is) (?:without|no) ${the}F${end}|\\bin (?:mine|it|this|this one) (?:there )?(?:is|was) no F${end}`,
    `\\b(?:only|just|except|but) (?:for )?${the}F not\\b`,
    `\\b(?:all|everything|the rest) (?:went in |is in |in )?(?:but|except|besides|without|apart from|bar) (?:for )?${the}F(?: (?:went|is|was|got|i|we) (?:in|put in|took|used))?${end}`,
    `\\bF (?:(?:is|was|has|had|just) )*(?:stayed|remained|still (?:stands|stood|sits|sat|standing|sitting|there)) (?:[a-z]+ ){0,2}(?:in|on|behind) the (?:[a-z]+ )?(?:counter|table|bottle|jar|tub|cupboard|fridge|shelf|bowl|cup|bag)\\b`,
    `\\bF (?:is|was) missing in (?:mine|it|the pot|this|the soap)\\b`,
  ].map((pattern) => new RegExp(pattern)),
);
/** That there was none. */
const lacking =
  /\b(?:no|without|never had|dont have|didnt have|did not have|do not have|had no|out of|couldnt find|could not find|couldnt get) (?:any |the )?F\b|\bF (?:(?:i|we) )?(?:was|is|had|has|did|do|didnt|dont|wasnt|isnt|hasnt|hadnt|could|couldnt|[a-z]+ ){0,3}(?:not|no|none|finished|over|empty|gone|arrive|arrived|have|at home|rancid|bad|off|missing)\b/;
/** "So I made it without", "and put nothing for it". */
const nothing =
  /\b(?:without(?: it| that| them)?(?= ?[,.;!)]|$| $)|(?:made|did|cooked|mixed) (?:it |this )?without|nothing (?:else )?(?:for it|in (?:its|that) place|instead|more|came|went|in its stead|took its place)|(?:did ?nt|did not|not) replace (?:it|that)|(?:left|leave|leaving) (?:it|that) (?:out|away|off)|skipped (?:it|that)|so it(?:s| is) (?:just|only) )/;
/** Something came for it, or not all is told, or nobody did it. */
const open =
  /\?(?!$| $)|\b(?:if|should|would|could|can|may|might|maybe|perhaps|thought (?:of|about)|thinking|considered|tempted|wanted|(?:first|second|third|other|previous|another|old|older|new) (?:batch|pot|loaf|soap|one|time)|about to|nearly|before (?:that|this|i|it)|time before|one before|came close|thought|arrived|next|last (?:time|batch|week|month|year)|different batch|usually|normally|always|until|till|add|adding|added|after(?:wards)?(?! all)|kept|half|part|all of|some of|most|rest of|more|enough|or|instead(?! of)|(?<!nothing )in (?:its|that) place|replaced (?:it|by|with)|swapped|(?:then|later|afterwards) (?:[a-z]+ ){0,3}(?:put|added|stirred|poured|melted|in)|in it went|(?:stirred|put|added|poured|melted|blended|mixed) (?:it|that|the F) in|she|he|they|people|others|some do|her|his|sister|mother|friend|trace|first|at first|nearly|almost|said|says|forgot to (?:say|mention|write|ask|tell|list|note))\b/;

/** The list without what is not in. */
export function leftWithout(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  const rows = rowsIn(tokens);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0 || !cues.test(sentence.text)) continue;
    const story = mentionsAt(tokens, sentences, k, 1);
    if (!areOne(tokens, story.listed) || story.others.length > 0 || /[#=…LX]/.test(story.text)) continue;
    const next = sentences[k + 1];
    const behind =
      next && next.names === 0 && next.figures === 0 && next.paragraph === sentence.paragraph ? next : null;
    const text = story.text.replace(/\? ?$/, '.');
    const isOut = out().some((pattern) => pattern.test(text));
    const isWithout = lacking.test(text) && (nothing.test(text) || (behind !== null && nothing.test(behind.text)));
    if (!isOut && !isWithout) continue;
    // what comes next may tell what took its place
    const soon = sentences[k + 1] === undefined ? '' : mentionsAt(tokens, sentences, k + 1, 1).text;
    if (
      open.test(text) ||
      story.text.trim().endsWith('?') ||
      /N|\b(?:instead|in its place|for it)\b/.test(soon.replace(nothing, ''))
    )
      continue;
    const at = story.listed[0] ?? -1;
    const name = tokens[at] as Name;
    const [row, ...more] = rows.filter((one) => one.id === thingOf(name) && one.at !== at);
    const [figure, of] = [tokens[row?.figure ?? -1], tokens[row?.at ?? -1]];
    if (!row || more.length > 0 || !isPlain(figure) || of?.t !== 'name') continue;
    const gone: Token[] = [...tokens];
    gone[row.figure] = asAside(figure, 'taken out');
    gone[row.at] = asFiller(of);
    for (const one of story.listed) gone[one] = asFiller(tokens[one] as Name);
    const told = `I left out ${of.text} (${written(figure.quantity)}): the post says that it is not in.`;
    const from = Math.max(story.from, story.since);
    const to = isOut || !behind ? sentence.to : behind.to;
    return { tokens: gone, told: [{ text: told, gone: [figure.quantity], from, to, settles: true }] };
  }
  return none;
}

const cues =
  /\b(?:no|not|never|without|did ?nt|havent|hadnt|hasnt|wasnt|isnt|dont|couldnt|out|away|off|skip\w*|omitted|forgot\w*|minus|dropp\w*|except|but|besides|apart|stayed|stood|stands|sits|sat|standing|sitting|remained|missing|none|finished|over|empty|gone)\b/;
