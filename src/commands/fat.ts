import type { Block } from '../answer/types.ts';
import type { Catalogue, Chosen, Fat } from '../catalogue/types.ts';
import type { Thing } from '../reading/question/facts.ts';
import type { FatQuestion, Property } from '../reading/question/fat.ts';
import { number, type Style } from '../units/print.ts';
import { type Context, defineCommand, type Refusal, type Said } from './define.ts';
import { answering, elsewhere } from './everyday.ts';
import { fatSteps } from './everyday-working.ts';
import { alkaliLine, comparison, factsOf, melting, moreOf, sourceLine, sources } from './fat-blocks.ts';
import { listed as listOf } from './fat-lists.ts';
import { groupLine, groupsOf, inABar, rangeText, relatives } from './fat-words.ts';
import { share } from './figures.ts';
import { localLines } from './local.ts';
import { capital, inSentence, listed, nameOf } from './phrases.ts';
import { acidsPicture } from './pictures.ts';

type Outcome = Said<'plain'> | Refusal<'plain'>;

export const fat = defineCommand({
  id: 'fat',
  summary: 'What is known of a fat, and which fats fit a limit.',
  risk: 'plain',
  options: {},
  examples: [
    { say: 'fat castor oil', about: 'everything known of it' },
    { say: 'fat: melting point of shea', about: 'one figure' },
    { say: 'fat: which fats are from memory?', about: 'values that nobody has read in a source yet' },
    { say: 'fat: fats under SV 150', about: 'fats within a limit' },
  ],
  // "Fat (g)" over a list of what is weighed
  isIngredient: (text, rest, { read }) => /\n/.test(rest) && read(text).fats.length > 1,
  instead: elsewhere('fat'),
  run: answering('fat', answered, () => which()),
});

const which = (
  message = 'Which fat?',
  hint = 'For example: fat castor oil.',
  candidates: readonly string[] = [],
): Refusal<'plain'> => ({
  code: 'unclear',
  message,
  hint,
  candidates,
  caution: [],
});

function answered({ things, property, list }: FatQuestion, context: Context): Outcome {
  const { catalogue, style } = context;
  if (list) return listOf(list, catalogue, style);
  const [thing] = things;
  if (!thing) return which();
  const found = catalogue.fats.get(thing.meaning.id);
  if (thing.meaning.kind !== 'fat' || !found) return notHeld(thing, catalogue);
  const others = things.slice(1).flatMap(({ meaning }) => catalogue.fats.get(meaning.id) ?? []);
  return about(found, thing, others, property, context);
}

function notHeld({ meaning, text }: Thing, catalogue: Catalogue): Refusal<'plain'> {
  if (meaning.kind === 'ambiguous') {
    const names = meaning.candidates.map((id) => nameOf(id, catalogue));
    return which(`Which one is "${text}"?`, `${meaning.why} Answer with its name.`, names);
  }
  if (meaning.kind === 'unheld') {
    const near = meaning.candidates.map((id) => nameOf(id, catalogue));
    return which(
      `I know of ${inSentence(meaning.id)} but hold no trusted values for it.`,
      `Ask the supplier for its saponification value.${near.length > 0 ? ` Its nearest relatives here: ${listed(near)}.` : ''}`,
    );
  }
  return which(`I don’t know "${text}".`, 'Look at the label for another name.');
}

