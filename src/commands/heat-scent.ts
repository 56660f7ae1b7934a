/** Scents of a text against what is known of them, and what to do where soap has set before they may go in. */
import type { Fault, NonEmpty } from '../answer/types.ts';
import type { HeatData } from '../catalogue/heat-types.ts';
import type { Catalogue } from '../catalogue/types.ts';
import { flashOf, type ScentFlash, type ScentPart } from '../engine/heat/flash-point.ts';
import type { ScentReading } from '../reading/heat/scent.ts';
import { type Style, temperature } from '../units/print.ts';
import type { Refusal } from './define.ts';
import { heatWords } from './heat-refusals.ts';
import { roughRange, warmthRange } from './heat-words.ts';
import { capital, inSentence, listed } from './phrases.ts';

/** Without "essential oil": people say "lavender". */
export const scentName = (id: string, catalogue: Catalogue): string =>
  inSentence((catalogue.scents.get(id)?.name ?? id.replaceAll('-', ' ')).replace(/ essential oil/, ''));

/** A scent as people call it; what is only "a fragrance" keeps the word they used. */
export function partName({ id, text }: ScentReading['parts'][number], catalogue: Catalogue): string {
  if (id === 'fragrance-oil') return text;
  return id === 'essential-oil' ? 'essential oil' : scentName(id, catalogue);
}

export const nameScents = ({ parts }: ScentReading, catalogue: Catalogue): string =>
  capital(listed(parts.map((part) => partName(part, catalogue))));

export interface FlashAnswer {
  readonly flash: ScentFlash;
  readonly parts: readonly ScentPart[];
  readonly taken: readonly string[];
}

/** The flash point of what was named; asks for the data sheet of what nobody has published. */
export function flashFor(
  scents: ScentReading,
  data: HeatData,
  style: Style,
  caution: NonEmpty<string>,
): { readonly ok: true; readonly value: FlashAnswer } | { readonly ok: false; readonly fault: Refusal<'caustic'> } {
  const taken: string[] = [];
  const fail = (fault: Omit<Fault, 'caution'>) => ({ ok: false, fault: { ...fault, caution } }) as const;
  const parts: ScentPart[] = [];
  for (const { id, text, share, flashC } of scents.parts) {
    const oil = data.oils.has(id) ? id : null;
    if (oil === null && flashC === null) {
      return fail({
        code: 'unclear',
        message: `What is the flash point of ${text}? I hold none that is published.`,
        hint: 'It stands in section 9 of its safety data sheet: answer for example "flash point 71 °C".',
        candidates: [],
      });
    }
    parts.push({ oil, grams: share, ...(flashC === null ? {} : { flashC }) });
    const own = oil === null ? undefined : data.oils.get(oil)?.flash;
    if (flashC !== null)
      taken.push(
        `I took the ${temperature(flashC, style)} you gave${own ? `, instead of ${warmthRange(own.low, own.high, style)} as published` : ''}.`,
      );
  }
  const flash = flashOf(data, parts);
  if (!flash.ok) return fail(heatWords(flash.fault, style));
  return { ok: true, value: { flash: flash.value, parts, taken } };
}

/** Common scents that may go in while hot-process soap is still fluid; each is checked against its figure. */
const examples = ['patchouli', 'cedarwood-atlas', 'clove-bud'] as const;

/** Where soap has stiffened before the scent may go in: what to do (common practice); null where it can be stirred. */
export function fluidLine(
  { pourable, stiffensC: [low, high], addBelowC }: ScentFlash,
  data: HeatData,
  catalogue: Catalogue,
  style: Style,
): string | null {
  if (pourable) return null;
  const range = roughRange(low, high, style);
  const higher = examples.filter((id) => (data.oils.get(id)?.flash.low ?? 0) - data.cook.scentMarginK.value >= high);
  const ways = `keep it fluid (more water, sodium lactate, a little warm liquid or yoghurt), or take a scent that flashes higher (${listed(higher.map((id) => scentName(id, catalogue)))})`;
  return addBelowC < low - 15
    ? `Hot-process soap stiffens below about ${range}, so waiting alone won’t do: ${ways}; or accept some loss, with every flame and heat source off and the room aired.`
    : `Hot-process soap stiffens below about ${range}: ${ways}.`;
}
