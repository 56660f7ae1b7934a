/** What has to be asked, or refused, before a recipe can be scaled. */
import type { Result } from '../answer/types.ts';
import { mouldVolume } from '../engine/mould.ts';
import type { ScaleTarget } from '../engine/scaling.ts';
import { readScaleWish, type ScaleWish, weightOf } from '../reading/question/scale-target.ts';
import { number, percent, type Style } from '../units/print.ts';
import { untilClear } from './cautions.ts';
import type { Context, Refusal, Taken } from './define.ts';

type Refused = Refusal<'caustic'>;

interface Asked {
  readonly text: string;
  readonly given: Taken['options'];
}

const unclear = (
  message: string,
  hint: string,
  candidates: readonly string[],
  complete: (answer: string) => Taken | null,
): Refused => ({
  code: 'unclear',
  message,
  hint,
  candidates,
  caution: untilClear,
  complete,
});

export function toWhat(text: string, given: Taken['options'], context: Context): Refused {
  return unclear(
    'To what size?',
    'Say for example "1 kg of oils", "a batch of 1.2 kg", "a mould 24 x 8 x 6 cm", "12 bars of 100 g", "double", or what you have: "300 g coconut".',
    [],
    (answer) => (readScaleWish(context.reader(), answer) ? { text: `${answer}\n${text}`, options: given } : null),
  );
}

export function tooMuchAlkali({ text, given }: Asked, { style }: Context): Refused {
  return {
    code: 'refused',
    message:
      'This recipe has too much alkali, and at another size it would burn skin just the same. I won’t multiply it.',
    hint: 'Say the superfat you want, for example "5 %": I then scale the fats and reckon the alkali for that.',
    candidates: [percent(0.05, style)],
    caution: untilClear,
    complete: (answer) => {
      const share = /^\D*(\d+(?:[.,]\d+)?)\s*%?\D*$/.exec(answer);
      const superfat = share ? Number((share[1] ?? '').replace(',', '.')) / 100 : Number.NaN;
      return superfat >= 0 && superfat < 0.5 ? { text, options: { ...given, superfat } } : null;
    },
  };
}

/** What the engine is to aim at, or the question that is left. */
export function targetOf(wish: ScaleWish, { text, given }: Asked, style: Style): Result<ScaleTarget, Refused> {
  const instead = (said: string, answer: string): Taken => ({ text: text.replace(said, answer), options: given });
  switch (wish.kind) {
    case 'weight':
      return {
        ok: false,
        fault: unclear(
          `${wish.said} of what: the fats, or the whole batch in the pot?`,
          'Answer "oils" or "batch".',
          ['oils', 'batch'],
          (answer) => {
            const of = weightOf(answer);
            return of === null ? null : { text, options: { ...given, of } };
          },
        ),
      };
    case 'bars-of-what':
      return {
        ok: false,
        fault: unclear(
          `How heavy shall each of the ${wish.count} bars be?`,
          'Answer for example "100 g".',
          ['100 g', '4 oz'],
          (answer) =>
            /^\D*\d+(?:[.,]\d+)?\s*(g|gr|grams?|oz|ounces?)\b\D*$/i.test(answer)
              ? {
                  text: text.replace(/\bbars?\b|\bpieces\b|\bcakes\b|\bsoaps\b/i, (bars) => `${bars} of ${answer}`),
                  options: given,
                }
              : null,
        ),
      };
    case 'sides-of-what':
      return {
        ok: false,
        fault: unclear(
          `Is the mould ${wish.said} in centimetres or inches?`,
          'Answer "cm" or "inches".',
          ['cm', 'inches'],
          (answer) => {
            const unit = /\b(cm|centim\w*)\b/i.test(answer)
              ? 'cm'
              : /\b(in|inch(es)?)\b|"/i.test(answer)
                ? 'inches'
                : null;
            return unit === null ? null : instead(wish.said, `${wish.said} ${unit}`);
          },
        ),
      };
    case 'range':
      return {
        ok: false,
        fault: unclear(`${wish.said}: which figure shall I take?`, 'Answer with one weight.', [], (answer) =>
          /^\D*\d+(?:[.,]\d+)?\s*\p{L}+\W*$/u.test(answer) ? instead(wish.said, answer.trim()) : null,
        ),
      };
    case 'sides': {
      const volume = mouldVolume(wish.mould);
      if (volume.ok) return { ok: true, value: { kind: 'mould', millilitres: volume.value } };
      return {
        ok: false,
        fault: {
          code: 'impossible',
          message: `A mould of ${wish.said} can’t be.`,
          hint: `Each side must lie between 1 mm and 10 m; this one has ${number(volume.fault.value, 2, style)} cm.`,
          candidates: [],
          caution: untilClear,
        },
      };
    }
    default:
      return { ok: true, value: wish };
  }
}

/** What the recipe does not hold can't decide its size. */
export function cannot(kind: string, fault: Refused): Refused {
  if (kind !== 'nothing-to-scale') return fault;
  return {
    ...fault,
    code: 'unclear',
    message: 'That ingredient is not in the recipe.',
    hint: 'Name one that is, with what you have of it.',
  };
}
