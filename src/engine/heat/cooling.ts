/**
 * Cooling of a lumped pot: dT/dt = −q(T)/C, with q the loss of all faces. q depends on T alone, so time is an
 * integral over temperature, minutes = ∫ C/q dT: monotone, never past the room, and exact at the target.
 */
import type { HeatData } from '../../catalogue/heat-types.ts';
import { type Face, outwards } from './convection.ts';
import { type Band, done, fail, firstBad, type Outcome } from './outcome.ts';
import { type Contents, type Corner, type PotInput, type PotModel, potModel } from './pot.ts';

export type CoolNote =
  | 'already-there'
  /** Not mixed by itself (Biot number ≥ 0.1): stir before you read it. */
  | 'stir-before-reading'
  /** More than a quarter of the loss rests on correlations outside their range. */
  | 'outside-range'
  /** The target is within 3 K of the room: the last degrees take long and say little. */
  | 'close-to-room';

export interface CurvePoint {
  readonly minute: number;
  readonly temperatureC: number;
  readonly lowC: number;
  readonly highC: number;
}

export interface Cooling {
  /** From now, or from the first reading's clock. */
  readonly minutes: Band;
  /** From now, or from the last reading. */
  readonly minutesLeft: Band;
  readonly curve: readonly CurvePoint[];
  /** When to measure next, on the clock of `minutes`; null where the target is reached. */
  readonly lookAtMinute: number | null;
  readonly notes: readonly CoolNote[];
}

export interface CoolInput {
  readonly contents: Contents;
  readonly pot: PotInput;
  readonly startC: number;
  readonly targetC: number;
  /** Default 20. */
  readonly roomC?: number;
}

/** Heat through one face, W, with its outer side at the temperature where inflow and outflow agree. */
function faceLoss(data: HeatData, face: Face, celsius: number, roomC: number): readonly [number, boolean] {
  const at = (faceC: number): readonly [number, boolean] => outwards(data, face, faceC, roomC);
  const scale = face.area * face.share;
  if (face.resistance <= 0) {
    const [flux, inRange] = at(celsius);
    return [flux * scale, inRange];
  }
  let low = roomC;
  let high = celsius;
  let faceC = celsius;
  let inRange = true;
  // Secant on the conductance, kept inside the bracket: outflow rises and inflow falls with the face's temperature.
  for (let i = 0; i < 60 && high - low > 1e-7; i += 1) {
    const [flux, ok] = at(faceC);
    inRange = ok;
    if (flux * face.resistance > celsius - faceC) high = faceC;
    else low = faceC;
    const conductance = flux / Math.max(faceC - roomC, 1e-9);
    const next = (celsius + conductance * face.resistance * roomC) / (1 + conductance * face.resistance);
    const step = next > low && next < high ? next : (low + high) / 2;
    if (Math.abs(step - faceC) < 1e-7) break;
    faceC = step;
  }
  return [((celsius - faceC) / face.resistance) * scale, inRange];
}

export interface Loss {
  readonly watts: number;
  /** Part of it, 0–1, by correlations outside their range. */
  readonly outside: number;
}

/** Heat that the pot loses at this temperature. */
export function lossOf(data: HeatData, model: PotModel, celsius: number, roomC: number): Loss {
  let watts = 0;
  let outside = 0;
  for (const face of model.faces) {
    const [loss, ok] = faceLoss(data, face, celsius, roomC);
    watts += loss;
    if (!ok) outside += loss;
  }
  return { watts, outside: watts > 0 ? outside / watts : 0 };
}

/** A cooling curve as nodes of falling temperature; beyond the last it goes on as a plain exponential. */
export interface Track {
  readonly roomC: number;
  readonly nodes: readonly { readonly minute: number; readonly excess: number }[];
  /** Greatest part of the loss, 0–1, by correlations outside their range. */
  readonly outside: number;
}

/** From `startC` over `targetC` to somewhat below it. Both lie above the room. */
export function trackOf(data: HeatData, model: PotModel, startC: number, targetC: number, roomC: number): Track {
  let outside = 0;
  // minutes per unit of ln(excess), at an excess over the room in K
  const pace = (excess: number): number => {
    const loss = lossOf(data, model, roomC + excess, roomC);
    outside = Math.max(outside, loss.outside);
    return (model.heatCapacity * excess) / loss.watts / 60;
  };
  const nodes = [{ minute: 0, excess: startC - roomC }];
  let minute = 0;
  const descend = (to: number, steps: number): void => {
    const from = nodes.at(-1)?.excess ?? to;
    const ratio = (to / from) ** (1 / steps);
    let excess = from;
    let pace0 = pace(excess);
    for (let i = 1; i <= steps; i += 1) {
      const next = i === steps ? to : excess * ratio;
      const pace1 = pace(next);
      minute += (Math.log(excess / next) * (pace0 + 4 * pace(Math.sqrt(excess * next)) + pace1)) / 6;
      nodes.push({ minute, excess: next });
      excess = next;
      pace0 = pace1;
    }
  };
  descend(targetC - roomC, 10);
  descend((targetC - roomC) * 0.7, 3);
  return { roomC, nodes, outside };
}

