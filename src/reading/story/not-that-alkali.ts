/**
 * "I was going to use sodium hydroxide but changed the plan, it is only KOH now, 133 g", "first I wanted NaOH": an alkali that
 * has no weight, and of which a clause says that it was planned, usual or not taken, beside the one that is weighed.
 */
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isIngredient, isMark, spoken } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, type Name } from './tale.ts';

const notTaken =
  /\b(?:going to|gonna|wanted|planned|planning|plan|meant|intended|thought of|would have|first|normally|usually|always|mostly|instead of|rather than|in place of|not|no|never|none|without|didnt|dont|havent|had no|have no|ran out of|out of|nonsense|used to|other times|for (?:my )?(?:bars|hard soap|bar soap|liquid|soft soap))\b/;
const open =
  /\?|\b(?:if|should|could|would (?!have)|may|might|maybe|perhaps|or|either|both|mix(?:ed)?|dual|half|part|plus|also|too|as well|unsure|sure|think|label|bag|tub|turned out|in fact|actually|really|is it|says|said|read|mixed up|confus\w*|wrong|mistake|shipped|sent|delivered|supplier|parcel|came)\b/;

const idOf = (token: Token | undefined): string =>
  isIngredient(token) && token.meaning.kind === 'alkali' ? token.meaning.id : '';

/** A weight stands beside it. */
function isWeighed(tokens: readonly Token[], k: number): boolean {
  const before = spoken(tokens[k - 1]) === 'of' ? tokens[k - 2] : tokens[k - 1];
  let next = k + 1;
  while (
    next - k <= 3 &&
    (isMark(tokens[next], ',:=(–-') || /^(?:is|was|only|now|just|it|its)$/.test(spoken(tokens[next])))
  )
    next++;
  return (isPlain(before) && !endsDotted(before)) || isPlain(tokens[next]);
}

/** The tokens without the one that was not taken. */
export function notThatAlkali(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const named = tokens.flatMap((token, k) => (/^(?:naoh|koh)$/.test(idOf(token)) ? [k] : []));
  const ids = new Set(named.map((k) => idOf(tokens[k])));
  if (ids.size !== 2) return none;
  const weighed = new Set(named.filter((k) => isWeighed(tokens, k)).map((k) => idOf(tokens[k])));
  const [own] = weighed;
  if (own === undefined || weighed.size > 1) return none;
  const others = named.filter((k) => idOf(tokens[k]) !== own);
  const sentences = sentencesOf(cut);
  const told = others.map((k) => {
    const sentence = sentences.find(({ from, to }) => k >= from && k < to);
    if (!sentence) return null;
    // the clause of the name: up to the one that is taken
    const place = sentence.placeOf(k);
    const ahead =
      sentence.text
        .slice(0, place)
        .split(/[.;:!?]|\b(?:but|so)\b/)
        .at(-1) ?? '';
    const behind = sentence.text.slice(place).split(/[.;:!?,]|\b(?:but|so|and|then)\b/)[0] ?? '';
    return notTaken.test(ahead + behind) && !open.test(sentence.text) ? sentence : null;
  });
  if (told.length === 0 || told.includes(null)) return none;
  const out = [...tokens];
  for (const k of others) out[k] = asFiller(tokens[k] as Name);
  const name = tokens[others[0] ?? 0] as Name;
  return {
    tokens: out,
    told: told.flatMap((sentence) =>
      sentence
        ? [
            {
              text: `I left out ${name.text}, which the post says was not taken.`,
              gone: [],
              from: sentence.from,
              to: sentence.to,
              settles: true,
            },
          ]
        : [],
    ),
  };
}
