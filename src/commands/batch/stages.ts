/** What to do at each stage, what says that it is over, and the caution that goes with it. */
import type { Action, NonEmpty } from '../../answer/types.ts';
import { type Batch, gramsOfLine, type Line, openLines, type Stage, stageAfter } from '../../engine/batch/batch.ts';
import { recipeAsTaken } from '../../engine/batch/weights.ts';
import { solutionHeatOf } from '../../engine/heat/solution-heat.ts';
import { waterGramsOf } from '../../engine/soap.ts';
import { massAtMost, massBoth, number, type Style } from '../../units/print.ts';
import { beforeMixing, thinCaution } from '../cautions.ts';
import type { Context } from '../define.ts';
import { hotLye, hotPot, pouring, scentIntoPot } from '../heat-cautions.ts';
import { roughly, roughRange } from '../heat-words.ts';
import { capital, listed } from '../phrases.ts';
import { forecastOf } from './cooling.ts';
import { coolingLine } from './cooling-words.ts';
import { shelvesOf } from './plan.ts';
import { cureDays } from './reminders.ts';

export interface Guide {
  /** What to do now, in one sentence. */
  readonly now: string;
  readonly more: readonly string[];
  readonly caution: NonEmpty<string>;
  readonly actions: readonly Action[];
}

export const stageName: Readonly<Record<Stage, string>> = {
  weigh: 'weighing',
  lye: 'lye solution',
  mix: 'mixing',
  separation: 'cook, separation',
  applesauce: 'cook, applesauce',
  gel: 'cook, glossy gel',
  test: 'test for free lye',
  cool: 'cooling',
  scent: 'scent',
  mould: 'into the mould',
  cut: 'setting',
  cure: 'cure',
  done: 'done',
};

export const cautionOf: Readonly<Record<Stage, NonEmpty<string>>> = {
  weigh: beforeMixing,
  lye: hotLye,
  mix: pouring,
  separation: hotPot,
  applesauce: hotPot,
  gel: hotPot,
  test: hotPot,
  cool: hotPot,
  scent: scentIntoPot,
  mould: hotPot,
  cut: thinCaution,
  cure: thinCaution,
  done: thinCaution,
};

/** A weight as it goes on the scale; alkali never shown as more than it is. */
const amount = ({ role, grams }: Pick<Line, 'role' | 'grams'>, step: number, style: Style): string =>
  grams === null ? '' : role === 'alkali' ? massAtMost(grams, style, step) : massBoth(grams, style, step);

const weighed = (batch: Batch, role: Line['role'], style: Style): string =>
  listed(
    batch.lines
      .filter((line) => line.role === role)
      .map(
        (line) => `${amount({ role, grams: gramsOfLine(batch, line) }, batch.plan.scaleStepGrams, style)} ${line.name}`,
      ),
  );

/** Says that a stage is over, in the words of its end. */
const go = (label: string, said: string): Action => ({ label, request: `batch ${said}` });

