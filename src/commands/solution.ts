import type { Block } from '../answer/types.ts';
import type { HeatData } from '../catalogue/heat-types.ts';
import { type IceAnswer, iceForLimit, peakAgainstIce } from '../engine/heat/ice.ts';
import { type SolutionInput, withIce } from '../engine/heat/peak.ts';
import { coolSolution } from '../engine/heat/solution-cooling.ts';
import { type SolutionHeat, solutionHeatOf } from '../engine/heat/solution-heat.ts';
import { vesselFor } from '../engine/heat/vessels.ts';
import { Claims } from '../reading/heat/claims.ts';
import { heatLine } from '../reading/heat/line.ts';
import { type PotReading, potOf } from '../reading/heat/pot.ts';
import { type SolutionReading, solutionOf } from '../reading/heat/solution.ts';
import { mass, massBoth, percent, type Style, temperature } from '../units/print.ts';
import { untilClear } from './cautions.ts';
import { styleFor } from './check.ts';
import { type Context, defineCommand } from './define.ts';
import { hotLye, wrongMetal } from './heat-cautions.ts';
import { heatDoubt } from './heat-doubt.ts';
import { recipeInstead } from './heat-instead.ts';
import { heatWords } from './heat-refusals.ts';
import { alkaliAndWater, solutionInput } from './heat-solution.ts';
import { vesselLine, vesselTable, vesselWarning } from './heat-vessels.ts';
import { about, scaleTaken, timeRange, warmthRange, warmthStyle } from './heat-words.ts';
import { solutionSteps } from './heat-working.ts';
import { alkaliAmounts } from './phrases.ts';
import { icePicture } from './pictures.ts';

/** What people cool a lye solution to where they name nothing, °C: 40 °C or 100 °F (cold process, common practice). */
const USUAL_TARGET_C = { '°C': 40, '°F': (100 - 32) / 1.8 } as const;

interface Asked {
  readonly said: SolutionReading;
  readonly pot: PotReading;
  readonly input: SolutionInput;
  readonly heat: SolutionHeat;
  /** Ice (g) by the middle of the figures, where a limit is asked; `input` holds what even their high end needs. */
  readonly iceByTheMiddle: number | null;
  readonly limited: boolean;
  readonly data: HeatData;
  readonly context: Context;
  readonly style: Style;
}

/** A 33 % solution of NaOH mixed at room temperature gets no hotter, °C: the high end of what this command says of it. */
const usualPeakC = 115;

/** "Is glass ok for lye": a vessel, and no amounts to tell how hot it gets. */
const ofVessel = (message: string) => ({
  code: 'unclear' as const,
  message,
  hint: 'With the amounts I say how hot it gets in it, for example: 100 g NaOH in 233 g water, in a steel pot.',
  candidates: [],
});

