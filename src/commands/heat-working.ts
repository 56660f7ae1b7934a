/** How the figures about heat and scent were found, step by step, for whoever asks. */
import type { HeatData, Sourced } from '../catalogue/heat-types.ts';
import type { Cooling } from '../engine/heat/cooling.ts';
import type { ScentFlash } from '../engine/heat/flash-point.ts';
import type { Mix, MixInput } from '../engine/heat/mixing.ts';
import type { SolutionInput } from '../engine/heat/peak.ts';
import type { ScentLoad } from '../engine/heat/scent-load.ts';
import type { SolutionHeat } from '../engine/heat/solution-heat.ts';
import type { Reading } from '../reading/heat/readings.ts';
import { mass, number, percent, percentRange, type Style, temperature } from '../units/print.ts';
import { roughRange, timeRange, warmthRange } from './heat-words.ts';
import type { Step } from './kept.ts';

const from = (data: HeatData, { source, locator, fromMemory }: Sourced): string =>
  `${data.sources.get(source)?.title ?? source}, ${locator}${fromMemory ? ' (from memory)' : ''}`;

export function solutionSteps(data: HeatData, input: SolutionInput, heat: SolutionHeat, style: Style): readonly Step[] {
  const { peakC, boilsAtC, concentration, parts } = heat;
  const alkali = parts.koh > 0 ? data.koh.heatOfSolution : data.naoh.enthalpy;
  const amounts = [
    ...input.alkali.map(({ id, grams }) => ({ name: id === 'naoh' ? 'NaOH' : 'KOH', value: grams, unit: 'g' })),
    { name: 'water', value: input.waterGrams, unit: 'g' },
    { name: 'ice', value: input.iceGrams, unit: 'g' },
  ];
  return [
    {
      name: 'peak',
      asked: ['hot', 'peak', 'temperature', 'heat', 'maximum', 'hottest'],
      formula: 'heat of alkali + water + ice (+ vessel) before = heat of the solution (+ vessel) at the peak',
      inputs: amounts,
      value: peakC.nominal,
      unit: '°C',
      shown: `the balance closes at ${temperature(peakC.nominal, style)}`,
      source: from(data, alkali),
      range: 'NaOH to about 50 %, KOH to about 51 %; no heat is lost to the room.',
      sure: `Published heats of solution differ: ${warmthRange(peakC.low, peakC.high, style)}. A vessel, a purity below 100 % and stirring slowly all take degrees off.`,
    },
    {
      name: 'boiling point',
      asked: ['boil', 'boils', 'boiling'],
      formula: 'vapour pressure over the solution = pressure of the air',
      inputs: [
        { name: 'alkali in the solution', value: concentration * 100, unit: '%' },
        { name: 'air', value: input.pressureKpa ?? 101.325, unit: 'kPa' },
      ],
      value: boilsAtC,
      unit: '°C',
      shown: `${percent(concentration, style)} boils at ${temperature(boilsAtC, style)}`,
      source: from(data, parts.koh > 0 ? data.koh.vapourPressure : data.naoh.vapourPressure),
      sure: 'Within about 2 °C to 40 %, 5 °C at 50 %.',
    },
  ];
}

export function mixSteps(data: HeatData, input: MixInput, { temperatureC }: Mix, style: Style): readonly Step[] {
  return [
    {
      name: 'temperature of the mix',
      asked: ['temperature', 'mix', 'blend', 'warm', 'hot'],
      formula: 'heat of the fats + heat of the lye solution before = heat of both at the mix',
      inputs: [
        ...input.fats.map(({ fat, temperatureC: own }) => ({ name: fat.name, value: own, unit: '°C' })),
        { name: 'lye solution', value: input.solutionC, unit: '°C' },
      ],
      value: temperatureC.nominal,
      unit: '°C',
      shown: `the balance closes at ${temperature(temperatureC.nominal, style)}`,
      source: from(data, data.fat.heatCapacity),
      range: 'Melted fats; without loss to the pot and before the reaction warms it.',
      sure: `Heat capacities are good to about 5 %: ${warmthRange(temperatureC.low, temperatureC.high, style)}.`,
    },
  ];
}

interface Cooled {
  readonly cooling: Cooling;
  readonly readings: readonly Reading[];
  readonly targetC: number;
  readonly roomC: number;
  readonly scaled: boolean;
}

