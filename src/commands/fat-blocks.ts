/** What an answer about a fat is made of: facts, sources, relatives, fats side by side. */
import type { Block } from '../answer/types.ts';
import type { Catalogue, Chosen, Fat } from '../catalogue/types.ts';
import { ALKALI_MOLAR_MASS } from '../engine/chemistry.ts';
import { compositionOf } from '../engine/composition.ts';
import type { Property } from '../reading/question/fat.ts';
import { number, type Style, temperature } from '../units/print.ts';
import { gradeWord, groupLine, groupsOf, rangeText, relatives, sourceOf } from './fat-words.ts';
import { share } from './figures.ts';
import { capital, inSentence } from './phrases.ts';

/** NaOH or KOH, pure, for one gram of the fat: g at the nominal value, and at both ends. */
function alkaliPer(fat: Fat, molarMass: number): Chosen {
  const factor = molarMass / ALKALI_MOLAR_MASS.koh / 1000;
  const { saponification } = fat;
  return {
    ...saponification,
    nominal: saponification.nominal * factor,
    low: saponification.low * factor,
    high: saponification.high * factor,
  };
}

export const melting = ({ low, high }: Chosen, style: Style): string =>
  style.temperatureUnit === '°F'
    ? `${number(low * 1.8 + 32, 0, style)} to ${temperature(high, style)}`
    : `${number(low, 0, style)} to ${number(high, 0, style)} °C (${number(low * 1.8 + 32, 0, style)} to ${number(high * 1.8 + 32, 0, style)} °F)`;

/** "100 g takes 13.3 g (13.1 to 13.9) sodium hydroxide (NaOH) …" */
export function alkaliLine(fat: Fat, style: Style): string {
  const naoh = alkaliPer(fat, ALKALI_MOLAR_MASS.naoh);
  const koh = alkaliPer(fat, ALKALI_MOLAR_MASS.koh);
  const per = (one: Chosen): string =>
    `${number(one.nominal * 100, 1, style)} g (${number(one.low * 100, 1, style)} to ${number(one.high * 100, 1, style)})`;
  return `100 g takes ${per(naoh)} sodium hydroxide (NaOH) or ${per(koh)} potassium hydroxide (KOH), pure, with nothing left over.`;
}

type Rows = Extract<Block, { kind: 'facts' }>['rows'];

export function factsOf(fat: Fat, catalogue: Catalogue, style: Style): Rows {
  const groups = groupsOf(fat);
  const row = (label: string, value: string | null): Rows => (value === null ? [] : [{ label, value }]);
  return [
    ...row(
      'Saponification value',
      `${rangeText(fat.saponification, 0, style)} mg KOH/g; NaOH ${number(alkaliPer(fat, ALKALI_MOLAR_MASS.naoh).nominal * 100, 1, style)} g per 100 g`,
    ),
    ...row('Iodine value', fat.iodine ? rangeText(fat.iodine, 0, style) : null),
    ...row('Melts at', fat.melting ? melting(fat.melting, style) : null),
    ...row('Density', fat.density ? `${rangeText(fat.density, 3, style)} g/mL` : null),
    ...row('Fatty acids', groups ? groupLine(groups, style) : null),
    ...row('Value from', gradeWord(fat.saponification, catalogue)),
  ];
}

export function sourceLine(fat: Fat, property: Property, catalogue: Catalogue): Block[] {
  const chosen =
    property === 'saponification' ||
    property === 'iodine' ||
    property === 'density' ||
    property === 'melting' ||
    property === 'unsaponifiable'
      ? fat[property]
      : null;
  return chosen
    ? [{ kind: 'text', text: `From: ${sourceOf(chosen, catalogue)} (${gradeWord(chosen, catalogue)}).` }]
    : [];
}

/** Where in the source. */
const locatorOf = ({ entries, taken }: Chosen): string => {
  const { locator = '' } = entries[taken] ?? {};
  return locator === '' || locator === 'page not looked up' ? '' : ` (${locator})`;
};

export function sources(fat: Fat, catalogue: Catalogue, style: Style): string[] {
  const one = (label: string, chosen: Chosen | null, decimals: number): string[] =>
    chosen ? [`${label} ${rangeText(chosen, decimals, style)}. ${chosen.why}${locatorOf(chosen)}`] : [];
  return [
    ...one('Saponification value', fat.saponification, 1),
    ...one('Iodine value', fat.iodine, 1),
    ...one('Melting', fat.melting, 1),
    ...one('Density', fat.density, 4),
    ...(fat.acids
      ? [
          `Fatty acids: ${catalogue.sources.get(fat.acids.source)?.title ?? fat.acids.source}, ${fat.acids.locator}${fat.acids.fromMemory ? ' (from memory)' : ''}`,
        ]
      : []),
  ];
}

export function moreOf(fat: Fat, catalogue: Catalogue, style: Style): Block[] {
  const acids = compositionOf(fat)?.acids.filter((one) => one.share >= 0.005) ?? [];
  const near = relatives(fat, catalogue);
  const rows = [
    { label: 'Latin', value: fat.latin ?? '' },
    {
      label: 'INCI',
      value: [fat.inci.name, fat.inci.sodiumSoap, fat.inci.potassiumSoap].filter((one) => one !== null).join('; '),
    },
    { label: 'Also called', value: fat.names.slice(0, 12).join(', ') },
    { label: 'Stays unsaponified', value: fat.unsaponifiable ? `up to ${share(fat.unsaponifiable.high, style)}` : '' },
    {
      label: 'Acids',
      value: [...acids]
        .sort((a, b) => b.share - a.share)
        .map(({ name, share: part }) => `${name} ${number(part * 100, 1, style)} %`)
        .join(', '),
    },
    { label: 'Most like it', value: near.map((one) => inSentence(one.fat.name)).join(', ') },
    { label: 'Note', value: fat.note ?? '' },
  ].filter(({ value }) => value !== '');
  return [{ kind: 'facts', rows }];
}

export function comparison(fats: readonly Fat[], style: Style): Block {
  const cell = (chosen: Chosen | null, decimals: number): string => (chosen ? rangeText(chosen, decimals, style) : '');
  return {
    kind: 'table',
    caption: 'Side by side',
    columns: [
      { title: 'Fat', align: 'left' },
      { title: 'SV', align: 'right' },
      { title: 'Iodine', align: 'right' },
      { title: 'Melts °C', align: 'right' },
    ],
    rows: fats.map((one) => [
      capital(inSentence(one.name)),
      cell(one.saponification, 0),
      cell(one.iodine, 0),
      cell(one.melting, 0),
    ]),
  };
}
