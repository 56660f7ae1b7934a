/** Settings in the words of a person: "scale 0.1 g", "ounces", "KOH 90 %", "time zone Lisbon". */
import type { Setting, Settings } from './values.ts';

export type Said =
  | { readonly is: 'set'; readonly set: Settings }
  | { readonly is: 'unset'; readonly key: Setting }
  /** `hint`: what can be said instead. */
  | { readonly is: 'wrong'; readonly message: string; readonly hint: string }
  | { readonly is: 'unknown'; readonly text: string };

const figure = '([-−–]?\\d+(?:[.,]\\d+)?)';
const value = (text: string | undefined): number => Number((text ?? '').replace(',', '.').replace(/[−–]/, '-'));
const set = (set: Settings): Said => ({ is: 'set', set });
const wrong = (message: string, hint: string): Said => ({ is: 'wrong', message, hint });

/** What stands between the name of a setting and its value. */
const to = '(?:\\s*(?:(?:is|are|at|to|in|as|of|with|shows?|reads?|kind|step|steps|sign|usually|always)\\b|[:=]))*\\s*';
const start = '^(?:(?:set|use|take|my|the|our|usual|default|please|i use|i weigh)\\s+)*';
const pattern = (source: string): RegExp => new RegExp(`${start}${source}\\W*$`, 'i');

interface Rule {
  readonly key: Setting;
  /** Names that it goes by, to take it back. */
  readonly names: string;
  readonly read: readonly (readonly [RegExp, (found: RegExpExecArray) => Said])[];
}

const percentOf = (
  text: string | undefined,
  low: number,
  high: number,
  what: string,
  make: (share: number) => Settings,
): Said => {
  const share = value(text) / 100;
  return share >= low && share <= high
    ? set(make(share))
    : wrong(`${what} of ${text} % can’t be.`, `It lies between ${low * 100} and ${high * 100} %.`);
};

const grams: Readonly<Record<string, number>> = {
  g: 1,
  gram: 1,
  grams: 1,
  mg: 0.001,
  oz: 28.349523125,
  ounce: 28.349523125,
  ounces: 28.349523125,
};

const kindOfCup: Readonly<Record<string, 'us' | 'metric' | 'imperial'>> = {
  us: 'us',
  american: 'us',
  '237': 'us',
  metric: 'metric',
  australian: 'metric',
  canadian: 'metric',
  '250': 'metric',
  imperial: 'imperial',
  uk: 'imperial',
  british: 'imperial',
  '284': 'imperial',
};
const cupWords = Object.keys(kindOfCup).join('|');
const cup = ([, kind = '']: RegExpExecArray): Said => set({ cup: kindOfCup[kind.toLowerCase()] ?? 'us' });

const naoh = '(?:naoh|sodium hydroxide(?: \\(naoh\\))?|caustic soda)';
const koh = '(?:koh|potassium hydroxide(?: \\(koh\\))?|caustic potash)';
const pure = `${figure}\\s*%?(?:\\s*(?:pure|purity))?`;

const concentration = (text: string | undefined): Said =>
  percentOf(text, 0.1, 0.5, 'A lye solution', (share) => ({ water: { kind: 'concentration', value: share } }));
const ratio = (water: string | undefined, alkali: string | undefined): Said => {
  const parts = value(water) / value(alkali ?? '1');
  return parts >= 1 && parts <= 20
    ? set({ water: { kind: 'ratio', value: parts } })
    : wrong(`${water} g water to ${alkali ?? 1} g alkali can’t be.`, 'Usual is 1.5 to 3 g water to 1 g alkali.');
};

