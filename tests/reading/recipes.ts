import fc from 'fast-check';

/** A recipe as its writer means it, in whole grams. */
export interface Meant {
  readonly fats: readonly { readonly id: string; readonly name: string; readonly grams: number }[];
  readonly alkali: number;
  readonly water: number;
}

/** Fats by a name that stands for one thing only. */
const named: readonly (readonly [string, string])[] = [
  ['olive-oil-virgin', 'olive oil'],
  ['coconut-oil', 'coconut oil'],
  ['palm-oil', 'palm oil'],
  ['castor-oil', 'castor oil'],
  ['lard', 'lard'],
  ['tallow-beef', 'beef tallow'],
  ['shea-butter', 'shea butter'],
  ['cocoa-butter', 'cocoa butter'],
  ['sunflower-oil', 'sunflower oil'],
  ['rice-bran-oil', 'rice bran oil'],
  ['avocado-oil', 'avocado oil'],
  ['palm-kernel-oil', 'palm kernel oil'],
  ['sweet-almond-oil', 'sweet almond oil'],
  ['mango-butter', 'mango butter'],
  ['hemp-seed-oil', 'hemp seed oil'],
];

/** Alkali near what these fats need, so that no reading of it is beyond belief. */
export const meant: fc.Arbitrary<Meant> = fc
  .record({
    fats: fc.uniqueArray(fc.record({ which: fc.nat(named.length - 1), grams: fc.integer({ min: 50, max: 999 }) }), {
      minLength: 2,
      maxLength: 6,
      selector: (one) => one.which,
    }),
    strength: fc.integer({ min: 125, max: 150 }),
    water: fc.integer({ min: 18, max: 26 }),
  })
  .map(({ fats, strength, water }) => {
    const total = fats.reduce((sum, one) => sum + one.grams, 0);
    const alkali = Math.round((total * strength) / 1000);
    return {
      fats: fats.map((one) => ({
        id: named[one.which]?.[0] ?? '',
        name: named[one.which]?.[1] ?? '',
        grams: one.grams,
      })),
      alkali,
      water: Math.round((alkali * water) / 10),
    };
  });

type Row = readonly [string, number];
const rows = (one: Meant): Row[] => [
  ...one.fats.map((fat): Row => [fat.name, fat.grams]),
  ['sodium hydroxide', one.alkali],
  ['water', one.water],
];

/** The ways people lay one recipe out. */
export const layouts: Readonly<Record<string, (one: Meant) => string>> = {
  'name amount': (one) =>
    rows(one)
      .map(([name, grams]) => `${name} ${grams} g`)
      .join('\n'),
  'amount name': (one) =>
    rows(one)
      .map(([name, grams]) => `${grams}g ${name}`)
      .join('\n'),
  'amount of name, in a row': (one) =>
    `Is this right? ${rows(one)
      .map(([name, grams]) => `${grams} grams of ${name}`)
      .join(', ')}.`,
  'name, amount, in a row': (one) =>
    `${rows(one)
      .map(([name, grams]) => `${name} ${grams}g`)
      .join(', ')} thanks!`,
  bullets: (one) =>
    rows(one)
      .map(([name, grams]) => `- ${grams} g ${name}`)
      .join('\n'),
  numbered: (one) =>
    rows(one)
      .map(([name, grams], k) => `${k + 1}. ${name} - ${grams} g`)
      .join('\n'),
  'key: value': (one) =>
    rows(one)
      .map(([name, grams]) => `${name}: ${grams}g`)
      .join('\n'),
  Markdown: (one) =>
    `| Ingredient | Weight (g) |\n|---|---|\n${rows(one)
      .map(([name, grams]) => `| ${name} | ${grams} |`)
      .join('\n')}`,
  HTML: (one) =>
    `<table>${rows(one)
      .map(([name, grams]) => `<tr><td>${name}</td><td>${grams} g</td></tr>`)
      .join('')}</table>`,
  tabs: (one) =>
    `Oil\tg\n${rows(one)
      .map(([name, grams]) => `${name}\t${grams}`)
      .join('\n')}`,
  CSV: (one) =>
    `ingredient,grams\n${rows(one)
      .map(([name, grams]) => `${name},${grams}`)
      .join('\n')}`,
  'semicolons with decimal commas': (one) =>
    `Zutat;g\n${rows(one)
      .map(([name, grams]) => `${name};${grams},0`)
      .join('\n')}`,
  'next line': (one) =>
    rows(one)
      .map(([name, grams]) => `${name}\n${grams} g`)
      .join('\n'),
  quoted: (one) =>
    rows(one)
      .map(([name, grams]) => `> ${name} ${grams} g`)
      .join('\n'),
  steps: (one) =>
    `Melt ${one.fats.map((fat) => `${fat.grams} g of ${fat.name}`).join(' with ')}. Dissolve ${one.alkali} g of sodium hydroxide in ${one.water} g of water and let it cool to 45 °C. Blend for 10 minutes, cook about 50 minutes below 93 °C.`,
  'section units': (one) =>
    `OILS (g)\n${one.fats.map((fat) => `${fat.name} ${fat.grams}`).join('\n')}\n\nLYE (g)\nsodium hydroxide ${one.alkali}\nwater ${one.water}`,
  'grams and ounces': (one) =>
    rows(one)
      .map(([name, grams]) => `${name} ${grams} g (${(grams / 28.349523125).toFixed(2)} oz)`)
      .join('\n'),
  'with shares': (one) => {
    const total = one.fats.reduce((sum, fat) => sum + fat.grams, 0);
    return `${one.fats.map((fat) => `${fat.name} ${fat.grams} g (${((100 * fat.grams) / total).toFixed(1)} %)`).join('\n')}\ntotal oils ${total} g\nsodium hydroxide ${one.alkali} g\nwater ${one.water} g`;
  },
};
