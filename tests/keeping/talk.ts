// People in rooms who keep things, on the model of the store.
import { createBot, type Reply, renderJson, renderPlain } from '../../src/index.ts';
import { isAnswer, isFault } from '../contract/schemas.ts';
import { createModel } from '../store/model.ts';

type Options = NonNullable<Parameters<typeof createBot>[0]>;

export interface Talker {
  readonly person?: string;
  readonly place?: string;
  readonly isHost?: boolean;
  /** Nobody else reads; so it is where nothing is said. */
  readonly isPrivate?: boolean;
}

export function house(options: Options = {}) {
  const store = createModel(options.now);
  const bot = createBot({ store: async () => store, ...options });
  /** What is said to a person; printed as JSON it fits the published schemas. */
  const ask = async (
    text: string,
    { person = 'ada', place = 'shed', isHost = false, isPrivate = true }: Talker = {},
  ): Promise<Reply> => {
    const reply = await bot.ask({ platform: 'test', place, person, text, isHost, isPrivate });
    if (reply.ok) isAnswer(JSON.parse(renderJson(reply.answer)));
    else isFault(JSON.parse(renderJson(reply.fault)));
    return reply;
  };
  return { store, bot, ask };
}

export const textOf = (reply: Reply): string => renderPlain(reply.ok ? reply.answer : reply.fault, { details: false });

export function resultOf(reply: Reply): Readonly<Record<string, unknown>> {
  if (!reply.ok) throw new Error(`${reply.fault.message} ${reply.fault.hint}`);
  return reply.answer.result;
}
