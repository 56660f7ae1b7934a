/**
 * What hears out a post that has more in it than rows. Whoever is outside of it comes in by this door: what people start
 * loads it when the first such post comes (`deploy/late.mjs`).
 */
export { itemize } from './itemize.ts';
export { readPost } from './post.ts';
export { recipeChosen } from './several/several.ts';
