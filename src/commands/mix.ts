import type { Block } from '../answer/types.ts';
import type { HeatData } from '../catalogue/heat-types.ts';
import {
  bringTo,
  type Melting,
  type Mix,
  type MixInput,
  meltingAt,
  mixOf,
  type WarmFat,
} from '../engine/heat/mixing.ts';
import { Claims } from '../reading/heat/claims.ts';
import { heatLine } from '../reading/heat/line.ts';
import { type MixReading, mixOf as readMix } from '../reading/heat/mix.ts';
import type { RecipeReading } from '../reading/reading.ts';
import { number, percent, type Style, temperature } from '../units/print.ts';
import { untilClear } from './cautions.ts';
import { styleFor } from './check.ts';
import { type Context, defineCommand } from './define.ts';
import { pouring } from './heat-cautions.ts';
import { heatDoubt } from './heat-doubt.ts';
import { recipeInstead } from './heat-instead.ts';
import { heatWords } from './heat-refusals.ts';
import { alkaliAndWater } from './heat-solution.ts';
import { about, roughRange, scaleTaken, warmthRange, warmthStyle } from './heat-words.ts';
import { mixSteps } from './heat-working.ts';
import { capital, listed, nameOf } from './phrases.ts';
import { usualStrength } from './recipe.ts';

interface Asked {
  readonly said: MixReading;
  readonly input: MixInput;
  readonly mix: Mix;
  /** At the temperature of the mix, or at the one wanted; of fats that were named. */
  readonly melting: readonly Melting[];
  readonly data: HeatData;
  readonly context: Context;
  readonly style: Style;
}

/** Where nobody says, °C. */
const USUAL_C = 25;

export const mix = defineCommand({
  id: 'mix',
  summary: 'How warm is it when fats and lye meet, and is every fat melted there?',
  risk: 'caustic',
  options: {},
  examples: [
    { say: 'mix 500 g olive oil at 60 °C with 60 g NaOH + 140 g water at 25 °C', about: 'temperature of the mix' },
    {
      say: '850 g olive oil and 150 g beeswax at 50 °C, lye of 115 g NaOH and 250 g water at 40 °C: is all melted?',
      about: 'false trace',
    },
    {
      say: 'mix: 1 kg lard at 50 °C, 135 g NaOH and 270 g water, I want the mix at 42 °C',
      about: 'what the lye must be brought to',
    },
  ],
  instead: recipeInstead(/ (?:T\d+|temp\w*|warm|hot|cold|melt\w*|(?:oils?|fats?|lye|A\d+|at|is) N\d+) /),
  run: ({ text, options }, context) => {
    const line = heatLine(context.reader(), text);
    const claims = new Claims(line);
    const said = readMix(claims);
    const { reading, strength } = withStrength(claims.withUnits(text), context);
    const style = warmthStyle(line, styleFor(reading, undefined, context));
    const doubt = heatDoubt(reading, ['alkali', 'water', 'fats'], context);
    if (doubt) return { ok: false, fault: doubt };
    const data = context.heat();
    const found = alkaliAndWater(reading, () => context.last.recipe?.recipe ?? null, context, style);
    if (!found) return { ok: false, fault: { ...heatWords({ kind: 'no-alkali' }, style), caution: untilClear } };
    const fats = fatsOf(reading.fats, reading.totalFats, context);
    if (fats.length === 0)
      return { ok: false, fault: { ...heatWords({ kind: 'no-fat' }, style), caution: untilClear } };
    if (said.fatsC === null && said.solutionC === null) {
      return {
        ok: false,
        fault: {
          code: 'unclear',
          message: 'How warm are the fats and the lye solution?',
          hint: 'Answer for example "fats at 45 °C, lye at 40 °C".',
          candidates: [],
          caution: untilClear,
          complete: (answer) => ({ text: `${text}, ${answer}`, options }),
        },
      };
    }
    const ids = [...line.things].flatMap(([number, { meaning }]) =>
      meaning.kind === 'fat' ? [[meaning.id, number] as const] : [],
    );
    const unsaid = [
      ...(said.fatsC === null && said.wantedC === null ? ['fats'] : []),
      ...(said.solutionC === null && said.wantedC === null ? ['lye solution'] : []),
    ];
    const usualC = unsaid.length > 0 ? (context.settings.room ?? USUAL_C) : USUAL_C;
    const warm = fats.map(({ fat, grams }): WarmFat => {
      const own = ids.find(([id]) => id === fat.id)?.[1];
      return {
        fat,
        grams,
        temperatureC: (own === undefined ? undefined : said.fatC.get(own)) ?? said.fatsC ?? usualC,
      };
    });
    const input: MixInput = {
      fats: warm,
      alkali: found.alkali,
      waterGrams: found.waterGrams,
      solutionC: said.solutionC ?? usualC,
    };
    const mixed = mixOf(data, input);
    if (!mixed.ok) return { ok: false, fault: { ...heatWords(mixed.fault, style), caution: pouring } };
    // A bare weight of "oils" stands for no fat in particular.
    const anyFat = reading.fats.length === 0 && reading.totalFats !== null;
    const asked: Asked = {
      said,
      input,
      mix: mixed.value,
      melting: meltingAt(anyFat ? [] : warm.map(({ fat }) => fat), said.wantedC ?? mixed.value.temperatureC.nominal),
      data,
      context,
      style,
    };
    return {
      ok: true,
      value: {
        title: 'Fats and lye together',
        lead: leadOf(asked),
        body: bodyOf(asked).map((one): Block => ({ kind: 'text', text: one })),
        details: () => detailsOf(asked),
        assumptions: [
          ...(strength === null ? [] : [`I took the lye solution as ${percent(strength, style)} alkali.`]),
          ...found.taken,
          ...(unsaid.length > 0 ? [`I took the ${listed(unsaid)} at ${temperature(usualC, style)}.`] : []),
          ...scaleTaken(line),
        ],
        warnings: [
          ...warningsOf(asked),
          ...(claims.left().length > 0 ? [`I did not use ${claims.left().join(', ')}.`] : []),
        ],
        caution: pouring,
        actions: [
          { label: 'details', request: 'details' },
          { label: 'first aid', request: 'safety' },
        ],
        result: {
          temperatureC: wantedOf(said) ?? mixed.value.temperatureC.nominal,
          temperatureRangeC: { low: mixed.value.temperatureC.low, high: mixed.value.temperatureC.high },
          allMelted: unmelted(asked).length === 0,
          allMeltedFromC: mixed.value.allMeltedFromC,
          melting: asked.melting,
        },
        working: () => mixSteps(data, input, mixed.value, style),
      },
    };
  },
});

