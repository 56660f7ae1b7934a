/** What most answers are written in: nothing of it is looked at twice. */
const plainOnly = /^[\n -~ °±·×½¼¾–—‘’“”…→−≈≤≥\u202f]*$/;

/**
 * Text that shows in the order it is stored. Control characters (terminal sequences among them), direction controls
 * and invisible characters go; every kind of line end becomes `\n`. Left-to-right marks around right-to-left letters
 * keep the figures beside them in their place, and their line from left to right (Unicode Standard Annex 9).
 */
export function inert(text: string): string {
  if (plainOnly.test(text)) return text;
  return text
    .toWellFormed()
    .replace(/\r\n?|[\v\f\u0085\u2028\u2029]/g, '\n')
    .replace(/\t/g, ' ')
    .replace(/(?!\n)[\p{Cc}\p{Cf}]/gu, '')
    .replace(
      /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]+(?:[\p{M} '"’,-]*[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]+)*/gu,
      '\u200e$&\u200e',
    );
}

/** The same on one line, for a cell or a label. */
export function inertLine(text: string): string {
  const clean = inert(text);
  return (clean.includes('\n') ? clean.replace(/\s*\n\s*/g, ' ') : clean).trim();
}
