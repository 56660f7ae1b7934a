/**
 * The one place where a number becomes text. Rules after the ISMP list of error-prone dose designations and the
 * SI Brochure 5.4.4: a leading zero always, no trailing zero, a space before the unit, a narrow no-break space
 * between groups of three digits, one decimal sign.
 */
const groupSpace = '\u202f';

export interface Style {
  readonly massUnit: 'g' | 'oz';
  readonly temperatureUnit: '°C' | '°F';
  readonly decimalSign: '.' | ',';
}

export const plainStyle: Style = { massUnit: 'g', temperatureUnit: '°C', decimalSign: '.' };

const gramsPerOunce = 28.349523125;

/** `value` with at most `decimals` digits after the decimal sign. */
export function number(value: number, decimals: number, style: Style = plainStyle): string {
  const size = Math.abs(value);
  // most figures are whole, and have no decimals to be reckoned
  const fixed = Number.isSafeInteger(size) ? String(size) : size.toFixed(decimals);
  const point = fixed.indexOf('.');
  const whole = point < 0 ? fixed : fixed.slice(0, point);
  let end = point < 0 ? 0 : fixed.length;
  while (end > 0 && fixed[end - 1] === '0') end--;
  const digits = end > point + 1 ? fixed.slice(point + 1, end) : '';
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, groupSpace) : whole;
  const sign = value < 0 && Number(fixed) !== 0 ? '−' : '';
  return sign + grouped + (digits ? style.decimalSign + digits : '');
}

/** Decimals that a scale of this step (g) can show. */
function decimalsOf(step: number): number {
  return Math.min(3, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
}

/** A mass in the person's unit, to the step of their scale; small masses keep two significant digits. */
export function mass(grams: number, style: Style = plainStyle, stepGrams = 1): string {
  if (style.massUnit === 'oz') return `${number(grams / gramsPerOunce, 2, style)} oz`;
  const small = Math.abs(grams) > 0 && Math.abs(grams) < 10 * stepGrams;
  return `${number(grams, Math.max(decimalsOf(stepGrams), small ? 1 : 0), style)} g`;
}

/**
 * An amount as somebody wrote it, shown again: whole grams where they were whole, else to the tenth (or the hundredth
 * below 10 g).
 */
export function readMass(grams: number, style: Style = plainStyle): string {
  if (style.massUnit === 'oz') return mass(grams, style);
  const whole = Math.abs(grams - Math.round(grams)) < 0.005;
  return `${number(grams, whole ? 0 : Math.abs(grams) < 10 ? 2 : 1, style)} g`;
}

/**
 * An amount to weigh that must not be exceeded: never shown as more than it is. Ounces stand first where the person
 * weighs in ounces, with the grams beside them.
 */
export function massAtMost(grams: number, style: Style = plainStyle, stepGrams = 1): string {
  const inGrams = mass(grams, { ...style, massUnit: 'g' }, stepGrams);
  if (style.massUnit === 'g') return inGrams;
  const hundredths = Math.floor((grams / gramsPerOunce) * 100 + 1e-9) / 100;
  return `${number(hundredths, 2, style)} oz (${inGrams})`;
}

/** Ounces with the grams beside them where the person weighs in ounces, else grams. */
export function massBoth(grams: number, style: Style = plainStyle, stepGrams = 1): string {
  if (style.massUnit === 'g') return mass(grams, style, stepGrams);
  return `${mass(grams, style)} (${mass(grams, { ...style, massUnit: 'g' }, stepGrams)})`;
}

/** A share 0–1 as a percentage with one decimal. */
export function percent(share: number, style: Style = plainStyle, decimals = 1): string {
  return `${number(share * 100, decimals, style)} %`;
}

/** "4 to 9 %": a range of shares in one unit. */
export function percentRange(low: number, high: number, style: Style = plainStyle): string {
  return `${number(low * 100, 1, style)} to ${number(high * 100, 1, style)} %`;
}

export function temperature(celsius: number, style: Style = plainStyle): string {
  return style.temperatureUnit === '°F'
    ? `${number(celsius * 1.8 + 32, 0, style)} °F`
    : `${number(celsius, 0, style)} °C`;
}
