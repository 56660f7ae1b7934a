import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';

const { cautions, sources } = loadCatalogue();
const long = (id: string): string => cautions.get(id)?.long ?? '';

describe('the cautions', () => {
  it.each([
    'dry-lye',
    'hot-lye',
    'lye-into-water',
    'hot-pot',
    'raw-soap',
    'aluminium',
    'fumes',
    'ventilation',
    'vessel',
    'flame',
    'no-vinegar-on-skin',
    'first-aid-skin',
    'first-aid-eyes',
    'first-aid-swallowed',
    'first-aid-inhaled',
    'gear',
    'spill',
    'storage',
    'children-pets',
    'lye-heavy',
    'emergency',
    'not-a-professional',
  ])('hold %s, short enough for a phone and with a source', (id) => {
    const caution = cautions.get(id);
    expect(caution?.short.length).toBeLessThanOrEqual(140);
    expect(caution?.long.length).toBeGreaterThan(caution?.short.length ?? 0);
    expect(sources.has(caution?.source ?? '')).toBe(true);
    expect(caution?.locator).not.toBe('');
  });

  it('never give a verdict of "safe"', () => {
    for (const { short, long } of cautions.values()) expect(`${short} ${long}`).not.toMatch(/\bsafe\b/i);
  });

  // What ICSC 0360, the NIOSH Pocket Guide and the CLP statements P301+P330+P331, P305+P351+P338 ask for.
  it('give first aid as the safety cards do', () => {
    expect(long('first-aid-skin')).toMatch(/Brush off dry lye.*running water.*15 minutes.*No vinegar.*medical help/s);
    expect(long('first-aid-eyes')).toMatch(/running water.*lids held open.*contact lenses.*15 to 30 minutes/s);
    expect(long('first-aid-swallowed')).toMatch(/Rinse the mouth.*not bring on vomiting.*emergency/s);
    expect(long('first-aid-inhaled')).toMatch(/fresh air.*half upright.*hours later/s);
    expect(long('lye-into-water')).toMatch(/water in first/);
    expect(long('aluminium')).toContain('hydrogen');
  });

  it('give the gas from aluminium by stoichiometry: 3/2 mol of 22.414 L for 26.98 g', () => {
    expect((1.5 * 22.414) / 26.982).toBeCloseTo(1.25, 1);
    expect(long('aluminium')).toContain('1.2 litres');
  });
});
