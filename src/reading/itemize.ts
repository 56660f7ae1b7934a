import type { Catalogue } from '../catalogue/types.ts';
import { askedApart } from './asked.ts';
import { clean } from './clean.ts';
import { applyColumns, type HeadUnits, headUnits } from './columns.ts';
import { type Item, itemsOf } from './items.ts';
import { layOut } from './layout.ts';
import type { Lexicon } from './lexicon.ts';
import { equalParts, fractionShares, setAside, shareBase, unitsBefore } from './neighbours.ts';
import { pairParallel, totalOfShares } from './parallel.ts';
import { type Prim, scan } from './scan.ts';
import type { Speller } from './spelling.ts';
import { type Token, tokenize } from './tokens.ts';

export interface Reader {
  readonly lexicon: Lexicon;
  readonly speller: Speller;
  readonly catalogue: Catalogue;
  /** Of temperatures without a unit, where somebody has said so once for all. */
  readonly warmth?: '°C' | '°F';
}

/** A text cut into names and amounts, before anything is bound: of a post, an answer or a correction. */
export interface Cut {
  readonly text: string;
  readonly prims: readonly Prim[];
  readonly tokens: readonly Token[];
  readonly items: readonly Item[];
  readonly units: HeadUnits;
  readonly disordered: boolean;
  readonly struck: readonly string[];
}

export function itemize(reader: Reader, input: string): Cut {
  const { lexicon, speller } = reader;
  const { text: plain, disordered, struck } = clean(input);
  const { text } = layOut(plain);
  const prims = scan(text);
  const cut = tokenize(prims, lexicon, speller);
  const tokens = fractionShares(
    equalParts(shareBase(setAside(unitsBefore(applyColumns(cut.tokens, lexicon), lexicon)))),
  );
  return {
    text,
    prims,
    tokens,
    items: totalOfShares(askedApart(pairParallel(itemsOf(tokens, lexicon), tokens), tokens), tokens),
    units: headUnits(tokens, lexicon),
    disordered,
    struck,
  };
}
