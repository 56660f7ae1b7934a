import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { loadHeat } from '../../src/catalogue/heat.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { withLocal, withLocalFile } from '../../src/catalogue/local.ts';
import { createBot, renderPlain } from '../../src/index.ts';

const catalogue = loadCatalogue();
/** A certificate for the class's own olive oil, and a fat that the product holds no value for. */
const own = {
  fats: [
    { id: 'olive-oil-virgin', saponification: 189.6, source: 'Certificate of lot 26-014' },
    {
      id: 'emu-oil',
      name: 'Emu oil',
      names: ['emu oil', 'shed emu'],
      saponification: [190, 200],
      iodine: 70,
      density: 0.915,
      acids: { 'C16:0': 22, 'C18:0': 10, 'C18:1': 48, 'C18:2': 15, 'C18:3': 1 },
      source: 'Data sheet of the supplier, 2026',
    },
  ],
};
const bot = createBot({ catalogue: () => withLocal(catalogue, own), heat: loadHeat });
const ask = async (text: string) => {
  const reply = await bot.ask({ platform: 'test', place: 'local', person: text, text });
  if (!reply.ok) throw new Error(`${text}: ${reply.fault.message}`);
  return reply.answer;
};

test('a certificate replaces the range, and every answer that rests on it names it', async () => {
  const check = await ask('500 g olive oil, 64 g NaOH, 130 g water');
  // 500 g × 189.6 mg/g × 39.997 / 56.105
  const demand = (500 * 189.6 * 39.997) / 56.105 / 1000;
  expect(check.result['demand']).toMatchObject({ naohGrams: expect.closeTo(demand, 6) });
  for (const text of ['500 g olive oil, 64 g NaOH, 130 g water', 'lye 500 g olive oil', 'fat olive oil'])
    expect(renderPlain(await ask(text), { details: false }), text).toContain('Certificate of lot 26-014');
  expect((await ask('lye 500 g lard')).assumptions.join(' ')).not.toContain('host’s own');
  expect((await ask('fat olive oil')).result['saponification']).toEqual({ low: 189.6, high: 189.6 });
});

test('the rest of an overridden fat stays, with the figures that were held', () => {
  const local = withLocal(catalogue, own);
  const [was, is] = [catalogue.fats.get('olive-oil-virgin'), local.fats.get('olive-oil-virgin')];
  expect(is?.iodine).toEqual(was?.iodine);
  expect(is?.saponification.entries.length).toBe((was?.saponification.entries.length ?? 0) + 1);
  expect(catalogue.fats.get('olive-oil-virgin')?.saponification.nominal).not.toBe(189.6);
});

test('an added fat is read by its names, reckoned and told of', async () => {
  expect((await ask('lye 500 g emu oil')).result['recipe']).toMatchObject({ fats: [{ id: 'emu-oil', grams: 500 }] });
  expect((await ask('lye 500 g shed emu')).lead).toContain('Weigh');
  expect((await ask('1 cup emu oil in grams')).result).toMatchObject({ value: expect.closeTo(236.588 * 0.915, 2) });
  expect(renderPlain(await ask('which fats have a value of this host’s own?'), { details: true })).toContain('Emu oil');
});

describe('a file that does not hold together is refused whole, with every reason', () => {
  const good = { id: 'emu-oil', name: 'Emu oil', names: ['emu oil'], saponification: [190, 200], source: 'A sheet' };
  test.each([
    [{}, 'fats'],
    [{ fats: [{ ...good, saponification: 'lots' }] }, 'range'],
    [{ fats: [{ ...good, saponification: [200, 190] }] }, 'range'],
    [{ fats: [{ ...good, saponification: [null, 190] }] }, 'both ends'],
    [{ fats: [{ ...good, saponification: 5 }] }, 'range'],
    [{ fats: [{ ...good, saponification: undefined }] }, 'needs a saponification value'],
    [{ fats: [{ ...good, source: '' }] }, 'source is not a text'],
    [{ fats: [{ ...good, names: ['olive oil'] }] }, 'belongs to olive-oil-virgin'],
    [{ fats: [{ ...good, names: [] }] }, 'needs names'],
    [{ fats: [{ ...good, names: ['!!'] }] }, 'is no name'],
    [{ fats: [{ ...good, id: 'Emu Oil' }] }, 'small letters'],
    [{ fats: [{ ...good, sap: 190 }] }, 'nothing that can be set'],
    [{ fats: [{ ...good, acids: { 'C18:1': 40 } }] }, 'not about 100'],
    [{ fats: [good, good] }, 'listed twice'],
    [{ fats: [{ ...good, kind: 'butter' }] }, 'kind'],
  ])('%j', (raw, reason) => expect(() => withLocal(catalogue, raw)).toThrow(reason));

  test('all reasons at once', () => {
    const raw = { fats: [{ ...good, source: '', saponification: 5, names: ['lard'] }] };
    expect(() => withLocal(catalogue, raw)).toThrow(/range[\s\S]*|source[\s\S]*lard/);
    try {
      withLocal(catalogue, raw);
    } catch (error) {
      expect(String(error).split('\n').length).toBeGreaterThanOrEqual(4);
    }
  });

  test('a file that is no JSON, or not there', () => {
    const dir = mkdtempSync(join(tmpdir(), 'local-'));
    const file = join(dir, 'own.json');
    try {
      writeFileSync(file, '{ "fats": [ }');
      expect(() => withLocalFile(catalogue, file)).toThrow('is no JSON');
      writeFileSync(file, JSON.stringify(own));
      expect(withLocalFile(catalogue, file).fats.get('emu-oil')?.name).toBe('Emu oil');
      expect(() => withLocalFile(catalogue, join(dir, 'none.json'))).toThrow('ENOENT');
    } finally {
      rmSync(dir, { recursive: true });
    }
  });
});
