/**
 * Draws a picture as SVG and PNG with Vega, resvg and an open font, all from the registry. Import it lazily: it takes
 * some 0.3 s and 150 MB to load, which no text answer should pay for.
 */
import { createRequire } from 'node:module';
import { type RenderedImage, Resvg } from '@resvg/resvg-js';
import { Error as errorsOnly, parse, View } from 'vega';
import { compile } from 'vega-lite';
import type { Picture } from '../../answer/types.ts';
import { font, specOf } from './spec.ts';

interface Raster {
  readonly png: Uint8Array;
  /** px */
  readonly width: number;
  readonly height: number;
}

export interface Drawing extends Raster {
  readonly svg: string;
  /** The same for a preview. */
  readonly small: () => Raster;
}

/** Two pixels for each of the chart's: sharp on a phone. */
const zoom = 2;
const smallZoom = 0.75;

const require = createRequire(import.meta.url);
const fontFiles = [
  require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
  require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'),
];

export async function drawPicture(picture: Picture): Promise<Drawing> {
  const view = new View(parse(compile(specOf(picture)).spec), { renderer: 'none', logLevel: errorsOnly });
  try {
    const svg = await view.toSVG();
    return { svg, ...rasterOf(svg, zoom), small: () => rasterOf(svg, smallZoom) };
  } finally {
    view.finalize();
  }
}

function rasterOf(svg: string, value: number): Raster {
  const image: RenderedImage = new Resvg(svg, {
    fitTo: { mode: 'zoom', value },
    font: { fontFiles, loadSystemFonts: false, defaultFontFamily: font },
  }).render();
  return { png: image.asPng(), width: image.width, height: image.height };
}