export const solution = defineCommand({
  id: 'solution',
  summary: 'How hot does the lye solution get, and how much ice keeps it cool?',
  risk: 'caustic',
  options: {},
  examples: [
    { say: 'solution 150 g NaOH, 350 g water', about: 'how hot it gets' },
    { say: 'how much ice keeps 100 g NaOH in 233 g water below 60 °C?', about: 'ice in place of water' },
    { say: 'solution: 120 g KOH, 300 g water, half of the water as ice, in a steel pot', about: 'with ice' },
  ],
  instead: recipeInstead(null),
  run: ({ text }, context) => {
    const line = heatLine(context.reader(), text);
    const data = context.heat();
    const claims = new Claims(line);
    const pot = potOf(claims, data.pots, data.materials.values());
    const said = solutionOf(claims);
    const reading = context.read(claims.withUnits(text));
    const style = warmthStyle(line, styleFor(reading, undefined, context));
    const named = pot.material === null ? null : vesselFor(data, pot.material, 0);
    if (named?.verdict === 'attacked') {
      return {
        ok: false,
        fault: {
          code: 'refused',
          message: `Never in ${named.name.toLowerCase()}: lye ${named.hydrogen ? 'dissolves it and gives off hydrogen, a gas that burns and can explode' : 'attacks it, and it spoils the soap'}.`,
          hint: 'Use polypropylene (PP, recycling sign 5) or thick stainless steel; no spoon, whisk or foil of such metal either.',
          candidates: [],
          caution: wrongMetal,
        },
      };
    }
    if (reading.fates.length === 0 && (named !== null || said.asksVessel) && !context.last.recipe)
      return { ok: false, fault: { ...ofVessel(vesselLine(data, pot, usualPeakC)), caution: hotLye } };
    const doubt = heatDoubt(reading, ['alkali', 'water'], context);
    if (doubt) return { ok: false, fault: doubt };
    const found = alkaliAndWater(reading, () => context.last.recipe?.recipe ?? null, context, style);
    if (!found) return { ok: false, fault: { ...heatWords({ kind: 'no-alkali' }, style), caution: untilClear } };
    if (found.stock) {
      return {
        ok: false,
        fault: {
          code: 'unclear',
          message: 'A stock solution is dissolved already: it gave off its heat when it was made.',
          hint: 'Tell me the dry alkali and the water it was made from, and I tell you how hot that got.',
          candidates: [],
          caution: untilClear,
        },
      };
    }
    const { input, taken } = solutionInput(found, said, pot, context, style);
    const limited = said.limitC !== null && input.iceGrams === 0;
    const ice = limited && said.limitC !== null ? iceForLimit(data, input, said.limitC) : null;
    if (ice && !ice.ok) return { ok: false, fault: { ...heatWords(ice.fault, style), caution: hotLye } };
    // a limit is there to be kept: the advice is for the high end of the figures
    const used = ice?.ok ? withIce(input, ice.value.iceGramsForHighEnd ?? ice.value.iceGrams) : input;
    const heat = solutionHeatOf(data, used);
    if (!heat.ok) return { ok: false, fault: { ...heatWords(heat.fault, style), caution: hotLye } };
    const asked: Asked = {
      said,
      pot,
      input: used,
      heat: heat.value,
      iceByTheMiddle: ice?.ok ? ice.value.iceGrams : null,
      limited,
      data,
      context,
      style,
    };
    return {
      ok: true,
      value: {
        title: 'Heat of the lye solution',
        ...bodyOf(asked),
        details: () => [
          { kind: 'facts', rows: factsOf(asked) },
          vesselTable(data, heat.value.peakC.high),
          {
            kind: 'list',
            title: 'Where the figures come from',
            items: sourcesOf(asked),
          },
        ],
        assumptions: [...taken, ...scaleTaken(line)],
        warnings: warningsOf(asked),
        caution: hotLye,
        actions: [
          { label: 'details', request: 'details' },
          { label: 'first aid', request: 'safety' },
        ],
        result: {
          ...nominalOf(ice?.ok ? ice.value : { ...used, heat: heat.value }),
        },
        working: () => solutionSteps(data, used, heat.value, style),
      },
    };
  },
});

/** By the middle of the figures: the ice that a limit needs, else as given, and what it comes to. */
const nominalOf = ({ iceGrams, waterGrams, heat }: Pick<IceAnswer, 'iceGrams' | 'waterGrams' | 'heat'>) => ({
  peakC: heat.peakC,
  boilsAtC: heat.boilsAtC,
  iceGrams,
  iceLeftGrams: heat.iceLeftGrams,
  waterGrams,
  concentration: heat.concentration,
});

