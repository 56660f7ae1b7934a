// Interactions as Discord's documentation shows them: https://docs.discord.com/developers/interactions/receiving-and-responding
import type { Json } from './server.ts';

export const applicationId = '1100000000000000001';
/** Nobody's: the shape of a token, no more. */
export const token = `${Buffer.from(applicationId).toString('base64')}.shape.only`;

let counter = 1_200_000_000_000_000_000n;
function newId(): string {
  counter += 1n;
  return String(counter);
}

export interface Person {
  readonly id: string;
  /** Manage Messages. */
  readonly host?: boolean;
}
export const beginner: Person = { id: '300000000000000001' };
export const stranger: Person = { id: '300000000000000002' };
export const host: Person = { id: '300000000000000003', host: true };

const userOf = ({ id }: Person) => ({
  id,
  username: `member-${id.slice(-1)}`,
  discriminator: '0',
  avatar: null,
  global_name: null,
});

export type Where = 'server' | 'direct';

function interaction(type: number, person: Person, data: Json, more: Json = {}, where: Where = 'server'): Json {
  const id = newId();
  return {
    id,
    application_id: applicationId,
    type,
    token: `token-${id}`,
    version: 1,
    locale: 'en-GB',
    channel_id: where === 'server' ? '500' : '600',
    channel: { id: where === 'server' ? '500' : '600', type: where === 'server' ? 0 : 1 },
    context: where === 'server' ? 0 : 1,
    authorizing_integration_owners: where === 'server' ? { 0: '400' } : { 1: person.id },
    entitlements: [],
    attachment_size_limit: 10_485_760,
    app_permissions: '0',
    data,
    ...(where === 'server'
      ? {
          guild_id: '400',
          guild: { id: '400', locale: 'en-GB', features: [] },
          member: {
            user: userOf(person),
            roles: [],
            permissions: person.host ? '8192' : '1024',
            joined_at: '2024-01-01T00:00:00Z',
            deaf: false,
            mute: false,
            flags: 0,
            pending: false,
            avatar: null,
            nick: null,
          },
        }
      : { user: userOf(person) }),
    ...more,
  };
}

type Values = Readonly<Record<string, string>>;

export const slash = (name: string, values: Values = {}, person = beginner, where: Where = 'server'): Json =>
  interaction(
    2,
    person,
    {
      id: newId(),
      name,
      type: 1,
      options: Object.entries(values).map(([key, value]) => ({ name: key, type: 3, value })),
    },
    {},
    where,
  );

export const typing = (name: string, value: string, option = 'text', person = beginner): Json =>
  interaction(4, person, { id: newId(), name, type: 1, options: [{ name: option, type: 3, value, focused: true }] });

export const menu = (name: string, message: Json, person = beginner): Json => {
  const id = newId();
  const target = {
    id,
    channel_id: '500',
    type: 0,
    author: userOf(stranger),
    content: '',
    attachments: [],
    embeds: [],
    components: [],
    mentions: [],
    mention_roles: [],
    mention_everyone: false,
    pinned: false,
    tts: false,
    timestamp: '2026-01-01T00:00:00Z',
    edited_timestamp: null,
    flags: 0,
    ...message,
  };
  return interaction(2, person, {
    id: newId(),
    name,
    type: 3,
    target_id: id,
    resolved: { messages: { [id]: target } },
  });
};

export const press = (
  message: Json,
  customId: string,
  person = beginner,
  values?: readonly string[],
  where: Where = 'server',
): Json =>
  interaction(
    3,
    person,
    { custom_id: customId, component_type: values ? 3 : 2, ...(values ? { values } : {}) },
    { message },
    where,
  );

export const submit = (customId: string, text: string, message: Json | undefined, person = beginner): Json =>
  interaction(
    5,
    person,
    {
      custom_id: customId,
      components: [{ type: 18, id: 1, component: { type: 4, id: 2, custom_id: 'text', value: text } }],
    },
    message ? { message } : {},
  );

/** The custom id of the button, or the value of the choice, with this label. */
export function idOf(message: Json, label: RegExp | string): string {
  const fits = (text: string) => (typeof label === 'string' ? text === label : label.test(text));
  for (const row of message.components ?? []) {
    for (const one of row.components) {
      if (one.type === 2 && fits(one.label)) return one.custom_id;
      for (const option of one.options ?? []) if (fits(option.label)) return option.value;
    }
  }
  throw new Error(`no button "${label}" in ${JSON.stringify(labelsOf(message))}`);
}

export const labelsOf = (message: Json): readonly string[] =>
  (message.components ?? []).flatMap((row: Json) =>
    row.components.flatMap((one: Json) =>
      one.type === 2 ? [one.label] : one.options.map((option: Json) => option.label),
    ),
  );
