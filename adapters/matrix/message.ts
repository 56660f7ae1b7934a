/** An answer or a fault as Matrix messages: plain text and HTML that say the same, in parts where it is long. */
import { type Answer, type Block, type Fault, inert, type Reply, renderPlain, twofoldPages } from '../../src/index.ts';
import type { Content } from './told.ts';

/** Bytes of both texts of one part. An event may have 65,536, and encryption adds a third. */
const mostBytes = 16_000;
/** More parts than this are a file. */
const mostParts = 6;

export const said = (reply: Reply): Answer | Fault => (reply.ok ? reply.answer : reply.fault);

export type Picture = Extract<Block, { kind: 'picture' }>;

/** What goes along: charts, and texts as files. */
export interface Enclosed {
  readonly pictures: readonly Picture[];
  readonly files: readonly {
    readonly name: string;
    readonly type: string;
    readonly text: string;
    readonly about: string;
  }[];
}

export interface Letter {
  readonly parts: readonly Content[];
  readonly enclosed: Enclosed;
}

/** Nobody is called by an answer, whatever stands in it: of old clients, too, which look for names in the text. */
const quiet = (text: string): string => text.replace(/@(?!\u200b)/g, '@\u200b');

export interface Dress {
  /** A line before everything else. */
  readonly first?: string;
  /** Somebody who is to be told that this is here: nobody else is. */
  readonly calls?: { readonly id: string; readonly name: string };
}

const textPart = (plain: string, html: string): Content => ({
  msgtype: 'm.notice',
  body: quiet(plain),
  format: 'org.matrix.custom.html',
  formatted_body: html,
  'm.mentions': {},
});

export function letterOf(all: Answer | Fault, { first, calls }: Dress = {}): Letter {
  const body = 'lead' in all ? all.body : [];
  const pictures = body.flatMap((block) => (block.kind === 'picture' ? [block] : []));
  const files = body.flatMap((block) => (block.kind === 'file' ? [block] : []));
  const pages = pagesOf(all);
  const isWhole = pages !== null && pages.length <= mostParts;
  const shown = isWhole ? pages : (pagesOf(inFile(all)) ?? [{ plain: tooLong, html: `<p>${tooLong}</p>` }]);
  const whole = {
    name: 'answer.txt',
    type: 'text/plain',
    text: renderPlain(all, { details: false }),
    about: 'the whole answer',
  };
  return {
    parts: shown.map(({ plain, html }, i) => {
      if (i > 0) return textPart(plain, html);
      if (calls) return callingPart(calls, plain, html);
      return first === undefined
        ? textPart(plain, html)
        : textPart(`${first}\n\n${plain}`, `<p><em>${first}</em></p>${html}`);
    }),
    enclosed: { pictures, files: isWhole ? files : [whole, ...files] },
  };
}

/** No notice: clients are silent about those. */
function callingPart({ id, name }: NonNullable<Dress['calls']>, plain: string, html: string): Content {
  const shown = line(name).replace(/[&<>"']/g, '') || 'You';
  const pill = `<a href="https://matrix.to/#/${encodeURIComponent(id)}">${shown}</a>`;
  return {
    ...textPart(`${shown}: ${plain}`, `<p>${pill}:</p>${html}`),
    msgtype: 'm.text',
    'm.mentions': { user_ids: [id] },
  };
}

const tooLong = 'This is too long for a message: all of it, the caution too, is in the file.';

/** null where no part has room beside the caution. */
function pagesOf(all: Answer | Fault): ReturnType<typeof twofoldPages> | null {
  try {
    return twofoldPages(all, { details: false, max: mostBytes });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** The verdict and its caution; the rest is in a file. Laid over the answer, so that nothing more is worked out. */
function inFile(all: Answer | Fault): Answer | Fault {
  const over = (parts: object) =>
    Object.create(all, Object.fromEntries(Object.entries(parts).map(([key, value]) => [key, { value }])));
  return 'lead' in all
    ? over({ body: [{ kind: 'text', text: tooLong }], assumptions: [], warnings: [], actions: [] })
    : over({ hint: tooLong, candidates: [] });
}

export interface Where {
  readonly thread: string | null;
  readonly repliesTo: string | null;
}

/** The content as a reply, in the thread where it belongs. */
export function placed(content: Content, { thread, repliesTo }: Where): Content {
  if (thread === null && repliesTo === null) return content;
  return {
    ...content,
    'm.relates_to': {
      ...(thread === null ? {} : { rel_type: 'm.thread', event_id: thread, is_falling_back: repliesTo === null }),
      'm.in_reply_to': { event_id: repliesTo ?? thread },
    },
  };
}

/** The content as a new wording of an event. */
export const instead = (content: Content, event: string): Content => ({
  ...content,
  body: `* ${String(content['body'])}`,
  ...(content['formatted_body'] === undefined ? {} : { formatted_body: `* ${String(content['formatted_body'])}` }),
  'm.new_content': content,
  'm.relates_to': { rel_type: 'm.replace', event_id: event },
});

/** One line that a picture or a file is told by. */
export const line = (text: string): string =>
  quiet(inert(text).replace(/\s+/g, ' ').trim()).slice(0, 1000).toWellFormed();