function leadFor(fat: Fat, property: Property | null, catalogue: Catalogue, style: Style): string {
  const name = capital(inSentence(fat.name));
  const { saponification, iodine, density } = fat;
  switch (property) {
    case 'saponification':
      return `${name}: ${rangeText(saponification, 0, style)} mg KOH per gram (saponification value), ${number(saponification.nominal, 0, style)} in the middle.`;
    case 'iodine':
      return iodine
        ? `${name}: iodine value ${rangeText(iodine, 0, style)} g per 100 g.`
        : `I hold no iodine value for ${inSentence(fat.name)}.`;
    case 'density':
      return density
        ? `${name}: ${rangeText(density, 3, style)} g per mL${density.entries[density.taken]?.celsius === undefined ? '' : ` at ${density.entries[density.taken]?.celsius} °C`}.`
        : `I hold no density for ${inSentence(fat.name)}.`;
    case 'melting':
      return fat.melting
        ? `${name} melts at ${melting(fat.melting, style)}.`
        : `I hold no melting range for ${inSentence(fat.name)}.`;
    case 'unsaponifiable':
      return fat.unsaponifiable
        ? `${name}: up to ${share(fat.unsaponifiable.high, style)} stays unsaponifiable.`
        : `I hold no figure for what stays unsaponifiable in ${inSentence(fat.name)}.`;
    case 'acids': {
      const groups = groupsOf(fat);
      return groups ? `${name}: ${groupLine(groups, style)}.` : `I hold no fatty acids of ${inSentence(fat.name)}.`;
    }
    case 'names':
      return `${name}: ${[fat.latin, `INCI ${fat.inci.name}`].filter((one) => one !== null).join(', ')}.`;
    case 'relatives': {
      const near = relatives(fat, catalogue);
      return near.length > 0
        ? `Most like ${inSentence(fat.name)}: ${listed(near.map((one) => inSentence(one.fat.name)))}. Each needs its own amount of lye.`
        : `I know no near relative of ${inSentence(fat.name)}.`;
    }
    default: {
      const does = inABar(fat);
      return `${name}: ${does ? does.replace(/^In a bar: /, '') : `${rangeText(saponification, 0, style)} mg KOH per gram.`}`;
    }
  }
}

function about(
  fat: Fat,
  thing: Thing,
  others: readonly Fat[],
  property: Property | null,
  context: Context,
): Said<'plain'> {
  const { catalogue, style } = context;
  const whole = property === null || property === 'bar';
  const { saponification } = fat;
  return {
    title: capital(inSentence(fat.name)),
    lead: leadFor(fat, property, catalogue, style),
    body: [
      ...(whole
        ? [{ kind: 'facts' as const, rows: factsOf(fat, catalogue, style) }]
        : sourceLine(fat, property, catalogue)),
      ...(property === 'saponification' ? [{ kind: 'text' as const, text: alkaliLine(fat, style) }] : []),
      ...(others.length > 0 ? [comparison([fat, ...others], style)] : []),
    ],
    details: [
      ...(whole ? [] : [{ kind: 'facts' as const, rows: factsOf(fat, catalogue, style) }]),
      { kind: 'list', title: 'Where the values come from', items: sources(fat, catalogue, style) },
      ...moreOf(fat, catalogue, style),
      ...madeOf([fat, ...others]),
    ],
    assumptions: [...(thing.how === 'name' ? [] : said(thing, fat)), ...localLines([{ fat }], catalogue)],
    warnings: saponification.fromMemory
      ? ['Its saponification value is from memory, not yet read in a source: ask the supplier.']
      : [],
    caution: [],
    actions: [{ label: 'details', request: 'details' }],
    result: resultOf(fat),
    working: () => fatSteps(fat, property, catalogue, style),
  };
}

/** Fats whose fatty acids are on record, drawn side by side. */
const madeOf = (fats: readonly Fat[]): readonly Block[] => {
  const drawn = fats.flatMap((fat) => {
    const groups = groupsOf(fat);
    return groups ? [{ name: inSentence(fat.name), groups }] : [];
  });
  return acidsPicture(`Fatty acids of ${listed(drawn.map(({ name }) => name))}`, drawn);
};

const said = ({ text: typed }: Thing, { name }: Fat): readonly string[] => {
  const meant = inSentence(name);
  const text = typed.replace(/^(compare|versus|vs)\s+/i, '');
  return meant === text.toLowerCase() || meant === `${text.toLowerCase()} oil` ? [] : [`I took "${text}" as ${meant}.`];
};

const ends = (chosen: Chosen | null) => (chosen ? { low: chosen.low, high: chosen.high } : null);

const resultOf = (fat: Fat): Readonly<Record<string, unknown>> => ({
  id: fat.id,
  saponification: ends(fat.saponification),
  iodine: ends(fat.iodine),
  density: ends(fat.density),
  melting: ends(fat.melting),
});
