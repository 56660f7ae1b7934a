/** Words by which something is made another size, and so many times as large. */
export const multiples: Readonly<Record<string, number>> = {
  doubled: 2,
  tripled: 3,
  trebled: 3,
  quadrupled: 4,
  halved: 1 / 2,
  double: 2,
  twice: 2,
  triple: 3,
  half: 1 / 2,
};
