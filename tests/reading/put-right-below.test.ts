// A note below a list that puts a row right: what it comes to where its figures agree, and what stays asked.
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const base = { 'olive-oil-virgin': 500, 'coconut-oil': 250, 'palm-oil': 200, 'castor-oil': 50, naoh: 139, water: 300 };
const { 'castor-oil': _castor, ...noCastor } = base;
const { 'palm-oil': _palm, ...noPalm } = base;
const doubled = Object.fromEntries(Object.entries(base).map(([id, grams]) => [id, 2 * grams]));
const list = 'olive 500 g\ncoconut 250 g\npalm 200 g\ncastor 50 g\nNaOH 139 g\nwater 300 g';
const noted = (note: string, of = list) => potOf(`Sunday soap\n\n${of}\n\n${note}\n\nIs the lye ok?`);
type Case = [string, Readonly<Record<string, number>>];

describe('below a list without units', () => {
  const bare = 'Olive 500\nCoconut 250\nPalm 200\nCastor 50\nNaOH 139\nWater 300\n(grams)';
  test.each<Case>([
    ['edit: coconut was 280 in the end, not 250.', { ...base, 'coconut-oil': 280 }],
    ['EDIT: the lye was 136 in the end, not 139, sorry', { ...base, naoh: 136 }],
    ['correction: palm 220 really, not 200', { ...base, 'palm-oil': 220 }],
    ['edit: olive came to 520 in the end instead of 500.', { ...base, 'olive-oil-virgin': 520 }],
    [
      'edit 1: coconut was 280 in the end, not 250.\nedit 2: castor was 60, not 50.',
      { ...base, 'coconut-oil': 280, 'castor-oil': 60 },
    ],
  ])('%s', (note, grams) => expect(noted(note, bare)).toEqual({ grams, doubts: [] }));
});

describe('read', () => {
  const sunflower = { ...base, 'olive-oil-virgin': 420, 'sunflower-oil': 80 };
  const lard = { ...noPalm, lard: 200 };
  test.each<Case>([
    ['Ran out of olive at 420 g, so the missing 80 g went in as sunflower.', sunflower],
    ['Only had 420 g of the olive, the other 80 g is sunflower.', sunflower],
    ['Ran out of olive when the scale said 420, the missing 80 is sunflower.', sunflower],
    ['Ran out of olive when the tin was at 420 on the scale, so 80 g of sunflower went in for the rest.', sunflower],
    ['The lye line is a typing slip. The scale said 136 and the log says 136.', { ...base, naoh: 136 }],
    ['The NaOH figure is a typo. It was 136 g.', { ...base, naoh: 136 }],
    ['NB the 139 is a slip of the pen, the scale said 136 and that is what went in.', { ...base, naoh: 136 }],
    ['Found the castor still in its little cup on the sill in the morning. So it never went in.', noCastor],
    ['Castor: found it in its jar behind the kettle afterwards, so that one never went in.', noCastor],
    ['The castor stayed in the glass on the worktop. It is not in the soap.', noCastor],
    ['no palm in this one!! shop had none, I put the same weight of lard instead.', lard],
    ['There is no palm in it, I used the same weight of lard.', lard],
    ['What stood in for the palm was lard, same weight.', lard],
    ['The palm is lard in this batch, gram for gram.', lard],
    [
      'NB. 139 is with the cup on the scale, I forgot to tare. Cup alone is 14 g. So real caustic = 125.',
      { ...base, naoh: 125 },
    ],
    ['Forgot to tare: the NaOH figure has the 14 g cup in it, real lye is 125 g.', { ...base, naoh: 125 }],
    ['What I did: everything on the card twice over, in one pot, so double of each line.', doubled],
    ['All lines times two went into the pot.', doubled],
    ['The children poured sunflower oil in, a whole 100 g measuring beaker.', { ...base, 'sunflower-oil': 100 }],
    ['The children poured extra olive oil in, a whole 100 g measuring beaker.', { ...base, 'olive-oil-virgin': 600 }],
  ])('%s', (note, grams) => expect(noted(note)).toEqual({ grams, doubts: [] }));

  const castor = { ...base, 'castor-oil': 78 };
  test.each<Case>([
    ['Too much came out of the bottle, the scale said 78 for it instead of 50. I left it, so castor is 78 g.', castor],
    ['A good glug too much castor came out. I kept it all, so the castor is 78 g.', castor],
    ['So castor was 78 g, I checked the video.', castor],
    [
      'At 8 the scale went to 272 for the coconut. Could not get it out again so all 272 g stayed in the pot.',
      { ...base, 'coconut-oil': 272 },
    ],
    ['It slipped, so all 262 g of coconut are in there.', { ...base, 'coconut-oil': 262 }],
    ['The palm is a slip of mine. It has to be 220 g palm oil, not 200.', { ...base, 'palm-oil': 220 }],
    ['The water must be 280 g water and not 300.', { ...base, water: 280 }],
    ['The 139 above is from an old sheet. What I weighed out and used was 132 g NaOH.', { ...base, naoh: 132 }],
    ['In truth 134 g NaOH went into the water.', { ...base, naoh: 134 }],
    [
      'I hadn’t zeroed it with the cup on. Weighed that empty: 12 g. So it is 127 g NaOH that went in.',
      { ...base, naoh: 127 },
    ],
  ])('said outright: %s', (note, grams) => expect(noted(note)).toEqual({ grams, doubts: [] }));

  test('the lye by what the scale said', () => {
    const of = list.replace('NaOH 139 g', 'Lye: scale said 151 when I stopped.');
    const note = 'Weighed the cup empty: 12 g. So it is 139 g NaOH that went in the water.';
    expect(noted(note, of)).toEqual({ grams: base, doubts: [] });
  });

  test.each([
    'Next time castor is 78 g.',
    'My aunt spilled hers, so castor is 78 g in her soap.',
    'On the old one all 272 g coconut stayed in the pot.',
    'The castor came out at 50, as it should, so castor is 50 g.',
  ])('none of this pot: %s', (note) => expect(noted(note)).toEqual({ grams: base, doubts: [] }));

  test.each<Case>([
    ['The castor smelled off, threw it out. Nothing put in for it, so just the other three.', noCastor],
    ['The palm was mouldy at the top and I binned it. I did not replace it with anything.', noPalm],
    ['No palm. Put in the same weight of lard in its place, so 200 g lard and no palm at all.', lard],
  ])('%s', (note, grams) => expect(noted(note)).toEqual({ grams, doubts: [] }));

  test.each([
    'Line 4 says NaOH out of habit. I have checked the bag in the shed: KOH flakes, 90 %. Only the name is wrong.',
    'The list says NaOH but it was KOH of 90 %.',
    'Sorry, I wrote NaOH, I used KOH, the bag says 90 %.',
  ])('%s', (note) => {
    const { naoh, ...rest } = base;
    expect(noted(note)).toEqual({ grams: { ...rest, koh: naoh }, doubts: [] });
  });

  test('a second lot that makes up what was missing', () => {
    const note = 'The sheet says 139 g of lye, so I dissolved the missing 8 g in 20 g of water and added it.';
    expect(noted(note, list.replace('139', '131'))).toEqual({ grams: { ...base, water: 320 }, doubts: [] });
  });

  test('the water was dropped is no water left out', () =>
    expect(noted('The first run was a bit soft so I have dropped the water since.')).toEqual({
      grams: base,
      doubts: [],
    }));
});

