/** Several recipes told in running text, and which of them the post asks about. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const pots = {
  soft: { 'olive-oil-virgin': 500, 'coconut-oil': 250, 'castor-oil': 50, naoh: 113, water: 0 },
  hard: { 'olive-oil-virgin': 600, 'coconut-oil': 250, 'palm-oil': 150, naoh: 140, water: 280 },
};
const soft = '500g olive 250g coconut 50g castor 113g lye';
const hard = '600g olive 250g coconut 150g palm, 140g lye, 280g water';

/** What stands ahead of each of two recipes, and what each is called. */
const heads = [
  ['hers is', 'mine is', 'hers', 'mine'],
  ['my sis did', 'i did', 'hers', 'mine'],
  ['my bros is', 'mine is', 'his', 'mine'],
  ['my mates has', 'mine has', 'my mates', 'my one'],
  ['dads:', 'mums:', 'dads', 'mums'],
  ['kim used', 'zoe used', 'kims', 'zoes'],
  ['the small one is', 'the big one is', 'the small one', 'the big one'],
  ['the old one was', 'the new one is', 'the old one', 'the new one'],
  ['the face bar is', 'the foot bar is', 'the face bar', 'the foot bar'],
  ['recipe one is', 'recipe two is', 'recipe one', 'recipe two'],
  ['v1 is', 'v2 is', 'v1', 'v2'],
  ['what she did:', 'what i did:', 'hers', 'mine'],
  ['the first is', 'the second is', 'the first', 'the second'],
  ['my gf makes', 'my flatmate makes', 'my gfs', 'my flatmates'],
] as const;

/** What is asked of the one that is called, beside the other. */
const asks: readonly ((asked: string, other: string) => string)[] = [
  (asked) => `check ${asked} pls`,
  (asked) => `is ${asked} ok?`,
  (asked) => `how is the lye in ${asked}?`,
  (asked, other) => `${other} is fine, can u check ${asked}`,
  (asked, other) => `${other} i already checked, so just ${asked} please`,
  (asked, other) => `can someone look at ${asked}, not ${other}`,
  (asked, other) => `${asked} not ${other}`,
  (asked, other) => `not ${other}, ${asked}`,
  (_, other) => `forget ${other}. is the lye right?`,
  (asked) => `its ${asked} i need help with`,
  (asked) => `${asked} is the one im worried about`,
];

const behind = (body: string, said: string): string => `${body} ${said}`;
const ahead = (body: string, said: string): string => `${said.endsWith('?') ? said : `${said}.`} ${body}`;

