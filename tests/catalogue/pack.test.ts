import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { packCatalogue, unpackCatalogue } from '../../src/catalogue/pack.ts';

const catalogue = loadCatalogue();
const packed = packCatalogue(catalogue);
const unpacked = unpackCatalogue((from, length) => packed.slice(from, from + length));

describe('the packed catalogue', () => {
  it('holds every field and item of the catalogue, in its order', () => {
    expect(Object.keys(unpacked).sort()).toEqual(Object.keys(catalogue).sort());
    for (const [field, value] of Object.entries(catalogue)) {
      const back: unknown = unpacked[field as keyof typeof unpacked];
      if (!(value instanceof Map)) expect(back).toEqual(value);
      else {
        const map = back as ReadonlyMap<string, unknown>;
        expect(value.size, field).toBeGreaterThan(0);
        expect(map.size, field).toBe(value.size);
        expect([...map], field).toEqual([...value]);
      }
    }
  });

  it('answers for a key it holds, always with the same item, and for one it does not hold', () => {
    expect(unpacked.fats.get('lard')).toEqual(catalogue.fats.get('lard'));
    expect(unpacked.fats.get('lard')).toBe(unpacked.fats.get('lard'));
    expect([unpacked.fats.has('lard'), unpacked.fats.has('toString')]).toEqual([true, false]);
    expect(unpacked.fats.get('toString')).toBeUndefined();
  });
});
