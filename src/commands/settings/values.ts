/** What a person, or the host of a room, has set to be taken where nobody says. */
import type { WaterRule } from '../../engine/water.ts';
import { number, percent, type Style, temperature } from '../../units/print.ts';
import { alkaliName } from '../phrases.ts';

export interface Settings {
  readonly weights?: 'g' | 'oz';
  readonly temperature?: '°C' | '°F';
  readonly cup?: 'us' | 'metric' | 'imperial';
  /** Smallest step of the scale, g. */
  readonly step?: number;
  /** Purity, 0–1. */
  readonly naoh?: number;
  readonly koh?: number;
  /** 0–1. */
  readonly superfat?: number;
  readonly water?: Exclude<WaterRule, { kind: 'grams' }>;
  readonly decimal?: '.' | ',';
  /** Temperature of the room, °C. */
  readonly room?: number;
  /** In words that the reader of heat, or of sizes, takes. */
  readonly pot?: string;
  readonly mould?: string;
  /** IANA name, as `Intl` spells it. */
  readonly timeZone?: string;
  /** BCP 47. */
  readonly language?: string;
  readonly answers?: 'brief' | 'full';
}

export type Setting = keyof Settings;

const cups = { us: 'US (237 mL)', metric: 'metric (250 mL)', imperial: 'imperial (284 mL)' } as const;

const pure = (share: number, style: Style): string => `${percent(share, style)} pure`;

type Words = {
  readonly [K in Setting]-?: {
    readonly label: string;
    readonly value: (value: NonNullable<Settings[K]>, style: Style) => string;
  };
};

/** Label and value together stand after "I took your setting: ". */
const words: Words = {
  weights: { label: 'weights', value: (unit) => (unit === 'oz' ? 'in ounces' : 'in grams') },
  temperature: { label: 'temperatures', value: (unit) => `in ${unit}` },
  cup: { label: 'cups', value: (kind) => cups[kind] },
  step: { label: 'scale', value: (grams, style) => `${number(grams, 3, style)} g` },
  naoh: { label: alkaliName.naoh, value: pure },
  koh: { label: alkaliName.koh, value: pure },
  superfat: { label: 'superfat', value: (share, style) => percent(share, style) },
  water: {
    label: 'water',
    value: ({ kind, value }, style) =>
      kind === 'concentration'
        ? `for a ${percent(value, style)} lye solution`
        : kind === 'ratio'
          ? `${number(value, 2, style)} g to 1 g alkali`
          : `${percent(value, style)} of the fats`,
  },
  decimal: { label: 'decimal', value: (sign) => (sign === ',' ? 'comma' : 'point') },
  room: { label: 'room', value: (celsius, style) => temperature(celsius, style) },
  pot: { label: 'pot', value: (text) => text },
  mould: { label: 'mould', value: (text) => text },
  timeZone: { label: 'time zone', value: (zone) => zone },
  language: { label: 'language', value: (tag) => tag },
  answers: { label: 'answers', value: (length) => length },
};

export const settingNames = Object.keys(words) as readonly Setting[];

export const labelOf = (key: Setting): string => words[key].label;

/** The value alone; null where it is not set. */
export function shownValue(key: Setting, settings: Settings, style: Style): string | null {
  const value = settings[key];
  const say = words[key].value as (value: unknown, style: Style) => string;
  return value === undefined ? null : say(value, style);
}

/** "scale 0.1 g"; null where it is not set. */
export function worded(key: Setting, settings: Settings, style: Style): string | null {
  const value = shownValue(key, settings, style);
  return value === null ? null : `${labelOf(key)} ${value}`;
}

/** Style of the one who has set this. */
export const styleOf = (style: Style, { weights, temperature: warmth, decimal }: Settings): Style => ({
  massUnit: weights ?? style.massUnit,
  temperatureUnit: warmth ?? style.temperatureUnit,
  decimalSign: decimal ?? style.decimalSign,
});
