/** Whether a message is meant for the bot, and which of its words are the request. */

export interface Heard {
  /** What the person wrote, without the quotation of a reply. */
  readonly text: string;
  /** Names in the message that a client marked, as user ids. */
  readonly mentions: readonly string[];
  /** The message as HTML, where old clients put the mentions only. */
  readonly html: string;
  /** Nobody else is in the room, or it is a reply to an answer. */
  readonly isToUs: boolean;
}

export interface Self {
  readonly id: string;
  /** What people call the bot: its display name, the first part of its id. */
  readonly names: readonly string[];
}

/** The request, perhaps empty; null where the message is for others. */
export function requestIn({ text, mentions, html, isToUs }: Heard, self: Self, prefix: string): string | null {
  const called = new RegExp(`^\\s*${RegExp.escape(prefix)}(?=$|[\\s:,])[:,]?`, 'iu').exec(text);
  if (called) return text.slice(called[0].length).trim();
  const isMentioned = mentions.includes(self.id) || isLinked(html, self.id);
  const named = withoutName(text, [self.id, ...self.names], isMentioned);
  if (named !== null) return named;
  return isMentioned || isToUs ? text.trim() : null;
}

/** A pill is a link to the person: `https://matrix.to/#/@name:server`, or a `matrix:` address. */
function isLinked(html: string, id: string): boolean {
  if (!html.includes('href')) return false;
  const links = [`matrix.to/#/${id}`, `matrix.to/#/${encodeURIComponent(id)}`, `matrix:u/${id.slice(1)}`];
  return links.some((link) => new RegExp(`href\\s*=\\s*["'][^"']{0,20}${RegExp.escape(link)}["'?]`, 'i').test(html));
}

const greeting = '(?:(?:hey|hi|hello|hallo|ok|okay|dear)[\\s,]+)?';

/**
 * The text without the bot's name, where that calls it: before everything else, or behind it after a comma or an "@".
 * A mention that a client marked may stand anywhere. null where the name does not call.
 */
function withoutName(text: string, names: readonly string[], isMentioned: boolean): string | null {
  for (const name of names.toSorted((a, b) => b.length - a.length)) {
    if (name.trim() === '' || !text.toLowerCase().includes(name.toLowerCase())) continue;
    const word = RegExp.escape(name);
    const before = new RegExp(`^\\s*${greeting}@?${word}(?=$|[\\s:,;!?.])[:,;!?.]*`, 'iu').exec(text);
    if (before) return text.slice(before[0].length).trim();
    const behind = new RegExp(`(?:[\\s,]@|,\\s*)${word}\\s*([?!.]*)\\s*$`, 'iu').exec(text);
    if (behind) return (text.slice(0, behind.index) + (behind[1] ?? '')).trim();
    const within = new RegExp(`(?<=^|[\\s,])@?${word}(?=$|[\\s:,;!?.])[:,]?`, 'u').exec(text);
    const isWhole = name.startsWith('@');
    if (within && (isMentioned || isWhole)) {
      return `${text.slice(0, within.index)}${text.slice(within.index + within[0].length)}`.trim();
    }
  }
  return null;
}
