/** How many questions of one person are answered: many at once, and then so many a minute. */

/** Answered at once, after a rest. */
const burst = 300;
/** People who are counted at a time; who was quiet longest is forgotten first. */
const mostPeople = 10_000;

/** `quiet` after `tell` was said, until the person has rested. */
export type Verdict = 'answer' | 'tell' | 'quiet';

export function createFlood(
  perMinute: number,
  clock: () => number = () => performance.now(),
): (person: string) => Verdict {
  const people = new Map<string, { left: number; at: number; isTold: boolean }>();
  return (person) => {
    const now = clock();
    const known = people.get(person) ?? { left: burst, at: now, isTold: false };
    const left = Math.min(burst, known.left + ((now - known.at) / 60_000) * perMinute);
    const isTold = known.isTold && left < Math.min(burst, perMinute) / 2;
    const verdict = isTold ? 'quiet' : left >= 1 ? 'answer' : 'tell';
    people.delete(person);
    people.set(person, {
      left: verdict === 'answer' ? left - 1 : left,
      at: now,
      isTold: isTold || verdict === 'tell',
    });
    for (const eldest of people.keys()) {
      if (people.size <= mostPeople) break;
      people.delete(eldest);
    }
    return verdict;
  };
}
