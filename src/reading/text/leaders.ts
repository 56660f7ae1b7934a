/** What leads the eye from a name to its amount, or draws the amount: "Olive ........ 500 g", "Castor ██ 100 g". */

/** Dots enough to be no pause of somebody who speaks. */
const dots = /(?<=[\p{L}\d)%"])[ \t]*(?:\.{4,}|…{2,})[ \t]*(?=[^\s.…])|(?<=[\p{L})%"])[ \t]{2,}\.{2,}[ \t]*(?=\d)/gu;
const bar = /(?<=[\p{L})])\.?[ \t]+[\u2580-\u2593\u25a0-\u25ff=#*]{2,}[ \t]+(?=\d)/gu;
/** Fewer bars may be a blot on a figure. */
const leastBars = 3;

export function withoutLeaders(post: string): string {
  const dotted = /\.{4}|……| {2}\.{2}/.test(post) ? post.replace(dots, ': ') : post;
  const bars = /[\u2580-\u25ff]{2}|[=#*]{2}/.test(dotted) ? (dotted.match(bar) ?? []).length : 0;
  return bars >= leastBars ? dotted.replace(bar, ': ') : dotted;
}
