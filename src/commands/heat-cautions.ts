import type { NonEmpty } from '../answer/types.ts';
import { caution, wayToAid } from './cautions.ts';

const short = (id: string): string => caution(id).short;

/** A fresh lye solution. */
export const hotLye: NonEmpty<string> = [
  `${short('gear')} ${short('lye-into-water')}`,
  `${short('hot-lye')} ${wayToAid}`,
];

/** A vessel that lye dissolves. */
export const wrongMetal: NonEmpty<string> = [short('aluminium'), wayToAid];

/** Lye that meets hot fats. */
export const pouring: NonEmpty<string> = [`${short('gear')} Pour slowly: hot lye and fats splash.`, wayToAid];

/** Soap that cooks or cools in its pot. */
export const hotPot: NonEmpty<string> = [`${short('hot-pot')} ${short('raw-soap')}`, wayToAid];

/** Scent that goes into a hot pot of raw soap. */
export const scentIntoPot: NonEmpty<string> = [`${short('flame')} ${short('raw-soap')}`, wayToAid];

/** Scent alone. */
export const flame: NonEmpty<string> = [short('flame')];
