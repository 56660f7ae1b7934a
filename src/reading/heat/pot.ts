/** A pot in plain words: "6 l slow cooker", "mould of wood", "lid half on", "wrapped in a towel". */
import type { Pots, VesselMaterial } from '../../catalogue/heat-types.ts';
import type { Claims } from './claims.ts';

export interface PotReading {
  /** Ids of the heat data; null where nothing is said. */
  readonly kind: string | null;
  /** More is said than "pot". */
  readonly described: boolean;
  readonly material: string | null;
  readonly litres: number | null;
  readonly lid: 'on' | 'half' | 'off' | null;
  readonly insulation: string | null;
  /** Weight of the empty vessel, g. */
  readonly grams: number | null;
}

interface NamedThing {
  readonly id: string;
  readonly names: readonly string[];
}

/** The id whose longest name stands in the text as whole words. */
function longest(text: string, things: Iterable<NamedThing>): { readonly id: string; readonly name: string } | null {
  let best: { id: string; name: string } | null = null;
  for (const { id, names } of things) {
    for (const name of names) {
      if (name.length > (best?.name.length ?? 0) && (text.includes(` ${name} `) || text.includes(` ${name}s `)))
        best = { id, name };
    }
  }
  return best;
}

const half =
  / (?:half (?:on|off|open|covered|closed)|lid (?:is |was |at )?(?:half|ajar|tilted|cracked|partly|partially|askew|propped)|(?:half|partly|partially|tilted|cracked) (?:a |the )?(?:lid|covered)|ajar) /;
const off =
  / (?:(?:lid|lids|cover) (?:is |was |taken |left |kept |all |fully )*(?:off|open|removed)|(?:no|without|without a|without the|w o|minus the) (?:lid|cover)|uncovered|lidless|open (?:pot|top|topped|mould|mold|pan|crockpot|cooker)|(?:took|take|taking) (?:the |its )?lid off|(?:pot|top|mould|mold|cooker|pan) (?:is |left )?open) /;
const on =
  / (?:(?:lid|lids|cover) (?:is |was |kept |left |stays |firmly )*(?:on|closed|shut)|(?:with|under) (?:a |the |its )?(?:lid|cover)(?: on)?|covered|lidded|(?:keep|keeping|left|leave|put|leaving) (?:the |its )?(?:lid|cover) on) /;

/** "off" and "half" first: "covered" stands in "half covered" and "uncovered". */
const lidOf = (text: string): PotReading['lid'] =>
  half.test(text) ? 'half' : off.test(text) ? 'off' : on.test(text) ? 'on' : null;

export const vessel =
  '(?:slow ?cooker|crock ?pot|crock|pot|pan|saucepan|stockpot|kettle|bowl|jug|pitcher|bucket|pail|tub|mould|mold|cooker|container|beaker|jar|vessel|roaster|bottle|tupperware|pyrex)';

export function potOf(claims: Claims, pots: Pots, materials: Iterable<VesselMaterial>): PotReading {
  // "room" and the like are no vessels; a hyphen parts no name here.
  const text = claims.text.replaceAll(' - ', ' ');
  const kind = longest(text, pots.pots);
  const material = longest(text, materials) ?? (/ pyrex /.test(text) ? { id: 'glass' } : null);
  // "wrapped in towels": what it is wrapped in says more than that it is wrapped.
  const insulation = longest(text.replaceAll(' wrapped ', ' '), pots.insulation) ?? longest(text, pots.insulation);
  const size = `(?<t>V\\d+)`;
  const litres = claims.take(
    ` ${size} (?:[a-z-]+ ){0,3}?${vessel} `,
    ` ${vessel} (?:(?:of|is|holds|holding|that|which|about|around|:|=|,|\\() )*${size} `,
    ...(kind ? [` ${size} `] : []),
  );
  const weight = `(?<t>G\\d+)`;
  const grams = claims.take(
    ` (?:jug|bowl|pot|pitcher|beaker|vessel|container|jar|bucket|pan) (?:(?:of|is|that|which|weighs|weighing|about|around|:|=|\\(|empty) )+${weight} `,
    ` ${weight} (?:(?:stoneware|glass|steel|stainless|ceramic|plastic|heavy|enamel|pyrex|pp|hdpe|metal) )*(?:jug|bowl|pitcher|beaker|vessel|jar) `,
    ` (?:a|an|my|the) ${weight} (?:(?:stoneware|glass|steel|stainless|ceramic|plastic|heavy|enamel|pp|hdpe|metal) )+(?:pot|pan|bucket|container|kettle) `,
  );
  return {
    kind: kind?.id ?? null,
    described: litres !== null || (kind !== null && !/^(?:pot|pan|mould|mold|kettle)$/.test(kind.name)),
    material: material?.id ?? null,
    litres: litres === null ? null : litres.value / 1000,
    lid: lidOf(text),
    insulation: insulation?.id ?? null,
    grams: grams?.value ?? null,
  };
}
