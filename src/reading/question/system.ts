/** Which cup: a system of measures that is named beside its unit or apart from it ("1 pint (UK)", "I'm in Australia"). */
import { type Unit, unit, units } from '../../units/units.ts';

type System = 'us' | 'imperial' | 'metric' | 'australian';

const systems: readonly (readonly [System, RegExp])[] = [
  ['imperial', /\b(imperial|imp|uk|british|britain|england|english|gb)\b/],
  ['australian', /\b(australian?|aussie)\b/],
  ['metric', /\b(metric|canad\w+|nz|new zealand)\b/],
  ['us', /\b(usa|american|america)\b|\bus (measures?|customary|units?|cups?|pints?|gallons?|quarts?|spoons?)\b|\(us\)/],
];

/** Whether a unit as it was written says its system: "UK pint". */
export const saysSystem = (text: string): boolean =>
  systems.some(([, said]) => said.test(text.toLowerCase())) || /\bus\b/i.test(text);

/** The one system that is named apart from these units; null where none or several are. */
export function systemApart(words: string, own: readonly string[]): System | null {
  const rest = own.reduce((text, part) => (saysSystem(part) ? text.replace(part.toLowerCase(), ' ') : text), words);
  const said = systems.filter(([, pattern]) => pattern.test(rest));
  return said.length === 1 ? (said[0]?.[0] ?? null) : null;
}

const tails: Readonly<Record<System, readonly string[]>> = {
  us: [],
  imperial: ['imperial', 'metric'],
  metric: ['metric'],
  australian: ['australian', 'metric', 'imperial'],
};

/** The measure of that name in a system; the unit itself where the system has none. */
export function inSystem(own: Unit, system: System): Unit {
  // a cup that is metric only by a setting gives way to what the text says
  const [name] = own.id.split('-');
  if (own.system !== 'us' && name !== 'cup') return own;
  for (const tail of tails[system]) {
    const found = units.find(({ id }) => id === `${name}-${tail}`);
    if (found) return found;
  }
  return name === 'cup' ? unit('cup') : own;
}
