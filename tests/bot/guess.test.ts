import { expect, test } from 'vitest';
import { createBot } from '../../src/index.ts';

/** What a text without a command is answered by, or the code of the question back; each in a conversation of its own. */
async function answeredBy(text: string): Promise<string> {
  const reply = await createBot().ask({ platform: 'test', place: 'shed', person: 'ada', text });
  return reply.ok ? reply.answer.command : reply.fault.code;
}

const fats = 'olive oil 900 g\ncoconut oil 450 g\ncastor oil 90 g';
const recipe = '500 g olive oil, 200 g coconut oil, 98 g NaOH, 220 g water';

test.each([
  `Help! ${recipe}`,
  `help me please i think i ruined it: ${recipe}`,
  `No scale for small things at my holiday flat, so weighed in the shop: ${recipe}`,
  `Had no good enough scale for this till now: ${recipe}`,
  'NaOH 98 g plus double that in water, olive oil 500 g, coconut oil 200 g. OK?',
  'olive oil 500 g, coconut oil 200 g, NaOH 98 g, water double that. Good?',
  `Mix: ${recipe}`,
  `Batch of today: ${recipe}`,
  `Cool, found grandma's card. ${recipe}`,
  `Report from the kitchen: ${recipe}. Trace after 4 min at 40 C`,
  `Settings: mixer low, 40 °C. ${recipe}`,
  `Restart of my old hobby: ${recipe}`,
  `${recipe}. Soaped at 40 °C, cured 6 weeks.`,
  `${recipe}. Poured at 105F into a 2 L mould, 12 bars. Too strong?`,
  `HP in the crockpot: ${recipe}. Cook until vaseline stage. Lye right?`,
  `my notes. ${recipe}. pot 5 L, room 20 °C, oils 60 °C when melted`,
  `${recipe}, dissolved and still cooling. Okay to combine?`,
  `What's the superfat here? ${recipe}`,
  `12.20 mashed potato, no zap, cook finished. ${recipe}. How does the lye look with all that counted?`,
  `${recipe} would that zap?`,
  `${recipe}. Oils melted, combined at 95 F. Would you double check before I give them away?`,
  `when the oils were at 45 i poured the lye. ${recipe}`,
  `Thursday hot process, 80°C, ${recipe}, 30 g shea after cook`,
  `${recipe}. Is 45 °C right for tallow? And could any kind soul reckon what its superfat really is?`,
  `Report and a plea. ${recipe}`,
  `Cook number four. ${recipe}. Is it ok?`,
  `Scale is new. ${recipe}`,
  `Batch from Sunday. ${recipe}`,
  `Explain this to me please: ${recipe}. Is it fine?`,
  `Remind me please whether this is right: ${recipe}`,
  `Safety first, so: ${recipe}`,
  `Solution cooled already. ${recipe}`,
  `Privacy aside, here it is: ${recipe}`,
  `Timer is set. ${recipe}`,
  `${recipe}. Mixed at 110 F, got false trace. Is it the lye or the temperature?`,
  `${recipe}. Is 98 right for what went in before the cook, and how much extra fat do I have in the end?`,
  `${recipe}. When it's all cooked I put the scent in. Was the "hm" about the lye?`,
])('a whole recipe is checked unless it plainly asks something else: %s', async (text) => {
  expect(await answeredBy(text)).toBe('check');
});

test.each([
  [`${recipe}. how long do i cook it in the crockpot`, 'cook'],
  [`${recipe} lye is at 50 C and oils at 35 C, what temp will they be mixed`, 'mix'],
  [`can u scale this to 1 kg oils: ${recipe}`, 'scale'],
  [`please double that: ${recipe}`, 'scale'],
  ['palm 300 g, lard 300 g. can you double that? thanks', 'scale'],
  ['palm 300 g, lard the same, olive double that, lye please', 'lye'],
  ['palm 300 g and double that olive. lye?', 'lye'],
  [`${recipe}. How hot will the lye get?`, 'solution'],
  [`${recipe}, how much ice do I need?`, 'solution'],
  [`${recipe}, 20 g lavender. When may the lavender go in?`, 'scent'],
  [`${recipe}, 20 g lavender. At what temperature can I add the lavender?`, 'scent'],
  [`cook this: ${recipe}`, 'cook'],
  [`Scaling up for the market (about 40 bars at £6 each):\n\n${fats}\n\nHow much NaOH at 5%?`, 'lye'],
  [`Scaling for the fair, approx 60 bars.\n\n${fats}\n\nWhat NaOH do I need?`, 'lye'],
  [`Scaling up for my mould, 60 bars of 100 g:\n\n${fats}\nlye 200 g\nwater 400 g`, 'scale'],
  [`Scale this to 60 bars:\n\n${fats}\n\nHow much NaOH?`, 'unclear'],
  ['same recipe as last week only this time 20 g less lye, is that fine?', 'unclear'],
  [`summary of this recipe: ${recipe}`, 'summary'],
  ['help i do not know where to begin', 'help'],
  ['help scale', 'help'],
  ['Share of oils for 800 g:\nolive 60%\nlard 40%\nlye please', 'lye'],
  ['Share of oils for 800 g:\nolive 60%\nlard 30%\nlye please', 'unclear'],
  ['fat\tpct\nolive\t60\nlard\t30\n\n800 g of oils, lye?', 'unclear'],
  ['Fat\tgrams\nolive\t600\nlard\t200\nlye\t105\nwater\t240', 'check'],
  ['share: 3 % of 800 g', 'share'],
  ['fat: olive\nlard', 'fat'],
])('%s: %s', async (text, command) => {
  expect(await answeredBy(text)).toBe(command);
});

