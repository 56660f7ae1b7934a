// What Discord's documentation demands and its published schema does not say. Each rule with the page that it is from.
import type { Body } from './schema.ts';

const docs = 'https://docs.discord.com/developers';
const pages = {
  responding: `${docs}/interactions/receiving-and-responding`,
  commands: `${docs}/interactions/application-commands`,
  messages: `${docs}/resources/message`,
  components: `${docs}/components/reference`,
  errors: `${docs}/reference`,
  locales: `${docs}/reference`,
} as const;

interface Component {
  readonly type: number;
  readonly style?: number;
  readonly label?: string;
  readonly url?: string;
  readonly custom_id?: string;
  readonly placeholder?: string;
  readonly options?: readonly { readonly label: string; readonly value: string }[];
  readonly components?: readonly Component[];
}
interface Message {
  readonly content?: string;
  readonly flags?: number;
  readonly embeds?: readonly object[];
  readonly components?: readonly Component[];
  readonly attachments?: readonly { readonly description?: string; readonly filename?: string }[];
  readonly allowed_mentions?: {
    readonly parse?: readonly string[];
    readonly users?: unknown;
    readonly roles?: unknown;
  };
}
interface Option {
  readonly name: string;
  readonly type: number;
  readonly description?: string;
  readonly required?: boolean;
  readonly autocomplete?: boolean;
  readonly choices?: readonly { readonly name: string; readonly value: unknown }[];
}
interface Command {
  readonly name: string;
  readonly type?: number;
  readonly description?: string;
  readonly options?: readonly Option[];
  readonly name_localizations?: object;
}

interface Rule<T> {
  readonly says: string;
  readonly page: string;
  readonly breaks: (body: T) => boolean;
}

const repeats = (all: readonly unknown[]): boolean => new Set(all).size < all.length;
const within = (components: readonly Component[] = []): readonly Component[] =>
  components.flatMap((one) => [one, ...within(one.components)]);
const isButton = ({ type }: Component): boolean => type === 2;

const messageRules: readonly Rule<Message>[] = [
  {
    says: 'nobody is pinged but one person whom the text begins with: allowed_mentions with an empty parse',
    page: pages.messages,
    breaks: ({ allowed_mentions: allowed, content = '' }) => {
      const users = (allowed?.users ?? []) as readonly string[];
      const isCalled = users.length === 0 || (users.length === 1 && content.startsWith(`<@${users[0]}> `));
      return allowed?.parse?.length !== 0 || !isCalled || allowed.roles !== undefined;
    },
  },
  {
    says: 'content has at most 2,000 characters',
    page: pages.messages,
    breaks: ({ content = '' }) => content.length > 2000,
  },
  {
    says: 'flags of a message: no previews (4), only for you (64), components of the second version (32,768)',
    page: pages.messages,
    breaks: ({ flags = 0 }) => (flags & ~(4 | 64 | 32_768)) !== 0,
  },
  { says: 'at most five rows', page: pages.components, breaks: ({ components = [] }) => components.length > 5 },
  {
    says: 'a row holds one to five buttons, or one choice alone',
    page: pages.components,
    breaks: ({ components = [] }) =>
      components.some(({ type, components: inner = [] }) => {
        const buttons = inner.filter(isButton).length;
        return type === 1 && !(buttons === inner.length ? buttons >= 1 && buttons <= 5 : inner.length === 1);
      }),
  },
  {
    says: 'custom ids are there, of 1 to 100 characters, and unlike each other',
    page: pages.components,
    breaks: ({ components }) => {
      const ids = within(components).flatMap(({ type, style, custom_id: id }) =>
        type === 1 || style === 5 || type > 8 ? [] : [id ?? ''],
      );
      return repeats(ids) || ids.some((id) => id.length < 1 || id.length > 100);
    },
  },
  {
    says: 'a button has a label of 1 to 80 characters',
    page: pages.components,
    breaks: ({ components }) =>
      within(components).some(
        (one) => isButton(one) && !(one.label && one.label.trim().length >= 1 && one.label.length <= 80),
      ),
  },
  {
    says: 'a choice has 1 to 25 options of unlike values, label and value of 1 to 100 characters',
    page: pages.components,
    breaks: ({ components }) =>
      within(components).some(
        ({ type, options = [] }) =>
          type === 3 &&
          (options.length < 1 ||
            options.length > 25 ||
            repeats(options.map(({ value }) => value)) ||
            options.some(({ label, value }) => [label, value].some((text) => text.length < 1 || text.length > 100))),
      ),
  },
  {
    says: 'alternative text of a file has at most 1,024 characters, and a picture has one',
    page: pages.messages,
    breaks: ({ attachments = [] }) =>
      attachments.some(
        ({ description = '', filename = '' }) =>
          description.length > 1024 || (filename.endsWith('.png') && description.trim() === ''),
      ),
  },
  { says: 'at most ten files', page: pages.messages, breaks: ({ attachments = [] }) => attachments.length > 10 },
];

const isEmpty = ({ content = '', embeds = [], components = [], attachments = [] }: Message): boolean =>
  content.trim() === '' &&
  embeds.length === 0 &&
  attachments.length === 0 &&
  components.every(({ type }) => type === 1);

