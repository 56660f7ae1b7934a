/**
 * What somebody at the pot says of a batch: "took 143 g lye", "92 at 12:40", "not there yet, 5 more", "no zap". Only
 * the form is read here; which ingredient or stage is meant is for those who have the batch at hand.
 */
import type { Process, Stage } from '../engine/batch/batch.ts';

type Wordless = 'status' | 'weights' | 'next' | 'undo' | 'rest' | 'stop' | 'list';
type Worded = 'timer' | 'note' | 'picture' | 'scent';

export type Step =
  | { readonly [K in Wordless]: { readonly do: K } }[Wordless]
  /** `amount`: as written, with its unit if it has one; null for a tick without a weight. */
  | {
      readonly do: 'take';
      readonly said: string;
      readonly amount: { readonly value: number; readonly unit: string | null } | null;
      readonly lot: string | null;
      /** "added 20 g": on top of what was taken. */
      readonly more: boolean;
    }
  | {
      readonly do: 'read';
      readonly value: number;
      readonly unit: '°C' | '°F' | null;
      /** Minutes of the day, or how many minutes ago; null for now. */
      readonly clock: number | null;
      readonly ago: number | null;
    }
  | { readonly do: 'room'; readonly value: number; readonly unit: '°C' | '°F' | null }
  /** `minutes`: null where none were said. */
  | { readonly do: 'more'; readonly minutes: number | null }
  | { readonly do: 'stage'; readonly stage: Stage }
  | { readonly do: 'test'; readonly zap: boolean }
  | { readonly [K in Worded]: { readonly do: K; readonly text: string } }[Worded]
  | { readonly do: 'process'; readonly process: Process }
  | { readonly do: 'record'; readonly form: 'text' | 'html' | 'csv'; readonly lot: string }
  | { readonly do: 'end'; readonly how: 'done' | 'given-up' | 'discarded' };

export interface ReadStep {
  readonly step: Step;
  /**
   * How surely a text without the word "batch" means it: `batch`: it says so; `pot`: what people at the pot say, which
   * may be about something else; `word`: only behind the word "batch".
   */
  readonly means: 'batch' | 'pot' | 'word';
}

const filler =
  "(?:ok(?:ay)?|so|well|and|now|then|right|hi|hey|yes|yep|no|nope|just|i|i'?ve|i have|we|we'?ve|it|it'?s|its|is|are|has|have|the|soap|pot|batch|mass|batter|mix|lye|at|by|looks?|like|a|all|finally|think|there'?s|quite|reached|reads?|shows?|says|about|around|measured|temp(?:erature)?|still|only|please|pls|thanks|thank you|already|been|was|got)";
const lead = `^\\W*(?:${filler}\\W+)*?`;
const tail = `\\W*(?:(?:${filler})\\W*)*$`;
const whole = (words: string): RegExp => new RegExp(`${lead}(?:${words})${tail}`, 'i');

const number = (text: string | undefined): number => Number((text ?? '').replace(',', '.'));

const degrees = '(?:°|º|deg(?:rees?)?)?\\s*';
const scale = (said: string | undefined): '°C' | '°F' | null =>
  /^c/i.test(said ?? '') ? '°C' : /^f/i.test(said ?? '') ? '°F' : null;

const reading = new RegExp(
  `${lead}(?<t>\\d{2,3}(?:[.,]\\d)?)\\s*(?<d>${degrees})(?<u>c(?:elsius)?|f(?:ahrenheit)?)?\\b(?:\\W*(?:now|right now|just now))?` +
    '(?:[\\s,]*(?:at|@)\\s*(?<h>\\d{1,2})[:.h](?<m>\\d\\d)(?:\\s*(?<half>[ap])\\.?m\\.?)?|[\\s,]*(?<ago>\\d{1,3})\\s*(?:min\\w*)\\s+ago)?\\W*$',
  'i',
);
const clockFirst = new RegExp(
  `^\\W*(?:at\\s+)?(?<h>\\d{1,2}):(?<m>\\d\\d)(?:\\s*(?<half>[ap])\\.?m\\.?)?\\W+(?:${filler}\\W+)*(?<t>\\d{2,3}(?:[.,]\\d)?)\\s*(?<d>${degrees})(?<u>c(?:elsius)?|f(?:ahrenheit)?)?\\W*$`,
  'i',
);

