import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { groups, render, reportPath } from './report.ts';
import { deviation, holds } from './row.ts';

const all = await groups();

describe.each(all.map((group) => [group.title, group] as const))('%s', (_, { rows }) => {
  it.each(rows.map((row) => [row.check, row] as const))('%s', (_check, row) => {
    expect(row.ours, `${row.source}: expected ${row.expected}`).toSatisfy(Number.isFinite);
    const off = `${row.ours} against ${row.expected}: off by ${deviation(row)}, allowed ${row.tolerance}`;
    expect(holds(row), row.explained ? `${off}; the explanation may be stale` : off).toBe(true);
  });
});

it('the report on disk is in step', () => {
  expect(readFileSync(reportPath, 'utf8')).toBe(render(all));
});
