/** A request and the message that it replies to, as one. */

/** Longer, or with so many figures, a request stands for itself. */
const longest = 120;
const mostFigures = 2;

const figures = (text: string): number => text.match(/\d+(?:[.,]\d+)?/g)?.length ?? 0;

/** Whether the message replied to is to be read: the request is short, and no recipe itself. */
export const wantsQuoted = (request: string): boolean =>
  request.length <= longest && !request.includes('\n') && figures(request) <= mostFigures;

/** "check", "check it", "is this right?" and nothing at all ask for a check of what is quoted. */
export function withQuoted(request: string, quoted: string): string {
  if (figures(quoted) === 0) return request === '' ? quoted : request;
  const bare = request.replace(/[\s:.!?]+$/, '');
  if (/^(?:check(?:\s+(?:it|this|that))?)?$/i.test(bare)) return `check: ${quoted}`;
  if (/^[a-z]+$/i.test(bare)) return `${bare}: ${quoted}`;
  return `${request}\n${quoted}`;
}
