/** Fats by what is asked of them: from memory, within a range, rich in a fatty acid. */
import type { Block } from '../answer/types.ts';
import type { Catalogue, Chosen, Fat } from '../catalogue/types.ts';
import { fattyAcid } from '../engine/chemistry.ts';
import { acidGroup, compositionOf } from '../engine/composition.ts';
import type { Measure } from '../reading/question/facts.ts';
import type { FatList } from '../reading/question/fat.ts';
import { number, type Style } from '../units/print.ts';
import { toCelsius } from '../units/units.ts';
import type { Said } from './define.ts';
import { rangeText } from './fat-words.ts';
import { share } from './figures.ts';
import { isLocal } from './local.ts';
import { capital, inSentence } from './phrases.ts';

const labels = {
  saponification: { name: 'saponification value', unit: 'mg KOH/g', decimals: 0 },
  iodine: { name: 'iodine value', unit: 'g per 100 g', decimals: 0 },
  density: { name: 'density', unit: 'g/mL', decimals: 3 },
  melting: { name: 'melting range', unit: '°C', decimals: 0 },
} as const;

const nameOfFat = ({ name }: Fat): string => capital(inSentence(name));

export function listed(list: FatList, catalogue: Catalogue, style: Style): Said<'plain'> {
  const fats = [...catalogue.fats.values()];
  switch (list.by) {
    case 'memory': {
      const found = fats.filter(({ saponification }) => saponification.fromMemory);
      return answer(
        found.length === 0
          ? 'None: every saponification value in use was read in a source.'
          : `${found.length} of ${fats.length} fats go by a saponification value from memory, not yet read in a source.`,
        'Saponification value, mg KOH/g',
        found.map((fat) => `${nameOfFat(fat)}: ${rangeText(fat.saponification, 0, style)}`),
        found,
      );
    }
    case 'local': {
      const found = fats.filter((fat) => isLocal(fat, catalogue));
      return answer(
        found.length === 0
          ? 'No fat here has a value of this host’s own.'
          : `${found.length} with a value of this host’s own.`,
        'Saponification value, mg KOH/g',
        found.map((fat) => `${nameOfFat(fat)}: ${rangeText(fat.saponification, 1, style)}`),
        found,
      );
    }
    case 'all': {
      const meant = fats.filter((fat) => isKind(fat, list.of));
      const word = list.of === 'wax' ? 'waxes' : list.of === 'butter' ? 'butters' : 'fats, waxes and fatty acids';
      return {
        ...answer(`I know ${meant.length} ${word}.`, '', [], meant),
        body: [{ kind: 'text', text: meant.map(({ name }) => inSentence(name)).join(', ') }],
      };
    }
    case 'acid':
      return byAcid(list.acid, fats, style);
    case 'range':
      return byRange(list, fats, style);
  }
}

const isKind = ({ name, kind }: Fat, of: 'butter' | 'wax' | null): boolean =>
  of === null || (of === 'wax' ? /^wax/.test(kind) : /butter/i.test(name));

