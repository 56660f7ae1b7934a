import { globSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { cruise, type ICruiseResult, type IForbiddenRuleType } from 'dependency-cruiser';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');
const { forbidden, options } = createRequire(import.meta.url)(join(root, '.dependency-cruiser.cjs')) as {
  forbidden: IForbiddenRuleType[];
  options: Record<string, unknown>;
};

const look = async (
  baseDir: string,
  places: string[],
  changes: Record<string, unknown> = {},
): Promise<ICruiseResult> => {
  const { output } = await cruise(places, {
    ...options,
    baseDir,
    validate: true,
    ruleSet: { forbidden },
    ...changes,
  });
  if (typeof output === 'string') throw new Error(output);
  return output;
};

const broken = (result: ICruiseResult) =>
  result.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`);

describe('import boundaries', () => {
  it('hold over every TypeScript file of the house', async () => {
    const places = ['src', 'adapters', 'tests'].filter((place) => globSync(`${root}/${place}/**/*.ts`).length > 0);
    const result = await look(root, places);
    expect(broken(result)).toEqual([]);

    const onDisk = globSync('{src,adapters,tests}/**/*.ts', { cwd: root, exclude: ['tests/boundaries/canary/**'] });
    const seen = new Set(result.modules.map(({ source }) => source));
    expect(onDisk.length).toBeGreaterThan(5);
    expect(onDisk.filter((file) => !seen.has(file))).toEqual([]);
  }, 60_000);

  it('are each broken by the canary, and seen to be', async () => {
    const canary = join(import.meta.dirname, 'canary');
    const result = await look(canary, ['src', 'adapters'], { exclude: { path: 'node_modules/.*/node_modules' } });
    const rules = new Set(result.summary.violations.map(({ rule }) => rule.name));
    expect([...rules].sort()).toEqual(forbidden.map(({ name }) => name ?? '').sort());
  });
});