function bodyOf(asked: Asked): { readonly lead: string; readonly body: readonly Block[] } {
  const { input, heat, style, data } = asked;
  const { peakC, boilsAtC, iceLeftGrams } = heat;
  const total = input.waterGrams + input.iceGrams;
  const texts: string[] = [];
  const cooled = coolingLine(asked);
  const lead = leadOf(asked, cooled);
  const peak = peakLine(asked);
  if (lead !== peak) texts.push(peak);
  if (!asked.limited && input.iceGrams === 0 && peakC.nominal > 50) {
    const half = solutionHeatOf(data, withIce(input, total / 2));
    if (half.ok)
      texts.push(
        `With half of the water as ice (${mass(total / 2, style)}) it gets only to about ${temperature(half.value.peakC.nominal, style)}.`,
      );
  } else if (input.iceGrams > 0 && iceLeftGrams <= 0.5) texts.push('All of the ice melts: stir until it has.');
  if (cooled && lead !== cooled) texts.push(cooled);
  if (!asked.said.asksVessel) texts.push(vesselLine(data, asked.pot, peakC.high));
  if (!input.vessel) texts.push('Reckoned without loss: a cold, heavy vessel takes some degrees off.');
  return {
    lead,
    body: [
      ...texts.map((text): Block => ({ kind: 'text', text })),
      ...icePicture(peakAgainstIce(data, input), boilsAtC, asked.said.limitC, style),
    ],
  };
}

/** Closer to the boil than this a spot of undissolved alkali can boil it, K. */
const CLOSE_K = 15;

function peakLine({ heat: { peakC, boilsAtC, marginK }, limited, style }: Asked): string {
  const boil = `and boils at ${temperature(boilsAtC, style)}`;
  const peak = `It gets to ${about(peakC, style)}`;
  if (marginK < CLOSE_K) return `${peak} ${boil}: that is close.`;
  return limited ? `${peak}.` : `${peak} ${boil}.`;
}

function leadOf(asked: Asked, cooled: string | null): string {
  const { said, input, heat, limited, style } = asked;
  const vessel = vesselWarning(asked.data, asked.pot, heat.peakC.high, style);
  if (vessel) return vessel;
  const total = input.waterGrams + input.iceGrams;
  if (limited && said.limitC !== null) {
    const under = `at ${temperature(said.limitC, style)} or below`;
    const stays = heat.peakC.high <= said.limitC + 0.5 ? 'it stays' : 'it should stay';
    const ice = Math.ceil(input.iceGrams);
    const rest = ice < total ? ` and leave ${massBoth(total - ice, style)} as water` : '';
    return ice > 0
      ? `Take ${massBoth(ice, style)} of the ${massBoth(total, style)} water as ice${rest}, then ${stays} ${under}.`
      : `No ice needed: ${stays} ${under} by itself.`;
  }
  if (said.asksVessel) return vesselLine(asked.data, asked.pot, heat.peakC.high);
  if (said.limitC !== null) {
    const yes = heat.peakC.high <= said.limitC;
    return `${yes ? 'Yes' : 'No'}: it gets to ${about(heat.peakC, style)}.`;
  }
  if (heat.iceLeftGrams > 0.5)
    return `Not all of the ice melts: about ${massBoth(heat.iceLeftGrams, style)} of the ${massBoth(input.iceGrams, style)} is left.`;
  if (said.asksTime && cooled) return cooled;
  return peakLine(asked);
}

/** "Down to 40 °C in about 1 h 30 min to 2 h 20 min, in an open jug." */
function coolingLine({ said, pot, heat, data, context, style }: Asked): string | null {
  const targetC = said.targetC ?? USUAL_TARGET_C[style.temperatureUnit];
  if (heat.peakC.nominal <= targetC + 1) return null;
  const kind = pot.kind ?? 'jug';
  const roomC = said.roomC ?? context.settings.room ?? 20;
  const cooled = coolSolution(
    data,
    heat,
    {
      kind,
      ...(pot.litres === null ? {} : { litres: pot.litres }),
      lid: pot.lid ?? 'off',
      insulation: pot.insulation ?? 'none',
    },
    targetC,
    roomC,
  );
  if (!cooled.ok) {
    return said.targetC === null ? null : heatWords(cooled.fault, style).message;
  }
  const name = data.pots.pots.find(({ id }) => id === kind)?.name ?? kind;
  const { low, high } = cooled.value.minutes;
  const room = said.roomC === null ? ` (room ${temperature(roomC, style)})` : '';
  const open = (pot.lid ?? 'off') === 'off' ? 'an open' : pot.lid === 'on' ? 'a covered' : 'a half-covered';
  return `Down to ${temperature(targetC, style)} in about ${timeRange(low, high)} in ${open} ${pot.material === null ? name : name.replace('plastic ', '')}${room}; far sooner in a bath of cold water.`;
}

