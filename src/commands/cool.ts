import type { Block } from '../answer/types.ts';
import type { HeatData } from '../catalogue/heat-types.ts';
import { type Cooling, type CurvePoint, coolOf } from '../engine/heat/cooling.ts';
import { coolFromReadings } from '../engine/heat/cooling-fit.ts';
import type { ScentFlash } from '../engine/heat/flash-point.ts';
import type { Outcome } from '../engine/heat/outcome.ts';
import type { PotInput } from '../engine/heat/pot.ts';
import { Claims } from '../reading/heat-claims.ts';
import { type CoolReading, coolOf as readCool } from '../reading/heat-cool.ts';
import { heatLine } from '../reading/heat-line.ts';
import { potOf } from '../reading/heat-pot.ts';
import { scentOf } from '../reading/heat-scent.ts';
import { number, type Style, temperature } from '../units/print.ts';
import { styleFor } from './check.ts';
import { defineCommand, type Refusal } from './define.ts';
import { hotPot, scentIntoPot } from './heat-cautions.ts';
import { contentsOf, potFor } from './heat-pot.ts';
import { heatWords } from './heat-refusals.ts';
import { flashFor, fluidLine, nameScents } from './heat-scent.ts';
import { minutesOf, scaleTaken, timeRange, warmthRange, warmthStyle } from './heat-words.ts';
import { coolingPicture } from './pictures.ts';

interface Asked {
  readonly said: CoolReading;
  readonly targetC: number;
  readonly roomC: number;
  readonly scent: ScentFlash | null;
  readonly scentName: string;
  readonly cooling: Cooling;
  /** With the lid off instead, where one was on: minutes. */
  readonly uncovered: number | null;
  readonly data: HeatData;
  readonly style: Style;
}

const USUAL_ROOM_C = 20;

