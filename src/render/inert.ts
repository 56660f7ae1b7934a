const rightToLeft =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]+(?:[\p{M} '"’,-]*[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]+)*/gu;

/**
 * Text that shows in the order it is stored. Control characters (terminal sequences among them), direction controls
 * and invisible characters go; every kind of line end becomes `\n`. A left-to-right mark after right-to-left letters
 * keeps the figures that follow in their place (Unicode Standard Annex 9, rules W2 and W7).
 */
export function inert(text: string): string {
  return text
    .toWellFormed()
    .replace(/\r\n?|[\v\f\u0085\u2028\u2029]/g, '\n')
    .replace(/\t/g, ' ')
    .replace(/(?!\n)[\p{Cc}\p{Cf}]/gu, '')
    .replace(rightToLeft, '$&\u200e');
}

/** The same on one line, for a cell or a label. */
export function inertLine(text: string): string {
  return inert(text)
    .replace(/\s*\n\s*/g, ' ')
    .trim();
}
