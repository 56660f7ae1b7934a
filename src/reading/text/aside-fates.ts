import type { Fate } from '../reading.ts';
import { clean } from './clean.ts';
import { scan } from './scan.ts';

/** The figures of what is set aside whole, as any figure of a post is cut: ".5", "1.000". */
export const fatesOf = (text: string, why: string): readonly Fate[] =>
  scan(clean(text).text)
    .filter(({ kind }) => kind === 'number')
    .map(({ raw }) => ({ text: raw, fate: 'aside', why }));
