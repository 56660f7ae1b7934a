/** "109 g of soda" among fats that need as much: the lye, by a name that is washing soda's, too. */
import type { Item } from '../rows/items.ts';
import { demandOf } from './plausible.ts';
import type { Assembly, Row } from './rows.ts';

/** To what the fats need of sodium hydroxide, as people weigh it. */
const fitting = { least: 0.88, most: 1.005 };
const otherSodas = /\b(?:washing|baking|bicarb\w*|bread|laundry soda|carbonate|ash|crystals?|kristall\w*)\b/i;
/** By its weight alone it may be washing soda still: "the soda" is what makes the soap, and so it is called in the south. */
const called =
  /\b(?:the|my|our) soda\b|\b(?:salve|saluti|ciao|buon(?:giorno|asera)|grazie|nonna|hola|saludos|gracias|buen[oa]s|abuela|ol[áa]|obrigad[oa]|bom dia|bonjour|bonsoir|merci|sapone|jab[óo]n|savon|sab[ãa]o)\b/i;
const leastPure = 0.9;
const unsure: ReadonlySet<string> = new Set(['ambiguous', 'unheld', 'unknown', 'alkali', 'stock']);
const otherAlkalis: ReadonlySet<string> = new Set(['sodium-carbonate', 'potassium-carbonate', 'baking-soda']);

const isSoda = (item: Row | Item): boolean =>
  'named' in item && item.named.meaning.kind === 'ambiguous' && item.named.meaning.id === 'soda';
const isOther = (item: Item): boolean =>
  item.kind === 'thing' &&
  !isSoda(item) &&
  (/^(?:alkali|stock)$/.test(item.named.meaning.kind) || otherAlkalis.has(item.named.meaning.id));

/** The rows with the only alkali of the post as what its weight and the water say that it is. */
export function plainSoda(assembly: Assembly, rows: readonly Row[]): readonly Row[] {
  const [soda, ...more] = rows.filter(isSoda);
  if (!soda || more.length > 0 || soda.amount?.dim !== 'mass' || soda.amount.upTo !== null) return rows;
  const { items, text, catalogue } = assembly.source;
  const others = rows.filter((row) => row !== soda);
  if (!called.test(text) && !(soda.share && soda.share.value >= leastPure)) return rows;
  const isClear = !others.some(({ named }) => unsure.has(named.meaning.kind)) && !items.some(isOther);
  const isWet = others.some(({ named, grams }) => /^(?:water|liquid)$/.test(named.meaning.kind) && (grams ?? 0) > 0);
  if (!isClear || !isWet || otherSodas.test(text)) return rows;
  const fats = others.flatMap(({ named, grams, after, said }) =>
    named.meaning.kind === 'fat' && !after && grams !== null ? [{ id: named.meaning.id, grams, said }] : [],
  );
  const share = (soda.grams ?? 0) / demandOf(fats, catalogue, 'naoh');
  if (!(share >= fitting.least && share <= fitting.most)) return rows;
  const meaning = { kind: 'alkali', id: 'naoh' } as const;
  assembly.assume(
    'lye',
    `I took "${soda.named.text}" as caustic soda (sodium hydroxide), as its weight is what these fats need; washing soda and baking soda make no soap.`,
  );
  return rows.map((row) => (row === soda ? { ...soda, named: { ...soda.named, meaning } } : row));
}