/** In the order in which settings are shown. */
const rules: readonly Rule[] = [
  {
    key: 'weights',
    names: 'weights?|units?',
    read: [
      [
        pattern(`(?:(?:weights?|weigh(?:ing)?|units?|mass)${to})?(g|gr|grams?|oz|ounces?)`),
        ([, unit = '']) => set({ weights: /^o/i.test(unit) ? 'oz' : 'g' }),
      ],
    ],
  },
  {
    key: 'temperature',
    names: 'temperatures?|degrees',
    read: [
      [
        pattern(`(?:(?:temperatures?|temps?|degrees)${to}(?:°\\s?)?|°\\s?)(c|f|celsius|fahrenheit)`),
        ([, unit = '']) => set({ temperature: /^c/i.test(unit) ? '°C' : '°F' }),
      ],
      [pattern('(celsius|fahrenheit)'), ([, unit = '']) => set({ temperature: /^c/i.test(unit) ? '°C' : '°F' })],
    ],
  },
  {
    key: 'cup',
    names: 'cups?',
    read: [
      [pattern(`cups?${to}(${cupWords})(?:\\s*ml)?(?: cups?)?(?: \\(\\d+ ml\\))?`), cup],
      [pattern(`(${cupWords})(?:\\s*ml)? cups?`), cup],
    ],
  },
  {
    key: 'step',
    names: 'scales?|step',
    read: [
      [
        pattern(`(?:(?:kitchen )?scales?|step)${to}${figure}\\s*(mg|g|grams?|oz|ounces?)(?: steps?)?`),
        ([, text, unit = 'g']) => {
          const step = value(text) * (grams[unit.toLowerCase()] ?? 1);
          return step >= 0.001 && step <= 100
            ? set({ step })
            : wrong(
                `A scale that shows steps of ${text} ${unit} can’t be used here.`,
                'Say the smallest step it shows, for example: scale 0.1 g.',
              );
        },
      ],
    ],
  },
  {
    key: 'naoh',
    names: naoh,
    read: [
      [
        pattern(`(?:purity of )?${naoh}(?: purity)?${to}${pure}`),
        ([, text]) => percentOf(text, 0.5, 1, 'A purity', (share) => ({ naoh: share })),
      ],
    ],
  },
  {
    key: 'koh',
    names: koh,
    read: [
      [
        pattern(`(?:purity of )?${koh}(?: purity)?${to}${pure}`),
        ([, text]) => percentOf(text, 0.5, 1, 'A purity', (share) => ({ koh: share })),
      ],
    ],
  },
  {
    key: 'superfat',
    names: 'super ?fat',
    read: [
      [
        pattern(`super ?fat${to}${figure}\\s*%?`),
        ([, text]) =>
          value(text) < 0
            ? wrong(
                `A superfat of ${text} % means soap with free alkali in it, and that burns skin.`,
                'Set 0 % or more; 5 % is usual for skin.',
              )
            : percentOf(text, 0, 0.5, 'A superfat', (share) => ({ superfat: share })),
      ],
      [
        pattern(`${figure}\\s*% super ?fat`),
        ([, text]) => percentOf(text, 0, 0.5, 'A superfat', (share) => ({ superfat: share })),
      ],
    ],
  },
  {
    key: 'water',
    names: 'water|(?:lye )?(?:solution|concentration)|(?:water )?ratio',
    read: [
      [
        pattern(`(?:water|ratio|water ratio|water to lye|water ?: ?lye)${to}${figure}\\s*:\\s*${figure}`),
        ([, a, b]) => ratio(a, b),
      ],
      [pattern(`(?:ratio|water ratio)${to}${figure}`), ([, a]) => ratio(a, '1')],
      [pattern(`water${to}${figure}\\s*g to 1 g (?:alkali|lye)`), ([, a]) => ratio(a, '1')],
      [
        pattern(
          `(?:(?:lye )?(?:solution|concentration)|lye|water)(?: for an?)?${to}${figure}\\s*%? (?:lye )?(?:solution|concentration)`,
        ),
        ([, text]) => concentration(text),
      ],
      [pattern(`(?:lye )?(?:solution|concentration)${to}${figure}\\s*%?`), ([, text]) => concentration(text)],
      [pattern(`(?:a )?${figure}\\s*%? (?:lye )?(?:solution|concentration)`), ([, text]) => concentration(text)],
      [
        pattern(`water${to}${figure}\\s*%(?: of (?:the )?(?:fats?|oils?))?`),
        ([, text]) => percentOf(text, 0.1, 2, 'Water', (share) => ({ water: { kind: 'share-of-fat', value: share } })),
      ],
    ],
  },
  {
    key: 'decimal',
    names: 'decimals?(?: sign)?',
    read: [
      [
        pattern(`decimals?${to}(comma|point|dot|period)`),
        ([, sign = '']) => set({ decimal: /^comma/i.test(sign) ? ',' : '.' }),
      ],
      [/^decimals?\W*(?:sign)?\W*?([.,])$/i, ([, sign = '']) => set({ decimal: sign === ',' ? ',' : '.' })],
    ],
  },
  {
    key: 'room',
    names: 'room(?: temperature)?',
    read: [
      [
        pattern(`room(?: temp(?:erature)?)?${to}${figure}\\s*(?:°|degrees?)?\\s*(c|f|celsius|fahrenheit)?`),
        ([, text, unit = '']) => {
          // no room is at 50 °C, and none at 9 °F
          const isF = /^f/i.test(unit) || (unit === '' && value(text) > 45);
          const room = isF ? (value(text) - 32) / 1.8 : value(text);
          return room >= -20 && room <= 45
            ? set({ room })
            : wrong(`A room of ${text} ${isF ? '°F' : '°C'} is none to make soap in.`, 'Say for example: room 18 °C.');
        },
      ],
    ],
  },
  {
    key: 'pot',
    names: 'pot',
    read: [
      [/^(?:(?:my|our|the|usual|set)\s+)*pot\b(?:\s*(?:is|to|[:=]))*\s*(.{2,120})$/i, ([, pot = '']) => set({ pot })],
    ],
  },
  {
    key: 'mould',
    names: 'mou?ld',
    read: [
      [
        /^(?:(?:my|our|the|usual|set)\s+)*mou?ld\b(?:\s*(?:is|to|[:=]))*\s*(.{2,120})$/i,
        ([, mould = '']) => set({ mould }),
      ],
    ],
  },
  {
    key: 'timeZone',
    names: 'time ?zone|zone',
    read: [
      [pattern(`(?:time ?zone|zone|tz)${to}(\\S.{0,60}?)`), ([, zone = '']) => set({ timeZone: zone })],
      [/^([a-z]+(?:\/[a-z_+-]+){1,2})$/i, ([, zone = '']) => set({ timeZone: zone })],
    ],
  },
  {
    key: 'language',
    names: 'language',
    read: [
      [
        /^(?:(?:my|set)\s+)*language\b(?:\s*(?:is|to|tag|[:=]))*\s*([\w-]{2,35})$/i,
        ([, language = '']) => set({ language }),
      ],
    ],
  },
  {
    key: 'answers',
    names: 'answers?',
    read: [
      [
        pattern(`(?:answers?${to})?(brief|short|full|long)(?: answers?)?`),
        ([, size = '']) => set({ answers: /^[bs]/i.test(size) ? 'brief' : 'full' }),
      ],
    ],
  },
];

