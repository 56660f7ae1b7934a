import type { Fault, NonEmpty } from '../answer/types.ts';
import { type Cooling, coolOf } from '../engine/heat/cooling.ts';
import { coolFromReadings } from '../engine/heat/cooling-fit.ts';
import type { Outcome } from '../engine/heat/outcome.ts';
import type { PotInput } from '../engine/heat/pot.ts';
import { Claims } from '../reading/heat/claims.ts';
import { coolOf as readCool } from '../reading/heat/cool.ts';
import { heatLine } from '../reading/heat/line.ts';
import { withReading } from '../reading/heat/more.ts';
import { potOf } from '../reading/heat/pot.ts';
import { scentOf } from '../reading/heat/scent.ts';
import { temperature } from '../units/print.ts';
import { styleFor } from './check.ts';
import { bodyOf, type Cooled, detailsOf, leadOf, resultOf, warningsOf } from './cool-words.ts';
import { defineCommand, type Refusal } from './define.ts';
import { hotPot, scentIntoPot } from './heat-cautions.ts';
import { recipeInstead } from './heat-instead.ts';
import { contentsOf, orOwnPot, potFor } from './heat-pot.ts';
import { heatWords } from './heat-refusals.ts';
import { flashFor, nameScents } from './heat-scent.ts';
import { scaleTaken, warmthStyle } from './heat-words.ts';
import { coolSteps } from './heat-working.ts';
import { listed } from './phrases.ts';

/** Where nobody says, °C. */
const USUAL_ROOM_C = 20;

interface No {
  readonly ok: false;
  readonly fault: Refusal<'caustic'>;
}

const no = (fault: Omit<Fault, 'caution'> & Partial<Refusal<'caustic'>>, caution: NonEmpty<string> = hotPot): No => ({
  ok: false,
  fault: { ...fault, caution },
});

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
  instead: recipeInstead(/ (?:T\d+|how long|when|target) /),
  continues: (text, before, minutes, { reader }) => {
    const question = withReading(reader(), before, text, minutes);
    return question && `cool ${question}`;
  },
  run: ({ text, options }, context) => {
    const reading = context.read(text);
    const line = heatLine(context.reader(), text);
    const style = warmthStyle(line, styleFor(reading, undefined, context));
    const data = context.heat();
    const claims = new Claims(line);
    const spoken = potOf(claims, data.pots, data.materials.values());
    const scents = / S\d+ /.test(line.text) ? scentOf(claims) : null;
    const said = readCool(claims);
    const ask = (message: string, hint: string, candidates: readonly string[] = []): No =>
      no({
        code: 'unclear',
        message,
        hint,
        candidates,
        complete: (answer) => ({ text: `${text}, ${answer}`, options }),
      });
    const flash = scents && said.targetC === null ? flashFor(scents, data, style, scentIntoPot) : null;
    if (flash && !flash.ok) return flash;
    const targetC = said.targetC ?? flash?.value.flash.addBelowC ?? null;
    if (targetC === null) {
      return ask('Down to what temperature?', 'Answer with a temperature, for example "to 60 °C", or name the scent.', [
        'to 60 °C',
        'lavender',
      ]);
    }
    const startC = said.nowC;
    if (said.readings.length === 0 && startC === null)
      return ask('How hot is it now?', 'Measure it and answer for example "it is at 88 °C now".');
    if (startC !== null && startC < targetC && !flash) {
      return no({
        code: 'impossible',
        message: `It is at ${temperature(startC, style)} now, below ${temperature(targetC, style)} already: it can only get cooler.`,
        hint: 'Check both figures; to get there it has to be warmed.',
        candidates: [],
      });
    }

    const roomC = said.roomC ?? context.settings.room ?? USUAL_ROOM_C;
    const filled = contentsOf({ said, recipe: reading, targetC, data, context, style });
    // beside readings the pot counts only together with what is in it
    const counts = said.of !== 'lye' && (said.readings.length === 0 || filled.said);
    const pot = counts ? orOwnPot(spoken, context) : spoken;
    const vessel = potFor(pot, said.of, filled.contents.grams, data);
    const inPot = (input: PotInput): Outcome<Cooling> =>
      coolOf(data, { contents: filled.contents, pot: input, startC: startC ?? targetC, targetC, roomC });
    // The pot counts beside readings only where it and its contents were described; else the readings rule alone.
    const scaled = pot.described && filled.said;
    const cooling =
      said.readings.length > 0
        ? coolFromReadings(data, {
            readings: said.readings,
            targetC,
            roomC,
            stepK: said.stepK,
            ...(scaled ? { pot: { pot: vessel.pot, contents: filled.contents } } : {}),
          })
        : inPot(vessel.pot);
    if (!cooling.ok) return no(heatWords(cooling.fault, style));
    const open = said.readings.length === 0 && vessel.pot.lid === 'on' ? inPot({ ...vessel.pot, lid: 'off' }) : null;
    const taken = [
      ...(said.readings.length === 0 ? filled.taken : []),
      ...(said.readings.length === 0 || scaled ? vessel.taken : []),
      ...(said.roomC === null && context.settings.room === undefined
        ? [`a room of ${temperature(USUAL_ROOM_C, style)}`]
        : []),
    ];
    const cooled: Cooled = {
      said,
      targetC,
      roomC,
      scent: flash?.value.flash ?? null,
      scentName: scents ? nameScents(scents, context.catalogue) : '',
      cooling: cooling.value,
      uncovered: open?.ok ? open.value.minutes.nominal : null,
      data,
      catalogue: context.catalogue,
      style,
    };
    return {
      ok: true,
      value: {
        title: flash ? 'When the scent can go in' : 'When it has cooled',
        lead: leadOf(cooled),
        body: bodyOf(cooled),
        details: () => detailsOf(cooled),
        assumptions: [
          ...(taken.length > 0 && cooling.value.lookAtMinute !== null ? [`I took ${listed(taken)}.`] : []),
          ...(flash?.value.taken ?? []),
          ...scaleTaken(line),
        ],
        warnings: warningsOf(cooled, claims.left()),
        caution: scents ? scentIntoPot : hotPot,
        actions: [
          { label: 'details', request: 'details' },
          { label: 'first aid', request: 'safety' },
        ],
        result: resultOf(cooled),
        working: () =>
          coolSteps(data, { cooling: cooling.value, readings: said.readings, targetC, roomC, scaled }, style),
      },
    };
  },
});
