/** Sees to it that every interaction is answered in time, whatever becomes of the work. */

import type { Note } from '../log.ts';
import type { Desk } from './desk.ts';
import { notice } from './desk.ts';
import type { Shown } from './message.ts';
import { answerType, type Callback, type File, flag, type Interaction, kind, type Message } from './wire.ts';

/** How an answer travels: the first response, once, and changes to it. */
export interface Line {
  readonly first: (callback: Callback) => Promise<void>;
  readonly edit: (
    message: Partial<Message> & Pick<Message, 'allowed_mentions'>,
    files: readonly File[],
  ) => Promise<void>;
}

export interface Service {
  readonly desk: Desk;
  readonly log: (note: Note) => void;
  readonly newId?: () => string;
  /** Milliseconds of work after which Discord is told to wait; it gives up at 3 s. */
  readonly patience?: number;
}

export const deadline = 3000;
const usualPatience = 1500;

const sorry = (id: string): Shown =>
  notice(
    `Something went wrong on our side; it is not your recipe. Please try again, or pass on the number ${id}. First aid: /safety.`,
  );

export async function serve(interaction: Interaction, line: Line, service: Service): Promise<void> {
  const { desk, log, newId = () => crypto.randomUUID().slice(0, 8), patience = usualPatience } = service;
  const failed = (event: string, error: unknown): string => {
    const id = newId();
    log({ level: 'error', event, id, error });
    return id;
  };
  try {
    const plan = desk.plan(interaction);
    if ('now' in plan) {
      await line.first(plan.now);
      return;
    }
    if ('soon' in plan) {
      await line.first(await plan.soon());
      return;
    }
    const { type, shared } = plan;
    const work = plan.work().catch((error: unknown) => sorry(failed('answer-failed', error)));
    let shown = await soon(work, patience);
    if (shown) await line.first(shown.form ?? { type, data: onWire(shown, type) });
    else {
      const flags = shared ? 0 : flag.onlyForYou;
      await line.first(
        type === answerType.update
          ? { type: answerType.updateLater }
          : { type: answerType.messageLater, data: { flags } },
      );
      // The flags of an answer are settled by its deferral.
      shown = await work;
      const { flags: _, ...message } = onWire(shown, type);
      await line.edit(message, []);
    }
    if (shown.files) await attach(shown.files, line, failed);
  } catch (error) {
    // An answer that Discord refuses, or a line that broke: whichever way is still open tells of it.
    const { message } = sorry(failed('unanswered', error));
    const { flags: _, ...change } = message;
    if (interaction.type === kind.autocomplete) return;
    await line
      .first({ type: answerType.message, data: message })
      .catch(() => line.edit(change, []))
      .catch(() => {});
  }
}

/** A message that changes in place keeps its flags and loses the files of the page before. */
const onWire = ({ message }: Shown, type: number): Message => {
  if (type !== answerType.update) return message;
  const { flags: _, ...rest } = message;
  return rest;
};

/** Files follow the answer: neither drawing nor sending them may cost the deadline. */
async function attach(
  files: NonNullable<Shown['files']>,
  line: Line,
  failed: (event: string, error: unknown) => string,
): Promise<void> {
  try {
    const made = await inQueue(files);
    const attachments = made.map(({ name, description }, i) => ({
      id: String(i),
      filename: name,
      ...(description === undefined ? {} : { description }),
    }));
    await line.edit({ attachments, allowed_mentions: { parse: [] } }, made);
  } catch (error) {
    failed('file-failed', error);
  }
}

/** Drawings one after another: each takes the processor for a tenth of a second. */
let last: Promise<unknown> = Promise.resolve();
function inQueue<T>(make: () => Promise<T>): Promise<T> {
  const made = last.then(async () => {
    await new Promise((resolve) => setImmediate(resolve));
    return make();
  });
  last = made.catch(() => {});
  return made;
}

/** What the work, which never fails, comes to within the time, else null. */
const soon = <T>(work: Promise<T>, patience: number): Promise<T | null> =>
  new Promise((resolve) => {
    let timer: NodeJS.Timeout | undefined;
    let isDone = false;
    work.then((done) => {
      isDone = true;
      clearTimeout(timer);
      resolve(done);
    });
    // what waits for nothing outside is done before the next tick, and needs no timer
    process.nextTick(() => {
      if (!isDone) timer = setTimeout(resolve, patience, null);
    });
  });
