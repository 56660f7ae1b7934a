import type { Block } from '../answer/types.ts';
import type { HeatData, ScentOil } from '../catalogue/heat-types.ts';
import type { Catalogue } from '../catalogue/types.ts';
import type { ScentFlash } from '../engine/heat/flash-point.ts';
import { type ScentLoad, scentLoad } from '../engine/heat/scent-load.ts';
import { Claims, t } from '../reading/heat/claims.ts';
import { heatLine } from '../reading/heat/line.ts';
import { type ScentReading, scentOf } from '../reading/heat/scent.ts';
import { mass, massBoth, number, percent, percentRange, type Style, temperature } from '../units/print.ts';
import { styleFor } from './check.ts';
import { defineCommand, type Said } from './define.ts';
import { flame } from './heat-cautions.ts';
import { recipeInstead } from './heat-instead.ts';
import { heatWords } from './heat-refusals.ts';
import { flashFor, fluidLine, nameScents, partName, scentName } from './heat-scent.ts';
import { kelvin, warmthRange, warmthStyle } from './heat-words.ts';
import { scentSteps } from './heat-working.ts';
import { listed } from './phrases.ts';

interface Asked {
  readonly said: ScentReading;
  readonly name: string;
  readonly flash: ScentFlash | null;
  readonly load: ScentLoad;
  /** A weight of fat was said, so that the grams are those to weigh. */
  readonly weighed: boolean;
  readonly asks: 'grams' | 'share' | 'flash';
  readonly data: HeatData;
  readonly catalogue: Catalogue;
  readonly style: Style;
}

/** Where no weight is said the shares are reckoned on this, g. */
const ANY_FAT = 1000;

/** A scent that nobody named: its grams can be said all the same. */
const unnamed = { id: 'fragrance-oil', text: 'scent', share: 1, flashC: null } as const;

const listing = / (?:which|what) (?:[a-z]+ ){0,2}?(?:S\d+|eos?|oils?|scents?|fragrances?) /;
const explaining = / (?:what|explain|mean\w*|define) (?:.* )?(?:flash\w*|fp) /;

/** The scents that may go in at a temperature; without one, those for which hot-process soap stays fluid. */
function fitting(claims: Claims, data: HeatData, catalogue: Catalogue, style: Style): Said<'heat'> {
  const celsius = claims.temperature(` ${t} `) ?? data.cook.stiffensC.high;
  const margin = data.cook.scentMarginK.value;
  const lowest = ({ flash, flashPoints = [] }: ScentOil): number =>
    Math.min(flash.low, ...flashPoints.map(({ low }) => low));
  const oils = [...data.oils.values()]
    .filter((oil) => lowest(oil) - margin >= celsius)
    .sort((a, b) => lowest(b) - lowest(a));
  const names = oils.map(({ id }) => scentName(id, catalogue));
  const at = temperature(celsius, style);
  const common = [
    'patchouli',
    'cedarwood-atlas',
    'clove-bud',
    'ylang-ylang',
    'geranium',
    'vetiver',
    'palmarosa',
    'cinnamon-leaf',
  ]
    .filter((id) => oils.some((oil) => oil.id === id))
    .map((id) => scentName(id, catalogue));
  return {
    ...explained,
    title: 'Scents by flash point',
    lead:
      names.length > 0
        ? `At ${at} ${names.length} of the scents I know can go in, for example ${listed(common.length > 0 ? common : names.slice(0, 5))}.`
        : `None of the scents I know can go in at ${at}.`,
    body: [
      {
        kind: 'text',
        text: `Each can flash only ${kelvin(margin, style)} above that or more. The supplier’s data sheet wins.`,
      },
    ],
    details: [
      {
        kind: 'list',
        title: 'All of them, highest flash point first',
        items: oils.map(
          (oil) =>
            `${scentName(oil.id, catalogue)}: from ${temperature(lowest(oil), style)}${oil.flash.fromMemory ? ' (from memory)' : ''}`,
        ),
      },
    ],
    result: { scents: oils.map((oil) => ({ id: oil.id, flashPointC: lowest(oil), addBelowC: lowest(oil) - margin })) },
  };
}

