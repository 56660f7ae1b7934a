import { type Style, temperature } from '../../units/print.ts';
import { about, timeRange } from '../heat-words.ts';
import type { Forecast } from './cooling.ts';

const goals: Readonly<Record<Forecast['goal']['what'], string>> = {
  scent: 'scent may go in',
  mix: 'lye may go into the fats',
  mould: 'it stiffens, so it should be in the mould before',
};

/** "Now about 62 °C. Scent may go in at 59 °C or below, probably in 10 to 20 minutes." */
export function coolingLine({ goal, now, left, isThere, rough }: Forecast, style: Style): string {
  const at = temperature(goal.celsius, style);
  const what = goal.what === 'mould' ? `Below about ${at} ${goals.mould}` : `At ${at} or below ${goals[goal.what]}`;
  if (isThere) return goal.what === 'mould' ? `${what}.` : `It is cool enough: at ${at} or below ${goals[goal.what]}.`;
  const time =
    left.high < 1
      ? 'that should be by now'
      : left.nominal < 1
        ? 'that should be about now'
        : `probably in ${timeRange(left.low, left.high)}`;
  const taken = rough ? ' A second reading makes that sharper.' : '';
  return `Now ${about(now, style)}. ${what}: ${time}.${taken}`;
}
