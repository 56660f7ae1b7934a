import type { Block } from '../answer/types.ts';
import type { HeatData } from '../catalogue/heat-types.ts';
import { type CookGuide, cookGuide } from '../engine/heat/cook-stages.ts';
import { Claims } from '../reading/heat/claims.ts';
import { type CookReading, cookOf } from '../reading/heat/cook.ts';
import { heatLine } from '../reading/heat/line.ts';
import { potOf } from '../reading/heat/pot.ts';
import { massBoth, number, type Style, temperature } from '../units/print.ts';
import { styleFor } from './check.ts';
import { defineCommand } from './define.ts';
import { hotPot } from './heat-cautions.ts';
import { recipeInstead } from './heat-instead.ts';
import { batchOf, lastBatch, orOwnPot } from './heat-pot.ts';
import { heatWords } from './heat-refusals.ts';
import { roughly, scaleTaken, warmthStyle } from './heat-words.ts';
import { capital, listed } from './phrases.ts';

interface Asked {
  readonly said: CookReading;
  readonly guide: CookGuide;
  /** A batch was said, so that the pot can be judged. */
  readonly batchGrams: number | null;
  readonly litres: number | null;
  /** What the question is about, where it is not the stages. */
  readonly asks: 'heat' | 'pot' | 'done' | null;
  readonly data: HeatData;
  readonly style: Style;
}

/** For the stages alone any batch will do, g. */
const ANY_BATCH = 1000;

export const cook = defineCommand({
  id: 'cook',
  summary: 'The stages of a hot-process cook: how long, what to see, when it is done.',
  risk: 'caustic',
  options: {},
  examples: [
    {
      say: 'cook 700 g olive oil, 300 g coconut oil, 140 g NaOH, 380 g water in a 6 l slow cooker',
      about: 'for a recipe and its pot',
    },
    { say: 'hot process soap is at 99 °C in the pot, too hot?', about: 'a temperature against the ceiling' },
    { say: 'cook: 25 minutes since trace', about: 'which stage to expect' },
  ],
  // A post of several lines that begins so is a recipe.
  instead: recipeInstead(/^[^\n]*$| (?:how|stages?|steps|guide|\?|V\d+) /),
  run: ({ text }, context) => {
    const reading = context.read(text);
    const line = heatLine(context.reader(), text);
    const style = warmthStyle(line, styleFor(reading, undefined, context));
    const data = context.heat();
    const claims = new Claims(line);
    const spoken = potOf(claims, data.pots, data.materials.values());
    const said = cookOf(claims);
    const batch = reading.fats.length > 0 && reading.alkali.length > 0 ? batchOf(reading) : null;
    const batchGrams = batch ?? said.grams ?? (text.trim() === '' ? lastBatch(context) : null);
    const pot = batchGrams === null ? spoken : orOwnPot(spoken, context);
    const guide = cookGuide(data, {
      batchGrams: batchGrams ?? ANY_BATCH,
      ...(pot.litres === null ? {} : { potLitres: pot.litres }),
      ...(said.temperatureC === null ? {} : { temperatureC: said.temperatureC }),
      ...(said.minutes === null ? {} : { minutesSoFar: said.minutes }),
    });
    if (!guide.ok) return { ok: false, fault: { ...heatWords(guide.fault, style), caution: hotPot } };
    const asked: Asked = {
      said,
      guide: guide.value,
      batchGrams,
      litres: pot.litres,
      asks: asksOf(line.text),
      data,
      style,
    };
    return {
      ok: true,
      value: {
        title: 'The cook, stage by stage',
        lead: leadOf(asked),
        body: bodyOf(asked),
        details: [
          ...(said.temperatureC === null ? [] : [stepsOf(asked)]),
          {
            kind: 'list',
            title: 'Good to know',
            items: [
              'The ranges are common practice, no measurement: a small batch and a hot pot are quicker, so look and stir.',
              'The pot loses water: hot process takes about 33 to 38 % of the fat as water.',
              'pH paper on wet soap proves nothing: good soap in water stands at about pH 9 to 10.5. Free alkali is measured by titration in ethanol (ISO 456).',
              'Fat kept for after the cook is melted in when it is done, colour usually before, scent last and below its flash point.',
            ],
          },
        ],
        assumptions: said.temperatureC === null ? [] : scaleTaken(line),
        warnings: warningsOf(asked),
        caution: hotPot,
        actions: [
          { label: 'more', request: 'details' },
          { label: 'when can scent go in', request: 'help cool' },
          { label: 'first aid', request: 'safety' },
        ],
        result: {
          stages: guide.value.stages.map(({ id, minutes, ends }) => ({ id, minutes, ends })),
          expected: guide.value.expected,
          ceilingC: guide.value.ceilingC,
          aboveCeiling: guide.value.aboveCeiling,
          potNeededLitres: batchGrams === null ? null : guide.value.potNeededLitres,
          potEnough: batchGrams === null ? null : guide.value.potEnough,
        },
      },
    };
  },
});

