import { type Check, type Fields, optional } from './check.ts';
import { type ChoiceRule, choose, DENSITY_RULE, MELTING_RULE, UNSAPONIFIABLE_RULE, VALUE_RULE } from './choose.ts';
import { readDatum } from './datum.ts';
import type { Chosen, Datum, Fat, FatKind, FattyAcidProfile } from './types.ts';

const KINDS: readonly FatKind[] = ['triglyceride', 'wax-ester', 'wax', 'fatty-acid'];
const NOTHING: Chosen = { low: 0, high: 0, nominal: 0, taken: 0, why: '', entries: [], fromMemory: true };

/**
 * A fat whose quantities are read, checked and chosen when first looked at: a start needs a few of the hundreds.
 * `settle` on the check decides what a fault found then does.
 */
export function readFat(raw: Fields, check: Check): Fat {
  const where = `fat ${String(raw['id'])}`;
  const data = (key: string, low: number, high: number, scale = 1): readonly Datum[] =>
    check.list(raw[key], where).map((entry) => readDatum(entry as Fields, low, high, scale, `${where} ${key}`, check));
  const pick = (entries: readonly Datum[], rule: ChoiceRule): Chosen | null => choose(entries, rule, check.titleOf);

  const iodineData = check.lazy(() => data('iodine', 0, 250));
  const meltingData = check.lazy(() => data('melting', -60, 120));
  const saponification = check.lazy(() => {
    const chosen = pick(data('saponification', 20, 600), VALUE_RULE);
    if (!chosen) check.fail(where, 'has no saponification range');
    return chosen ?? NOTHING;
  });
  const iodine = check.lazy(() => pick(iodineData(), VALUE_RULE));
  const melting = check.lazy(() => pick(meltingData(), MELTING_RULE));
  const unsaponifiable = check.lazy(() => pick(data('unsaponifiable', 0, 100, 0.01), UNSAPONIFIABLE_RULE));
  const density = check.lazy(() => {
    const liquidFrom = Math.max(20, melting()?.high ?? 20);
    const prefer = (datum: Datum): boolean => (datum.celsius ?? 20) >= liquidFrom;
    return pick(data('density', 0.8, 1.05), { ...DENSITY_RULE, prefer });
  });
  const acids = check.lazy(() => (raw['acids'] === null ? null : readAcids(raw, where, check)));

  const [inci, sodiumSoap, potassiumSoap] = check.list(raw['inci'], where);
  if (typeof inci !== 'string') check.fail(where, 'has no INCI name');
  return {
    ...check.named(raw, where),
    latin: check.textOrNull(raw, 'latin', where),
    kind: check.oneOf(raw, 'kind', KINDS, where),
    inci: { name: String(inci), sodiumSoap: textOrNull(sodiumSoap), potassiumSoap: textOrNull(potassiumSoap) },
    note: check.textOrNull(raw, 'note', where),
    get saponification() {
      return saponification();
    },
    get iodine() {
      return iodine();
    },
    get unsaponifiable() {
      return unsaponifiable();
    },
    get density() {
      return density();
    },
    get melting() {
      return melting();
    },
    get acids() {
      return acids();
    },
    get limits() {
      const limits = [
        ...(iodine() ? [] : iodineData().map((datum) => ({ ...datum, quantity: 'iodine' as const }))),
        ...(melting() ? [] : meltingData().map((datum) => ({ ...datum, quantity: 'melting' as const }))),
      ];
      return limits.length > 0 ? limits : undefined;
    },
  };
}

/** Looks at everything of a fat, so that every fault in it shows. */
export function lookThrough(fat: Fat): void {
  void [fat.saponification, fat.iodine, fat.unsaponifiable, fat.density, fat.melting, fat.acids];
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
