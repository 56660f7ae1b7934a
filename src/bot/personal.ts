/** The context of one request: the product's data, read once for everybody, under the settings of who asks. */
import type { Answer } from '../answer/types.ts';
import type { HeatData } from '../catalogue/heat-types.ts';
import type { Alkali, AlkaliId, Catalogue } from '../catalogue/types.ts';
import type { Context } from '../commands/define.ts';
import { commands } from '../commands/registry.ts';
import { type Setting, type Settings, settingNames, styleOf, worded } from '../commands/settings/values.ts';
import { settle } from '../reading/amend/settle.ts';
import { makeReader, type Reader, type RecipeReading, readerFor, readRecipe } from '../reading/index.ts';
import type { Style } from '../units/print.ts';
import { makeOutcomes, type Outcomes } from './outcomes.ts';

/** What was set by the person, and by the host of the room; the person's own counts first. */
export interface Defaults {
  readonly own: Settings;
  readonly room: Settings;
}

export const noDefaults: Defaults = { own: {}, room: {} };

export interface Personal {
  readonly context: Context;
  readonly settings: Settings;
  readonly outcomes: Outcomes;
  /** One line for each owner of a setting that the answer rests on. */
  readonly told: (
    answer: Pick<Answer, 'lead' | 'body' | 'warnings' | 'assumptions'>,
    asked: string,
  ) => readonly string[];
}

export type Personally = (defaults: Defaults) => Personal;

export function makePersonal(
  load: () => Catalogue,
  heat: () => HeatData,
  style: Style,
  zone: string | null,
): Personally {
  let loaded: Catalogue | null = null;
  let made: Reader | null = null;
  const catalogue = (): Catalogue => {
    loaded ??= load();
    return loaded;
  };
  const usualReader = (): Reader => {
    made ??= makeReader(catalogue());
    return made;
  };
  /** The last reading of each kind of reader, so that guessing a command costs no second one. */
  const last = new Map<string, { readonly text: string; readonly reading: RecipeReading }>();
  const readWith = (reader: Reader, kind: string, text: string): RecipeReading => {
    const known = last.get(kind);
    if (known?.text === text) return known.reading;
    const reading = readRecipe(reader, text);
    last.set(kind, { text, reading });
    return reading;
  };

  let usual: Personal | null = null;
  return ({ own, room }) => {
    const settings: Settings = { ...room, ...own };
    const isUsual = Object.keys(settings).length === 0;
    if (isUsual && usual) return usual;
    const used = new Set<Setting>();
    const { cup, temperature, weights } = settings;
    let ownReader: Reader | null = null;
    const reader = (): Reader => {
      ownReader ??= cup || temperature ? readerFor(usualReader(), cup, temperature) : usualReader();
      return ownReader;
    };
    let ownCatalogue: Catalogue | null = null;
    const context: Context = {
      get catalogue() {
        ownCatalogue ??= withPurities(catalogue(), settings, used);
        return ownCatalogue;
      },
      read: (text) => {
        const reading = readWith(reader(), cup ?? '', text);
        const inUnit = weights ? bareIn(weights, reading, reader(), text) : null;
        if (inUnit) used.add('weights');
        return inUnit ?? reading;
      },
      reader,
      heat,
      style: styleOf(style, settings),
      settings: noting(settings, used),
      zone: settings.timeZone ?? zone,
      commands,
      last: { recipe: null, workings: [], said: null },
    };
    const told: Personal['told'] = (answer, asked) =>
      isUsual ? [] : lines(answer, asked, { own, room }, used, context.style);
    const personal: Personal = { context, settings, outcomes: makeOutcomes(), told };
    if (isUsual) usual = personal;
    return personal;
  };
}

/** The settings, each noted where a command looks at it. */
const noting = (settings: Settings, used: Set<Setting>): Settings =>
  Object.defineProperties(
    {},
    Object.fromEntries(
      settingNames.flatMap((key) => {
        const value = settings[key];
        if (value === undefined) return [];
        const get = () => {
          used.add(key);
          return value;
        };
        return [[key, { get, enumerable: true }]];
      }),
    ),
  );

/** The catalogue with one's own alkalis on the shelf. */
function withPurities(catalogue: Catalogue, settings: Settings, used: Set<Setting>): Catalogue {
  const own = (['naoh', 'koh'] as const).filter((id) => settings[id] !== undefined);
  if (own.length === 0) return catalogue;
  const alkalis = new Map<AlkaliId, Alkali>(catalogue.alkalis);
  for (const id of own) {
    const alkali = catalogue.alkalis.get(id);
    const value = settings[id];
    if (!alkali || value === undefined) continue;
    const purity = Object.defineProperty({ ...alkali.purity }, 'usual', {
      get: () => {
        used.add(id);
        return value;
      },
    });
    alkalis.set(id, { ...alkali, purity });
  }
  return Object.create(catalogue, { alkalis: { value: alkalis, enumerable: true } }) as Catalogue;
}

/** A post without any unit, in the unit that its writer weighs in; null where that settles nothing. */
function bareIn(unit: 'g' | 'oz', reading: RecipeReading, reader: Reader, text: string): RecipeReading | null {
  const doubt = reading.doubts.find((one) => one.id === 'no-unit' && one.units.length === 0);
  const settled = doubt ? settle(reader, doubt, unit === 'g' ? 'grams' : 'ounces') : null;
  const again = settled ? readRecipe(reader, text, settled) : null;
  return again && again.doubts.length < reading.doubts.length ? again : null;
}

/** What an answer shows of a setting that only changes how things are written. */
const shows: { readonly [K in Setting]?: (text: string, asked: string, settings: Settings) => boolean } = {
  weights: (text, asked, { weights }) =>
    weights === 'oz' && /\d oz\b/.test(text) && !/\d ?(?:oz|ounces?|lbs?|pounds?)\b/i.test(asked),
  temperature: (text, asked, { temperature }) =>
    temperature === '°F' && /\d °F/.test(text) && !/\d ?(?:° ?)?f(?:ahrenheit)?\b/i.test(asked),
  cup: (_text, asked, { cup }) =>
    cup !== 'us' && /\bcups?\b|\dc\b/i.test(asked) && !/\b(?:us|american|metric|imperial|uk|british)\b/i.test(asked),
  decimal: (text, _asked, { decimal }) => decimal === ',' && /\d,\d/.test(text),
};

function lines(
  { lead, body, warnings, assumptions }: Parameters<Personal['told']>[0],
  asked: string,
  { own, room }: Defaults,
  used: ReadonlySet<Setting>,
  style: Style,
): readonly string[] {
  const settings = { ...room, ...own };
  const text = JSON.stringify([lead, body, warnings, assumptions]);
  const named = settingNames.filter(
    (key) => settings[key] !== undefined && (used.has(key) || shows[key]?.(text, asked, settings) === true),
  );
  const line = (keys: readonly Setting[], whose: string): readonly string[] =>
    keys.length === 0
      ? []
      : [
          `I took ${whose} setting${keys.length > 1 ? 's' : ''}: ${keys.map((key) => worded(key, settings, style)).join(', ')}.`,
        ];
  return [
    ...line(
      named.filter((key) => own[key] !== undefined),
      'your',
    ),
    ...line(
      named.filter((key) => own[key] === undefined),
      'this room’s',
    ),
  ];
}
