// Discord's published schema as the package `discord-api-spec` has it, closed: a key that it does not know is an error.
// The package's own switch for that comes too late (its schemas are made while it loads), so the line is changed first.
import { readFileSync } from 'node:fs';

interface Schema {
  readonly safeParse: (value: unknown) => {
    readonly success: boolean;
    readonly error?: {
      readonly issues: readonly { readonly path: readonly PropertyKey[]; readonly message: string }[];
    };
  };
}

const source = readFileSync(new URL(import.meta.resolve('discord-api-spec/zod')), 'utf8');
const closed = source
  .replace('let zObject = z.object;', 'let zObject = z.strictObject;')
  .replace('from "zod/mini"', `from ${JSON.stringify(import.meta.resolve('zod/mini'))}`);
if (!closed.includes('let zObject = z.strictObject;')) throw new Error('discord-api-spec is no longer made as it was');

const all = (await import(/* @vite-ignore */ `data:text/javascript,${encodeURIComponent(closed)}`)) as Readonly<
  Record<string, Schema>
>;

const named = {
  message: 'CreateMessageInteractionCallbackRequestSchema',
  update: 'UpdateMessageInteractionCallbackRequestSchema',
  choices: 'ApplicationCommandAutocompleteCallbackRequestSchema',
  modal: 'ModalInteractionCallbackRequestSchema',
  pong: 'PongInteractionCallbackRequestSchema',
  edit: 'IncomingWebhookUpdateRequestPartialSchema',
  followUp: 'IncomingWebhookInteractionRequestSchema',
  create: 'MessageCreateRequestSchema',
  command: 'ApplicationCommandUpdateRequestSchema',
} as const;

export type Body = keyof typeof named;

/** What the schema has against a body; empty where it has nothing. */
export function againstSchema(kind: Body, body: unknown): readonly string[] {
  const schema = all[named[kind]];
  if (!schema) throw new Error(`discord-api-spec has no ${named[kind]}`);
  // discord.js and oceanic.js send it; Discord takes it, the schema does not know it.
  const { error } = schema.safeParse(
    JSON.parse(JSON.stringify(body), (key, value) =>
      key === 'enforce_nonce' && kind !== 'create' ? undefined : value,
    ),
  );
  return (error?.issues ?? []).map(({ path, message }) => `schema, ${path.join('.')}: ${message}`);
}
