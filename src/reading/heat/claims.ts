import { celsiusOf, type Figure, type HeatLine } from './line.ts';

/** A figure that may be a temperature. */
export const t = '(?<t>[TN]\\d+)';

/** Words between a name and its figure that say nothing. */
export const be =
  '(?:(?:is|was|were|are|at|of|about|around|roughly|approx|approximately|only|now|currently|still|temp|temps|temperature|temperatures|reads|reading|says|it|its|a|an|the|sits|sitting|say|like|:|=|~|@|-) )*';

/** In °F too no kitchen is hotter. */
const hottest = 400;

/** Takes figures out of a line one role after another: what is taken stands in nobody's way any more. */
export class Claims {
  readonly line: HeatLine;
  text: string;
  private readonly warmths: Figure[] = [];
  private readonly fractions: Figure[] = [];

  constructor(line: HeatLine) {
    this.line = line;
    this.text = line.text;
  }

  /** The figure with this letter and number, out of the line from now on. */
  claim(name: string): Figure | null {
    const figure = this.line.figures.get(Number(name.slice(1)));
    if (!figure) return null;
    this.text = this.text.replace(` ${name} `, ` ${name.toLowerCase()} `);
    return figure;
  }

  /** What the group `t` of the first pattern that fits names. */
  take(...patterns: readonly string[]): Figure | null {
    for (const pattern of patterns) {
      const name = new RegExp(pattern).exec(this.text)?.groups?.['t'];
      const figure = name ? this.claim(name) : null;
      if (figure) return figure;
    }
    return null;
  }

  /** The same in °C; a range counts as its middle. A bare figure has to be one that a kitchen can have. */
  temperature(...patterns: readonly string[]): number | null {
    for (const pattern of patterns) {
      for (const match of this.text.matchAll(new RegExp(pattern, 'g'))) {
        const name = match.groups?.['t'] ?? '';
        const figure = this.line.figures.get(Number(name.slice(1)));
        if (!figure || (figure.letter === 'N' && !(Math.abs(figure.value) <= hottest))) continue;
        return this.warmth(name);
      }
    }
    return null;
  }

  /** Claims a figure as a temperature, °C. */
  warmth(name: string): number | null {
    const figure = this.claim(name);
    if (!figure) return null;
    this.warmths.push(figure);
    return this.celsius(figure);
  }

  /** Claims a share of the water, which is no amount of its own. */
  fraction(pattern: string): number | null {
    const figure = this.take(pattern);
    if (!figure || figure.value >= 1) return null;
    this.fractions.push(figure);
    return figure.value;
  }

  /** The text for who reads the amounts: bare temperatures with their unit, and no fractions of the water. */
  withUnits(input: string): string {
    const edits = [
      ...this.warmths
        .filter(({ letter }) => letter === 'N')
        .map(({ end }) => ({ from: end, end, put: ` ${this.line.scale}` })),
      ...this.fractions.map(({ from, end }) => ({ from, end, put: 'some' })),
    ].sort((a, b) => b.from - a.from);
    if (edits.length === 0) return input;
    let text = this.line.source;
    for (const { from, end, put } of edits) text = text.slice(0, from) + put + text.slice(end);
    return text;
  }

  celsius(figure: Figure): number {
    const value = celsiusOf(this.line, figure);
    return figure.also === null ? value : (value + celsiusOf(this.line, { ...figure, value: figure.also })) / 2;
  }

  /** Temperatures that nobody took, as typed. */
  left(): readonly string[] {
    return [...this.text.matchAll(/ T(\d+)(?= )/g)].flatMap(([, id]) => this.line.figures.get(Number(id))?.text ?? []);
  }
}

const places =
  '(?:room|rooms|ambient|kitchen|shed|garage|basement|cellar|house|workshop|workroom|studio|outside|outdoors|surroundings|surrounding|background|conservatory|barn|porch|pantry|lab)';

/** Warmer than this it is no room, °C. */
const warmestRoom = 50;

/** Temperature of the room, °C. */
export function roomOf(claims: Claims): number | null {
  return claims.temperature(
    ` ${places} ${be}${t} `,
    ` ${t} (?:c |f |degrees? |deg )?${places} `,
    ...(cool(claims)
      ? [` ${t} (?:c |f |degrees? |deg )?(?:in|inside|out) (?:here|the|my|our|a|this) ${places}? ?`]
      : []),
  );
}

/** "it's 18 in the shed", never "soap is 88 in the kitchen". */
function cool(claims: Claims): boolean {
  const found = / ([TN]\d+) (?:c |f |degrees? |deg )?(?:in|inside|out) (?:here|(?:the|my|our|a|this) [a-z]+) /.exec(
    claims.text,
  );
  const figure = found?.[1] ? claims.line.figures.get(Number(found[1].slice(1))) : undefined;
  return (
    figure !== undefined &&
    new RegExp(`(?:here|${places}) $`).test(found?.[0] ?? '') &&
    claims.celsius(figure) < warmestRoom
  );
}