export function guideOf(batch: Batch, now: number, context: Context, style: Style): Guide {
  const { stage } = batch;
  const guide = (
    first: string,
    more: readonly string[],
    actions: readonly Action[],
    caution: NonEmpty<string> = cautionOf[stage],
  ): Guide => ({ now: first, more, caution, actions });
  const { cook } = context.heat();
  const look = (id: string) => cook.stages.find((one) => one.id === id);
  const minutes = (id: string): string => `${look(id)?.minutes.low ?? 15} to ${look(id)?.minutes.high ?? 20} minutes`;
  const ceiling = `Lid on, low heat, at or below about ${roughly(cook.ceilingC.value, style)}.`;
  switch (stage) {
    case 'weigh': {
      const [next, ...rest] = openLines(batch);
      if (!next)
        return guide('All is weighed.', [`Next the lye: ${lyeWords(batch, style)}.`], [go('on to the lye', 'next')]);
      const what = `${amount(next, batch.plan.scaleStepGrams, style)} ${next.name}`.trim();
      return guide(
        `${next.role === 'alkali' ? 'Last of the pot, weigh' : 'Weigh'} ${what}.`,
        batch.taken.size > 0
          ? []
          : [
              `Tell me what the scale shows, for example "took ${took(next, batch, style)}", with "lot" and its number if the pack has one.`,
            ],
        [go('as planned', `took ${shortName(next)}`), go('all as planned', 'all weighed')],
        next.role === 'alkali' || rest.some(({ role }) => role === 'alkali') ? beforeMixing : thinCaution,
      );
    }
    case 'lye':
      return guide(
        `Make the lye solution: ${lyeWords(batch, style)}.`,
        [peakLine(batch, context, style), 'When it is clear, say "lye is clear".'].filter((text) => text !== ''),
        [go('it is clear', 'lye is clear')],
      );
    case 'mix': {
      const cooling = forecastOf(batch, now, context, style);
      return guide(
        `Melt the fats, let the lye cool: both to ${roughRange(cook.mixing.low, cook.mixing.high, style)}.`,
        [
          ...(cooling
            ? [coolingLine(cooling, style)]
            : ['Tell me what the lye’s thermometer shows, for example "70 at 12:40": I say when it is cool enough.']),
          'Pour the lye slowly into the fats and blend until it thickens. Then say "trace".',
        ],
        [go('trace', 'trace')],
      );
    }
    case 'separation':
    case 'applesauce':
    case 'gel': {
      const at = look(stage);
      const onward = stageAfter(batch);
      const end = stage === 'gel' ? 'it is so throughout' : `it is`;
      return guide(
        `${stage === 'separation' ? `Cook. ${ceiling}` : `${capital(at?.name ?? stage)}: it may rise, so stay with it.`} Look after about ${minutes(stage)}.`,
        [
          `What you wait for: ${at?.see ?? ''}`,
          `When ${end}, say "next"${onward === 'test' ? ' and we test it' : ''}; if not, "5 more".`,
        ],
        [go('it is there', 'next'), go('5 more minutes', '5 more')],
      );
    }
    case 'test':
      return batch.process === 'hot'
        ? guide(
            'Cool a bit of it to room temperature and test it for free lye.',
            [
              'It must be translucent throughout, and the cooled bit must give no zap. pH paper on wet soap proves nothing.',
              'Say "no zap" or "zap".',
            ],
            [go('no zap', 'no zap'), go('zap', 'zap')],
          )
        : guide(
            'Test a bar for free lye before anybody uses one.',
            ['Say "no zap" or "zap". Free caustic alkali is measured by titration in ethanol (ISO 456).'],
            [go('no zap', 'no zap'), go('zap', 'zap')],
            thinCaution,
          );
    case 'cool': {
      const after = weighed(batch, 'after', style);
      const cooling = forecastOf(batch, now, context, style);
      return guide(
        `Heat off. ${after === '' ? 'Stir, and measure the pot.' : `Stir in ${after}, then measure the pot.`}`,
        [
          cooling ? coolingLine(cooling, style) : 'Tell me what it shows, for example "88 at 12:40".',
          stageAfter(batch) === 'scent'
            ? 'When it is cool enough for the scent, say "next".'
            : `Without a scent it can go into the mould while it is soft: it stiffens below about ${roughRange(cook.stiffensC.low, cook.stiffensC.high, style)}. Then say "in the mould".`,
        ],
        stageAfter(batch) === 'scent' ? [go('cool enough', 'next')] : [go('in the mould', 'in the mould')],
        batch.scent ? scentIntoPot : hotPot,
      );
    }
    case 'scent': {
      const cooling = forecastOf(batch, now, context, style);
      return guide(
        `Stir in the scent: ${batch.scent?.text ?? ''}.`,
        [
          batch.process === 'cold' ? 'At light trace, heat and flames off.' : 'Heat and flames off first.',
          ...(cooling ? [coolingLine(cooling, style)] : []),
          'Then say "scent is in".',
        ],
        [go('scent is in', 'scent is in')],
      );
    }
    case 'mould':
      return guide(
        'Fill the mould, press it down, cover it.',
        ['When it is in, say "in the mould".'],
        [go('in the mould', 'in the mould')],
      );
    case 'cut':
      return guide(
        'Let it set until it is firm and cold, usually a day or two. Then turn it out and cut it, gloves on.',
        ['I look in with you tomorrow. When it is cut, say "cut".'],
        [go('it is cut', 'cut')],
      );
    case 'cure': {
      const days = cureDays[batch.process].map((one) =>
        one % 7 === 0 ? `${one / 7} weeks`.replace(/^1 weeks/, 'a week') : `${one} days`,
      );
      return guide(
        `Stand the bars apart, in the air, out of the sun: ${listed(days, 'to')}.`,
        ['I tell you when to look. Until then: "note: …" for what you see, "batch record" for the record so far.'],
        [go('the record', 'record')],
      );
    }
    case 'done':
      return guide(
        `Lot ${batch.lot} is done.`,
        ['Its record stays: say "batch record".'],
        [go('the record', 'record')],
      );
  }
}

/** A name as somebody would type it. */
const shortName = ({ role, item, name }: Line): string =>
  role === 'alkali'
    ? item === 'koh'
      ? 'KOH'
      : 'NaOH'
    : name.replace(/, after the cook$/, '').replace(/ \([^)]*\)/g, '');

/** "143 g NaOH": as somebody would say it. */
function took(line: Line, { plan }: Batch, style: Style): string {
  const { grams } = line;
  const said = { massUnit: style.massUnit, decimalSign: style.decimalSign, temperatureUnit: style.temperatureUnit };
  return `${grams === null ? '20 g' : massBoth(grams, said, plan.scaleStepGrams).replace(/ \(.*/, '')} ${shortName(line)}`;
}

function lyeWords(batch: Batch, style: Style): string {
  const liquids = [weighed(batch, 'water', style), weighed(batch, 'liquid', style)].filter((part) => part !== '');
  const acids = weighed(batch, 'acid', style);
  const into = liquids.length > 0 ? listed(liquids) : 'cold water';
  return `${acids === '' ? '' : `dissolve ${acids} in ${into}; then `}stir ${weighed(batch, 'alkali', style)} into ${acids === '' ? `the ${into}` : 'it'}, little by little`;
}

/** How hot the solution gets, of what was weighed; "" where that cannot be said. */
function peakLine(batch: Batch, context: Context, style: Style): string {
  const recipe = recipeAsTaken(batch, shelvesOf(context.catalogue));
  if (!recipe || recipe.alkali.length === 0) return '';
  const found = solutionHeatOf(context.heat(), {
    alkali: recipe.alkali,
    waterGrams: waterGramsOf(recipe),
    iceGrams: 0,
    waterC: 20,
    alkaliC: 20,
  });
  if (!found.ok) {
    return found.fault.kind === 'would-boil'
      ? 'With water of room temperature it would boil over: take half of the water as ice (say "solution" for figures).'
      : '';
  }
  const { peakC } = found.value;
  return `From water of ${roughly(20, style)} it gets about ${roughly(peakC.nominal, style)} hot by itself.`;
}

/** Where it stands, for the head of an answer. */
export const whereWords = ({ lot, name, process, stage }: Batch): string =>
  `Lot ${lot}${name === '' ? '' : `, ${name}`}, ${process} process: ${stageName[stage]}.`;

export const countWords = (batch: Batch): string =>
  `${number(batch.lines.length - openLines(batch).length, 0)} of ${number(batch.lines.length, 0)} weighed.`;
