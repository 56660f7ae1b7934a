/** A picture to draw in tests: a pot that cools. */
import type { Picture } from '../src/index.ts';

type Points = Picture['series'][number]['points'];

export const coolingPot = (
  points: Points = [
    { x: 0, y: 88 },
    { x: 60, y: 40 },
  ],
  marks: Picture['marks'] = [],
): Picture => ({
  title: 'Cooling',
  x: { label: 'time', unit: 'min' },
  y: { label: 'temperature', unit: '°C' },
  kind: 'curve',
  series: [{ name: 'pot', points }],
  marks,
});
