/** What `data/` holds once loaded and checked. Masses in g, volumes in mL, temperatures in °C, shares 0–1. */

/** How good a datum's evidence is, best first; `memory` means that nobody has read the page yet (see `choose.ts`). */
export type Grade = 'standard' | 'pharmacopoeia' | 'regulation' | 'handbook' | 'paper' | 'secondary' | 'memory';

export interface Source {
  readonly id: string;
  readonly title: string;
  readonly url: string | null;
  /** `read` = someone opened it; `memory` = quoted from memory; `practice` = common practice, no source. */
  readonly standing: 'read' | 'memory' | 'practice';
  readonly grade: Grade;
  /** Set by the host of this installation, in its own file (`local.ts`): answers name it. */
  readonly local?: true;
}

export type Confidence = 'high' | 'medium' | 'low';

/** One published statement of one quantity. A single figure has `low === high`. */
export interface Datum {
  readonly low: number | null;
  readonly high: number | null;
  readonly source: string;
  readonly locator: string;
  readonly grade: Grade;
  readonly fromMemory: boolean;
  /** How sure the reading, or the memory, is. */
  readonly confidence?: Confidence;
  /** Temperature that a density holds at, °C. */
  readonly celsius?: number;
  readonly note?: string;
}

/** The range in use for a quantity, with every entry it was chosen from. */
export interface Chosen {
  readonly low: number;
  readonly high: number;
  /** Middle of the statement taken; not the middle of [low, high] where the range was widened. */
  readonly nominal: number;
  /** Index into `entries` of the statement taken. */
  readonly taken: number;
  /** Why this entry, and whether it was widened, in a plain sentence. */
  readonly why: string;
  readonly entries: readonly Datum[];
  readonly fromMemory: boolean;
}

export type FatKind = 'triglyceride' | 'wax-ester' | 'wax' | 'fatty-acid';

export interface FattyAcidProfile {
  /** Mass share (0–1) of each fatty acid, e.g. `C18:1`; sums to 1. */
  readonly typical: Readonly<Record<string, number>>;
  readonly ranges: Readonly<Record<string, readonly [number, number]>>;
  readonly source: string;
  readonly locator: string;
  readonly fromMemory: boolean;
  /** How the typical profile was made from what the source states. */
  readonly basis?: string;
  /** What other sources state, kept beside the one taken. */
  readonly others?: readonly {
    readonly ranges: Readonly<Record<string, readonly [number, number]>>;
    readonly source: string;
    readonly locator: string;
    readonly fromMemory: boolean;
  }[];
}

/** Everyday names as people type them, lower case, singular; spellings and abbreviations included. */
export interface Named {
  readonly id: string;
  readonly name: string;
  /** Every name, those of `plain` and `abbreviations` included. */
  readonly names: readonly string[];
  /** Names that say less than the whole ("olive", "tallow"): the usual kind is meant, and an answer says so. */
  readonly plain?: readonly string[];
  /** Trade letters ("evoo", "pko"): an answer says what they were taken for. */
  readonly abbreviations?: readonly string[];
}

export interface Fat extends Named {
  readonly latin: string | null;
  readonly kind: FatKind;
  readonly inci: {
    readonly name: string;
    readonly sodiumSoap: string | null;
    readonly potassiumSoap: string | null;
    readonly source?: string;
  };
  /** mg KOH per g fat. */
  readonly saponification: Chosen;
  /** g I₂ per 100 g. */
  readonly iodine: Chosen | null;
  /** Greatest share of unsaponifiable matter, 0–1. */
  readonly unsaponifiable: Chosen | null;
  /** g/mL of the melted or liquid fat; the temperature stands in the entries' notes. */
  readonly density: Chosen | null;
  /** °C. */
  readonly melting: Chosen | null;
  readonly acids: FattyAcidProfile | null;
  readonly note: string | null;
  /** One-sided statements ("at least 56") of a quantity that no source gives as a range. */
  readonly limits?: readonly (Datum & { readonly quantity: 'iodine' | 'melting' })[];
}

export type AlkaliId = 'naoh' | 'koh';

export interface Alkali extends Named {
  readonly id: AlkaliId;
  readonly formula: string;
  readonly molarMass: number;
  /** Purity taken when nobody says, and the usual range sold (shares 0–1). */
  readonly purity: {
    readonly usual: number;
    readonly low: number;
    readonly high: number;
    readonly source: string;
    readonly locator: string;
  };
  readonly bulkDensity?: BulkDensity;
}