function byRange(list: Extract<FatList, { by: 'range' }>, fats: readonly Fat[], style: Style): Said<'plain'> {
  const { property, least, most } = list;
  const { name, unit, decimals } = labels[property];
  const [low, high] = [bound(least), bound(most)].sort(
    (a, b) => (a ?? Number.NEGATIVE_INFINITY) - (b ?? Number.POSITIVE_INFINITY),
  );
  // a figure too long to be one bounds nothing
  const finite = (value: number | null): number | null => (value !== null && Number.isFinite(value) ? value : null);
  const from = finite(least && most ? (low ?? null) : bound(least));
  const to = finite(least && most ? (high ?? null) : bound(most));
  const held = fats
    .filter((fat) => isKind(fat, list.of))
    .flatMap((fat) => (fat[property] ? [{ fat, chosen: fat[property] as Chosen }] : []));
  const inside = ({ chosen }: (typeof held)[number]): boolean =>
    (from === null || chosen.low >= from) && (to === null || chosen.high <= to);
  const meets = ({ chosen }: (typeof held)[number]): boolean =>
    (from === null || chosen.high > from) && (to === null || chosen.low < to);
  const wholly = held.filter(inside).sort((a, b) => a.chosen.nominal - b.chosen.nominal);
  const partly = held.filter((one) => !inside(one) && meets(one)).sort((a, b) => a.chosen.nominal - b.chosen.nominal);
  const print = (value: number): string => number(value, decimals, style);
  const bounds =
    from !== null && to !== null
      ? `from ${print(from)} to ${print(to)}`
      : from !== null
        ? `above ${print(from)}`
        : `below ${print(to ?? 0)}`;
  const line = ({ fat, chosen }: (typeof held)[number]): string =>
    `${nameOfFat(fat)}: ${rangeText(chosen, decimals, style)}`;
  const said = answer(
    `${wholly.length === 0 ? 'No fat here lies' : `${wholly.length} ${wholly.length === 1 ? 'fat lies' : 'fats lie'}`} wholly ${bounds} (${name}).`,
    `${capital(name)}, ${unit}`,
    wholly.map(line),
    wholly.map(({ fat }) => fat),
  );
  return partly.length === 0
    ? said
    : {
        ...said,
        details: [{ kind: 'list', title: 'Their range reaches over the limit', items: partly.slice(0, 40).map(line) }],
        actions: [{ label: 'details', request: 'details' }],
      };
}

const bound = (measure: Measure | null): number | null =>
  measure === null
    ? null
    : measure.unit?.dimension === 'temperature'
      ? toCelsius(measure.value, measure.unit.id)
      : measure.value;

const acidWords: Readonly<Record<string, string>> = {
  'C12:0': 'lauric acid',
  'C14:0': 'myristic acid',
  'C16:0': 'palmitic acid',
  'C18:0': 'stearic acid',
  'C18:1': 'oleic acid',
  'C18:2': 'linoleic acid',
  'C18:3': 'linolenic acid',
  'C18:1-OH': 'ricinoleic acid',
};

function byAcid(acid: string, fats: readonly Fat[], style: Style): Said<'plain'> {
  const wanted = fattyAcid(acid);
  const found = fats
    .flatMap((fat) => {
      const part = (compositionOf(fat)?.acids ?? [])
        .filter(
          ({ name, acid: one }) =>
            name === acid || (name.startsWith(`${acid}-`) && wanted !== null && acidGroup(one) === acidGroup(wanted)),
        )
        .reduce((sum, one) => sum + one.share, 0);
      return part >= 0.2 ? [{ fat, part }] : [];
    })
    .sort((a, b) => b.part - a.part)
    .slice(0, 12);
  return answer(
    `${found[0] ? `${nameOfFat(found[0].fat)} holds the most` : 'No fat here holds much'} ${acidWords[acid] ?? acid}.`,
    `Share of the fatty acids`,
    found.map(({ fat, part }) => `${nameOfFat(fat)}: about ${share(Math.round(part * 100) / 100, style)}`),
    found.map(({ fat }) => fat),
  );
}

/** Longer lists stand behind "details". */
const mostShown = 15;

function answer(lead: string, title: string, items: readonly string[], fats: readonly Fat[]): Said<'plain'> {
  const block = (shown: readonly string[]): Block[] =>
    shown.length === 0 ? [] : [{ kind: 'list', title, items: shown }];
  const long = items.length > mostShown;
  return {
    title: 'Fats',
    lead,
    body: block(items.slice(0, mostShown)),
    details: long ? block(items.slice(mostShown)) : [],
    assumptions: [],
    warnings: [],
    caution: [],
    actions: long ? [{ label: `the other ${items.length - mostShown}`, request: 'details' }] : [],
    result: { fats: fats.map(({ id, name }) => ({ id, name })) },
  };
}