function warningsOf({ heat, limited, said, input, style }: Asked): string[] {
  const { peakC, boilsAtC, notes } = heat;
  const out: string[] = [];
  const has = (note: (typeof notes)[number]): boolean => notes.includes(note);
  if (has('may-boil'))
    out.push(
      `At the high end (${temperature(peakC.high, style)}) it would boil, at ${temperature(boilsAtC, style)}: use ice or more water.`,
    );
  if (said.limitC !== null && peakC.high > said.limitC + (limited ? 0.5 : 0))
    out.push(`It can pass your ${temperature(said.limitC, style)}: use more ${limited ? 'water' : 'ice'}.`);
  if (has('below-working-floor'))
    out.push('Stronger than 50 %: hard to dissolve. Use at least as much water as alkali.');
  if (has('crystallises') && heat.iceLeftGrams === 0)
    out.push(`Cooled below about ${temperature(heat.crystallisesBelowC, style)} it forms crystals: use it before.`);
  if (has('mostly-ice')) out.push('So much ice is hard to stir at first: keep some of the water liquid.');
  if (input.waterC !== undefined && input.waterC >= 50)
    out.push('Never lye into hot water: it can boil up in one spot.');
  if (has('weak-koh-data'))
    out.push('The heat of potassium hydroxide (KOH) is known to about 7 % only: hence the wide range.');
  if (has('two-alkalis')) out.push('For both alkalis together the figure is an estimate that nobody has measured.');
  if (has('outside-range'))
    out.push('Part of this lies outside the range of the published figures: the range is widened.');
  return out;
}

function factsOf({ input, heat, iceByTheMiddle, style }: Asked): { label: string; value: string }[] {
  const { peakC, boilsAtC, concentration, crystallisesBelowC, iceLeftGrams } = heat;
  return [
    { label: 'Alkali', value: alkaliAmounts(input.alkali, (grams) => massBoth(grams, style)) },
    { label: 'Water and ice', value: `${massBoth(input.waterGrams, style)} and ${massBoth(input.iceGrams, style)}` },
    ...(iceByTheMiddle === null
      ? []
      : [{ label: 'Ice by the middle of the figures', value: massBoth(iceByTheMiddle, style) }]),
    { label: 'Alkali in the solution', value: percent(concentration, style) },
    { label: 'Peak, no heat lost', value: warmthRange(peakC.low, peakC.high, style) },
    {
      label: 'Boils at',
      value: `${temperature(boilsAtC, style)}${input.pressureKpa === undefined ? ' at sea level' : ''}`,
    },
    { label: 'Crystals below', value: temperature(crystallisesBelowC, style) },
    ...(iceLeftGrams > 0 ? [{ label: 'Ice left', value: massBoth(iceLeftGrams, style) }] : []),
  ];
}

function sourcesOf({ data, heat }: Asked): string[] {
  const title = (id: string): string => data.sources.get(id)?.title ?? id;
  return [
    ...(heat.parts.naoh > 0
      ? [
          `Heat and boiling point of NaOH solutions: ${title(data.naoh.enthalpy.source)}, ${data.naoh.enthalpy.locator}.`,
        ]
      : []),
    ...(heat.parts.koh > 0
      ? [`Heat of KOH solutions: ${title(data.koh.heatOfSolution.source)}, ${data.koh.heatOfSolution.locator}.`]
      : []),
    `Ice: ${title(data.water.heatOfFusion.source)}, ${data.water.heatOfFusion.locator}.`,
    'Energy balance: what alkali, water, ice and vessel bring equals what the solution holds; nothing is lost to the room.',
  ];
}
