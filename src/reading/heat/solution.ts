/** What a question about a lye solution says beside its amounts: ice, limits, temperatures of what goes in. */
import { be, type Claims, roomOf, t } from './claims.ts';
import { vessel } from './pot.ts';

export interface SolutionReading {
  /** g; the share is of all of the water. */
  readonly iceGrams: number | null;
  readonly iceShare: number | null;
  /** The peak shall stay under this, °C. */
  readonly limitC: number | null;
  /** It shall have cooled to this, °C. */
  readonly targetC: number | null;
  readonly roomC: number | null;
  readonly waterC: number | null;
  readonly alkaliC: number | null;
  readonly iceC: number | null;
  /** Words instead of a figure: boiling water, ice from the freezer. */
  /** Metres above the sea. */
  readonly altitudeM: number | null;
  readonly boilingWater: boolean;
  readonly freezer: boolean;
  /** "Which jug?", and any vessel at all. */
  readonly asksVessel: boolean;
  readonly asksTime: boolean;
}

const part: Readonly<Record<string, number>> = {
  half: 1 / 2,
  third: 1 / 3,
  quarter: 1 / 4,
  all: 1,
  thirds: 2 / 3,
  quarters: 3 / 4,
};

function iceOf(claims: Claims): Pick<SolutionReading, 'iceGrams' | 'iceShare'> {
  const { text } = claims;
  const shared = (iceShare: number | null) => ({ iceGrams: null, iceShare });
  const said =
    / (half|third|quarter|all|thirds|quarters) (?:(?:of|the|my|that|it|this|G\d+|W\d+|is|was|be|are|being|made|up|in|form|goes|given|replaced|swapped|with|by|for|frozen|from|liquid) )*(?:as |into |to |of )?(?:the )?(?:I\d+|frozen) /.exec(
      text,
    );
  // "Does all the ice melt?" is no share.
  if (said?.[1] && (said[1] !== 'all' || / W\d+ /.test(said[0]))) return shared(part[said[1]] ?? null);
  if (/ (?:half (?:(?:and|,|\/) )*half|half I\d+|half W\d+) /.test(text) && / I\d+ /.test(text)) return shared(1 / 2);
  const fraction = claims.fraction(' (?<t>N\\d+) (?:(?:of|the|my|G\\d+|W\\d+|is|as|in|frozen|for|swapped) )+I\\d+ ');
  if (fraction !== null) return shared(fraction);
  const grams = claims.take(
    ' (?<t>G\\d+) (?:of |in |as |crushed |cold )*I\\d+ ',
    ' I\\d+ (?:cubes? |: |= |- |of |, |about )*(?<t>G\\d+)(?! (?:of )?[AWFQL]\\d) ',
    ' (?<t>G\\d+) (?:(?:of|it|that|which|the|W\\d+|is|was|are|being|as|goes|in) )*(?:I\\d+|frozen) ',
  );
  if (grams) return { iceGrams: grams.value, iceShare: null };
  if (
    / (?:I\d+ (?:instead|rather|in place) (?:of|than) (?:the |any |liquid )*W\d+|only I\d+|just I\d+|pure I\d+|all I\d+|W\d+ (?:is |as )?all (?:frozen|I\d+)) /.test(
      text,
    )
  )
    return shared(1);
  const share = claims.take(
    ' (?<t>P\\d+) (?:(?:of|the|my|W\\d+|is|as|are|being|in|form|it|that) )*I\\d+ ',
    ' I\\d+ (?:(?:is|as|at|share|:|=|makes|for) )*(?<t>P\\d+) ',
  );
  return shared(share && share.value <= 1 ? share.value : null);
}

