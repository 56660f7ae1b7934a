/** "sv of shea", "tell me about castor oil", "fats under SV 150", "which fats are from memory?" */
import type { Facts, Measure, Thing } from './facts.ts';

export type Property =
  | 'saponification'
  | 'iodine'
  | 'density'
  | 'melting'
  | 'acids'
  | 'unsaponifiable'
  | 'names'
  | 'bar'
  | 'relatives';

type Kind = 'butter' | 'wax';

export type FatList =
  | { readonly by: 'memory' }
  | { readonly by: 'all'; readonly of: Kind | null }
  | { readonly by: 'local' }
  | {
      readonly by: 'range';
      readonly property: 'saponification' | 'iodine' | 'density' | 'melting';
      readonly least: Measure | null;
      readonly most: Measure | null;
      /** "which butters", "waxes". */
      readonly of: Kind | null;
    }
  | { readonly by: 'acid'; readonly acid: string };

export interface FatQuestion {
  readonly kind: 'fat';
  readonly things: readonly Thing[];
  readonly property: Property | null;
  readonly list: FatList | null;
}

const properties: readonly (readonly [Property, RegExp])[] = [
  ['iodine', /\b(iodine|iv)\b/],
  [
    'saponification',
    /\b(sv|sap|saps|saponification|saponify|saponifies|sapon|vz|verseifungszahl|(koh|naoh|lye) (value|number|factor))\b/,
  ],
  ['density', /\b(density|dense|specific gravity|sg|g ml|weight per)\b/],
  [
    'melting',
    /\b(melt|melts|melting|mp|solidif\w+|(solid|liquid|hard|soft) at|(temp|temperature) .*(liquid|solid|hard|soft))\b/,
  ],
  ['unsaponifiable', /\b(unsaponifiables?|unsap)\b/],
  [
    'acids',
    /\b(fatty acids?|fa profile|profile|composition|composed|made up of|oleic|lauric|palmitic|stearic|linoleic|linolenic|myristic|ricinoleic)\b/,
  ],
  ['names', /\b(inci|latin|botanical|other names?|also called|called|label name)\b/],
  [
    'relatives',
    /\b(similar|like|instead of|replace|replacement|substitute|swap|relatives?|closest|nearest|alternative|alternatives)\b/,
  ],
  ['bar', /\b(do|does|bring|brings|add|adds|good for|contribute\w*|lather|hardness|in (a )?(soap|bar)|bar)\b/],
];

const acidNames: readonly (readonly [string, RegExp])[] = [
  ['C12:0', /\blauric\b/],
  ['C14:0', /\bmyristic\b/],
  ['C16:0', /\bpalmitic\b/],
  ['C18:0', /\bstearic\b/],
  ['C18:1', /\boleic\b/],
  ['C18:2', /\blinoleic\b/],
  ['C18:3', /\blinolenic\b/],
  ['C18:1-OH', /\bricinoleic\b/],
];

const asking =
  /\b(sv|sap|saponif\w*|iodine|iv|melts?|melting|mp|density|unsaponif\w*|inci|latin|botanical|tell me|info|information|facts|about|what is|whats|what are|know|describe|details|fatty|profile|composition|similar|instead|substitute|alternatives?|relatives?|does|good for|oleic|lauric|properties|data|source|sources|difference|compare|versus|vs)\b/;
const plural = /\b(which|what|list|all|any|every|show|name|fats|oils|butters|waxes)\b/;
const many = /\b(fats|oils|butters|waxes|fat|ones)\b/;
const under = /\b(under|below|less than|lower than|smaller than|at most|up to|max|beneath|not over|no more than)\b|</;
const over =
  /\b(over|above|more than|higher than|greater than|at least|from|min|exceeding|beyond|not under|no less than)\b|>/;
/** Not of a fat but of a scent, a pot or a batch. */
const otherwise =
  /\b(flash|scale|lye|naoh|koh|alkali|superfat|recipe|batch|soap recipe|how much|how many|convert|add)\b/;

