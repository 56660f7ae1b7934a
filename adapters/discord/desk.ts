/** What each interaction is answered with. Knows the core and the shape of messages, and nothing of how they travel. */
import { type Bot, type Declaration, makeQueues, type Reply, type Ring } from '../../src/index.ts';
import { type Asker, askerOf, isHost } from './asker.ts';
import { completed } from './complete.ts';
import { asTyped, checkMenu, cut, freeForm, wordsOption } from './forms.ts';
import { laterOf, noWay } from './later.ts';
import { fingerprintOf, type Shown, show } from './message.ts';
import { createStates, idsIn, type State } from './state.ts';
import { textOf } from './told.ts';
import {
  answerType,
  type Callback,
  type Component,
  commandType,
  flag,
  type Interaction,
  kind,
  limits,
  type Modal,
  nobody,
  type Told,
} from './wire.ts';

/** An answer at once, or work whose answer may come later than Discord waits. */
export type Plan =
  | { readonly now: Callback }
  /** The same, looked up first. */
  | { readonly soon: () => Promise<Callback> }
  | {
      readonly work: () => Promise<Shown>;
      readonly type: typeof answerType.message | typeof answerType.update;
      readonly shared: boolean;
    };

export interface Desk {
  readonly plan: (interaction: Interaction) => Plan;
  /** A plain question in the bot's own direct messages. */
  readonly direct: (message: Told) => Promise<Shown>;
  /** What is told later; `calls`: where others read it too, so that its person is called. */
  readonly told: (ring: Ring, calls: boolean) => Shown;
  /** Whether a message is the one that tells this. */
  readonly isTold: (message: Told, id: string) => boolean;
}

export interface DeskOptions {
  readonly bot: Bot;
  readonly declarations: readonly Declaration[];
  /** Reads a text that is attached to a message; throws where it cannot be had. */
  readonly download: (url: string) => Promise<string>;
  /** The bot can write without being asked. */
  readonly tells: boolean;
}

export const notice = (content: string): Shown => ({
  message: { content, components: [], flags: flag.noPreviews | flag.onlyForYou, allowed_mentions: nobody },
  files: null,
});

const words = {
  unknownCommand: 'I do not know this command any more. Type "/" to see what I can do, or use /ask.',
  unknownButton: 'I do not know this button. Ask me again, for example with /ask.',
  notYours: 'These buttons belong to the person who asked. Ask me yourself with /ask; only you will see the answer.',
  expired:
    'This is from too long ago: I no longer have what it was about. Paste the recipe again, or use the menu of its message.',
  nothing: 'There is no text in this. Write a recipe with weights, for example: 500 g lard, 66 g NaOH, 150 g water.',
} as const;

