/** A scent, or a blend in parts, weights or shares: "lavender and lemongrass EO 2:1, 3 % of 500 g oils". */
import { be, type Claims, t } from './claims.ts';

export interface ScentPart {
  /** Of the catalogue. */
  readonly id: string;
  readonly text: string;
  readonly share: number;
  /** From a data sheet, °C. */
  readonly flashC: number | null;
}

export interface ScentReading {
  readonly parts: readonly ScentPart[];
  /** Nobody said how the parts stand to each other. */
  readonly equal: boolean;
  readonly grams: number | null;
  readonly load: number | null;
  readonly fatGrams: number | null;
  /** The weight was said of the batch or the soap, not of the fats. */
  readonly ofBatch: boolean;
}

/** g; "ppo" is per pound of oils. */
const POUND = 453.59237;

const generic: ReadonlySet<string> = new Set(['essential-oil', 'fragrance-oil']);

const fats =
  '(?:(?:of|the|my|total|base|soap|melted|liquid|hard|weight|worth|in|all) )*(?:oils?|fats?|butters?|F\\d+|oil weight|recipe|base)';

const flash = [
  ` (?:flash ?point|flashpoint|fp|flashes|flash|flashing)s? (?:(?:point|s) )?${be}(?:[a-z]+ ){0,2}?${be}${t} `,
  ` (?:sheet|sds|msds|supplier\\w*|vendor|bottle|label|coa|certificate) (?:[a-z]+ |S\\d+ ){0,5}?${be}${t} `,
  ` ${t} (?:c |f |degrees? )?(?:flash ?point|flashpoint|fp|flash) `,
];

interface Named {
  /** Its number in the line. */
  readonly at: number;
  readonly id: string;
  readonly text: string;
}

function scentsIn({ line }: Claims): readonly Named[] {
  const all = [...line.text.matchAll(/ S(\d+)(?= )/g)].flatMap(([, number]): Named[] => {
    const thing = line.things.get(Number(number));
    if (!thing) return [];
    const { meaning, text } = thing;
    return [{ at: Number(number), id: meaning.id, text }];
  });
  const special = all.filter(({ id }) => !generic.has(id));
  const chosen = special.length > 0 ? special : all.slice(0, 1);
  return chosen.filter(({ id }, i) => chosen.findIndex((one) => one.id === id) === i);
}

/** Amounts beside their names: before each, or behind each, whichever serves more of them. */
function amountsOf(claims: Claims, scents: readonly Named[]): readonly (string | null)[] {
  const amount = '(?<t>[PKG]\\d+)';
  const orders = [
    (at: number) => ` ${amount} (?:(?:of|pure|the|=|:|x) )*S${at} `,
    (at: number) => ` S${at} (?:(?:S\\d+|oil|eo|essential|fragrance|fo|at|:|=|-|\\(|is|in|with) )*${amount} `,
  ];
  const [before = [], after = []] = orders.map((order) =>
    scents.map(({ at }) => new RegExp(order(at)).exec(claims.text)?.groups?.['t'] ?? null),
  );
  const count = (names: readonly (string | null)[]): number => new Set(names.filter((name) => name !== null)).size;
  return count(before) >= count(after) ? before : after;
}

/** "2:1:1" in the order of the names. */
function ratioOf(claims: Claims, count: number): readonly number[] | null {
  const found = / (R\d+)((?: [:/] N\d+)*) /.exec(claims.text);
  const figure = found?.[1] ? claims.claim(found[1]) : null;
  if (!figure) return null;
  const more = (found?.[2]?.match(/N\d+/g) ?? []).map((name) => claims.claim(name)?.value ?? 0);
  const parts = [figure.value, figure.also ?? 0, ...more];
  return parts.length === count ? parts : null;
}

export function scentOf(claims: Claims): ScentReading {
  const scents = scentsIn(claims);
  const perPound = claims.take(' (?<t>G\\d+) (?:ppo|p p o) ');
  const fatFigure = claims.take(
    ` (?<t>G\\d+) ${fats} `,
    ` (?:oils?|fats?|butters?|base) (?:(?:weigh\\w*|weight|total|is|are|:|=|of|at|about|,|\\() )*(?<t>G\\d+) `,
    ` P\\d+ (?:(?:of|for|in|to|load|S\\d+|eo|on) )+(?:(?:a|my|the|about) )*(?<t>G\\d+)(?! (?:of )?S\\d)(?! (?:soap|batch|bars?|batter|loaf)) `,
  );
  const batch =
    fatFigure ??
    claims.take(
      ` (?<t>G\\d+) (?:(?:of|the|my|cp|hp|finished|cured|hot|process|cold) )*(?:soap|batch|bars?|batter|loaf|mould|mold) `,
      ` (?:batch|soap|loaf) (?:(?:of|is|weighs|:|=) )*(?<t>G\\d+) `,
      ` (?:for|in|into|to) (?:(?:a|my|the|about) )*(?<t>G\\d+)(?! (?:of )?S\\d) `,
    );
  const flashes = scents.map(({ at }) => {
    const own = claims.take(
      ` S${at} (?:oil |eo )?(?:\\( (?:flash ?point |flash |fp )?|(?:[a-z]+ ){0,3}?(?:flash ?point|flashpoint|flash|flashes|fp) (?:(?:point|of|at|is|from|:) )*)${t} `,
    );
    return own && claims.celsius(own);
  });
  const said = claims.temperature(...flash);
  const names = amountsOf(claims, scents);
  const amounts = names.flatMap((name) => (name ? (claims.line.figures.get(Number(name.slice(1))) ?? []) : []));
  const values = amounts.map(({ value }) => value);
  const sum = values.reduce((total, one) => total + one, 0);
  const letters = new Set(amounts.map(({ letter }) => letter));
  /** Every scent has an amount, and all amounts are of one kind. */
  const whole = amounts.length > 0 && amounts.length === scents.length && letters.size === 1;
  const percents = whole && letters.has('P');
  const ratio = scents.length > 1 ? ratioOf(claims, scents.length) : null;
  // Shares that make 100 % part the scent; smaller ones are of the fat, each.
  const loads = percents && sum < 0.5;
  if (percents && (scents.length > 1 || loads)) for (const name of names) if (name) claims.claim(name);
  const load = perPound
    ? perPound.value / POUND
    : loads
      ? sum
      : (claims.take(
          ` (?:load|rate|strength|usage|total|at|@|use|using) (?:(?:of|is|:|=|about|a) )*(?<t>P\\d+) `,
          ` (?<t>P\\d+) (?:load|rate|usage|total|of|scent|fragrance|eo|for|in) `,
          ' (?<t>P\\d+) ',
        )?.value ?? null);
  const weights = ratio ?? (whole && (scents.length > 1 || !percents) ? values : scents.map(() => 1));
  const total = weights.reduce((all, one) => all + one, 0) || 1;
  return {
    parts: scents.map(({ id, text }, i) => ({
      id,
      text,
      share: (weights[i] ?? 0) / total,
      flashC: flashes[i] ?? (scents.length === 1 ? said : null),
    })),
    equal: scents.length > 1 && ratio === null && !whole,
    grams: whole && letters.has('G') ? sum : null,
    load,
    fatGrams: batch?.value ?? null,
    ofBatch: fatFigure === null && batch !== null,
  };
}