export const cool = defineCommand({
  id: 'cool',
  summary: 'When has it cooled to a temperature, or enough for a scent? Two readings make it sharp.',
  risk: 'caustic',
  options: {},
  examples: [
    { say: 'cool 92 °C at 0 min, 86 at 10 min, room 20 °C, target 70 °C', about: 'from readings' },
    { say: 'when can I add lavender, pot is at 88 °C', about: 'towards a scent' },
    {
      say: 'cool: 1.5 kg batch at 90 °C in a 6 l slow cooker, lid off, to 65 °C',
      about: 'from the pot in plain words',
    },
  ],
  run: ({ text, options }, context) => {
    const reading = context.read(text);
    const line = heatLine(context.reader(), text);
    const style = warmthStyle(line, styleFor(reading, undefined, context));
    const data = context.heat();
    const claims = new Claims(line);
    const pot = potOf(claims, data.pots, data.materials.values());
    const scents = / S\d+ /.test(line.text) ? scentOf(claims) : null;
    const said = readCool(claims);
    const ask = (
      message: string,
      hint: string,
      candidates: readonly string[],
    ): { ok: false; fault: Refusal<'caustic'> } => ({
      ok: false,
      fault: {
        code: 'unclear',
        message,
        hint,
        candidates,
        caution: hotPot,
        complete: (answer) => ({ text: `${text}, ${answer}`, options }),
      },
    });
    const taken: string[] = [];
    const flash =
      scents && said.targetC === null ? flashFor(scents, data, context.catalogue, style, scentIntoPot) : null;
    if (flash && !flash.ok) return flash;
    taken.push(...(flash?.value.taken ?? []));
    const targetC = said.targetC ?? flash?.value.flash.addBelowC ?? null;
    if (targetC === null)
      return ask('Down to what temperature?', 'Answer with a temperature, for example "to 60 °C", or name the scent.', [
        'to 60 °C',
        'lavender',
      ]);
    if (said.readings.length === 0 && said.nowC === null)
      return ask('How hot is it now?', 'Measure it and answer for example "it is at 88 °C now".', []);
    const roomC = said.roomC ?? USUAL_ROOM_C;
    if (said.roomC === null) taken.push(`I took a room of ${temperature(USUAL_ROOM_C, style)}.`);

    const contents = contentsOf({ said, recipe: reading, targetC, data, context, style });
    const potInput = potFor(pot, said.of, contents.contents.grams, data);
    let cooling: Outcome<Cooling>;
    let uncovered: number | null = null;
    if (said.readings.length > 0) {
      const described = pot.described && contents.said;
      cooling = coolFromReadings(data, {
        readings: said.readings,
        targetC,
        roomC,
        stepK: said.stepK,
        ...(described ? { pot: { pot: potInput.pot, contents: contents.contents } } : {}),
      });
      if (described) taken.push(...potInput.taken);
    } else {
      const startC = said.nowC ?? targetC;
      if (startC < targetC && !scents) {
        const now = temperature(startC, style);
        return {
          ok: false,
          fault: {
            code: 'impossible',
            message: `It is at ${now} now, below ${temperature(targetC, style)} already: cooling won’t take it up.`,
            hint: 'Check both figures; to get there it has to be warmed.',
            candidates: [],
            caution: hotPot,
          },
        };
      }
      const model = (input: PotInput): Outcome<Cooling> =>
        coolOf(data, { contents: contents.contents, pot: input, startC, targetC, roomC });
      cooling = model(potInput.pot);
      if (cooling.ok && potInput.pot.lid === 'on') {
        const open = model({ ...potInput.pot, lid: 'off' });
        uncovered = open.ok ? open.value.minutes.nominal : null;
      }
      const both = [...(contents.taken ? [contents.taken] : []), ...potInput.taken];
      if (both.length > 0) taken.push(...both);
    }
    if (!cooling.ok) return { ok: false, fault: { ...heatWords(cooling.fault, style), caution: hotPot } };
    const asked: Asked = {
      said,
      targetC,
      roomC,
      scent: flash?.value.flash ?? null,
      scentName: scents ? nameScents(scents, context.catalogue) : '',
      cooling: cooling.value,
      uncovered,
      data,
      style,
    };
    return {
      ok: true,
      value: {
        title: flash ? 'When the scent can go in' : 'When it has cooled',
        lead: leadOf(asked),
        body: bodyOf(asked),
        details: () => detailsOf(asked),
        assumptions: [...taken, ...scaleTaken(line)],
        warnings: warningsOf(asked, claims.left()),
        caution: scents ? scentIntoPot : hotPot,
        actions: [
          { label: 'details', request: 'details' },
          { label: 'first aid', request: 'safety' },
        ],
        result: resultOf(asked),
      },
    };
  },
});

function leadOf({ said, cooling, targetC, scent, style }: Asked): string {
  const { minutesLeft, minutes, notes } = cooling;
  const goal = temperature(targetC, style);
  const where = scent ? `At ${goal} or below` : `At ${goal}`;
  if (notes.includes('already-there'))
    return scent ? `Now: it is cool enough, ${goal} or below.` : `It is there: ${goal} or less already.`;
  if (said.readings.length > 0) {
    const spread = minutesLeft.high - minutesLeft.low;
    return `${where}, in about ${minutesOf(minutesLeft.nominal, spread)} from the last reading (${timeRange(minutesLeft.low, minutesLeft.high)}), ${minutesOf(minutes.nominal, spread)} on your clock.`;
  }
  return `${where}, probably in ${timeRange(minutes.low, minutes.high)}.`;
}

const line = (text: string): Block => ({ kind: 'text', text });