/** What a flash point is, kind and right (GHS 2.6). */
const explained: Said<'heat'> = {
  title: 'Flash point',
  lead: 'The flash point is the lowest temperature at which a flame can light the vapour over a liquid: a figure about fire, not about scent.',
  body: [
    'Scent evaporates at any warmth, more the hotter it is: nothing starts or stops at the flash point.',
    'To add it below its flash point, heat and flames off, is right all the same: less is lost, and no vapour can catch fire at a burner.',
    'Name the scent for its figure, for example "flash point of lavender".',
  ].map((text) => ({ kind: 'text', text })),
  details: [
    {
      kind: 'text',
      text: 'After GHS 2.6 and ISO 3679: measured in a closed cup, with a small flame, as the liquid warms.',
    },
  ],
  assumptions: [],
  warnings: [],
  caution: flame,
  actions: [{ label: 'details', request: 'details' }],
  result: {},
};

export const scent = defineCommand({
  id: 'scent',
  summary: 'Flash point of a scent or a blend, when it can go in, and how many grams.',
  risk: 'heat',
  options: {},
  examples: [
    { say: 'scent lavender 3 % of 500 g oils', about: 'flash point and grams' },
    { say: 'scent: lavender and lemongrass EO 2:1, 600 g oils', about: 'a blend' },
    { say: 'flash point of sweet orange', about: 'in plain words' },
  ],
  instead: recipeInstead(/ (?:flash\w*|how much|how many|how soon|what temp\w*|when|declare|allergens?|grams) /),
  run: ({ text, options }, context) => {
    const { catalogue } = context;
    const reading = context.read(text);
    const line = heatLine(context.reader(), text);
    const style = warmthStyle(line, styleFor(reading, undefined, context));
    const data = context.heat();
    const claims = new Claims(line);
    const read = scentOf(claims);
    const general = read.parts.every(({ id }) => !data.oils.has(id));
    if (general && listing.test(line.text)) return { ok: true, value: fitting(claims, data, catalogue, style) };
    if (general && (/ why /.test(line.text) || (explaining.test(line.text) && read.parts.length === 0)))
      return { ok: true, value: explained };
    const cooked = [...reading.fats, ...reading.after].reduce((sum, { grams }) => sum + grams, 0);
    // the fats of a whole recipe, of which a name in the line is but one
    const whole = reading.doubts.length === 0 && cooked > 0 ? cooked : null;
    const fatGrams = whole ?? read.fatGrams;
    const asksGrams = fatGrams !== null || / (?:how much|how many|grams) /.test(line.text);
    const last = () => context.last.recipe?.recipe.fats.reduce((sum, { grams }) => sum + grams, 0) ?? null;
    const weight = fatGrams ?? (asksGrams ? last() : null);
    if (read.parts.length === 0 && weight === null) {
      const complete = (answer: string) => ({ text: `${text} ${answer}`, options });
      return { ok: false, fault: { ...heatWords({ kind: 'no-scent' }, style), caution: flame, complete } };
    }
    const said = read.parts.length > 0 ? read : { ...read, parts: [unnamed] };

    const found = flashFor(said, data, style, flame);
    // Without a flash point the grams can still be said.
    if (!found.ok && (weight === null || / (?:flash\w*|when|temp\w*) /.test(line.text))) return found;
    const parts = said.parts.map(({ id, share }) => ({
      oil: data.oils.has(id) ? id : null,
      grams: share,
    }));
    const load = scentLoad(data, {
      fatGrams: weight ?? ANY_FAT,
      parts: found.ok ? found.value.parts : parts,
      ...(said.load === null ? {} : { load: said.load }),
      ...(said.grams === null ? {} : { scentGrams: said.grams }),
    });
    if (!load.ok) return { ok: false, fault: { ...heatWords(load.fault, style), caution: flame } };
    const asked: Asked = {
      said,
      name: nameScents(said, catalogue),
      flash: found.ok ? found.value.flash : null,
      load: load.value,
      weighed: weight !== null,
      asks: / (?:share|finished|of the bar|bar) /.test(line.text) ? 'share' : asksGrams ? 'grams' : 'flash',
      data,
      catalogue,
      style,
    };
    return {
      ok: true,
      value: {
        title: 'Scent',
        lead: leadOf(asked),
        body: bodyOf(asked).map((one): Block => ({ kind: 'text', text: one })),
        details: () => detailsOf(asked),
        assumptions: [
          ...(found.ok ? found.value.taken : []),
          ...(said.load === null && said.grams === null && weight !== null
            ? [`I took ${percent(data.cook.scentLoad.usual, style)} of the fat.`]
            : []),
          ...(whole === null && said.fatGrams !== null && said.ofBatch
            ? [`I took ${massBoth(said.fatGrams, style)} as the weight of the fats.`]
            : []),
          ...(said.equal ? ['I took equal parts of each.'] : []),
        ],
        warnings: warningsOf(asked, claims.left()),
        caution: flame,
        actions: [
          { label: 'details', request: 'details' },
          ...(asked.flash ? [{ label: 'when has it cooled', request: `cool ${asked.name.toLowerCase()}` }] : []),
        ],
        result: {
          ...(asked.flash
            ? {
                flashPointC: asked.flash.flashPointC,
                addBelowC: asked.flash.addBelowC,
                pourable: asked.flash.pourable,
                modelledC: asked.flash.modelledC,
              }
            : {}),
          ...(weight === null && said.grams === null ? {} : { grams: load.value.grams }),
          ...(weight === null && said.grams !== null
            ? {}
            : { shareOfFat: load.value.shareOfFat, shareOfBar: load.value.shareOfBar.nominal }),
          declare: load.value.declare.map(({ inci, share, certain }) => ({ inci, share, certain })),
        },
        working: () => scentSteps(data, asked.flash, load.value, style),
      },
    };
  },
});

