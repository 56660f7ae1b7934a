/** Most names need nothing done: words of plain letters and digits, one space apart. */
const PLAIN = /^[a-z0-9]+(?: [a-z0-9]+)*$/;
/** Letters that decompose into no base letter plus mark. */
const LIGATURES: Readonly<Record<string, string>> = { ß: 'ss', œ: 'oe', æ: 'ae', ø: 'o', ł: 'l', ı: 'i' };

/**
 * The key a name is looked up by: lower case, without accents and apostrophes, anything else that is neither letter
 * nor digit as one space ("Huile d’Olive" → "huile dolive", "caprylic/capric" → "caprylic capric").
 */
export function foldName(text: string): string {
  if (PLAIN.test(text)) return text;
  return text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f'’‘ʼ`´]/g, '')
    .replace(/[ßœæøłı]/g, (letter) => LIGATURES[letter] ?? letter)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