const count = '(\\d{1,3}|a few|a couple(?: of)?|five|ten|fifteen|twenty)';
const minutesIn: Readonly<Record<string, number>> = { five: 5, ten: 10, fifteen: 15, twenty: 20 };
const minutesOf = (text: string | undefined): number | null => {
  if (text === undefined) return null;
  return minutesIn[text.toLowerCase()] ?? (/^\d/.test(text) ? Number(text) : null);
};
const notYet =
  "(?:no(?:pe)?|not|n'?t|isn'?t|there|yet|done|quite|ready|still|wait(?:ing)?|needs?|needing|give|it|me|just|a bit|little|longer|more time|cooking|going|ok|so|the|lye|soap|clear|for)";
const more = new RegExp(
  `^\\W*(?:${notYet}\\W+)*(?:${count}\\s*(?:min(?:ute)?s?\\s+)?(?:more|longer)(?:\\s+min(?:ute)?s?)?|another\\s+${count}(?:\\s*min(?:ute)?s?)?|\\+\\s*${count}(?:\\s*min(?:ute)?s?)?)\\W*(?:please|pls|thanks)?\\W*$`,
  'i',
);
const notThere =
  /^\W*(?:(?:no|nope|still)\W+)?(?:it'?s\W+|is\W+)?(?:not (?:there|done|ready|quite|clear|translucent)(?: (?:there|yet|done|ready))*|not yet|isn'?t (?:there|ready|done)(?: yet)?|(?:needs|give it)(?: a bit| a little)?(?: more time| longer| more)|a bit (?:more|longer))\W*$/i;

/** Words that say where the batch is; the surer ones first. */
const stages: readonly (readonly [RegExp, Stage])[] = [
  [
    whole(
      'lye (?:is |has )?(?:dissolved|clear|mixed|made|ready)|(?:dissolved|mixed|made) (?:the )?lye|(?:lye )?solution (?:is )?(?:clear|ready|made)',
    ),
    'mix',
  ],
  [whole('traced?|light trace|medium trace|thick trace|separation|separated|separating'), 'separation'],
  [whole('apple ?sauce|grainy'), 'applesauce'],
  [whole('gel|gelled|glossy(?: gel)?|vaseline|petroleum jelly|translucent'), 'gel'],
  [
    whole('heat(?: is)? off|turned (?:it|the heat) off|off the heat|cook(?:ed|ing)? (?:is )?(?:done|over|finished)'),
    'cool',
  ],
  [whole('scent(?:ed)?(?: is| went)? in|added (?:the )?scent|scented'), 'mould'],
  [whole('in the mou?lds?|mou?lded|poured(?: (?:it|in))?(?: in(?:to)? the mou?lds?)?'), 'cut'],
  [whole('cut(?: into bars)?|(?:cut|sliced) (?:it|them|the (?:bars|soap|loaf))|bars (?:are )?cut'), 'cure'],
  [whole('cured|cure (?:is )?(?:over|done|finished)'), 'done'],
];

