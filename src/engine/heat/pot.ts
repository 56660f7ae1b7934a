/** A pot in plain words (kind, litres, lid, insulation) and its contents, as faces and a heat capacity. SI. */
import type { HeatData, PotKind } from '../../catalogue/heat-types.ts';
import type { Face } from './convection.ts';
import { mixtureDensity, solutionHeatCapacity } from './mixture.ts';
import { polynomial } from './numeric.ts';
import { type Band, done, fail, firstBad, type Outcome, type Parts } from './outcome.ts';
import { kohPressure, naohPressure, waterPressure } from './properties.ts';

export type Lid = 'on' | 'half' | 'off';

/** `fast`: all that is uncertain leans to a quick loss; `slow`: to a slow one. */
export type Corner = 'fast' | 'nominal' | 'slow';

export interface Contents {
  readonly grams: number;
  /** J/(g K). */
  readonly heatCapacity: Band;
  /** g/mL. */
  readonly density: number;
  /** W/(m K) where it does not stir itself (paste); null for a liquid. */
  readonly conductivity: Band | null;
  /** Vapour pressure against pure water's; 0 for fat. */
  readonly waterActivity: Band;
}

export interface PotInput {
  readonly kind: string;
  /** What it holds; default its usual size, or twice the contents. A mould is as large as what is in it. */
  readonly litres?: number;
  readonly lid: Lid;
  readonly insulation: string;
}

const around = (nominal: number, share: number): Band => ({
  low: nominal * (1 - share),
  nominal,
  high: nominal * (1 + share),
});

/** Soap batter or paste. */
export function soapContents(data: HeatData, grams: number): Contents {
  const { heatCapacity, density, conductivity, waterActivity } = data.fat.soapPaste;
  return { grams, heatCapacity, density: density.nominal, conductivity, waterActivity };
}

/** Melted fat alone: dry, stirs itself. */
export function fatContents(data: HeatData, grams: number, celsius: number): Contents {
  const { heatCapacity, density } = data.fat;
  return {
    grams,
    heatCapacity: around(polynomial(heatCapacity.coefficients, celsius), heatCapacity.relativeUncertainty),
    density: density.at25 + density.perK * (celsius - 25),
    conductivity: null,
    waterActivity: { low: 0, nominal: 0, high: 0 },
  };
}

/** Lye solution, or water where there is no alkali. Evaporation is an order of magnitude: half to one and a half. */
export function solutionContents(data: HeatData, parts: Parts, celsius: number): Contents {
  const grams = parts.naoh + parts.koh + parts.water;
  const share = (parts.naoh + parts.koh) / grams;
  const over =
    share <= 0
      ? waterPressure(data.water, celsius)
      : parts.naoh >= parts.koh
        ? naohPressure(data.naoh, share, celsius)
        : kohPressure(data.koh, share, celsius);
  const activity = Math.min(1, over / waterPressure(data.water, celsius));
  return {
    grams,
    heatCapacity: around(solutionHeatCapacity(data, parts, celsius) / grams, 0.02),
    density: mixtureDensity(data, parts, celsius),
    conductivity: null,
    waterActivity: around(activity, 0.5),
  };
}

interface Shape {
  readonly bottom: number;
  readonly perimeter: number;
  readonly height: number;
}

/** Inner size of a pot of this volume, m. */
function shapeOf({ shape, proportions }: PotKind, cubicMetres: number): Shape {
  if (shape === 'cylinder') {
    const diameter = ((4 * cubicMetres * (proportions.diameterToHeight ?? 1)) / Math.PI) ** (1 / 3);
    const bottom = (Math.PI * diameter ** 2) / 4;
    return { bottom, perimeter: Math.PI * diameter, height: cubicMetres / bottom };
  }
  const { lengthToWidth = 1, heightToWidth = 1 } = proportions;
  const width = (cubicMetres / lengthToWidth / heightToWidth) ** (1 / 3);
  const bottom = width * width * lengthToWidth;
  return { bottom, perimeter: 2 * width * (1 + lengthToWidth), height: width * heightToWidth };
}

export interface PotModel {
  readonly faces: readonly Face[];
  /** J/K of contents and pot. */
  readonly heatCapacity: number;
  /** Volume over surface of the contents, m. */
  readonly depth: number;
}

/**
 * How far each uncertain figure leans to its end in a corner. All of them at their ends at once would be a band that
 * no pot reaches; at 0.6 each the sum stays above the root of the squares of the half-dozen that matter.
 */
const LEAN = 0.6;

