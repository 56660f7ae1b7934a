import { Readable } from 'node:stream';
import { StringDecoder } from 'node:string_decoder';
import type { ReadStream } from 'node:tty';
import { most } from './files.ts';

/** Asks the terminal to mark what is pasted (xterm control sequences, "Bracketed Paste Mode"). */
export const marksOn = '\x1b[?2004h';
export const marksOff = '\x1b[?2004l';
const begin = '\x1b[200~';
const end = '\x1b[201~';

/** How many characters at the end of the text may be the beginning of the mark; a lone escape key is not held back. */
function heldBack(text: string, mark: string): number {
  for (let length = Math.min(mark.length - 1, text.length); length > 1; length -= 1) {
    if (mark.startsWith(text.slice(-length))) return length;
  }
  return 0;
}

/** Pasted text as text: every line end `\n`, no control character that the terminal or the line editor would obey. */
const asText = (pasted: string): string =>
  pasted
    .replace(/\r\n?/g, '\n')
    .replace(/(?![\n\t])\p{Cc}/gu, '')
    .replace(/\n+$/, '');

/**
 * The keys of a terminal without what is pasted, which goes to `onPaste` whole: the line editor would take the first
 * line of it as the message and a tab as a wish for completion. Both come in the order in which they were typed.
 */
export function keysOf(terminal: ReadStream, onPaste: (text: string) => void): Readable {
  const keys = Object.assign(new Readable({ read() {} }), {
    setRawMode: (raw: boolean) => terminal.setRawMode(raw),
  });
  const decoder = new StringDecoder('utf8');
  let waiting = '';
  let pasted: string | undefined;
  terminal.on('data', (chunk: Buffer) => {
    waiting += decoder.write(chunk);
    for (let at = 0; at >= 0; ) {
      const mark = pasted === undefined ? begin : end;
      at = waiting.indexOf(mark);
      const until = at < 0 ? waiting.length - heldBack(waiting, mark) : at;
      const part = waiting.slice(0, until);
      waiting = waiting.slice(at < 0 ? until : at + mark.length);
      if (pasted === undefined) {
        // Not pushed: a stream would hand it on only after the paste behind it.
        if (part !== '') keys.emit('data', part);
        if (at >= 0) pasted = '';
      } else {
        if (pasted.length <= most) pasted += part;
        if (at < 0) continue;
        const text = asText(pasted);
        pasted = undefined;
        onPaste(text);
      }
    }
  });
  terminal.on('end', () => keys.emit('end'));
  return keys;
}