function bodyOf({ said, cooling, scent, scentName, targetC, uncovered, data, style }: Asked): Block[] {
  const texts: string[] = [];
  const { lookAtMinute, minutes, notes, minutesLeft } = cooling;
  if (scent) {
    texts.push(
      `${scentName} can flash from ${temperature(scent.flashPointC, style)}; ${temperature(targetC, style)} leaves a margin. Heat and flames off first.`,
    );
    const fluid = fluidLine(scent, data, style);
    if (fluid) texts.push(fluid);
  }
  if (lookAtMinute !== null) {
    const last = said.readings.at(-1)?.minute ?? 0;
    const wait = minutesOf(Math.max(1, lookAtMinute - last), 60);
    const stir = notes.includes('stir-before-reading') ? 'Stir, then measure' : 'Measure';
    texts.push(
      said.readings.length > 0
        ? `${stir} again in ${wait} and tell me: the range shrinks with every reading.`
        : `${stir} in ${wait} and tell me both readings: then I can say it to a few minutes.`,
    );
  }
  if (uncovered !== null && uncovered < 0.9 * minutes.nominal)
    texts.push(`With the lid off about ${minutesOf(uncovered, 60)}.`);
  if (minutesLeft.high > 0 && notes.includes('close-to-room'))
    texts.push('That is close to the temperature of the room: the last degrees take long.');
  return [...texts.map(line), ...coolingPicture(cooling.curve, targetC, said.readings, style)];
}

/** Rows of the table: about eight, evenly spaced in time. */
function rowsOf(curve: readonly CurvePoint[], style: Style): string[][] {
  const every = Math.max(1, Math.round((curve.length - 1) / 8));
  return curve
    .filter((_, i) => i % every === 0 || i === curve.length - 1)
    .map(({ minute, temperatureC, lowC, highC }) => [
      number(minute, 0, style),
      temperature(temperatureC, style),
      warmthRange(lowC, highC, style),
    ]);
}

function detailsOf({ cooling, said, data, style, roomC }: Asked): Block[] {
  const by =
    said.readings.length > 1
      ? 'One constant rate (Newton’s law of cooling), fitted to your readings by least squares; a law that slows down later widens the far end.'
      : 'Heat lost by natural convection, radiation and evaporation from the pot as described; every uncertain figure widens the range.';
  return [
    {
      kind: 'table',
      caption: `Temperature over the minutes, room ${temperature(roomC, style)}`,
      columns: [
        { title: 'Minute', align: 'right' },
        { title: 'About', align: 'right' },
        { title: 'Range', align: 'right' },
      ],
      rows: rowsOf(cooling.curve, style),
    },
    line(by),
    line(
      `Sources: ${[data.air.table.source, data.water.evaporation.source, data.fat.soapPaste.heatCapacity.source]
        .map((id) => data.sources.get(id)?.title ?? id)
        .join('; ')}.`,
    ),
  ];
}

function warningsOf({ said, scent, data, cooling, style }: Asked, left: readonly string[]): string[] {
  const { notes } = cooling;
  const hottest = Math.max(said.nowC ?? 0, ...said.readings.map(({ temperatureC }) => temperatureC));
  const ceiling = data.cook.ceilingC.value;
  return [
    ...(hottest > ceiling && said.of !== 'lye'
      ? [
          `${temperature(hottest, style)} is above the ceiling of about ${temperature(ceiling, style)}: soap scorches and can climb out.`,
        ]
      : []),
    ...(scent && said.of === 'lye' ? ['Scent goes into the soap, never into lye.'] : []),
    ...(notes.includes('outside-range')
      ? ['So small a pot lies outside the range of the formulas: the range is wider.']
      : []),
    ...(left.length > 0 ? [`I did not use ${left.join(', ')}.`] : []),
  ];
}

function resultOf({ cooling, targetC, scent }: Asked): Readonly<Record<string, unknown>> {
  const { minutes, minutesLeft, curve, lookAtMinute } = cooling;
  return {
    minutes,
    minutesLeft: minutesLeft.nominal,
    minutesLeftRange: { low: minutesLeft.low, high: minutesLeft.high },
    lookAtMinute,
    targetC,
    curve: curve.map(({ minute, temperatureC, lowC, highC }) => ({ minute, temperatureC, lowC, highC })),
    ...(scent ? { flashPointC: scent.flashPointC, addBelowC: scent.addBelowC, pourable: scent.pourable } : {}),
  };
}