/** "400 g lye solution" of which nobody says how strong it is: the usual one. */
function withStrength(
  text: string,
  { read, settings }: Context,
): { readonly reading: RecipeReading; readonly strength: number | null } {
  const reading = read(text);
  const doubt = reading.doubts.find((one) => one.id === 'stock-strength');
  if (!doubt) return { reading, strength: null };
  const strength = usualStrength(settings);
  const strong = read(text.replace(doubt.said, `${doubt.said} (${percent(strength)})`));
  return strong.alkali.length > 0 ? { reading: strong, strength } : { reading, strength: null };
}

/** Named fats; a bare weight of oils counts as any fat, since all hold about the same heat. */
function fatsOf(
  read: readonly { readonly id: string; readonly grams: number }[],
  total: number | null,
  { catalogue, last }: Context,
) {
  const named = read.flatMap(({ id, grams }) => {
    const fat = catalogue.fats.get(id);
    return fat ? [{ fat, grams }] : [];
  });
  if (named.length > 0) return named;
  const any = catalogue.fats.get('olive-oil-virgin');
  if (total !== null && any) return [{ fat: any, grams: total }];
  return last.recipe?.recipe.fats ?? [];
}

/** What the mix shall be, where a part is still to be brought to its temperature. */
const wantedOf = ({ wantedC, fatsC, solutionC }: MixReading): number | null =>
  fatsC === null || solutionC === null ? wantedC : null;

const unmelted = ({ melting }: Asked): readonly Melting[] =>
  melting.filter(({ state }) => state === 'solid' || state === 'partly');

const peakLine = (asked: Asked): string => {
  const { mix: mixed, context, style } = asked;
  const at = `${capital(about(mixed.temperatureC, style))} when they meet`;
  const hard = unmelted(asked);
  if (hard.length === 0) return `${at}.`;
  return `${at}: not warm enough to keep ${listed(hard.map(({ fat }) => nameOf(fat, context.catalogue)))} melted.`;
};

