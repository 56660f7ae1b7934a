/** The working of answers that are no recipe: conversions, and the figures held of a fat. */
import type { Catalogue, Chosen, Fat } from '../catalogue/types.ts';
import { number, type Style } from '../units/print.ts';
import { type Unit, unitSource } from '../units/units.ts';
import type { Density } from './density.ts';
import { sourceOf } from './fat-words.ts';
import type { Step } from './kept.ts';
import { capital, inSentence } from './phrases.ts';

const sourcesOf = (units: readonly Unit[]): string => [...new Set(units.map(unitSource))].join('; ');

/** `value`: as written, in `own`; `found`: in `to`. */
export function conversionStep(value: number, own: Unit, found: number, to: Unit, style: Style): Step {
  const warm = own.dimension === 'temperature';
  return {
    name: 'conversion',
    asked: ['convert', 'factor', own.symbol, to.symbol],
    formula: warm
      ? own.id === '°F'
        ? '(°F − 32) ÷ 1.8'
        : to.id === '°F'
          ? '°C × 1.8 + 32'
          : 'K = °C + 273.15'
      : `figure × ${number(own.factor, 6, style)} ÷ ${number(to.factor, 6, style)}`,
    inputs: [{ name: 'figure', value, unit: own.id }],
    value: found,
    unit: to.id,
    shown: `${number(value, 4, style)} ${own.symbol} = ${number(found, 4, style)} ${to.symbol}`,
    source: sourcesOf([own, to]),
  };
}

export function densitySteps(
  value: number,
  own: Unit,
  found: number,
  to: Unit,
  density: Density,
  style: Style,
): readonly Step[] {
  const toMass = to.dimension === 'mass';
  const base = value * own.factor;
  const through = toMass ? base * density.nominal : base / density.nominal;
  const times = ({ factor }: Unit, base: string): string =>
    factor === 1 ? '' : ` × ${number(factor, 4, style)} ${base}`;
  const [from, into] = toMass ? ['mL', 'g'] : ['g', 'mL'];
  return [
    {
      name: toMass ? 'weight of the volume' : 'volume of the weight',
      asked: ['weight', 'volume', 'density', to.symbol],
      formula: `figure${times(own, from)} ${toMass ? '×' : '÷'} density${to.factor === 1 ? '' : ` ÷ ${number(to.factor, 4, style)} ${into}`}`,
      inputs: [
        { name: 'figure', value, unit: own.id },
        { name: `density of ${density.what}`, value: density.nominal, unit: 'g/mL' },
      ],
      value: found,
      unit: to.id,
      shown: `${number(base, 1, style)} ${from} ${toMass ? '×' : '÷'} ${number(density.nominal, 3, style)} g/mL = ${number(through, 1, style)} ${into}${to.factor === 1 ? '' : ` = ${number(found, 3, style)} ${to.symbol}`}`,
      source: `${density.source}; ${sourcesOf([own, to])}`,
      range: `Density ${number(density.low, 3, style)} to ${number(density.high, 3, style)} g/mL${density.spread ? `, ${density.spread}` : ''}.`,
      sure: 'A weighed amount is surer: how full a cup is differs more than the density.',
    },
  ];
}

/** What is held of a fat, each figure with its source; the one that was asked first. */
export function fatSteps(fat: Fat, first: string | null, catalogue: Catalogue, style: Style): readonly Step[] {
  const name = inSentence(fat.name);
  const step = (
    key: string,
    title: string,
    asked: readonly string[],
    chosen: Chosen | null,
    unit: string,
    places: number,
  ): readonly (Step & { key: string })[] =>
    chosen
      ? [
          {
            key,
            name: `${title} of ${name}`,
            asked: [title, ...asked],
            formula: 'middle of the published range',
            inputs: [
              { name: 'low', value: chosen.low, unit },
              { name: 'high', value: chosen.high, unit },
            ],
            value: chosen.nominal,
            unit,
            shown: `${number(chosen.nominal, places, style)} ${unit}, from ${number(chosen.low, places, style)} to ${number(chosen.high, places, style)}`,
            source: `${sourceOf(chosen, catalogue)}${chosen.fromMemory ? ' (from memory)' : ''}`,
            range: capital(chosen.why),
            sure: 'Lots differ; a supplier’s certificate for yours would replace this range.',
          },
        ]
      : [];
  const all = [
    ...step('saponification', 'saponification value', ['sv', 'sap', 'sap value'], fat.saponification, 'mg KOH/g', 1),
    ...step('iodine', 'iodine value', ['iodine'], fat.iodine, 'g/100 g', 0),
    ...step('density', 'density', ['weight'], fat.density, 'g/mL', 3),
    ...step('melting', 'melting range', ['melting', 'melting point', 'melts'], fat.melting, '°C', 0),
    ...step('unsaponifiable', 'unsaponifiable matter', ['unsaponifiable'], fat.unsaponifiable, '1', 3),
  ];
  return [...all.filter(({ key }) => key === first), ...all.filter(({ key }) => key !== first)].map(
    ({ key: _key, ...one }) => one,
  );
}