const flashLine = ({ flash, name, style }: Asked): string | null =>
  flash &&
  `${name}: add ${flash.parts.length > 1 ? 'the blend' : 'it'} at ${temperature(flash.addBelowC, style)} or below, heat and flames off; it can flash from ${temperature(flash.flashPointC, style)}.`;

const gramsLine = ({ load, name, style, weighed }: Asked): string => {
  const of = weighed
    ? `${percent(load.shareOfFat, style)} of the fat`
    : `${percent(load.shareOfFat, style)} of the fat, for each kilogram of it`;
  return `${massBoth(load.grams, style, 0.1)} ${name.toLowerCase()}: ${of}, about ${percent(load.shareOfBar.nominal, style)} of the finished bar.`;
};

function leadOf(asked: Asked): string {
  const { asks, load, name, style } = asked;
  if (asks === 'share')
    return `About ${percent(load.shareOfBar.nominal, style)} of the finished bar (${percentRange(load.shareOfBar.low, load.shareOfBar.high, style)}): ${massBoth(load.grams, style, 0.1)} ${name.toLowerCase()}.`;
  return asks === 'grams' ? gramsLine(asked) : (flashLine(asked) ?? gramsLine(asked));
}

function bodyOf(asked: Asked): string[] {
  const { asks, flash, load, said, data, catalogue, style } = asked;
  const out: string[] = [];
  if (asks === 'grams' || asks === 'share') {
    const parts = load.parts.map(({ grams }, i) => `${mass(grams, style, 0.1)} ${nameAt(said, i, catalogue)}`);
    if (parts.length > 1) out.push(`That is ${listed(parts)}.`);
    const line = flashLine(asked);
    if (line) out.push(line);
  }
  if (flash) {
    const { lowest, parts } = flash;
    if (parts.length > 1)
      out.push(
        `${nameOfPart(flash.lowest.oil, catalogue)} flashes first of them, and the blend goes by it${flash.modelledC ? ` (an ideal mixture would flash near ${temperature(flash.modelledC.nominal, style)})` : ''}.`,
      );
    else if (!lowest.given && lowest.highC > lowest.lowC)
      out.push(
        `Lots differ, from ${warmthRange(lowest.lowC, lowest.highC, style)}${lowest.fromMemory ? ' (from memory)' : ''}; ${kelvin(flash.marginK, style)} of margin are off the low end. The supplier’s data sheet wins.`,
      );
    out.push(
      'The flash point says when its vapour can be lit, not when scent evaporates: some goes at any warmth, less the cooler it is.',
    );
    const fluid = fluidLine(flash, data, catalogue, style);
    if (fluid) out.push(fluid);
  }
  if (asks === 'flash')
    out.push(
      `Usual load: ${percent(data.cook.scentLoad.low, style)} to ${percent(data.cook.scentLoad.high, style)} of the fat; tell me its weight for the grams.`,
    );
  const declare = load.declare.slice(0, 3).map(({ inci }) => inci);
  if (declare.length > 0 && asks !== 'flash')
    out.push(
      `To declare on an EU label (over 0.01 % of the bar): ${load.declare.length > 3 ? `${declare.join(', ')} and more (details)` : listed(declare)}.`,
    );
  return out;
}