/** An acid that eats alkali before any fat does. */
export interface Acid extends Named {
  readonly molarMass: number;
  /** Acidic protons that sodium hydroxide neutralises. */
  readonly protons: number;
  /** Share of acid in what is sold under this name (vinegar 0.05), 1 for the pure acid. */
  readonly strength: number;
  readonly source: string;
  readonly locator: string;
  readonly fromMemory?: boolean;
  readonly bulkDensity?: BulkDensity;
  readonly note?: string;
}

/** Milk, beer, juice …: what it brings per gram. */
export interface Liquid extends Named {
  readonly waterShare: number;
  readonly fatShare: number;
  /** Which fat its fat counts as; null when it has none worth counting. */
  readonly fat: string | null;
  /** g/mL. */
  readonly density: number | null;
  readonly sugars: boolean;
  readonly source: string;
  readonly locator: string;
  readonly fromMemory: boolean;
  readonly note?: string;
}

/** g/mL, loose to tapped. */
export interface BulkDensity {
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly locator: string;
  readonly fromMemory: boolean;
}

/** Salt, sugar, clay, colour, oatmeal …: eats no alkali worth counting. */
export interface Additive extends Named {
  readonly bulkDensity: BulkDensity | null;
  readonly note: string | null;
}

/** An essential oil, fragrance or extract: scent, never a fat. */
export interface Scent extends Named {
  readonly botanical: string | null;
}

/** Names that people use for several things at once: never guessed, always asked. */
export interface Ambiguous {
  readonly id: string;
  readonly names: readonly string[];
  /** Ids of any kind, likeliest first. */
  readonly candidates: readonly string[];
  readonly why: string;
}

/** A fat that people use and the catalogue has no value for; `nearest` are relatives to compare, never stand-ins. */
export interface Unheld {
  readonly id: string;
  readonly name: string;
  readonly names: readonly string[];
  readonly nearest: readonly string[];
  readonly why: string;
}

/** A caution or first-aid text in our own words. */
export interface Caution {
  readonly short: string;
  readonly long: string;
  readonly source: string;
  readonly locator: string;
  readonly fromMemory: boolean;
}

export type ItemKind = 'fat' | 'alkali' | 'acid' | 'liquid' | 'additive' | 'scent' | 'ambiguous' | 'unheld';

/** What a name stands for, and whether taking it so is an assumption to state. */
export interface NameHit {
  readonly kind: ItemKind;
  readonly id: string;
  readonly how: 'name' | 'plain' | 'abbreviation';
}

/** A name under its folded key, cut into words and runs of digits. */
export interface NamedHit extends NameHit {
  readonly name: string;
}

/** The single words of names, parted by spaces: all, and those that a misspelt word may have been meant for. */
export interface NameWords {
  readonly known: string;
  readonly spelt: string;
}

export interface Catalogue {
  readonly version: string;
  readonly sources: ReadonlyMap<string, Source>;
  readonly fats: ReadonlyMap<string, Fat>;
  readonly alkalis: ReadonlyMap<AlkaliId, Alkali>;
  readonly acids: ReadonlyMap<string, Acid>;
  readonly liquids: ReadonlyMap<string, Liquid>;
  readonly additives: ReadonlyMap<string, Additive>;
  readonly scents: ReadonlyMap<string, Scent>;
  readonly ambiguous: readonly Ambiguous[];
  readonly unheld: readonly Unheld[];
  readonly cautions: ReadonlyMap<string, Caution>;
  /** Words before a name that change nothing about what it is ("organic", "cold pressed"). */
  readonly qualifiers: readonly string[];
  /** Names by their first word: only what a post mentions need ever be opened. */
  readonly byFirstWord: ReadonlyMap<string, readonly NamedHit[]>;
  /** Names of fats by their words in alphabetical order, for words said in another order. */
  readonly byWords: ReadonlyMap<string, NamedHit>;
  readonly nameWords: NameWords;
  /** The numerals that names begin with. */
  readonly numerals: readonly string[];
  /** Whether a word (lower case) is one of everyday English that names no ingredient. */
  readonly isEveryday: (word: string) => boolean;
}