describe('asked about', () => {
  test.each([
    'Ran out of olive at 420 g, so the missing 60 g went in as sunflower.',
    'The lye line is a typing slip, sorry.',
    'The lye line is a slip. The scale said 136 and the log says 133.',
    'Found some of the castor still in its glass, so not all of it went in.',
    '139 is with the cup on the scale. Cup on its own is 14 g. So real caustic = 120.',
    'The NaOH was weighed with the plastic cup on the scale.',
    'Doubled the oils only.',
    'The list says NaOH but it was 120 g of KOH.',
    'The sheet says 149 g of lye, so I dissolved the missing 8 g in 20 g of water and added it.',
    'The children poured extra olive oil in, no idea how much.',
    'I put 30 g more lye in than it says.',
    'Half of the lye did not dissolve and I sieved it out.',
    'So castor is 78 g, but I scooped some back out.',
    'What I used was 140 g NaOH or maybe 141.',
    'The scale jumped, so castor is 78 g. Then I took a spoon of it out again.',
    'The castor smelled off, threw it out. Put something else in for it.',
    'The tub says KOH on the back, I only saw it now.',
  ])('%s', (note) => expect(noted(note).doubts).not.toEqual([]));
});

describe('a row that is not in, and why', () => {
  const castor = (said: string): string => list.replace('castor 50 g', `castor 50 g${said}`);
  test.each([
    ': rancid, left out, nothing in its place',
    ' (rancid, left it out)',
    ' - out of stock, skipped',
    ': had gone off, so left out',
    ' - mouldy, omitted',
  ])('castor 50 g%s', (said) => expect(potOf(castor(said))).toEqual({ grams: noCastor, doubts: [] }));
  test.each([
    'The castor smelled off so I left it out.',
    'The castor was rancid so I left it out, with nothing in its place.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: noCastor, doubts: [] }));
  test('what stayed out of the fridge is in', () =>
    expect(potOf(castor(': nearly rancid, left out of the fridge overnight')).grams).toEqual(base));
});

test.each([
  ['NaOH was never 1390, it is 139 g', 139],
  ['the NaOH was not 1390 g but 139 g', 139],
  ["the NaOH isn't 139 g, it's 141 g", 141],
  ['my 152 g of NaOH was 139 g really', 139],
  ['the cup weighs 13 g, so my "152 g" of NaOH was 139 g really', 139],
  ['NaOH 141 g (was 139)', 141],
])('of two figures, the one that is said to be so: %s', (said, naoh) =>
  expect(potOf(`${said}. olive 500 g, coconut 250 g, palm 200 g, castor 50 g, water 300 g. ok?`)).toEqual({
    grams: { ...base, naoh },
    doubts: [],
  }),
);