const limit = [
  ` (?:under|below|beneath|lower than|cooler than|less than|within|past|pass|passes|beyond|above|over|exceed\\w*|exceeding|hotter than|higher than|warmer than|more than|max|maximum|limit\\w*|most|cap|capped) (?:of |at |is |: |a |to )*${be}${t} `,
  ` (?:keep|keeps|keeping|stay|stays|hold|holds|peak|peaks) (?:(?:it|the|my|this|peak|lye|solution|temp|temperature|at|to|cool|down|around|about|L\\d+|A\\d+) )*${t} `,
];
const target = [
  ` (?:cool\\w*|down|drop\\w*|until|till|til|before|long|time|reach\\w*|hits?|gets?|falls?|ready) (?:(?:down|to|at|under|below|is|its|it|be|for|has|the|lye|solution|gets|reaches|A\\d+|L\\d+) )*${be}${t} `,
  ` when (?:[a-z]+ ){0,8}?${t} `,
];

const high = '(?:above|altitude|elevation|high|up|asl)';

function altitudeOf(claims: Claims): number | null {
  const metric = claims.take(
    ` (?<t>N\\d+) (?:m|metres?|meters?) (?:of )?${high} `,
    ` (?:altitude|elevation) (?:(?:of|is|about|:|=) )*(?<t>N\\d+) (?:m|metres?|meters?) `,
  );
  if (metric) return metric.value;
  const length = claims.take(
    ` (?<t>D\\d+) (?:of )?${high} `,
    ` (?:altitude|elevation|live at|up at) (?:(?:of|is|about|:|=) )*(?<t>D\\d+) `,
  );
  return length && length.value / 100;
}

export function solutionOf(claims: Claims): SolutionReading {
  const { text } = claims;
  const ice = iceOf(claims);
  const altitudeM = altitudeOf(claims);
  const asksTime =
    / (?:how long|how much longer|when|how many minutes|how soon|cool\w* (?:down )?to|cooled|time) /.test(text);
  const roomC = / both | everything | all at /.test(text) ? null : roomOf(claims);
  const iceC = claims.temperature(
    ` I\\d+ (?:cubes? )?(?:\\( |, |from the freezer |straight |out of the freezer )*${be}${t} `,
    ` ${t} I\\d+ `,
  );
  const both = claims.temperature(
    ` (?:both|everything|all|each|ingredients|starting|start|starts|started|begin|beginning|from|initial\\w*) (?:[a-z]+ ){0,3}?${be}(?:from |room )?${t} `,
    ` room temp\\w* ${be}${t} `,
  );
  const limitC = asksTime && !/ (?:keep|stay|ice) | I\d+ /.test(text) ? null : claims.temperature(...limit);
  const lone = asksTime && (claims.text.match(/ T\d+(?= )/g)?.length ?? 0) === 1;
  const targetC = asksTime ? claims.temperature(...target, ...(lone ? [` ${t} `] : [])) : null;
  const waterC = claims.temperature(
    ` W\\d+ (?:\\( |, |that |which |from the (?:tap|fridge) |straight |out of the fridge )*${be}${t} `,
    ` ${t} (?:(?:c|f|degrees?|deg|cold|hot|warm|cool|chilled|tap|room|temp|temperature) )*W\\d+ `,
  );
  const alkaliC = claims.temperature(` A\\d+ (?:\\( |, )*${be}${t} `, ` ${t} A\\d+ `);
  return {
    ...ice,
    limitC,
    targetC: targetC ?? (asksTime ? claims.temperature(...limit, ` ${t} `) : null),
    roomC,
    waterC: waterC ?? both,
    alkaliC: alkaliC ?? both,
    iceC,
    altitudeM,
    boilingWater:
      / boiling (?:hot )?(?:W\d+|water) /.test(text) ||
      [...claims.line.things.values()].some((one) => /^boiling/i.test(one.text)),
    freezer: / (?:freezer|deep frozen|frozen solid) /.test(text),
    asksVessel: new RegExp(
      ` (?:what|which) (?:kind of |sort of |type of |material |plastic )?(?:${vessel}|material|plastic) `,
    ).test(text),
    asksTime,
  };
}