export function readFat(facts: Facts, forced: boolean): FatQuestion | null {
  const { words, things, measures } = facts;
  const known = things.filter(({ meaning }) => /^(fat|unheld|ambiguous)$/.test(meaning.kind));
  const fats = known.length === 0 && forced ? things.filter(({ meaning }) => meaning.kind === 'unknown') : known;
  const property = properties.find(([, pattern]) => pattern.test(words))?.[0] ?? null;
  const told =
    fats.length > 1
      ? fats.filter(
          ({ text, meaning }) => !/^fatty acids?$/i.test(text) && !(property === 'acids' && /-acid$/.test(meaning.id)),
        )
      : fats;
  const list = listOf(facts, property, forced);
  if (list && (forced || list.by === 'all' || !otherwise.test(words)))
    return { kind: 'fat', things: [], property, list };
  if (forced) return { kind: 'fat', things: told, property, list: null };
  const clear =
    property === 'saponification' || (property === 'acids' && /\bhow much \w+(ic|ed|ated) ?(acid|fat)?/.test(words));
  const veto = clear ? /\b(flash|scale|superfat|recipe|batch|convert|add)\b/ : otherwise;
  if (fats.length === 0 || fats.length > 3 || veto.test(words)) return null;
  if (measures.some(({ dim }) => dim === 'mass' || dim === 'volume' || dim === 'parts')) return null;
  if (!fats.some(({ meaning }) => meaning.kind !== 'ambiguous') && property === null) return null;
  if (asking.test(words) || property !== null) return { kind: 'fat', things: told, property, list: null };
  // a fat's name and nothing else
  const bare = facts.tokens.every(
    (token, k) =>
      fats.some((fat) => fat.from <= k && k < fat.to) ||
      (token.t === 'sign' && /^[?.!]$/.test(token.text)) ||
      (token.t === 'word' && /^(the|please|pls|and|hi|hello|hey|my|oil|about)$/.test(token.text)),
  );
  return bare && measures.length === 0 ? { kind: 'fat', things: told, property: null, list: null } : null;
}

const kindIn = (words: string): Kind | null =>
  /\bbutters\b/.test(words) ? 'butter' : /\bwaxes\b/.test(words) ? 'wax' : null;

function listOf(facts: Facts, property: Property | null, forced: boolean): FatList | null {
  const { words, things, measures } = facts;
  const several = many.test(words) && (plural.test(words) || forced);
  if (
    /\b(from|by|out of) memory\b|\b(un|not )sourced\b|\bwithout (a |any )?sources?\b|\bno sources?\b|\bunverified\b|\bunread\b|\b(unsure|uncertain|not sure)\b/.test(
      words,
    ) &&
    (several || forced || /\bwhich|what\b/.test(words))
  )
    return { by: 'memory' };
  if (
    /\b(local|own|host|certificate)\b/.test(words) &&
    several &&
    things.every(({ meaning }) => meaning.kind !== 'fat')
  )
    return { by: 'local' };
  if (/\bhow many (fats|oils|butters|waxes)\b.*\b(know|have|hold|are there)\b/.test(words))
    return { by: 'all', of: kindIn(words) };
  if (!several && !(forced && measures.length > 0)) return null;
  const figures = measures.filter(({ dim }) => dim === 'bare' || dim === 'temperature');
  const [first, second] = figures;
  const weighed = !forced && measures.some(({ dim }) => dim === 'mass' || dim === 'volume');
  if (first && !weighed && (property === null || /^(saponification|iodine|density|melting)$/.test(property))) {
    const of = (property ?? (first.dim === 'temperature' ? 'melting' : 'saponification')) as
      | 'saponification'
      | 'iodine'
      | 'density'
      | 'melting';
    const between = second ?? (first.upTo === null ? null : { ...first, value: first.upTo, upTo: null });
    const kind = kindIn(words);
    if (between) return { by: 'range', property: of, least: first, most: between, of: kind };
    if (under.test(words)) return { by: 'range', property: of, least: null, most: first, of: kind };
    if (over.test(words)) return { by: 'range', property: of, least: first, most: null, of: kind };
  }
  const held = things.some(({ meaning }) => meaning.kind === 'fat');
  const acid = acidNames.find(([, pattern]) => pattern.test(words));
  if (acid && !things.some(({ meaning, text }) => meaning.kind === 'fat' && !acid[1].test(text.toLowerCase())))
    return { by: 'acid', acid: acid[0] };
  if (
    !held &&
    /\b(list|all|which|what)\b/.test(words) &&
    /\b(know|have|hold|list|all|there|held|support)\b/.test(words)
  )
    return { by: 'all', of: kindIn(words) };
  return null;
}
