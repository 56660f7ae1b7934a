/** A fat in plain words, from its chemistry: what it is made of and what that does in a bar (common practice). */
import type { Catalogue, Chosen, Fat } from '../catalogue/types.ts';
import { ACID_GROUPS, type AcidGroup, acidGroup, compositionOf } from '../engine/composition.ts';
import { number, type Style } from '../units/print.ts';
import { share } from './figures.ts';
import { listed } from './phrases.ts';

/** Groups as people say them. */
const groupWords: Readonly<Record<AcidGroup, string>> = {
  'c4-c10': 'short saturated (to C10)',
  'c12-c14': 'lauric and myristic',
  'c16-c18-saturated': 'palmitic and stearic',
  'c20-up-saturated': 'long saturated (C20 up)',
  'c18-1': 'oleic',
  ricinoleic: 'ricinoleic',
  'c18-2-c18-3': 'linoleic and linolenic',
  other: 'other',
};

type Groups = Readonly<Record<AcidGroup, number>>;

/** Share of each group among the fatty acids; null where nobody has given them. */
export function groupsOf(fat: Fat): Groups | null {
  const composition = compositionOf(fat);
  if (!composition) return null;
  const groups = Object.fromEntries(ACID_GROUPS.map((group) => [group, 0])) as Record<AcidGroup, number>;
  for (const { acid, share: part } of composition.acids) groups[acidGroup(acid)] += part;
  return groups;
}

/** "oleic 72 %, palmitic and stearic 15 %, …", the greatest first. */
export function groupLine(groups: Groups, style: Style): string {
  return (Object.entries(groups) as [AcidGroup, number][])
    .filter(([, part]) => part >= 0.01)
    .sort((a, b) => b[1] - a[1])
    .map(([group, part]) => `${groupWords[group]} ${share(Math.round(part * 100) / 100, style)}`)
    .join(', ');
}

/** One sentence on what the fat brings to a bar; rules of thumb of the trade. */
export function inABar(fat: Fat): string {
  if (fat.kind === 'wax')
    return (fat.melting?.nominal ?? 60) >= 55
      ? 'In a bar: hardens it at a few per cent and can stiffen the batter fast; most of it stays unsaponified.'
      : 'In a bar: a soft wax for a few per cent; much of it stays unsaponified.';
  if (fat.kind === 'wax-ester')
    return 'In a bar: takes little alkali; half of it stays as wax alcohols, which care for skin and dampen lather.';
  const groups = groupsOf(fat);
  if (!groups) return '';
  const does: string[] = [];
  const short = groups['c12-c14'] + groups['c4-c10'];
  if (short >= 0.3) does.push('a hard bar and quick, big lather; strongly cleansing, so drying at a high share');
  const mild = groups['c18-1'] >= 0.3 ? ', rather mild' : '';
  if (groups['c16-c18-saturated'] >= 0.3) does.push(`a hard, long-lasting${mild} bar with low, creamy lather`);
  if (groups.ricinoleic >= 0.3) does.push('helps other fats lather and keeps moisture; sticky beyond 10 to 15 %');
  if (groups['c18-1'] >= 0.5 && does.length === 0)
    does.push('a mild bar, soft at first, that hardens over months; low lather');
  else if (groups['c18-1'] >= 0.3 && does.length === 0) does.push('a mild, medium bar');
  if (groups['c18-2-c18-3'] >= 0.4) does.push('a soft bar that goes rancid sooner: keep its share low');
  else if (groups['c18-2-c18-3'] >= 0.25 && does.length < 2)
    does.push('softens the bar and shortens its life somewhat');
  return does.length > 0 ? `In a bar: ${listed(does)}.` : '';
}

/** How well a figure is known, in a word. */
export function gradeWord({ entries, taken, fromMemory }: Chosen, { sources }: Catalogue): string {
  if (sources.get(entries[taken]?.source ?? '')?.local) return 'this host’s own file';
  const grade = entries[taken]?.grade ?? 'memory';
  const words: Readonly<Record<string, string>> = {
    standard: 'standard',
    pharmacopoeia: 'pharmacopoeia',
    regulation: 'regulation',
    handbook: 'handbook',
    paper: 'research paper',
    secondary: 'secondary source',
    memory: 'unread',
  };
  return `${words[grade] ?? grade}${fromMemory ? ', from memory' : ''}`;
}

export function sourceOf({ entries, taken }: Chosen, { sources }: Catalogue): string {
  const entry = entries[taken];
  if (!entry) return '';
  return `${sources.get(entry.source)?.title ?? entry.source}, ${entry.locator}`;
}

export const rangeText = ({ low, high }: Chosen, decimals: number, style: Style): string =>
  low === high ? number(low, decimals, style) : `${number(low, decimals, style)} to ${number(high, decimals, style)}`;

/** How far two fats lie apart: half the sum of what their groups differ by, 0 (alike) to 1. */
function apart(a: Groups, b: Groups): number {
  return ACID_GROUPS.reduce((sum, group) => sum + Math.abs(a[group] - b[group]), 0) / 2;
}

export interface Relative {
  readonly fat: Fat;
  /** 0 to 1. */
  readonly apart: number;
}

/** The fats most like this one in their groups; none for waxes and fats without a profile. */
export function relatives(fat: Fat, { fats }: Catalogue, most = 4): readonly Relative[] {
  const own = groupsOf(fat);
  if (!own) return [];
  return [...fats.values()]
    .flatMap((other) => {
      const groups = other.id === fat.id ? null : groupsOf(other);
      return groups ? [{ fat: other, apart: apart(own, groups) }] : [];
    })
    .sort((a, b) => a.apart - b.apart)
    .slice(0, most)
    .filter((one) => one.apart < 0.25);
}
