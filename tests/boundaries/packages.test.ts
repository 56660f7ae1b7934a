import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const file = (name: string) => readFileSync(join(import.meta.dirname, '../..', name), 'utf8');

interface Locked {
  readonly resolved?: string;
  readonly integrity?: string;
  readonly deprecated?: string;
  readonly dependencies?: Record<string, string>;
  readonly devDependencies?: Record<string, string>;
}

const manifest = JSON.parse(file('package.json')) as Required<Pick<Locked, 'dependencies' | 'devDependencies'>>;
const direct = { ...manifest.dependencies, ...manifest.devDependencies };
const { packages } = JSON.parse(file('package-lock.json')) as { packages: Record<string, Locked> };
const { '': own, ...locked } = packages;
const where = (flaw: (pack: Locked) => boolean) => Object.keys(locked).filter((name) => flaw(locked[name] ?? {}));

describe('packages', () => {
  it('are locked by content, without the address of a registry', () => {
    expect(Object.keys(locked).length).toBeGreaterThan(Object.keys(direct).length);
    expect(where(({ resolved }) => resolved !== undefined)).toEqual([]);
    expect(where(({ integrity }) => !integrity?.startsWith('sha512-'))).toEqual([]);
  });

  it('are none of them deprecated', () => {
    expect(where(({ deprecated }) => deprecated !== undefined)).toEqual([]);
  });

  it('are named by exact versions, the same in manifest and lock', () => {
    expect(Object.entries(direct).filter(([, version]) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version))).toEqual([]);
    expect({ ...own?.dependencies, ...own?.devDependencies }).toEqual(direct);
  });

  it('run these tests on the Node the house brings', () => {
    expect(process.versions.node).toBe(direct['node']);
  });

  it('each have one line of reason in DEVELOPERS.md', () => {
    const lines = file('DEVELOPERS.md').split('\n');
    const given = (name: string) => lines.filter((line) => /\w+ \w+ \w+/.test(line.split(`\`${name}\``)[1] ?? ''));
    expect(Object.keys(direct).filter((name) => given(name).length !== 1)).toEqual([]);
  });
});