export function coolSteps(data: HeatData, cooled: Cooled, style: Style): readonly Step[] {
  const { cooling, readings, targetC, roomC, scaled } = cooled;
  const { minutes } = cooling;
  const fitted = readings.length > 0;
  return [
    {
      name: 'time to cool',
      asked: ['time', 'minutes', 'long', 'when', 'cool', 'cooling'],
      formula: fitted
        ? scaled
          ? 'the curve of the pot as described, stretched in time to fit the readings'
          : 'T(t) = room + (T₀ − room) · e^(−k·t), with k and T₀ by least squares through the readings'
        : 'minutes = ∫ heat capacity ÷ heat lost, over the temperatures from now to the target',
      inputs: [
        ...readings.map(({ minute, temperatureC }) => ({
          name: `reading at minute ${number(minute, 0, style)}`,
          value: temperatureC,
          unit: '°C',
        })),
        { name: 'room', value: roomC, unit: '°C' },
        { name: 'target', value: targetC, unit: '°C' },
      ],
      value: minutes.nominal,
      unit: 'min',
      shown: `${temperature(targetC, style)} is reached at minute ${number(minutes.nominal, 0, style)}`,
      source: fitted
        ? 'Newton’s law of cooling; least squares with the thermometer’s step as error (JCGM 100:2008 F.2.2.1)'
        : `${from(data, data.air.table)}; ${from(data, data.water.evaporation)}`,
      sure: fitted
        ? `${timeRange(minutes.low, minutes.high)} in all. A pot loses heat more slowly as it cools, which widens the far end.`
        : `${timeRange(minutes.low, minutes.high)}. Lid, draught and stirring matter most: two readings beat any formula.`,
    },
  ];
}

export function scentSteps(data: HeatData, flash: ScentFlash | null, load: ScentLoad, style: Style): readonly Step[] {
  const [low, high] = flash?.stiffensC ?? [0, 0];
  const oil = flash?.lowest.oil == null ? null : data.oils.get(flash.lowest.oil);
  return [
    ...(flash
      ? [
          {
            name: 'temperature to add it at',
            asked: ['add', 'below', 'flash', 'margin', 'temperature'],
            formula: 'lowest flash point of the parts − margin',
            inputs: [
              { name: 'flash point', value: flash.flashPointC, unit: '°C' },
              { name: 'margin', value: flash.marginK, unit: '°C' },
            ],
            value: flash.addBelowC,
            unit: '°C',
            shown: `${temperature(flash.flashPointC, style)} − margin = ${temperature(flash.addBelowC, style)}`,
            source: `${flash.lowest.given || !oil ? 'the data sheet you gave' : from(data, oil.flash)}; margin: ${from(data, data.cook.scentMarginK)}`,
            sure: `Lots differ; a model of mixtures can be 6 °C too high, hence the margin. Soap stiffens below about ${roughRange(low, high, style)}.`,
          } satisfies Step,
        ]
      : []),
    {
      name: 'weight of the scent',
      asked: ['grams', 'weight', 'load', 'much'],
      formula: 'share × weight of the fat',
      inputs: [
        { name: 'share of the fat', value: load.shareOfFat * 100, unit: '%' },
        { name: 'fat', value: load.grams / load.shareOfFat, unit: 'g' },
      ],
      value: load.grams,
      unit: 'g',
      shown: `${percent(load.shareOfFat, style)} of ${mass(load.grams / load.shareOfFat, style)} = ${mass(load.grams, style, 0.1)}`,
      source: from(data, data.cook.scentLoad),
    },
    {
      name: 'share of the finished bar',
      asked: ['bar', 'share', 'finished'],
      formula: 'scent × (1 − water kept) ÷ (fat + alkali + scent)',
      inputs: [
        { name: 'scent', value: load.grams, unit: 'g' },
        { name: 'cured bar', value: load.barGrams, unit: 'g' },
      ],
      value: load.shareOfBar.nominal * 100,
      unit: '%',
      shown: `${mass(load.grams, style, 0.1)} in a bar of ${mass(load.barGrams, style)} = ${percent(load.shareOfBar.nominal, style)}`,
      source: from(data, data.cook.cureWaterShare),
      sure: `A cured bar keeps 8 to 15 % water: ${percentRange(load.shareOfBar.low, load.shareOfBar.high, style)}.`,
    },
  ];
}
