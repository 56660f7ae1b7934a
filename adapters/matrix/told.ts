/** What an event says, read with care: any field may be missing or of another type than the specification says. */

export type Content = Readonly<Record<string, unknown>>;

export const textIn = (content: Content | undefined, name: string): string | null => {
  const value = content?.[name];
  return typeof value === 'string' ? value : null;
};

export const objectIn = (content: Content | undefined, name: string): Content | undefined => {
  const value = content?.[name];
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Content) : undefined;
};

export interface Relation {
  /** Root of the thread that it stands in. */
  readonly thread: string | null;
  /** The message that it replies to. */
  readonly repliesTo: string | null;
  /** The message that it is a new wording of. */
  readonly edits: string | null;
  /** The message that it is a sign on, and the sign. */
  readonly sign: { readonly on: string; readonly key: string } | null;
}

/** Of the event as it lies on the server: of an encrypted one too its relation stands outside the ciphertext. */
export function relationOf(wire: Content): Relation {
  const relates = objectIn(wire, 'm.relates_to');
  const kind = textIn(relates, 'rel_type');
  const target = textIn(relates, 'event_id');
  const key = textIn(relates, 'key');
  const reply = textIn(objectIn(relates, 'm.in_reply_to'), 'event_id');
  return {
    thread: kind === 'm.thread' ? target : null,
    // In a thread every message carries the last one as a reply, for clients that know no threads.
    repliesTo: kind === 'm.thread' && relates?.['is_falling_back'] === true ? null : reply,
    edits: kind === 'm.replace' ? target : null,
    sign: kind === 'm.annotation' && target !== null && key !== null ? { on: target, key } : null,
  };
}

/** What a message is: somebody's words, a bot's, or something that is not read (a picture, a place, a request). */
export type Message =
  | { readonly kind: 'words'; readonly text: string; readonly html: string; readonly mentions: readonly string[] }
  | { readonly kind: 'notice' }
  | { readonly kind: 'other'; readonly type: string };

export function messageOf(content: Content, isReply: boolean): Message {
  const type = textIn(content, 'msgtype');
  const body = textIn(content, 'body');
  if (type === 'm.notice') return { kind: 'notice' };
  if ((type !== 'm.text' && type !== 'm.emote') || body === null) return { kind: 'other', type: type ?? '' };
  const named = objectIn(content, 'm.mentions')?.['user_ids'];
  return {
    kind: 'words',
    text: isReply ? withoutFallback(body) : body,
    html: textIn(content, 'formatted_body') ?? '',
    mentions: Array.isArray(named) ? named.filter((id) => typeof id === 'string') : [],
  };
}

/** Old clients put the message that is replied to before the reply: lines of "> ", the first with who said it. */
function withoutFallback(body: string): string {
  if (!/^> (?:\* )?<[@!#$]?[^>\n]+>/.test(body)) return body;
  const lines = body.split('\n');
  const end = lines.findIndex((line) => !line.startsWith('>'));
  return end < 0 ? '' : lines.slice(lines[end] === '' ? end + 1 : end).join('\n');
}

/** The words of an edit; null where it has none. */
export function editOf(content: Content): Message | null {
  const renewed = objectIn(content, 'm.new_content');
  return renewed ? messageOf(renewed, false) : null;
}
