import type { Catalogue } from '../catalogue/types.ts';
import { assemble } from './assemble.ts';
import { bind } from './bind.ts';
import { clean } from './clean.ts';
import { applyColumns, headUnits } from './columns.ts';
import { itemsOf } from './items.ts';
import { layOut } from './layout.ts';
import { type Lexicon, makeLexicon } from './lexicon.ts';
import { equalParts, setAside, shareBase, unitsBefore } from './neighbours.ts';
import type { RecipeReading } from './reading.ts';
import { scan } from './scan.ts';
import { makeSpeller, type Speller } from './spelling.ts';
import { tokenize } from './tokens.ts';

export type { Assumption, Doubt, Fate, Purity, ReadAmount, RecipeReading } from './reading.ts';

/** Longest post that is read, in characters. */
export const longestPost = 100_000;

export interface Reader {
  readonly lexicon: Lexicon;
  readonly speller: Speller;
  readonly catalogue: Catalogue;
}

export function makeReader(catalogue: Catalogue): Reader {
  const lexicon = makeLexicon(catalogue);
  return { lexicon, speller: makeSpeller(() => lexicon.vocabulary().spelt), catalogue };
}

/** What a post says of one batch, with what was assumed and what stays unclear; time linear in its length. */
export function readRecipe(reader: Reader, input: string): RecipeReading {
  const cleaned = clean(input);
  const { text } = layOut(cleaned.text);
  const prims = scan(text);
  const cut = tokenize(prims, reader.lexicon, reader.speller);
  const tokens = equalParts(shareBase(setAside(unitsBefore(applyColumns(cut.tokens, reader.lexicon), reader.lexicon))));
  const items = itemsOf(tokens, reader.lexicon);
  const bound = bind(items, tokens);
  return assemble({
    catalogue: reader.catalogue,
    lexicon: reader.lexicon,
    prims,
    tokens,
    items,
    bound,
    units: headUnits(tokens, reader.lexicon),
    text,
    disordered: cleaned.disordered,
    struck: cleaned.struck,
  });
}