/** What is asked for first: the temperature of the mix, or what a part must be brought to for it. */
function leadOf(asked: Asked): string {
  const { wantedC } = asked.said;
  return wantedC === null ? peakLine(asked) : bringLine(asked, wantedC);
}

function bodyOf(asked: Asked): string[] {
  const { mix: mixed, melting, said, data, style } = asked;
  const out: string[] = [];
  const hard = unmelted(asked);
  if (hard.length === 0 && melting.length > 0 && melting.every(({ state }) => state === 'melted'))
    out.push('Every fat stays melted there.');
  if (said.wantedC !== null && said.fatsC !== null && said.solutionC !== null) out.push(peakLine(asked));
  if (said.wantedC === null && hard.length > 0 && mixed.allMeltedFromC !== null)
    out.push(bringLine(asked, mixed.allMeltedFromC));
  const { low, high } = data.cook.mixing;
  const usual = `Cold process is usually mixed at ${roughRange(low, high, style)}`;
  const { nominal } = mixed.temperatureC;
  if (nominal < low && hard.length === 0)
    out.push(`${usual}; cooler is slower to trace, and fine where all stays melted. The reaction then warms it.`);
  else if (nominal > high) out.push(`${usual}: hotter it traces fast, and the reaction can overheat it.`);
  else out.push(`${usual}; the reaction then warms it further.`);
  return out;
}

/** What one part must be brought to, the other as it is; of a part that nobody measured, that part alone. */
function bringLine({ said, input, data, style }: Asked, wantedC: number): string {
  const goal = temperature(wantedC, style);
  const parts: readonly ('fats' | 'solution')[] =
    said.fatsC === null ? ['fats'] : said.solutionC === null ? ['solution'] : ['fats', 'solution'];
  const ways = parts.flatMap((part) => {
    const found = bringTo(data, input, part, wantedC);
    const name = part === 'fats' ? 'fats' : 'lye solution';
    return found.ok ? [`the ${name} to ${temperature(found.value.temperatureC, style)}`] : [];
  });
  return ways.length > 0
    ? `For ${goal} bring ${listed(ways, 'or')}, the other as it is.`
    : `To reach ${goal} change both: one part alone can’t do it.`;
}

function warningsOf(asked: Asked): string[] {
  const hard = unmelted(asked);
  const unknown = asked.melting.filter(({ state }) => state === 'unknown');
  const { catalogue } = asked.context;
  return [
    ...(hard.length > 0
      ? [
          `${capital(listed(hard.map(({ fat, meltedFromC }) => `${nameOf(fat, catalogue)} is melted only from about ${temperature(meltedFromC ?? 0, asked.style)}`)))}. Set fat thickens the batter and looks like trace, though little soap is made (false trace).`,
        ]
      : []),
    ...(unknown.length > 0
      ? [
          `I hold no melting range for ${listed(unknown.map(({ fat }) => nameOf(fat, catalogue)))}: look whether it is clear.`,
        ]
      : []),
  ];
}

function detailsOf({ input, melting, data, context, style }: Asked): Block[] {
  const source = data.sources.get(data.fat.heatCapacity.source)?.title ?? data.fat.heatCapacity.source;
  return [
    {
      kind: 'table',
      caption: 'How warm each part is, and where it melts',
      columns: [
        { title: 'Part', align: 'left' },
        { title: 'Now', align: 'right' },
        { title: 'Melts', align: 'right' },
      ],
      rows: [
        ...input.fats.map(({ fat, temperatureC }) => {
          const one = melting.find((melt) => melt.fat === fat.id);
          return [
            nameOf(fat.id, context.catalogue),
            temperature(temperatureC, style),
            one?.solidBelowC === null || one?.solidBelowC === undefined || one.meltedFromC === null
              ? 'not on record'
              : warmthRange(one.solidBelowC, one.meltedFromC, style),
          ];
        }),
        ['lye solution', temperature(input.solutionC, style), ''],
      ],
    },
    {
      kind: 'text',
      text: `Heat balance of the fats (heat capacity after ${source}, about ${number(data.fat.heatCapacity.relativeUncertainty * 100, 0, style)} %) and the lye solution, without loss to the pot and before the reaction warms it.`,
    },
  ];
}
