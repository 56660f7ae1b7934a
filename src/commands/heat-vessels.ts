/** Which vessels stand a lye solution of this temperature, in words. */
import type { Block } from '../answer/types.ts';
import type { HeatData } from '../catalogue/heat-types.ts';
import { type VesselAnswer, vesselFor, vesselsFor } from '../engine/heat/vessels.ts';
import type { PotReading } from '../reading/heat/pot.ts';
import { type Style, temperature } from '../units/print.ts';
import { capital, listed } from './phrases.ts';

const small = (name: string): string =>
  /^[A-Z][a-z]/.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;
const namesOf = (vessels: readonly VesselAnswer[]): string =>
  listed(
    vessels.map(({ name }) => small(name)),
    'or',
  );

/** The named vessel first; else what is fit and what never is. */
export function vesselLine(data: HeatData, pot: PotReading, peakHighC: number): string {
  const named = pot.material === null ? null : vesselFor(data, pot.material, peakHighC);
  if (named && (named.verdict === 'fit' || named.verdict === 'caution'))
    return `${capital(named.name)}: ${small(named.why)}`;
  const all = vesselsFor(data, peakHighC);
  const fit = all.filter(({ verdict }) => verdict === 'fit');
  return `Mix it in ${namesOf(fit)}; never in aluminium, thin glass or drink bottles.`;
}

/** Where the named vessel is not up to it. */
export function vesselWarning(data: HeatData, pot: PotReading, peakHighC: number, style: Style): string | null {
  const named = pot.material === null ? null : vesselFor(data, pot.material, peakHighC);
  if (!named || named.verdict === 'fit' || named.verdict === 'caution') return null;
  if (named.verdict === 'too-hot' && named.maxC !== null)
    return `Too hot for ${small(named.name)}, which stands about ${temperature(named.maxC, style)}: use ice, or another vessel.`;
  return `Not in ${small(named.name)}. ${named.why}`;
}

const verdicts: Readonly<Record<VesselAnswer['verdict'], string>> = {
  fit: 'fit',
  caution: 'with care',
  'too-hot': 'too hot for it',
  unfit: 'no',
  attacked: 'never',
};

export const vesselTable = (data: HeatData, peakHighC: number): Block => ({
  kind: 'list',
  title: 'Vessels',
  items: vesselsFor(data, peakHighC).map(
    ({ name, verdict, why, fromMemory }) =>
      `${capital(name)}: ${verdicts[verdict]}. ${why}${fromMemory ? ' (from memory)' : ''}`,
  ),
});