test.each([
  'Sorry typed that wrong earlier - coconut is 210 g not 120. rest same',
  'oops coconut should be 250',
  'I meant 66 g lye not 76',
  'change the olive to 400 g',
  'no, palm kernel',
  'make that 8 %',
  'edit: water is 230 g',
  'everything else stays the same, but lard 400 g',
  'my bad, i typed 90 g castor, it is 9 g',
])('a correction of nothing that is here is asked about: %s', async (text) => {
  expect(await answeredBy(text)).toBe('unclear');
});

test.each([
  'Sorry, how much lye for 500 g coconut?',
  'sorry for the noob question. 500 g lard, lye?',
  'actually 500 g lard 200 g coconut',
])('a question of its own is none: %s', async (text) => {
  expect(await answeredBy(text)).toBe('lye');
});

test('a story with a weight in it, and without a recipe, is not turned into ounces', async () => {
  const told =
    'Hi all, doing my usual again, only with avocado in for the olive this time and the lye down by three grams because the last lot was harsh on my hands. Water as always. Will it be fine or do I need to change more?';
  expect(await answeredBy(told)).toBe('unclear');
  expect(await answeredBy('three grams in ounces')).toBe('convert');
});

test('a list that begins with fat of something is no command of that name', async () => {
  const list = 'Fat of goose 350 g, oil of olive 300 g, caustic soda 85 g, water 200 g';
  expect(await answeredBy(list)).toBe('check');
});

test.each(['Batch 104, how much lye?', 'Batch no. 7. How much lye?'])(
  '"%s" is the number of one, and begins none',
  async (said) => {
    expect(await answeredBy(`${said} Olive 870 g, coconut 435 g, cocoa butter 145 g.`)).toBe('lye');
  },
);

const eighty = 'olive 50 %\ncoconut 20 %\nshea 10 %';
test.each([
  `Total oils 1500 g\n${eighty}\nEO 30 g per kg oil\nLye needed?`,
  `1 kg of fats: ${eighty}. Lavender 3 % of the oils. How much NaOH?`,
  `Batch of 900 g oils\n${eighty}\nfragrance 25 g/kg\nNaOH?`,
  'lye soln 337 g\nlard 500 g\ncoconut 250 g\ncheck',
])('what is open in a recipe is asked, whatever it says of a scent: %j', async (text) => {
  expect(await answeredBy(text)).toBe('unclear');
});

test.each([
  ['Total oils 1000 g\nolive 60 %\ncoconut 40 %\nEO 30 g per kg oil\nLye needed?', 'lye'],
  ['Total oils 2 kg\nolive 60 %\ncoconut 40 %\nTo do: (Jo) NaOH amount for one table, standard 5% superfat', 'lye'],
  ['Batch of 900 g oils\nolive 600 g\ncoconut 300 g\nNaOH 125 g\nwater 270 g', 'check'],
])('a recipe with all it needs is answered: %j', async (text, command) => {
  expect(await answeredBy(text)).toBe(command);
});

test.each([
  'Fat (g)      target\nLard           500\nOlive          300\n              ----\n               800\n\nhardness 39, iodine 60, INS 138\nLye (g)        ....',
  'lard 500 g\nolive 300 g\niodine 60\nNaOH: ____',
  '| lard | 500 g |\n| olive | 300 g |\n| lye | ? |\niodine 60',
])('a row of alkali that is left blank asks for it: %s', async (text) => expect(await answeredBy(text)).toBe('lye'));

test.each(['fat castor oil', 'fat: iodine value of lard\nplease'])('a question about a fat: %s', async (text) =>
  expect(await answeredBy(text)).toBe('fat'),
);

const shares = 'Castor 20 %, coconut 30 %, olive 30 %, babassu 10 %. Batch oils: 700 g. Fragrance 3 % of oils.';
test.each(['I need grams of lye.', 'Need the amount of NaOH.', ''])(
  'shares that make no whole are a recipe, whatever stands beside them of a scent: %s',
  async (text) => expect(await answeredBy(`${shares} ${text}`)).toBe('unclear'),
);
test('unless it is the scent that is asked about', async () =>
  expect(await answeredBy(`${shares} How much fragrance?`)).toBe('scent'));

test.each([
  'i want to make 2 kg of lard soap, how much caustic soda',
  'how much lye for 5 lb of soap?',
  'I want to make 1 kg of olive soap. How much lye?',
])('lye for soap is asked for its fats: %s', async (text) => {
  const reply = await createBot().ask({ platform: 'test', place: 'shed', person: 'ada', text });
  expect(reply.ok ? null : [reply.fault.code, reply.fault.hint]).toEqual([
    'unclear',
    'Paste the whole recipe: each fat with its weight.',
  ]);
});

test.each([
  ['lye: how much NaOH for 100 g KOH', 'worth'],
  ['lye 100 g KOH in NaOH', 'worth'],
  ['lye for 300 g water at 30 %', 'strength'],
])('behind the word stands another question: %s', async (text, command) =>
  expect(await answeredBy(text)).toBe(command),
);
