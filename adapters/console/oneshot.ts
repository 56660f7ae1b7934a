import {
  type Answer,
  type Bot,
  type Fault,
  type Picture,
  type Reply,
  renderJson,
  renderTerminal,
} from '../../src/index.ts';
import { parseArguments, usage } from './arguments.ts';
import { filesOf, keep } from './exports.ts';

/** What a one-shot question touches outside itself. */
export interface Io {
  readonly readText: (file: string) => string;
  readonly readLines: (file: string) => Iterable<string>;
  /** Descriptor 1 or 2; false where nobody reads any more. */
  readonly write: (descriptor: 1 | 2, text: string) => boolean;
  readonly savePicture: (picture: Picture, file: string) => Promise<void>;
}

/** Values of `sysexits.h` for a wrong call, a file that is not there and one that cannot be made. */
const status = { answered: 0, bug: 1, notAnswered: 2, usage: 64, noInput: 66, noOutput: 73 } as const;

/** As in the chat: the same person in the same place, who is alone with it. */
const asking = {
  platform: 'console',
  place: 'chat',
  person: 'local',
  isPrivate: true,
  isHost: true,
  later: { can: 'here', how: 'I tell you in the chat (npm start): while it is open, or when you open it next.' },
} as const;

const saidOf = (reply: Reply) => (reply.ok ? reply.answer : reply.fault);

const statusOf = (reply: Reply): number =>
  reply.ok ? status.answered : reply.fault.code === 'failed' ? status.bug : status.notAnswered;

/** What stands in for an answer where the core itself could not be made or broke its promise not to throw. */
function broken(error: unknown): Fault {
  return {
    code: 'failed',
    message: `Something went wrong on our side: ${error instanceof Error ? error.message : String(error)}`,
    hint: `Please pass on the number ${crypto.randomUUID().slice(0, 8)} and what you asked.`,
    candidates: [],
    caution: [],
  };
}

const picturesOf = ({ body, details }: Answer): readonly Picture[] =>
  [...body, ...details].flatMap((block) => (block.kind === 'picture' ? [block.picture] : []));

/** The answer is out by now: what goes wrong here is told beside it. */
async function save(picture: Picture | undefined, file: string, io: Io): Promise<number> {
  try {
    if (!picture) throw new Error('this answer has no picture');
    await io.savePicture(picture, file);
    return status.answered;
  } catch (error) {
    io.write(2, `ask: ${error instanceof Error ? error.message : String(error)}\n`);
    return status.noOutput;
  }
}

/** As on a terminal, pictures in letters too, but unbroken and without colour: it may go into a file. */
const onPaper = { details: false, columns: Number.POSITIVE_INFINITY, colour: false } as const;

export async function oneShot(
  words: readonly string[],
  createBot: (data: string | undefined) => Bot,
  io: Io,
): Promise<number> {
  if (words.length === 1 && words[0] === '--help') {
    io.write(1, usage);
    return status.answered;
  }
  const parsed = parseArguments(words);
  if (!parsed.ok) {
    io.write(2, `ask: ${parsed.message}\n\n${usage}`);
    return status.usage;
  }
  const { json, from, picture, data } = parsed.value;
  const show = (said: Parameters<typeof renderJson>[0]): boolean =>
    io.write(1, `${json ? renderJson(said) : renderTerminal(said, onPaper)}\n`);

  let bot: Bot | null = null;
  try {
    bot = createBot(data);
    const own = bot;
    const ask = (text: string) => own.ask({ ...asking, text });
    if (from !== 'standard input' && 'turns' in from) {
      for (const line of io.readLines(from.turns)) {
        if (!show(saidOf(await ask(line.replaceAll('\\n', '\n'))))) break;
      }
      return status.answered;
    }
    const reply = await ask(from === 'standard input' ? io.readText('-') : from.text);
    show(saidOf(reply));
    for (const file of reply.ok ? filesOf(reply.answer) : []) io.write(2, `ask: ${keep(file)}\n`);
    if (picture === undefined || !reply.ok) return statusOf(reply);
    return await save(picturesOf(reply.answer)[0], picture, io);
  } catch (error) {
    if (error instanceof Error && 'syscall' in error) {
      io.write(2, `ask: ${error.message}\n`);
      return status.noInput;
    }
    show(broken(error));
    return status.bug;
  } finally {
    await bot?.close();
  }
}
