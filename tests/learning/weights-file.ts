import { readFileSync, writeFileSync } from 'node:fs';

/** A module of what was learned, a sign a line; what weighs nothing is left out. */
const moduleOf = (about: string, weights: ReadonlyMap<string, number>): string => {
  const lines = [...weights].filter(([, weight]) => weight !== 0).map(([sign, weight]) => `${sign}:${weight}`);
  return `/** ${about} */\nexport const weights = \`${lines.sort().join('\n')}\`;\n`;
};

/** Writes the module; with `--check` it changes nothing, and fails where the module holds something else. */
export function keepWeights(file: URL, about: string, weights: ReadonlyMap<string, number>): void {
  const text = moduleOf(about, weights);
  if (!process.argv.includes('--check')) writeFileSync(file, text);
  else if (readFileSync(file, 'utf8') !== text) {
    console.error(`${file.pathname.split('/').at(-1)} holds other weights than are learned: generate it anew`);
    process.exitCode = 1;
  }
}