/** A figure at a corner; `quick`: whether more of it means a quicker loss. */
function leant(band: Band, corner: Corner, quick: boolean): number {
  if (corner === 'nominal') return band.nominal;
  const end = (corner === 'fast') === quick ? band.high : band.low;
  return band.nominal + LEAN * (end - band.nominal);
}

/** The pot with its uncertain figures at one corner of their spread. */
export function potModel(data: HeatData, input: PotInput, contents: Contents, corner: Corner): Outcome<PotModel> {
  const kind = data.pots.pots.find(({ id }) => id === input.kind);
  if (!kind) return fail({ kind: 'unknown', figure: 'pot', id: input.kind });
  const material = data.materials.get(kind.material);
  const insulation = data.pots.insulation.find(({ id }) => id === input.insulation);
  if (!material?.emissivity) return fail({ kind: 'unknown', figure: 'material', id: kind.material });
  if (!insulation) return fail({ kind: 'unknown', figure: 'insulation', id: input.insulation });
  const bad = firstBad([
    ['contents', contents.grams, 1, 1e6],
    ['litres', input.litres ?? 1, 0.05, 1000],
  ]);
  if (bad) return fail(bad);
  const contentsLitres = contents.grams / contents.density / 1000;
  const litres = kind.filled ? contentsLitres : (input.litres ?? Math.max(kind.litres ?? 0, 2 * contentsLitres));
  if (contentsLitres > litres * 1.001) return fail({ kind: 'pot-too-small', litres, contentsLitres });

  const { bottom, perimeter, height } = shapeOf(kind, litres / 1000);
  const depth = contentsLitres / 1000 / bottom;
  const wet = perimeter * depth;
  const more = (band: Band): number => leant(band, corner, true);
  const less = (band: Band): number => leant(band, corner, false);
  const { low, high } = material.emissivity;
  const emissivity = more({ low, nominal: (low + high) / 2, high });
  const { convectionFactor: factor, lid, airSpeed } = data.pots;
  const spread: Face['spread'] = [
    more({ low: factor.low, nominal: 1, high: factor.high }),
    more({ low: factor.lowOutside, nominal: 1, high: factor.highOutside }),
  ];
  const thickness = contentsLitres / 1000 / (wet + 2 * bottom);
  // Paste that nobody stirs keeps its heat inside: V/A over 2k lies between a slab and a cylinder. Stirred well it
  // gives all of it; a pot is stirred now and then, a mould hardly.
  const still = less(kind.filled ? { low: 0.5, nominal: 1, high: 1 } : { low: 0, nominal: 0.5, high: 1 });
  const inner = contents.conductivity ? (still * thickness) / (2 * more(contents.conductivity)) : 0;
  const wrap = less(insulation.resistance);
  const wall = inner + less(kind.wallResistance) + wrap;
  const { a, b, stillFactor } = data.water.evaporation;
  const evaporation = 1000 * stillFactor * (a + b * more(airSpeed)) * more(contents.waterActivity);
  const open = { on: 0, half: 0.5, off: 1 }[input.lid];
  const flat = bottom / perimeter;
  const covered = less(lid.resistance) + wrap;
  const top = { direction: 'up', area: bottom, length: flat, spread } as const;
  const faces: Face[] = [
    {
      direction: 'side',
      area: wet,
      length: depth,
      resistance: wall,
      emissivity: insulation.id === 'none' ? emissivity : Math.max(emissivity, 0.9),
      evaporation: 0,
      share: 1,
      spread,
    },
    // Standing on something: between free air below and no loss at all.
    {
      direction: 'down',
      area: bottom,
      length: flat,
      resistance: wall,
      emissivity,
      evaporation: 0,
      share: more({ low: 0, nominal: 0.5, high: 1 }),
      spread,
    },
    { ...top, resistance: inner, emissivity: 0.95, evaporation, share: open },
    { ...top, resistance: inner + covered, emissivity: 0.9, evaporation: 0, share: 1 - open },
  ];
  const potGrams = 1000 * less(kind.massPerLitre) * litres;
  // Of the pot, the part that touches the contents; its dry wall lags behind and counts in the slow corner.
  const wetted = (wet + bottom) / (perimeter * height + bottom);
  const touched = less({ low: wetted, nominal: wetted, high: 1 });
  return done({
    faces: faces.filter(({ share, area }) => share > 0 && area > 0),
    heatCapacity: contents.grams * less(contents.heatCapacity) + potGrams * material.heatCapacity.value * touched,
    depth: thickness,
  });
}