const lotAt =
  /[\s,;(]+(?:lot|lot no\.?|charge|batch no\.?|l\/n)\s*[:#]?\s*([\p{L}\p{N}][\p{L}\p{N}./_-]{0,39})\)?\W*$/iu;
const weight = /(?<![\d.,])(\d+(?:[.,]\d+)?)\s*(kg|kilos?|g|gr|gm|grams?|oz|ounces?|lbs?|pounds?|ml|l)?(?![\p{L}\d])/iu;
const takes =
  /^\W*(?:(?:ok(?:ay)?|so|and|now|i|i'?ve|we|we'?ve|have|just|actually)\W+)*(took|taken|take|weighed(?: out)?|used|measured(?: out)?|put in|poured(?: in)?|got|added|add)\b\W*(.+)$/iu;

function taking(text: string): Extract<Step, { do: 'take' }> | null {
  const lot = lotAt.exec(text)?.[1] ?? null;
  const body = lot === null ? text : text.replace(lotAt, '');
  const found = weight.exec(body);
  const name = (found ? body.slice(0, found.index) + body.slice(found.index + found[0].length) : body)
    .replace(/^[\s:=,]*(?:of|the|my|more)\b/i, '')
    .replace(
      /[✓✔☑✅]|\b(?:in total|instead|exactly|about|only|of|more|the|weighed|done|ready|ticked|check(?:ed)?)\b/giu,
      ' ',
    )
    .replace(/[:=,;.!]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  if (!found && name === '') return null;
  return {
    do: 'take',
    said: name,
    amount: found ? { value: number(found[1]), unit: found[2]?.toLowerCase() ?? null } : null,
    lot,
    more: /\bmore\b/i.test(body),
  };
}

/** Null where the text is nothing that is said of a batch. */
export function readStep(text: string): ReadStep | null {
  const said = text.replace(/[’‘]/g, "'").trim();
  if (said.length > 600) return null;
  const at = (step: Step, means: ReadStep['means']): ReadStep => ({ step, means });
  const written = /^\W*(note|picture|photo|pic|image|scent|timer|room|process)\b[\s:]*([\s\S]*)$/i.exec(said);
  if (written?.[2] && !/^(?:is |went )?in\W*$/i.test(written[2])) {
    const [, word = '', rest = ''] = written;
    const kind = word.toLowerCase();
    if (kind === 'note') return at({ do: 'note', text: rest.trim() }, 'batch');
    if (/^p(?:hoto|ic)|image/.test(kind)) return at({ do: 'picture', text: rest.trim() }, 'batch');
    if (kind === 'scent' || kind === 'timer') return at({ do: kind, text: rest.trim() }, 'word');
    const room = /^(?:is|at|temp\w*|:|=|\s)*(\d{1,3}(?:[.,]\d)?)\s*(?:°|º)?\s*([cf])?\w*\W*$/i.exec(rest);
    if (kind === 'room' && room) return at({ do: 'room', value: number(room[1]), unit: scale(room[2]) }, 'word');
  }
  if (said.length > 200 || said.includes('\n') || said.includes('?')) return null;
  if (
    /^\W*(?:status|where (?:am|are|was|were) (?:i|we)|how far(?: am i| are we)?|what(?:'s| is)? next)\W*$/i.test(said)
  )
    return at({ do: 'status' }, 'pot');
  if (/^\W*(?:weigh(?:ing)?(?: list)?|weights|ingredients|recipe|plan)\W*$/i.test(said))
    return at({ do: 'weights' }, 'word');
  if (/^\W*(?:list|all|mine|batches|my batches|lots)\W*$/i.test(said)) return at({ do: 'list' }, 'word');
  const record = /^\W*(?:(?:show|print|the|my|batch)\s+)*record\b\s*(?:of|for)?\s*(.*)$/i.exec(said);
  if (record) {
    const rest = record[1] ?? '';
    const form = /\b(?:html|print\w*)\b/i.test(rest)
      ? 'html'
      : /\b(?:csv|table|sheet|spreadsheet)\b/i.test(rest)
        ? 'csv'
        : 'text';
    const lot = rest
      .replace(/\b(?:as|in|to|html|print\w*|csv|table|sheet|spreadsheet|text|lot|file|an?)\b/gi, ' ')
      .trim();
    return at({ do: 'record', form, lot }, 'word');
  }
  if (/^\W*undo\b(?: (?:that|it|this|the last(?: one| step)?))?\W*$/i.test(said)) return at({ do: 'undo' }, 'pot');
  const hot =
    /^\W*(?:process\W+)?(?:it'?s |i (?:do|make) |as |make it )?(hot|cold)[ -]?process\W*$/i.exec(said) ??
    /^\W*process\W+(hot|cold)\W*$/i.exec(said);
  if (hot) return at({ do: 'process', process: (hot[1] ?? '').toLowerCase() === 'hot' ? 'hot' : 'cold' }, 'word');
  if (/^\W*(?:stop|cancel|no)(?: the)? timer\W*$/i.test(said)) return at({ do: 'stop' }, 'batch');
  if (
    /^\W*(?:throw(?:n|ing)?(?: it)? (?:away|out)|threw (?:it )?(?:away|out)|discard(?:ed)?(?: it)?|bin(?:ned)?(?: it)?)\W*$/i.test(
      said,
    )
  )
    return at({ do: 'end', how: 'discarded' }, 'word');
  if (
    /^\W*(?:give|gave|given|giving)(?: it)? up(?: on it)?\W*$|^\W*(?:abandon(?:ed)?|cancel(?:led)?|stop)(?: it| batch| the batch)?\W*$/i.test(
      said,
    )
  )
    return at({ do: 'end', how: 'given-up' }, 'word');
  if (/^\W*(?:end|close|finish)(?: it| batch| the batch)?\W*$/i.test(said))
    return at({ do: 'end', how: 'done' }, 'word');

  if (
    /^\W*(?:all|everything)(?: the rest)?(?: is| are| was)? ?(?:weighed|taken|done|ready|as planned|in)*\W*(?:as planned)?\W*$/i.test(
      said,
    ) &&
    /weighed|taken|planned|everything/i.test(said)
  )
    return at({ do: 'rest' }, 'batch');
  if (
    /^\W*(?:(?:i )?weighed (?:it all|everything|all(?: of it)?)|the rest(?: is)? as planned|(?:the )?rest weighed)\W*$/i.test(
      said,
    )
  )
    return at({ do: 'rest' }, 'batch');
  const zap =
    /^\W*(?:(?:ok|so|it|there'?s|there is|still|the soap|test|zap test|tongue test|a|is|was)\W+)*(?:(no|not|doesn'?t|does not|didn'?t|did not|without|zero)\W+(?:a |any |more )*zap\w*|zap[ -]?free|passed|(zap\w*|it zaps|stings|fail(?:ed|s)?))\W*(?:at all|anymore|any more|still|now)?\W*$/i.exec(
      said,
    );
  if (zap) return at({ do: 'test', zap: zap[2] !== undefined }, 'batch');
  const extends_ = more.exec(said);
  if (extends_) {
    const minutes = minutesOf(extends_[1] ?? extends_[2] ?? extends_[3]);
    return at({ do: 'more', minutes }, 'pot');
  }
  if (notThere.test(said)) return at({ do: 'more', minutes: null }, 'pot');
  if (
    /^\W*(?:(?:ok|okay|yes|yep|it'?s|it is|all|i'?m|we'?re|is)\W+)*(?:next(?: (?:step|one|stage|please))?|done|ready|there|finished|go on|continue|yes|yep|carry on)(?: (?:now|it is|with (?:it|that)))?\W*$/i.test(
      said,
    )
  )
    return at({ do: 'next' }, 'pot');
  for (const [pattern, stage] of stages)
    if (pattern.test(said)) return at({ do: 'stage', stage }, stage === 'cure' || stage === 'done' ? 'pot' : 'batch');

  const warm = reading.exec(said) ?? clockFirst.exec(said);
  if (warm?.groups) {
    const { t, d = '', u, h, m, half, ago } = warm.groups;
    const hour =
      h === undefined
        ? null
        : Number(h) +
          (half && /p/i.test(half) && Number(h) < 12 ? 12 : 0) -
          (half && /a/i.test(half) && Number(h) === 12 ? 12 : 0);
    const isSure = u !== undefined || d !== '' || h !== undefined || ago !== undefined;
    if (hour === null || (hour < 24 && Number(m) < 60))
      return at(
        {
          do: 'read',
          value: number(t),
          unit: scale(u),
          clock: hour === null ? null : 60 * hour + Number(m),
          ago: ago === undefined ? null : Number(ago),
        },
        isSure && h !== undefined ? 'batch' : 'pot',
      );
  }
  const took = takes.exec(said);
  if (took) {
    const step = taking(took[2] ?? '');
    if (step) return at({ ...step, more: step.more || /^add/i.test(took[1] ?? '') }, 'batch');
  }
  const ticked =
    /^\W*[✓✔☑✅]\W*(.+)$|^(.+?)\W*[✓✔☑✅]\W*$/u.exec(said) ??
    /^(.+?)\s+(?:is |are )?(?:weighed|ticked(?: off)?)\W*$/i.exec(said);
  if (ticked) {
    const step = taking(ticked[1] ?? ticked[2] ?? '');
    if (step) return at(step, 'batch');
  }
  // "olive oil 450 g lot 7B", "143 g lye"
  if (
    said.length <= 80 &&
    weight.test(said) &&
    (said.match(/\d+(?:[.,]\d+)?/g)?.length ?? 0) <= (lotAt.test(said) ? 4 : 1) &&
    /\p{L}/u.test(said)
  ) {
    const step = taking(said);
    if (step && (step.amount?.unit || step.said !== '')) return at(step, 'pot');
  }
  const lotOf = /^(.+?)\W+(?:is )?(?:from )?lot\b/i.exec(said);
  if (lotOf && lotAt.test(said)) {
    const step = taking(said);
    if (step) return at(step, 'batch');
  }
  return null;
}