describe('of two recipes in a breath', () => {
  describe.each(heads)('%s … %s …', (softHead, hardHead, softName, hardName) => {
    const body = `${softHead} ${soft}. ${hardHead} ${hard}.`;

    test('the one counts that is asked about', () => {
      for (const place of [behind, ahead])
        for (const ask of asks) {
          for (const [pot, said] of [
            [pots.soft, ask(softName, hardName)],
            [pots.hard, ask(hardName, softName)],
          ] as const) {
            const text = place(body, said);
            expect({ text, ...potOf(text) }).toEqual({ text, grams: pot, doubts: [] });
          }
        }
    });

    test.each([
      'check both pls',
      'which is better',
      'whats the difference',
      `check ${softName} and ${hardName}`,
      `is ${softName} stronger than ${hardName}?`,
      `check ${softName}. then ${hardName} if u have time`,
      `should i make ${softName} or ${hardName}?`,
    ])('it is asked which where more than one is meant: %s', (said) => {
      expect(potOf(behind(body, said)).doubts).toContain('two-recipes');
      expect(potOf(ahead(body, said)).doubts).toContain('two-recipes');
    });
  });

  test.each([
    `hers is ${soft}. mine is ${hard}. ok?`,
    `my sis did ${soft}. i did ${hard}. is the lye right?`,
    `small is ${soft}. big is ${hard}. ok?`,
    `v1 is ${soft}. v2 is ${hard}. v2 looks nicer. is the lye ok`,
    `my brother made ${soft}\ni made ${hard}. are my brothers and mine ok?`,
    `hers is ${soft}. mine is 600g olive 250g coconut 150g palm. check mine`,
    `hers is ${soft}. mine is hers plus 100g shea and 120g lye. check mine`,
    `hers is ${soft}. mine is ${hard}. check my brothers`,
    'single is 300g olive 150g coconut. double is 600g olive 300g coconut. lye?',
  ])('or none: %j', (text) => expect(potOf(text).doubts.length).toBeGreaterThan(0));

  test.each([
    `hers is ${soft}, mine is ${hard}. check mine`,
    `hers is ${soft} and mine is ${hard}. check mine`,
    `hers (${soft}) and mine (${hard}). check mine`,
    `hers is ${soft}\nmine is ${hard}\ncheck mine`,
    `hers is ${soft.replaceAll('g ', ' ')}. mine is ${hard}. check mine`,
    `hers is ${soft}. mine is ${hard.replaceAll('g', '')}. check mine`,
    `hers is ${soft}. mine is 600g olive 250g coconut 150g palm and i put 140 lye in, water is 280. check mine`,
    `hers is ${soft}. mine is ${hard}. hers has 8% superfat. check mine`,
    `aunts recipe is ${soft}. i changed it so now its ${hard}. ok to go?`,
    `last time i did ${soft}. this time its ${hard}. ok?`,
    `her: ${soft}. me: ${hard}. check me not her`,
    `i made ${soft} yesterday and today ${hard}. is todays lye too high`,
    `2 recipes. A ${soft}, B ${hard}. just do B`,
    `shes got ${soft}, hes got ${hard}. shes fine but can you check him`,
    `${soft} is what she made. what i made is ${hard}. please check what i made`,
    `ok whose is off, no wait just check mine. hers ${soft}, mine ${hard}`,
  ])('however it is parted: %j', (text) => expect(potOf(text)).toEqual({ grams: pots.hard, doubts: [] }));

  const [single, triple] = ['300g olive 150g coconut 50g castor', '900g olive, 450g coconut, 150g castor'];
  const tripled = { 'olive-oil-virgin': 900, 'coconut-oil': 450, 'castor-oil': 150, water: 0 };
  test.each([
    `the 500g version is ${single}. i need it at 1500g oils so ${triple}. how much lye for the big one`,
    `500g batch = ${single}. im making the 1.5kg one tho: ${triple}. lye for the 1.5kg?`,
    `mums makes 6 bars: ${single}. i want 18 bars so ${triple}. how much lye?`,
    `original was ${single}. tripled its ${triple}. how much lye for the larger one`,
    `how much lye for the large one? the small one is ${single} and the large one is ${triple}`,
  ])('or the size that is meant: %j', (text) => expect(potOf(text)).toEqual({ grams: tripled, doubts: [] }));
});

describe('of what others take or say of the lye', () => {
  const oils = '500g olive 300g palm 150g coconut';
  const own = { 'olive-oil-virgin': 500, 'palm-oil': 300, 'coconut-oil': 150, naoh: 131, water: 270 };
  test.each([
    `the card says 135, my bf says 126, i put in 131g lye. oils ${oils}. water 270g. who is right`,
    `kim used 126 lye, zoe used 150, i used 131g. same oils for all 3 of us, ${oils}, 270g water. is mine ok`,
    `my uncle thinks 120g lye, the calc says 135, ive weighed out 131g. oils ${oils}, 270g water`,
    `she says 126 lye he says 140 and i used 131. ${oils}. water 270g. did i do ok`,
    `the lady on the video uses 148g lye, my book says 139, im using 131. oils ${oils}, 270g water`,
    `i put 131g lye, my sis put 138, our teacher put 122. same fats: ${oils}, water 270g. check mine not hers`,
  ])('the writer’s figure counts: %s', (text) => expect(potOf(text)).toEqual({ grams: own, doubts: [] }));

  test.each([
    `kim used 126g lye, zoe used 150, lee used 131g. same oils for all 3 of us, ${oils}. is it ok`,
    `the card says 135g lye, my bf says 126. oils ${oils}. who wins`,
    `kim used 126g lye, i used 131. ${oils}. is kims ok`,
    `the card says 135g lye, i used 131 or maybe 126. ${oils}`,
    `i weighed 120g lye, the card said 126 so i added the missing 6g. ${oils}`,
  ])('it is asked where nobody knows whose: %s', (text) => expect(potOf(text).doubts.length).toBeGreaterThan(0));
});

test.each([
  'same as last batch but palm instead of the lard, so: 500g olive, 300g palm, 150g coconut. lye 131g, water 270g',
  'like my usual but with palm instead of the lard so 500g olive, 300g palm, 150g coconut. lye 131g, water 270g',
  'same recipe as last time: 500g olive, 300g palm, 150g coconut. lye still 131? water 270',
])('a list that is told to be like that of another time is of now: %s', (text) =>
  expect(potOf(text)).toEqual({
    grams: { 'olive-oil-virgin': 500, 'palm-oil': 300, 'coconut-oil': 150, naoh: 131, water: 270 },
    doubts: [],
  }),
);
