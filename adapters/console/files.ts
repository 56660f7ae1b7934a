// Reading and writing without streams: a one-shot process starts faster without them, and a turn is answered as soon
// as its line is there.
import { closeSync, openSync, readSync, writeSync } from 'node:fs';

/** More than any post; what is longer is cut here and refused by the core, which says its own, smaller limit. */
export const most = 1_000_000;

const codeOf = (error: unknown): string | undefined =>
  error instanceof Error && 'code' in error ? String(error.code) : undefined;

/** A descriptor that another program made non-blocking says EAGAIN while there is nothing yet. */
const nap = (): void => {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);
};

function* chunks(descriptor: number): Generator<Uint8Array> {
  const buffer = new Uint8Array(65_536);
  for (;;) {
    try {
      const size = readSync(descriptor, buffer);
      if (size === 0) return;
      yield buffer.subarray(0, size);
    } catch (error) {
      if (codeOf(error) === 'EOF') return;
      if (codeOf(error) !== 'EAGAIN') throw error;
      nap();
    }
  }
}

/** `-` is standard input. Throws what the file system says. */
function* opened(file: string): Generator<Uint8Array> {
  if (file === '-') {
    yield* chunks(0);
    return;
  }
  const descriptor = openSync(file, 'r');
  try {
    yield* chunks(descriptor);
  } finally {
    closeSync(descriptor);
  }
}

/** All of a text in UTF-8, or its first `most` characters. */
export function readText(file: string): string {
  const decoder = new TextDecoder();
  let text = '';
  for (const chunk of opened(file)) {
    text += decoder.decode(chunk, { stream: true });
    if (text.length > most) return text.slice(0, most);
  }
  return text + decoder.decode();
}

/** The lines of a text, each as soon as it is there; one longer than `most` is cut. */
export function* readLines(file: string): Generator<string> {
  const decoder = new TextDecoder();
  let open = '';
  for (const chunk of opened(file)) {
    const lines = decoder.decode(chunk, { stream: true }).split('\n');
    for (const line of lines.slice(0, -1)) {
      yield (open + line).slice(0, most).replace(/\r$/, '');
      open = '';
    }
    const last = lines.at(-1) ?? '';
    if (open.length < most) open += last;
  }
  open += decoder.decode();
  if (open !== '') yield open.slice(0, most).replace(/\r$/, '');
}

/** Writes all of a text; false where nobody reads any more. */
export function write(descriptor: 1 | 2, text: string): boolean {
  let rest: Uint8Array = new TextEncoder().encode(text);
  while (rest.length > 0) {
    try {
      rest = rest.subarray(writeSync(descriptor, rest));
    } catch (error) {
      if (codeOf(error) === 'EPIPE') return false;
      if (codeOf(error) !== 'EAGAIN') throw error;
      nap();
    }
  }
  return true;
}
