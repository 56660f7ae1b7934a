import { withUnit } from '../columns/columns.ts';
import { type Assembly, type Row, unitFor } from './rows.ts';
import { isStatementOf } from './totals.ts';

const spoons = new Set(['tsp', 'tbsp', 'tsp-metric', 'tbsp-metric', 'tbsp-australian']);

const alkaline = /hydroxide|potash|caustic|^soda$|natron|potassium|sodium|kalium|natrium/;

/** The rows without "versions 1 and 2 had only the potassium one", where each alkali is weighed by its name. */
export function withoutTalk(assembly: Assembly, rows: Row[]): Row[] {
  const isTalk = ({ named: { meaning }, amount }: Row): boolean =>
    meaning.kind === 'ambiguous' && amount?.dim === 'bare' && alkaline.test(meaning.id);
  const talk = rows.filter(isTalk);
  const weighs = ({ named, amount }: Row): boolean => named.meaning.kind === 'alkali' && amount?.dim === 'mass';
  if (talk.length === 0 || !rows.some(weighs)) return rows;
  for (const { amount } of talk) if (amount) assembly.fate(amount, 'aside', 'no ingredient beside it');
  return rows.filter((row) => !isTalk(row));
}

/** Names that are no single known thing but were given a weight. */
export function unknownNames(assembly: Assembly, rows: readonly Row[], superfat: number | null): void {
  const fatRows = rows.filter((row) => row.named.meaning.kind === 'fat');
  const fats: FatsBeside = {
    grams: fatRows.reduce((sum, row) => sum + (row.grams ?? 0), 0),
    bare: fatRows.some(({ amount }) => amount?.dim === 'bare'),
    shares: fatRows.some(({ amount, share }) => share !== null && amount === null),
    noWish: superfat === null && assembly.asksForAlkali() && !rows.some(isWeighedAlkali),
  };
  for (const row of rows) {
    const { meaning, text } = row.named;
    if (meaning.kind === 'ambiguous') {
      const powder = isSpoon(row) ? meaning.candidates.map((id) => assembly.source.catalogue.additives.get(id)) : [];
      const [additive] = powder.filter((one) => one !== undefined);
      if (additive) assembly.assume('additive', `I took "${text}", by the spoon, as ${additive.name}.`);
      else if (alkaline.test(meaning.id)) assembly.doubts.push({ id: 'which-alkali', said: text });
      else assembly.doubts.push({ id: 'ambiguous-name', said: text, candidates: meaning.candidates, why: meaning.why });
    } else if (meaning.kind === 'unheld')
      assembly.doubts.push({ id: 'unheld-fat', said: text, candidates: meaning.candidates });
    else if (meaning.kind === 'unknown') unknownName(assembly, row, fats);
  }
}

const isSpoon = ({ amount }: Row): boolean => amount?.dim === 'volume' && spoons.has(amount.unit?.id ?? '');

const isWeighedAlkali = ({ named: { meaning }, amount }: Row): boolean => meaning.kind === 'alkali' && amount !== null;

const fattyWord =
  /\b(oil|butter|fat|wax|tallow|lard|acid|ol|oel|huile|aceite|olio|beurre|burro|hydroxide|lye|milk|milch)\b/;

/** How the fats of the post are given. */
interface FatsBeside {
  readonly grams: number;
  readonly bare: boolean;
  readonly shares: boolean;
  /** The alkali for them is asked for, and no superfat is said. */
  readonly noWish: boolean;
}

/** `someone pencilled 34.2`: what the lines make. */
function saysSum(assembly: Assembly, { amount, token }: Row, fats: number): boolean {
  const found = amount?.dim === 'bare' ? unitFor(assembly, token) : null;
  return found !== null && amount !== null && isStatementOf(withUnit(amount, found.unit).value, fats);
}

const mostSuperfat = 0.2;

function unknownName(assembly: Assembly, row: Row, fats: FatsBeside): void {
  const { meaning, text } = row.named;
  const fatty = fattyWord.test(meaning.id);
  const grams = row.amount?.dim === 'mass' ? row.amount.value : null;
  const loose = (row.amount === null || row.amount.dim === 'bare') && !fatty;
  const alike = (row.amount ? fats.bare : fats.shares) && !saysSum(assembly, row, fats.grams);
  const quantity = row.amount ?? row.share;
  // "overvet 6 %": the superfat in a tongue that nobody knows here, as likely
  const mayBeWish = row.amount === null && row.share !== null && row.share.value <= mostSuperfat && fats.noWish;
  if (loose && !alike && !mayBeWish) {
    if (quantity) {
      assembly.assume('left-out', `I left out "${text} ${quantity.text}".`, { said: `${text} ${quantity.text}` });
      assembly.fate(quantity, 'aside', 'no ingredient beside it');
    }
  } else if (!fatty && (isSpoon(row) || (grams !== null && fats.grams > 0 && grams <= 0.02 * fats.grams)))
    assembly.assume('additive', `I took "${text}" as an additive that eats no alkali.`);
  else assembly.doubts.push({ id: 'unknown-fat', said: text, candidates: nearNames(assembly, text) });
}

/** Known fats whose names share a word or most letters with what was typed. */
function nearNames(assembly: Assembly, text: string): string[] {
  const words = text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word.length > 2 && !/^(oil|butter|fat|wax|seed)$/.test(word));
  const found: { id: string; score: number }[] = [];
  for (const fat of assembly.source.catalogue.fats.values()) {
    let score = 0;
    for (const word of words)
      for (const part of fat.id.split('-'))
        if (part.length > 2 && !/^(oil|butter|fat|wax)$/.test(part)) {
          if (part === word) score = Math.max(score, 3);
          else if (part.startsWith(word.slice(0, 4)) && word.length >= 4) score = Math.max(score, 2);
          else if (part.startsWith(word.slice(0, 3))) score = Math.max(score, 1);
        }
    if (score > 0) found.push({ id: fat.id, score });
  }
  return found
    .sort((a, b) => b.score - a.score)
    .slice(0, 4)
    .map((one) => one.id);
}