function asksOf(text: string): Asked['asks'] {
  if (/ (?:what|which) temp\w* | temperature | how hot | hot enough /.test(text)) return 'heat';
  if (/ (?:(?:what|which) (?:size|pot)|how big|size of (?:a |the )?pot|big enough) /.test(text)) return 'pot';
  return / (?:is (?:it |my soap |hot process |hp )*(?:done|ready|finished|cooked)|know (?:when|if|that)|zap) /.test(
    text,
  )
    ? 'done'
    : null;
}

function leadOf(asked: Asked): string {
  const { said, guide, asks, style } = asked;
  const potLine = potOfBatch(asked);
  const { stages, expected, ceilingC, aboveCeiling } = guide;
  if (said.temperatureC !== null) {
    const now = temperature(said.temperatureC, style);
    const ceiling = roughly(ceilingC, style);
    return aboveCeiling
      ? `Too hot: ${now} is above the ceiling of about ${ceiling}. Turn the heat off, stir it down, and wait.`
      : `Not too hot: ${now} is below the ceiling of about ${ceiling}.`;
  }
  if (expected && said.minutes !== null) {
    const names = expected.map((id) => stages.find((stage) => stage.id === id)?.name ?? id);
    return `After ${number(said.minutes, 0, style)} minutes expect ${listed(names, 'or')}: look rather than trust the clock.`;
  }
  if (asks === 'heat')
    return `Hot, but at or below about ${roughly(ceilingC, style)}: above it the soap scorches and can climb out.`;
  if (asks === 'pot') return potLine;
  if (asks === 'done')
    return 'It is done when it is translucent throughout and a cooled bit gives no zap, now and when it is cold.';
  const total = stages.at(-1)?.ends;
  return `${capitalNumber(stages.length)} stages after trace, lid on, about ${total?.low ?? 0} to ${total?.high ?? 0} minutes in all: look and stir rather than trust the clock.`;
}

const capitalNumber = (count: number): string =>
  (['No', 'One', 'Two', 'Three', 'Four', 'Five'] as const)[count] ?? String(count);

const stepsOf = ({ guide }: Asked): Block => ({
  kind: 'steps',
  steps: [
    ...guide.stages.map(
      ({ name, see, minutes }) => `${capital(name)} (${minutes.low} to ${minutes.high} minutes): ${see}`,
    ),
    'Done when it is translucent throughout and a cooled bit gives no zap, now and when it is cold.',
  ],
});

/** Room for rising. */
function potOfBatch({ guide, batchGrams, litres, style }: Asked): string {
  if (batchGrams === null) return 'Fill the pot half at most: it rises.';
  const enough = litres !== null && guide.potEnough ? ` Your ${number(litres, 1, style)} L will do.` : '';
  return `For ${massBoth(batchGrams, style)} of batch the pot should hold ${number(guide.potNeededLitres, 1, style)} L, twice the batch: it rises.${enough}`;
}

function bodyOf(asked: Asked): Block[] {
  const { guide, said, asks, style } = asked;
  const ceiling = `Keep it at or below about ${roughly(guide.ceilingC, style)}: hotter it scorches and can climb out.`;
  const text = [
    ...(guide.aboveCeiling || asks === 'heat' ? [] : [ceiling]),
    ...(asks === 'pot' ? [] : [potOfBatch(asked)]),
  ].join(' ');
  return [...(said.temperatureC === null ? [stepsOf(asked)] : []), { kind: 'text', text }];
}

function warningsOf({ guide, said, litres, style }: Asked): string[] {
  return [
    ...(guide.aboveCeiling && said.temperatureC !== null
      ? [`At ${temperature(said.temperatureC, style)} it can scorch and climb out of the pot: stay with it.`]
      : []),
    ...(guide.potEnough === false && litres !== null
      ? [
          `Your pot of ${number(litres, 1, style)} L is too small: it can boil over. Halve the batch or take ${number(guide.potNeededLitres, 1, style)} L.`,
        ]
      : []),
  ];
}