export function createDesk({ bot, declarations, download, tells }: DeskOptions): Desk {
  const states = createStates();
  const queued = makeQueues();
  /** What is said again for a button and what is new must not mix with another message of the same person. */
  const inTurn = <T>(asker: Asker, work: () => Promise<T>): Promise<T> =>
    queued({ platform: 'discord', place: asker.place, person: asker.person }, work);

  /**
   * Says the turns again and the new one; what the buttons were about must come out as it was. Turns are questions:
   * what kept something, or looked it up, is not among them (`show` sees to it).
   */
  async function replay(asker: Asker, state: State, request: string | null): Promise<Reply | null> {
    let reply: Reply | null = null;
    for (const text of state.turns) reply = await bot.ask({ platform: 'discord', ...asker, text });
    if (reply && state.fingerprint !== '' && fingerprintOf(reply) !== state.fingerprint) return null;
    return request === null ? reply : await bot.ask({ platform: 'discord', ...asker, text: request });
  }

  const answer = (asker: Asker, text: string): Promise<Reply> =>
    inTurn(asker, () => bot.ask({ platform: 'discord', ...asker, text }));

  const ask = async (asker: Asker, text: string): Promise<Shown> =>
    show(await answer(asker, text), { owner: asker.person, turns: [text], page: 0, shared: false }, states);

  const command = (interaction: Interaction, asker: Asker): Plan => {
    const { name = '', type = commandType.slash, options = [] } = interaction.data ?? {};
    const owner = asker.person;
    if (type === commandType.message && name === checkMenu) {
      const target = interaction.data?.resolved?.messages?.[interaction.data.target_id ?? ''];
      return privately(async () => {
        const read = target ? await textOf(target, download) : { ok: false as const, why: words.nothing };
        return read.ok ? ask(asker, `check: ${read.text}`) : notice(read.why);
      });
    }
    const declared = declarations.find(({ id }) => id === name);
    if (type !== commandType.slash || (!declared && name !== freeForm)) return say(words.unknownCommand);
    const text = asTyped(name, options);
    const given = options.some((option) => option.name === wordsOption && String(option.value ?? '').trim() !== '');
    return privately(async () => {
      const reply = await answer(asker, text);
      const shown = show(reply, { owner, turns: [text], page: 0, shared: false }, states);
      if (given || reply.ok || (reply.fault.code !== 'unclear' && reply.fault.code !== 'unknown')) return shown;
      // A word alone that is no question, such as "check": the words are asked for in a form of several lines.
      const [id = ''] = states.write({ turns: [], requests: [text], fingerprint: '' }, owner, [
        { press: 'f', number: 0 },
      ]);
      return { ...shown, form: form(id, name, declared?.summary ?? 'in your own words') };
    });
  };

  const pressed = (interaction: Interaction, asker: Asker): Plan => {
    const { message, data } = interaction;
    const id = data?.values?.[0] ?? data?.custom_id ?? '';
    const found = states.read(id, message?.components ?? []);
    if (!found || found.press === 'c' || found.press === 'f') return say(words.unknownButton);
    const { press, number, owner, state } = found;
    const isOwner = owner === asker.person;
    if (!isOwner && press !== 'p' && !isHost(interaction)) return say(words.notYours);
    if (!state) return say(words.expired);
    if (press === 'o')
      return { now: form(id, 'ask on', 'an answer, a change ("and at 8 %?") or a next step ("summary")') };
    const shared = ((message?.flags ?? 0) & flag.onlyForYou) === 0;
    // A page turns, and a question becomes its answer, in place; whatever else comes as a message of its own.
    const inPlace = isOwner && (press === 'p' || press === 'q');
    const request = press === 'a' || press === 'q' ? (state.requests[number] ?? null) : null;
    if (request === null && (press === 'a' || press === 'q')) return say(words.unknownButton);
    const view = {
      owner: isOwner ? owner : asker.person,
      turns: request === null ? state.turns : [...state.turns, request],
      page: press === 'p' ? number : 0,
      shared: press === 's' || (inPlace && shared),
    };
    // what a whole channel reads is not private, whoever pressed
    const who = { ...(isOwner ? asker : apart(asker, message)), isPrivate: !view.shared };
    const work = async () => {
      const reply = await inTurn(who, () => replay(who, state, request));
      if (!reply) return notice(words.expired);
      const shown = show(reply, view, states);
      // A page that turns keeps the files that its message has.
      return inPlace && press === 'p' ? { ...shown, files: null } : shown;
    };
    return { work, type: inPlace ? answerType.update : answerType.message, shared: view.shared };
  };

  const submitted = (interaction: Interaction, asker: Asker): Plan => {
    const found = states.read(interaction.data?.custom_id ?? '', interaction.message?.components ?? []);
    if (!found || (found.press !== 'o' && found.press !== 'f')) return say(words.unknownButton);
    const isOwner = found.owner === asker.person;
    if (!isOwner && (found.press === 'f' || !isHost(interaction))) return say(words.notYours);
    const { state } = found;
    if (!state) return say(words.expired);
    const text = typedIn(interaction.data?.components ?? []).trim();
    if (text === '') return say(words.nothing);
    if (found.press === 'f') return privately(() => ask(asker, `${state.requests[0] ?? ''} ${text}`.trim()));
    const who = isOwner ? asker : apart(asker, interaction.message);
    return privately(async () => {
      const reply = await inTurn(who, () => replay(who, state, text));
      const view = { owner: asker.person, turns: [...state.turns, text], page: 0, shared: false };
      return reply ? show(reply, view, states) : notice(words.expired);
    });
  };

  return {
    plan: (interaction) => {
      const asker = { ...askerOf(interaction), later: tells ? laterOf(interaction) : noWay };
      switch (interaction.type) {
        case kind.ping:
          return { now: { type: answerType.pong } };
        case kind.command:
          return command(interaction, asker);
        case kind.component:
          return pressed(interaction, asker);
        case kind.modal:
          return submitted(interaction, asker);
        case kind.autocomplete:
          return {
            soon: async () => ({
              type: answerType.choices,
              data: { choices: await completed(interaction, asker, bot, declarations) },
            }),
          };
        default:
          return say(words.unknownCommand);
      }
    },
    direct: async (message) => {
      const place = message.channel_id ?? '';
      const asker = { place, address: place, person: message.author?.id ?? '', isPrivate: true };
      const read = await textOf(message, download);
      return read.ok ? ask(asker, read.text) : notice(read.why);
    },
    told: ({ person, answer: said, id }, calls) => {
      // its buttons stand alone: there is nothing before it to say again
      const reply = { id, ok: true, answer: said, kept: { again: null } } as const;
      const view = { owner: person, turns: [], page: 0, shared: true, mark: id };
      return show(reply, calls ? { ...view, calls: person } : view, states);
    },
    isTold: ({ author, components = [] }, id) =>
      author?.bot === true && idsIn(components).some((one) => states.read(one, components)?.state?.fingerprint === id),
  };
}

/** Where somebody looks at another person's answer, so that it does not become "your last recipe". */
const apart = (asker: Asker, message: Told | undefined): Asker => ({
  ...asker,
  place: `${asker.place}/${message?.id ?? ''}`,
});

const say = (text: string): Plan => ({ now: { type: answerType.message, data: notice(text).message } });
const privately = (work: () => Promise<Shown>): Plan => ({ work, type: answerType.message, shared: false });

/** A form with one field of several lines. */
const form = (id: string, name: string, about: string): Callback => {
  const data: Modal = {
    custom_id: id,
    title: name.charAt(0).toUpperCase() + name.slice(1, limits.modalTitle),
    components: [
      {
        type: 18,
        label: 'Your words',
        description: cut(about),
        component: { type: 4, custom_id: 'text', style: 2, required: true, max_length: limits.textInput },
      },
    ],
  };
  return { type: answerType.modal, data };
};

/** What was typed, in a label of today or in a row of older forms. */
const typedIn = (components: readonly Component[]): string =>
  components
    .flatMap(({ component, components: inner, value }) => [
      ...(value === undefined ? [] : [value]),
      ...(component ? [typedIn([component])] : []),
      ...(inner ? [typedIn(inner)] : []),
    ])
    .join('\n');
