import { type Check, type Fields, optional } from './check.ts';
import { type ChoiceRule, choose, DENSITY_RULE, MELTING_RULE, UNSAPONIFIABLE_RULE, VALUE_RULE } from './choose.ts';
import { readDatum } from './datum.ts';
import type { Chosen, Datum, Fat, FatKind, FattyAcidProfile } from './types.ts';

const KINDS: readonly FatKind[] = ['triglyceride', 'wax-ester', 'wax', 'fatty-acid'];
const NOTHING: Chosen = { low: 0, high: 0, nominal: 0, taken: 0, why: '', entries: [], fromMemory: true };

/** `inciSource`: where all the INCI names were taken from. */
export function readFat(raw: Fields, inciSource: string, check: Check): Fat {
  const where = `fat ${String(raw['id'])}`;
  const data = (key: string, low: number, high: number, scale = 1): readonly Datum[] =>
    check.list(raw[key], where).map((entry) => readDatum(entry as Fields, low, high, scale, `${where} ${key}`, check));
  const pick = (entries: readonly Datum[], rule: ChoiceRule): Chosen | null => choose(entries, rule, check.titleOf);

  const saponification = pick(data('saponification', 20, 600), VALUE_RULE);
  if (!saponification) check.fail(where, 'has no saponification range');
  const iodineData = data('iodine', 0, 250);
  const meltingData = data('melting', -60, 120);
  const iodine = pick(iodineData, VALUE_RULE);
  const melting = pick(meltingData, MELTING_RULE);
  // Melted, and no hotter than a kitchen has it: 0.07 % a kelvin is lost between.
  const liquidFrom = Math.max(20, melting?.high ?? 20);
  const prefer = ({ celsius = 20 }: Datum): boolean => celsius >= liquidFrom && celsius <= liquidFrom + 30;
  const limits = [
    ...(iodine ? [] : iodineData.map((datum) => ({ ...datum, quantity: 'iodine' as const }))),
    ...(melting ? [] : meltingData.map((datum) => ({ ...datum, quantity: 'melting' as const }))),
  ];
  const [inci, sodiumSoap, potassiumSoap] = check.list(raw['inci'], where);
  if (typeof inci !== 'string') check.fail(where, 'has no INCI name');
  return {
    ...check.named(raw, where),
    latin: check.textOrNull(raw, 'latin', where),
    kind: check.oneOf(raw, 'kind', KINDS, where),
    inci: {
      name: String(inci),
      sodiumSoap: textOrNull(sodiumSoap),
      potassiumSoap: textOrNull(potassiumSoap),
      source: inciSource,
    },
    saponification: saponification ?? NOTHING,
    iodine,
    unsaponifiable: pick(data('unsaponifiable', 0, 100, 0.01), UNSAPONIFIABLE_RULE),
    density: pick(data('density', 0.8, 1.05), { ...DENSITY_RULE, prefer }),
    melting,
    acids: raw['acids'] === null ? null : readAcids(raw, where, check),
    note: check.textOrNull(raw, 'note', where),
    ...optional('limits', limits.length > 0 ? limits : null),
  };
}

const textOrNull = (value: unknown): string | null => (typeof value === 'string' ? value : null);

function readAcids(fat: Fields, where: string, check: Check): FattyAcidProfile {
  const raw = check.fields(fat['acids'], `${where} acids`);
  const percents = check.fields(raw['typical'], `${where} typical`) as Readonly<Record<string, number>>;
  let sum = 0;
  for (const acid in percents) sum += check.number(percents, acid, 0, 100, `${where} typical`);
  // Published to two decimals: up to a dozen acids may miss 100 by a few hundredths.
  if (!(Math.abs(sum - 100) <= 0.06)) check.fail(where, `typical fatty acids make ${sum} %, not 100`);
  const typical: Record<string, number> = {};
  for (const acid in percents) typical[acid] = (percents[acid] ?? 0) / sum;
  const others = fat['otherAcidRanges'] === undefined ? [] : check.list(fat['otherAcidRanges'], where);
  return {
    typical,
    ranges: readAcidRanges(raw, where, check),
    ...check.provenance(raw, `${where} acids`),
    ...optional('basis', check.textOrNull(raw, 'basis', where)),
    ...optional(
      'others',
      others.length === 0
        ? null
        : others.map((other) => {
            const fields = check.fields(other, where);
            return {
              ranges: readAcidRanges(fields, where, check),
              ...check.provenance(fields, `${where} otherAcidRanges`),
            };
          }),
    ),
  };
}

function readAcidRanges(raw: Fields, where: string, check: Check): Readonly<Record<string, readonly [number, number]>> {
  const percents = check.fields(raw['ranges'], `${where} ranges`);
  const ranges: Record<string, readonly [number, number]> = {};
  for (const acid in percents) {
    const [low, high] = check.range(percents[acid], 0, 100, where);
    ranges[acid] = [(low ?? 0) / 100, (high ?? 100) / 100];
  }
  return ranges;
}