const nameOfPart = (oil: string | null, catalogue: Catalogue): string =>
  oil === null ? 'One' : capitalName(oil, catalogue);
const capitalName = (oil: string, catalogue: Catalogue): string => {
  const name = scentName(oil, catalogue);
  return name.charAt(0).toUpperCase() + name.slice(1);
};
const nameAt = ({ parts }: ScentReading, i: number, catalogue: Catalogue): string => {
  const part = parts[i];
  return part ? partName(part, catalogue) : 'scent';
};

function warningsOf({ load, flash, said, data, style, weighed }: Asked, left: readonly string[]): string[] {
  const { scentLoad: usual } = data.cook;
  return [
    ...(load.aboveCeiling
      ? [
          `More than ${percent(usual.ceiling, style, 0)} of the fat: too much for skin unless the supplier’s certificate allows it.`,
        ]
      : load.aboveUsual && (weighed || said.load !== null)
        ? [
            `More than the usual ${percent(usual.high, style, 0)}: only where the supplier’s certificate for rinse-off soap (IFRA category 9) allows it.`,
          ]
        : []),
    ...(flash
      ? []
      : ['I hold no flash point for it: look at section 9 of its safety data sheet before it meets a hot pot.']),
    ...(left.length > 0 ? [`I did not use ${left.join(', ')}.`] : []),
  ];
}

function detailsOf({ flash, load, said, data, catalogue, style }: Asked): Block[] {
  const out: Block[] = [];
  if (flash) {
    out.push({
      kind: 'table',
      caption: 'Flash points',
      columns: [
        { title: 'Scent', align: 'left' },
        { title: 'Flash point', align: 'right' },
        { title: 'Part', align: 'right' },
      ],
      rows: flash.parts.map(({ lowC, highC }, i) => [
        nameAt(said, i, catalogue),
        warmthRange(lowC, highC, style),
        percent(said.parts[i]?.share ?? 0, style, 0),
      ]),
    });
    out.push({
      kind: 'list',
      title: 'Where the figures come from',
      items: flash.parts.map(({ oil, given, fromMemory }) => {
        const own = oil === null ? undefined : data.oils.get(oil)?.flash;
        const source = own ? `${data.sources.get(own.source)?.title ?? own.source}, ${own.locator}` : '';
        return `${nameOfPart(oil, catalogue)}: ${given ? 'the figure you gave' : `${source}${fromMemory ? ' (from memory)' : ''}`}.`;
      }),
    });
    if (flash.modelledC)
      out.push({
        kind: 'text',
        text: `Ideal mixture (Liaw 2002): ${warmthRange(flash.modelledC.low, flash.modelledC.high, style)}. Real blends can flash lower; the lowest part is the figure to go by.`,
      });
  }
  if (load.declare.length > 0)
    out.push({
      kind: 'list',
      title: 'To declare on a rinse-off product from 0.01 % (Regulation (EU) 2023/1545); local law decides',
      items: load.declare.map(
        ({ inci, share, certain, fromMemory }) =>
          `${inci}: ${share.low < 5e-6 ? 'up to' : `${number(share.low * 100, 3, style)} to`} ${percent(share.high, style, 3)} of the bar${certain ? '' : ', may be'}${fromMemory ? ' (from memory)' : ''}`,
      ),
    });
  out.push({
    kind: 'text',
    text: `Makers count per cent of the fat, limits count per cent of the product: ${percent(load.shareOfFat, style)} of the fat is ${percentRange(load.shareOfBar.low, load.shareOfBar.high, style)} of a cured bar.`,
  });
  return out;
}
