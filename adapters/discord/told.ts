/** The words of somebody's message, those of an attached text among them. */
import type { Attachment, Told } from './wire.ts';

type Read = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly why: string };

/** Bytes; Discord makes a file of a pasted text of more than 2,000 characters. */
const largestText = 100_000;

const isText = ({ content_type, filename }: Attachment): boolean =>
  content_type === undefined ? /\.(txt|md|csv)$/i.test(filename) : /^text\//i.test(content_type);

export async function textOf(told: Omit<Told, 'id'>, download: (url: string) => Promise<string>): Promise<Read> {
  const content = told.content?.trim() ?? '';
  if (content !== '') return { ok: true, text: content };
  const forwarded = told.message_snapshots?.[0]?.message;
  if (forwarded) return textOf(forwarded, download);
  const attached = told.attachments ?? [];
  const file = attached.find(isText);
  if (file && file.size <= largestText) {
    try {
      const text = (await download(file.url)).trim();
      if (text !== '') return { ok: true, text };
    } catch {
      return { ok: false, why: 'I could not open the file of this message. Paste its text with /check.' };
    }
  }
  if (file)
    return {
      ok: false,
      why: 'The file of this message is empty or too long for me. Paste the recipe alone with /check.',
    };
  return {
    ok: false,
    why:
      attached.length > 0
        ? 'I read text only, no pictures and no other files. Type the recipe with /check.'
        : 'There is no text in this message. Type the recipe with /check.',
  };
}

/** Attached files come from these hosts and no other, lest a message make us call where it likes. */
const fileHosts: ReadonlySet<string> = new Set(['cdn.discordapp.com', 'media.discordapp.net']);

/** `alsoFrom` is the host of the API where that is not Discord's own. */
export const downloader =
  (alsoFrom: string, patience = 2000) =>
  async (url: string): Promise<string> => {
    const { host, protocol } = new URL(url);
    const isDiscord = fileHosts.has(host) && protocol === 'https:';
    if (!isDiscord && host !== alsoFrom) throw new Error('a file of a host that is not Discord’s');
    const response = await fetch(url, { redirect: 'error', signal: AbortSignal.timeout(patience) });
    if (!response.ok || !response.body) throw new Error(`a file that answers with ${response.status}`);
    const decoder = new TextDecoder();
    let text = '';
    for await (const chunk of response.body) {
      text += decoder.decode(chunk, { stream: true });
      if (text.length > largestText) throw new Error('a file longer than it says');
    }
    return text + decoder.decode();
  };
