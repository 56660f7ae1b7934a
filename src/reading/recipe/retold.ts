/** A method that says the list once more: "olive 500 g, coconut 250 g" and "melt 300 g of coconut, add 500 g of olive". */
import { linesOf } from '../columns/columns.ts';
import { spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { type Row, sameAmount } from './rows.ts';

const doing =
  /^(?:melt|warm|heat|add|pour|blend|whisk|weigh|mix|measur|combin|dissolv|stirr?|tipp?|us|tak)(?:e|ed|ing|s)?$|^(?:put|place|placed|placing|took|i|we|(?:i|we)'(?:d|ll|m|re|ve))$/;

/** "Melt 300 g of coconut", "I'd use 300 g of coconut", "the coconut weighs 300 g": before it, its line tells what is done, or it does. */
function isStep(tokens: readonly Token[], { line, token }: Row): boolean {
  for (let k = linesOf(tokens)[line]?.from ?? token; k <= token + 1; k++)
    if (doing.test(spoken(tokens[k]))) return true;
  return false;
}

/** Of these rows of one thing some are steps, or another thing stands in two lines with one amount: none is to be added. */
export function isRetold(tokens: readonly Token[], list: readonly Row[], rows: readonly Row[]): boolean {
  const told = list.filter((row) => isStep(tokens, row));
  if (told.length > 0 && told.length < list.length) return true;
  const [first] = list;
  const others = rows.filter(({ grams, named }) => grams !== null && named.meaning.id !== first?.named.meaning.id);
  return others.some((one, k) =>
    others
      .slice(k + 1)
      .some(
        (other) => one.named.meaning.id === other.named.meaning.id && one.line !== other.line && sameAmount(one, other),
      ),
  );
}
