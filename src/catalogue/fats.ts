import { type Check, type Fields, optional } from './check.ts';
import {
  type ChoiceRule,
  choose,
  DENSITY_RULE,
  gradeOf,
  MELTING_RULE,
  UNSAPONIFIABLE_RULE,
  VALUE_RULE,
} from './choose.ts';
import type { Chosen, Datum, Fat, FatKind, FattyAcidProfile, Named } from './types.ts';

const KINDS: readonly FatKind[] = ['triglyceride', 'wax-ester', 'wax', 'fatty-acid'];
/** Density of water, g/mL, at the temperatures that relative densities refer to (CRC Handbook, IAPWS-95 values). */
const WATER: ReadonlyMap<number, number> = new Map([
  [15, 0.9991],
  [15.5, 0.99902],
  [20, 0.99821],
  [25, 0.99705],
  [30, 0.99565],
]);

/** Id, name and names of any item; `names` takes in the plain ones and the abbreviations. */
export function readNamed(raw: Fields, where: string, check: Check): Named {
  const plain = check.texts(raw, 'plain', where);
  const abbreviations = check.texts(raw, 'abbreviations', where);
  return {
    id: check.text(raw, 'id', where),
    name: check.text(raw, 'name', where),
    names: [...plain, ...check.texts(raw, 'names', where), ...abbreviations],
    ...optional('plain', plain.length > 0 ? plain : null),
    ...optional('abbreviations', abbreviations.length > 0 ? abbreviations : null),
  };
}

export function readFat(value: unknown, check: Check): Fat {
  const raw = check.fields(value, 'fat');
  const where = `fat ${String(raw['id'])}`;
  const named = readNamed(raw, where, check);
  const data = (key: string, low: number, high: number, scale = 1): readonly Datum[] =>
    check
      .list(raw[key], `${where} ${key}`)
      .map((entry) => readDatum(entry, low, high, scale, `${where} ${key}`, check));
  const pick = (entries: readonly Datum[], rule: ChoiceRule): Chosen | null =>
    choose(entries, rule, (source) => check.sources.get(source)?.title ?? source);

  const saponification = pick(data('saponification', 20, 600), VALUE_RULE);
  if (!saponification) check.fail(where, 'has no saponification range');
  const iodineData = data('iodine', 0, 250);
  const meltingData = data('melting', -60, 120);
  const iodine = pick(iodineData, VALUE_RULE);
  const melting = pick(meltingData, MELTING_RULE);
  const liquidFrom = Math.max(20, melting?.high ?? 20);
  const limits = [
    ...(iodine ? [] : iodineData.map((datum) => ({ ...datum, quantity: 'iodine' as const }))),
    ...(melting ? [] : meltingData.map((datum) => ({ ...datum, quantity: 'melting' as const }))),
  ];
  const [inci, sodiumSoap, potassiumSoap] = check.list(raw['inci'], `${where} inci`);
  if (typeof inci !== 'string') check.fail(where, 'has no INCI name');

  return {
    ...named,
    latin: check.textOrNull(raw, 'latin', where),
    kind: check.oneOf(raw, 'kind', KINDS, where),
    inci: { name: String(inci), sodiumSoap: textOrNull(sodiumSoap), potassiumSoap: textOrNull(potassiumSoap) },
    saponification: saponification ?? NOTHING,
    iodine,
    unsaponifiable: pick(data('unsaponifiable', 0, 100, 0.01), UNSAPONIFIABLE_RULE),
    density: pick(data('density', 0.8, 1.05), { ...DENSITY_RULE, prefer: (d) => (d.celsius ?? 20) >= liquidFrom }),
    melting,
    acids: raw['acids'] === null ? null : readAcids(raw, where, check),
    note: check.textOrNull(raw, 'note', where),
    ...optional('limits', limits.length > 0 ? limits : null),
  };
}

const NOTHING: Chosen = { low: 0, high: 0, nominal: 0, taken: 0, why: '', entries: [], fromMemory: true };
const textOrNull = (value: unknown): string | null => (typeof value === 'string' ? value : null);

function readDatum(value: unknown, least: number, most: number, scale: number, where: string, check: Check): Datum {
  const raw = check.fields(value, where);
  const source = check.source(raw, where);
  const confidence = check.confidence(raw, where);
  const [low, high] = check.range(raw['range'], least, most, where);
  const water = check.numberOrNull(raw, 'water', 0, 100, where);
  const celsius = check.numberOrNull(raw, 'celsius', 0, 120, where);
  const unit = water === null ? scale : WATER.get(water);
  if (unit === undefined) check.fail(where, `density of water at ${water} °C is not held`);
  const relative =
    water === null
      ? null
      : `relative density ${low ?? '–'} to ${high ?? '–'} against water at ${water} °C, as published`;
  const notes = [relative, check.textOrNull(raw, 'note', where)].filter((note) => note !== null);
  const fromMemory = source.standing === 'memory';
  return {
    low: low === null ? null : low * (unit ?? 1),
    high: high === null ? null : high * (unit ?? 1),
    source: source.id,
    locator: check.text(raw, 'at', where),
    grade: gradeOf(source.grade, fromMemory, confidence),
    fromMemory,
    confidence,
    ...optional('celsius', celsius),
    ...optional('note', notes.length > 0 ? notes.join('; ') : null),
  };
}

function readAcids(fat: Fields, where: string, check: Check): FattyAcidProfile {
  const raw = check.fields(fat['acids'], `${where} acids`);
  const typical = check.fields(raw['typical'], `${where} typical`) as Readonly<Record<string, number>>;
  const sum = Object.values(typical).reduce((total, percent) => total + percent, 0);
  // Published to two decimals: up to a dozen acids may miss 100 by a few hundredths.
  if (!(Math.abs(sum - 100) <= 0.06) || Object.values(typical).some((percent) => !(percent >= 0 && percent <= 100))) {
    check.fail(where, `typical fatty acids make ${sum} %, not 100`);
  }
  const others = fat['otherAcidRanges'] === undefined ? [] : check.list(fat['otherAcidRanges'], where);
  return {
    typical: Object.fromEntries(Object.entries(typical).map(([acid, percent]) => [acid, percent / sum])),
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
  const ranges = check.fields(raw['ranges'], `${where} ranges`);
  return Object.fromEntries(
    Object.entries(ranges).map(([acid, value]) => {
      const [low, high] = check.range(value, 0, 100, `${where} ${acid}`);
      return [acid, [(low ?? 0) / 100, (high ?? 100) / 100] as const];
    }),
  );
}