/** °C at a minute of the track. */
export function temperatureAt({ nodes, roomC }: Track, minute: number): number {
  const last = nodes.length - 1;
  let i = 1;
  while (i < last && (nodes[i]?.minute ?? 0) < minute) i += 1;
  const a = nodes[i - 1];
  const b = nodes[i];
  if (!a || !b) return roomC;
  const rate = Math.log(a.excess / b.excess) / (b.minute - a.minute);
  return roomC + a.excess * Math.exp(-rate * (minute - a.minute));
}

/** Minute at which the track passes a temperature above the room. */
export function minuteAt({ nodes, roomC }: Track, celsius: number): number {
  const excess = celsius - roomC;
  const last = nodes.length - 1;
  let i = 1;
  while (i < last && (nodes[i]?.excess ?? 0) > excess) i += 1;
  const a = nodes[i - 1];
  const b = nodes[i];
  if (!a || !b) return Number.NaN;
  const share = Math.log(a.excess / excess) / Math.log(a.excess / b.excess);
  return a.minute + share * (b.minute - a.minute);
}

/** When to measure next: after about 60 % of the earliest time left, not sooner than 3 minutes while that is early. */
export const nextLook = (from: number, leftLow: number): number => from + Math.min(leftLow, Math.max(3, 0.6 * leftLow));

/** Temperatures and rooms that the heat balance covers. */
export function coolingFault(targetC: number, roomC: number): ReturnType<typeof firstBad> {
  return (
    firstBad([
      ['target', targetC, -20, 130],
      ['room temperature', roomC, -20, 50],
    ]) ?? (targetC - roomC < 0.5 ? { kind: 'target-not-above-room', targetC, roomC } : null)
  );
}

/** Already at or below the target. */
export const alreadyThere = (startC: number): Cooling => ({
  minutes: { low: 0, nominal: 0, high: 0 },
  minutesLeft: { low: 0, nominal: 0, high: 0 },
  curve: [{ minute: 0, temperatureC: startC, lowC: startC, highC: startC }],
  lookAtMinute: null,
  notes: ['already-there'],
});

const CURVE_POINTS = 24;

/** Time from `startC` to `targetC`, with the curve and its band. Refuses a target that the room does not allow. */
export function coolOf(data: HeatData, input: CoolInput): Outcome<Cooling> {
  const { contents, pot, startC, targetC, roomC = 20 } = input;
  const bad = firstBad([['start', startC, -20, 130]]) ?? coolingFault(targetC, roomC);
  if (bad) return fail(bad);
  if (startC <= targetC) return done(alreadyThere(startC));
  const track = (corner: Corner): Outcome<{ readonly model: PotModel; readonly track: Track }> => {
    const model = potModel(data, pot, contents, corner);
    return model.ok ? done({ model: model.value, track: trackOf(data, model.value, startC, targetC, roomC) }) : model;
  };
  const nominal = track('nominal');
  if (!nominal.ok) return nominal;
  const fast = track('fast');
  if (!fast.ok) return fast;
  const slow = track('slow');
  if (!slow.ok) return slow;
  const [low, middle, high] = [fast, nominal, slow].map(({ value }) => minuteAt(value.track, targetC)) as [
    number,
    number,
    number,
  ];
  const minutes = { low, nominal: middle, high };
  const curve = Array.from({ length: CURVE_POINTS + 1 }, (_, i) => {
    const minute = (high * i) / CURVE_POINTS;
    return {
      minute,
      temperatureC: temperatureAt(nominal.value.track, minute),
      lowC: temperatureAt(fast.value.track, minute),
      highC: temperatureAt(slow.value.track, minute),
    };
  });
  const notes: CoolNote[] = [];
  if (contents.conductivity) {
    const { model } = nominal.value;
    const area = model.faces.reduce((sum, face) => sum + face.area * face.share, 0);
    const coefficient = lossOf(data, model, startC, roomC).watts / area / (startC - roomC);
    // Incropera: lumped while Bi = h (V/A)/k < 0.1.
    if ((coefficient * model.depth) / contents.conductivity.nominal >= 0.1) notes.push('stir-before-reading');
  }
  if (nominal.value.track.outside > 0.25) notes.push('outside-range');
  if (targetC - roomC < 3) notes.push('close-to-room');
  return done({ minutes, minutesLeft: minutes, curve, lookAtMinute: nextLook(0, low), notes });
}