const back = 'forget|no|unset|reset|clear|remove|drop';
const usual = 'usual|default|none|off|normal|reset|unset';

function readOne(text: string): Said {
  const bare = text.trim().replace(/[.!]+$/, '');
  for (const { key, names, read } of rules) {
    const taken = new RegExp(
      `^(?:(?:${back})\\s+(?:(?:my|the)\\s+)?(?:${names})|(?:my )?(?:${names})${to}(?:${usual}))$`,
      'i',
    );
    if (taken.test(bare)) return { is: 'unset', key };
    for (const [wanted, make] of read) {
      const found = wanted.exec(bare);
      if (found) return make(found);
    }
  }
  if (/^(?:purity|alkali|lye)\b.*\d/i.test(bare))
    return wrong('Of which alkali is that the purity?', 'Say for example: NaOH 98 %, or KOH 90 %.');
  return { is: 'unknown', text: bare };
}

/** Every part of a text; what nothing else claims behind a pot or a mould belongs to its words ("pot 6 l, lid off"). */
export function settingsIn(text: string): readonly Said[] {
  const out: Said[] = [];
  // "forget superfat and scale"
  const [, forgets] = new RegExp(`^\\s*(${back})\\s`, 'i').exec(text) ?? [];
  for (const part of text.split(/[\n;]|,(?!\d)|\band\b/i)) {
    if (part.trim() === '') continue;
    const one = readOne(part);
    const said = one.is === 'unknown' && forgets ? readOne(`${forgets} ${one.text}`) : one;
    const before = out.at(-1);
    if (said.is === 'unknown' && before?.is === 'set' && (before.set.pot || before.set.mould)) {
      const key = before.set.pot ? 'pot' : 'mould';
      out[out.length - 1] = set({ [key]: `${before.set[key]}, ${said.text}` });
    } else out.push(said);
  }
  return out;
}