const newMessage: Rule<Message> = {
  says: 'a message has something in it',
  page: pages.messages,
  breaks: isEmpty,
};

const notOnlyForYou: Rule<Message> = {
  says: 'a change cannot make a message private',
  page: pages.responding,
  breaks: ({ flags = 0 }) => (flags & 64) !== 0,
};

const deferral: Rule<Message> = {
  says: 'a deferral carries the flag "only for you" and nothing else',
  page: pages.responding,
  breaks: ({ flags = 0, ...more }) => (flags & ~64) !== 0 || Object.keys(more).length > 0,
};

const choiceRules: readonly Rule<{
  readonly choices?: readonly { readonly name: string; readonly value: unknown }[];
}>[] = [
  { says: 'at most 25 choices', page: pages.responding, breaks: ({ choices = [] }) => choices.length > 25 },
  {
    says: 'name and value of a choice have 1 to 100 characters',
    page: pages.commands,
    breaks: ({ choices = [] }) =>
      choices.some(({ name, value }) => [name, String(value)].some((text) => text.length < 1 || text.length > 100)),
  },
];

const modalRules: readonly Rule<{ readonly title?: string; readonly components?: readonly Component[] }>[] = [
  {
    says: 'a form has one to five fields',
    page: pages.responding,
    breaks: ({ components = [] }) => components.length < 1 || components.length > 5,
  },
  { says: 'a title has at most 45 characters', page: pages.responding, breaks: ({ title = '' }) => title.length > 45 },
];

/** `CHAT_INPUT` names, after the pattern that the documentation prints. */
const commandName = /^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u;
const isSlash = ({ type = 1 }: Command): boolean => type === 1;

const commandRules: readonly Rule<Command>[] = [
  {
    says: 'names of slash commands and options: the printed pattern, in lower case',
    page: pages.commands,
    breaks: (command) =>
      isSlash(command) &&
      [command.name, ...(command.options ?? []).map(({ name }) => name)].some(
        (name) => !commandName.test(name) || name !== name.toLowerCase(),
      ),
  },
  {
    says: 'a slash command and its options have a description of 1 to 100 characters',
    page: pages.commands,
    breaks: (command) =>
      isSlash(command) &&
      [command.description, ...(command.options ?? []).map(({ description }) => description)].some(
        (text = '') => text.length < 1 || text.length > 100,
      ),
  },
  {
    says: 'a command of a menu has neither description nor options',
    page: pages.commands,
    breaks: (command) =>
      !isSlash(command) && ((command.description ?? '') !== '' || (command.options ?? []).length > 0),
  },
  {
    says: 'at most 25 options, unlike each other, those required first',
    page: pages.commands,
    breaks: ({ options = [] }) =>
      options.length > 25 ||
      repeats(options.map(({ name }) => name)) ||
      options.some(({ required }, i) => required === true && options[i - 1]?.required === false),
  },
  {
    says: 'choices and autocompletion exclude each other; at most 25 choices of 1 to 100 characters, unlike each other',
    page: pages.commands,
    breaks: ({ options = [] }) =>
      options.some(
        ({ choices = [], autocomplete }) =>
          (autocomplete === true && choices.length > 0) ||
          choices.length > 25 ||
          repeats(choices.map(({ name }) => name)) ||
          choices.some(({ name, value }) => name.length < 1 || name.length > 100 || String(value).length > 100),
      ),
  },
  {
    says: 'names, descriptions and values of a command have at most 8,000 characters together',
    page: pages.commands,
    breaks: ({ name, description = '', options = [] }) =>
      [
        name,
        description,
        ...options.flatMap((one) => [
          one.name,
          one.description ?? '',
          ...(one.choices ?? []).flatMap((c) => [c.name, String(c.value)]),
        ]),
      ].join('').length > 8000,
  },
];

const listRules: readonly Rule<readonly Command[]>[] = [
  {
    says: 'at most 100 slash commands and 15 of each menu, unlike each other',
    page: pages.commands,
    breaks: (all) =>
      [1, 2, 3].some((type) => {
        const names = all.filter((one) => (one.type ?? 1) === type).map(({ name }) => name);
        return names.length > (type === 1 ? 100 : 15) || repeats(names);
      }),
  },
];

const judged = <T>(rules: readonly Rule<T>[], body: unknown): readonly string[] =>
  rules.filter(({ breaks }) => breaks(body as T)).map(({ says, page }) => `${says} (${page})`);

export function againstRules(kind: Body, body: unknown): readonly string[] {
  const { type, data = {} } = body as { type?: number; data?: unknown };
  switch (kind) {
    case 'message':
      return type === 5 ? judged([deferral], data) : judged([...messageRules, newMessage], data);
    case 'update':
      return type === 6 ? [] : judged([...messageRules, newMessage, notOnlyForYou], data);
    case 'edit':
      return judged([...messageRules, notOnlyForYou], body);
    case 'followUp':
    case 'create':
      return judged([...messageRules, newMessage], body);
    case 'choices':
      return judged(choiceRules, data);
    case 'modal':
      return judged(modalRules, data);
    case 'command':
      return judged(commandRules, body);
    case 'pong':
      return [];
  }
}

export const againstList = (all: unknown): readonly string[] => judged(listRules, all);
