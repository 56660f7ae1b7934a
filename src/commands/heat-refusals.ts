/** What the heat engine refuses, in words, with the nearest that would work. */
import type { Fault } from '../answer/types.ts';
import type { HeatFault } from '../engine/heat/outcome.ts';
import { mass, number, percent, type Style, temperature } from '../units/print.ts';
import { kelvin } from './heat-words.ts';
import { alkaliName } from './phrases.ts';

type Words = readonly [code: Fault['code'], message: string, hint: string];
type Of<K extends HeatFault['kind']> = Extract<HeatFault, { kind: K }>;

const named: Readonly<Record<string, string>> = {
  naoh: alkaliName.naoh,
  koh: alkaliName.koh,
  target: 'the temperature wanted',
  start: 'the temperature now',
  limit: 'the limit',
  batch: 'the batch',
  contents: 'what is in the pot',
};
const figureName = (figure: string): string => named[figure] ?? figure.replaceAll('-', ' ');

/** Units by what a figure is called. */
const shown = (figure: string, value: number, style: Style): string =>
  /temperature|target|start|limit|flash|reading|wanted/.test(figure)
    ? temperature(value, style)
    : /purity|load/.test(figure)
      ? percent(value, style)
      : figure === 'litres'
        ? `${number(value, 2, style)} L`
        : /minute/.test(figure)
          ? `${number(value, 0, style)} min`
          : mass(value, style);

const words: { readonly [K in HeatFault['kind']]: (fault: Of<K>, style: Style) => Words } = {
  'not-finite': ({ figure }) => [
    'impossible',
    `I can’t reckon with ${figureName(figure)} as written.`,
    'Write the figure again.',
  ],
  'out-of-range': ({ figure, value, range: [low, high] }, style) => [
    'impossible',
    `${shown(figure, value, style)} for ${figureName(figure)} is outside what I can reckon with.`,
    `I can from ${shown(figure, low, style)} to ${shown(figure, high, style)}. Check the figure and its unit.`,
  ],
  'no-alkali': () => [
    'unclear',
    'How much alkali?',
    'Tell me the weight of the NaOH or KOH and of the water, for example: 150 g NaOH in 350 g water.',
  ],
  'no-water': () => ['unclear', 'How much water?', 'Tell me its weight, for example: 350 g water.'],
  'no-fat': () => ['unclear', 'How much fat?', 'Tell me each fat and its weight, for example: 700 g olive oil.'],
  'not-dissolved': ({ concentration, mostAlkaliGrams, leastWaterGrams }, style) => [
    'refused',
    `That won’t dissolve: ${percent(concentration, style, 0)} is alkali, and water takes up about half its own weight of solution at most.`,
    `Use at least ${mass(leastWaterGrams, style)} water for this alkali, or at most ${mass(Math.floor(mostAlkaliGrams), style)} alkali for this water. Usual is twice as much water as alkali.`,
  ],
  'would-boil': ({ peakC, boilsAtC, iceGrams, waterGrams }, style) => {
    const ways = [
      ...(iceGrams === null ? [] : [`at least ${mass(Math.ceil(iceGrams), style)} of the water as ice`]),
      ...(waterGrams === null ? [] : [`at least ${mass(Math.ceil(waterGrams), style)} cold water in all`]),
    ];
    return [
      'refused',
      `Don’t: it would boil and spit lye. It would come to about ${temperature(peakC.nominal, style)} and boils at ${temperature(boilsAtC, style)}.`,
      ways.length > 0
        ? `To stay below the boil take ${ways.join(', or ')}; add the alkali slowly.`
        : 'Use colder and much more water.',
    ];
  },
  'limit-too-low': ({ limitC, coldestC, waterGrams }, style) => [
    'impossible',
    `Ice alone can’t keep it under ${temperature(limitC, style)}: with all of the water as ice it still gets to about ${temperature(coldestC, style)}.`,
    waterGrams === null
      ? 'Set a higher limit, or let it cool.'
      : `Take ${mass(Math.ceil(waterGrams), style)} water and ice in all, half of it ice; or set a higher limit, or let it cool.`,
  ],
  'target-not-above-room': ({ targetC, roomC }, style) => [
    'impossible',
    `It won’t get down to ${temperature(targetC, style)} by itself: the room is at ${temperature(roomC, style)}, and nothing cools below its room.`,
    'Stand the pot in cold water, find a cooler place, or take a higher temperature.',
  ],
  'pot-too-small': ({ litres, contentsLitres }, style) => [
    'impossible',
    `${number(contentsLitres, 1, style)} L don’t fit into a pot of ${number(litres, 1, style)} L.`,
    `For the cook it should hold twice the batch: ${number(2 * contentsLitres, 1, style)} L. Check both figures.`,
  ],
  unknown: ({ figure, id }) => ['unclear', `I don’t know the ${figureName(figure)} "${id}".`, 'Say it in other words.'],
  'reading-not-above-room': ({ temperatureC, roomC }, style) => [
    'impossible',
    `A reading of ${temperature(temperatureC, style)} in a room of ${temperature(roomC, style)}: it is as cool as it will get.`,
    'Check the room’s temperature and the reading.',
  ],
  'readings-rise': ({ fromC, toC }, style) => [
    'impossible',
    `Your readings rise, from ${temperature(fromC, style)} to ${temperature(toC, style)}: that is no cooling.`,
    'Is the heat off? Stir, wait ten minutes, and take two readings more. Saponification itself can still warm it.',
  ],
  'readings-disagree': ({ scatterK }, style) => [
    'impossible',
    `Your readings fit no cooling curve: they are off by about ${kelvin(scatterK, style)}.`,
    'Stir before each reading, measure in the middle, and tell me the times again.',
  ],
  'too-few-readings': () => [
    'unclear',
    'I need two readings at two different times.',
    'For example: 92 °C at 0 min, 86 at 10 min.',
  ],
  'too-little-fall': ({ fallK, minutes }, style) => [
    'unclear',
    `It fell by ${kelvin(fallK, style)} in ${number(minutes, 0, style)} minutes: too little to tell how fast it cools.`,
    'Measure again in 10 to 15 minutes and tell me both readings.',
  ],
  'blend-out-of-reach': ({ part, neededC, range: [low, high] }, style) => [
    'impossible',
    `For that the ${part === 'fats' ? 'fats' : 'lye solution'} would need ${temperature(neededC, style)}, outside ${temperature(low, style)} to ${temperature(high, style)}.`,
    `Warm or cool the ${part === 'fats' ? 'lye solution' : 'fats'} instead.`,
  ],
  'no-scent': () => [
    'unclear',
    'Which scent?',
    'Name the essential oil, for example "lavender", or tell me "flash point 71 °C" from its data sheet.',
  ],
};

export function heatWords(fault: HeatFault, style: Style): Omit<Fault, 'caution'> {
  const [code, message, hint] = (words[fault.kind] as (fault: HeatFault, style: Style) => Words)(fault, style);
  return { code, message, hint, candidates: [] };
}
