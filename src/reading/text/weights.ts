/** Weights as a text has them, where nothing has made words of it. */

/** By the letter that their names begin with: grams, kilograms, ounces and pounds (international avoirdupois). */
const perUnit: Readonly<Record<string, number>> = { k: 1000, g: 1, o: 28.349523125, l: 453.59237, p: 453.59237 };

/** Grams of "8", "oz"; of no unit, or another one, the figure itself. */
export const gramsOf = (figure: string, unit: string): number =>
  Number(figure.replace(',', '.')) * (perUnit[unit.charAt(0).toLowerCase()] ?? 1);
