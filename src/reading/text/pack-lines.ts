/**
 * Packs in a line whose weight is told, too: "lard, 2 packs of 250 g = 500 g", "sunflower oil, 1 l bottle -> I weighed
 * 500 g of it". The packs are set aside; where they do not make the weight, both stay.
 */
import type { Aside } from './book-columns.ts';

const number = '\\d+(?:[.,]\\d+)?';
const unit = '(?:kg|g|grams?|oz|ounces?|lbs?|pounds?)';
const pack = '(?:bottle|can|tin|jug|canister|tub|jar|bag|pack|packet|box|carton|block|stick|brick|bar|bucket)s?';
const counts = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const countOf = (said: string): number => Math.max(counts.indexOf(said.toLowerCase()), Number.parseInt(said, 10) || 0);
const weightOf = (said: string): number => Number(said.replace(',', '.'));
const many = `(\\d{1,2}|two|three|four|five|six|seven|eight|nine|ten) ?(?:[x×*] ?|${pack} (?:of|à|at|x|with) |(?=\\S+ ?${unit} ${pack}))`;
const each = `(${number}) ?(${unit})(?: each)?(?: ${pack})?`;
const makes = new RegExp(
  `\\b${many}${each}(?: ?=|,? so|,? makes?|,? making|,) ?(${number}) ?(${unit})\\b(?: in all| in total)?`,
  'gi',
);
const madeOf = new RegExp(`\\b(${number}) ?(${unit}) \\((?:=|from|in|as)? ?${many}${each}\\)`, 'gi');

const weighed = new RegExp(
  `^([^\\n\\d]*\\p{L})[ ,:(–-]+(?:from )?(?:an? )?(${number} ?(?:l|lit(?:re|er)s?|ml|cl|${unit}) ${pack})\\b([^\\n\\d]{1,30}?)(${number} ?${unit})((?: (?:of|from) it)?(?: (?:went in|used))?)\\)?((?:,? *[€$£]?\\d+[.,]\\d\\d ?[€$£]?)?[ \\t]*)$`,
  'gimu',
);
const taking = /\b(?:weigh\w*|took|take|taken|used|use|(?:of|from) it|of which|thereof|went in)\b/i;
const keeping = /\b(?:left|kept|remain\w*|over|not|need\w*)\b/i;

const precision = 0.005;
const mayPack = new RegExp(`\\d ?[x×*] ?\\d|\\b${pack}\\b`, 'i');

export function withoutPacks(post: string): { readonly text: string; readonly told: readonly Aside[] } {
  const told: Aside[] = [];
  let text = post;
  const aside = (said: string): void => void told.push({ text: said, why: 'the size of a vessel or a pack' });
  if (mayPack.test(post)) {
    const whole = (said: string, count: string, one: string, its: string, all: string, unitOfAll: string): string => {
      const isProduct = Math.abs(countOf(count) * weightOf(one) - weightOf(all)) <= precision * weightOf(all);
      if (its !== unitOfAll || !isProduct) return said;
      aside(`${count} of ${one} ${its}`);
      return `${all} ${its}`;
    };
    text = text.replace(makes, whole);
    text = text.replace(madeOf, (said, all: string, its: string, count: string, one: string, unitOfOne: string) =>
      whole(said, count, one, unitOfOne, all, its),
    );
    text = text.replace(
      weighed,
      (said, name: string, size: string, ahead: string, all: string, behind: string, price: string) => {
        if (!taking.test(ahead + behind) || keeping.test(ahead + behind)) return said;
        aside(size);
        return `${name}, ${all}${price}`;
      },
    );
  }
  return { text, told };
}
