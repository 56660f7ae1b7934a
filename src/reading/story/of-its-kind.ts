/**
 * "And only now reading the bottle it is high oleic sunflower, not the normal one", "on the tub stands palm kernel": a fat of
 * the list that is another kind of its family, as the writer sees afterwards. The weight stays.
 */
import { written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat } from '../words/token-is.ts';
import { asFiller } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { mentionsAt, rowsIn } from './mentions.ts';
import { isPlain, type Name } from './tale.ts';

/** The writer looks at what it is. */
const seen =
  /\b(?:bottle|label|tub|jar|tin|bag|pack|lid|box|can|reads?|reading|looked?|looking|see|saw|notice\w*|realis\w*|realiz\w*|turns? out|turned out|actually|really|in fact|in truth|it is|it was|its|is the|was the|stands|says|printed|written)\b/;
const isIt =
  /(?:\b(?:it is|it was|its|is|was|are|were|stands|says|reads?|turns? out|turned out|found out)\b| [:=])(?: (?:the|a|all|really|actually|in fact|of|to be|my|that|written|printed|now|only|just|only now))* N\b/;
const open =
  /\b(?:if|whether|or|should|would|could|may|might|maybe|perhaps|think|guess|not sure|unsure|wonder\w*|next|last (?:time|batch)|usually|normally|always|she|he|they|her|his|sister|friend|better|instead|cheaper|dearer|also|too|both|want|wanted|need|buy|half|part|never|not (?:the |a )?N|no N|isnt (?:the )?N|different from|same as|than)\b/;

/** The list with the kind that it is. */
export function ofItsKind(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  const rows = rowsIn(tokens);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0 || !seen.test(sentence.text)) continue;
    const story = mentionsAt(tokens, sentences, k, 1);
    const ids = new Set(story.others.map((at) => thingOf(tokens[at] as Name)));
    if (ids.size !== 1 || /[#LX=…]/.test(story.text.replace(/^.*? (?=\S*N)/, ''))) continue;
    const text = story.text.replace(/[?.!] ?$/, '.');
    if (!isIt.test(text) || open.test(text) || story.text.slice(0, story.text.indexOf('N')).includes('?')) continue;
    const at = story.others[0] ?? -1;
    const kind = tokens[at] as Name;
    const family = (id: string): string => id.split('-')[0] ?? id;
    const own = rows.filter((row) => isFat(tokens[row.at]) && family(row.id) === family(thingOf(kind)));
    const [row, ...more] = own;
    const [was, weight] = [tokens[row?.at ?? -1], tokens[row?.figure ?? -1]];
    if (!row || more.length > 0 || was?.t !== 'name' || !isPlain(weight) || row.at > at) continue;
    // what else is listed there is none of it
    if (story.listed.some((one) => thingOf(tokens[one] as Name) !== row.id)) continue;
    const out = [...tokens];
    out[row.at] = { ...kind, from: was.from, to: was.to };
    for (const one of [...story.others, ...story.listed]) out[one] = asFiller(tokens[one] as Name);
    const told = `I took ${written(weight.quantity)} of ${kind.text}, not of ${was.text}, as the post says.`;
    const from = Math.max(story.from, story.since);
    return { tokens: out, told: [{ text: told, gone: [], from, to: sentence.to, settles: true }] };
  }
  return none;
}
