/**
 * The little of Discord's API that this adapter speaks, as plain data. Numbers and names after
 * https://docs.discord.com/developers/interactions/receiving-and-responding.
 * Not the enums of a library: the HTTP endpoint answers without loading one.
 */

export const kind = { ping: 1, command: 2, component: 3, autocomplete: 4, modal: 5 } as const;

/** Types of an application command. */
export const commandType = { slash: 1, user: 2, message: 3, entryPoint: 4 } as const;

export const answerType = {
  pong: 1,
  message: 4,
  messageLater: 5,
  updateLater: 6,
  update: 7,
  choices: 8,
  modal: 9,
} as const;

/** Message flags: no previews of links, and seen by one person only. */
export const flag = { noPreviews: 1 << 2, onlyForYou: 1 << 6 } as const;

export const limits = {
  content: 2000,
  customId: 100,
  label: 80,
  rows: 5,
  buttonsInRow: 5,
  selectOptions: 25,
  selectText: 100,
  placeholder: 150,
  choices: 25,
  choice: 100,
  description: 100,
  stringOption: 6000,
  modalTitle: 45,
  textInput: 4000,
  altText: 1024,
  attachments: 10,
} as const;

export interface User {
  readonly id: string;
  readonly bot?: boolean;
}

export interface Attachment {
  readonly filename: string;
  readonly size: number;
  readonly url: string;
  readonly content_type?: string;
}

export interface Component {
  readonly type: number;
  readonly custom_id?: string;
  readonly value?: string;
  readonly options?: readonly { readonly value: string }[];
  readonly components?: readonly Component[];
  readonly component?: Component;
}

/** A message as Discord tells of it; bodies that this adapter sends are `Message`. */
export interface Told {
  readonly id: string;
  readonly channel_id?: string;
  readonly guild_id?: string;
  readonly type?: number;
  readonly author?: User;
  readonly content?: string;
  readonly flags?: number;
  readonly attachments?: readonly Attachment[];
  readonly components?: readonly Component[];
  readonly message_snapshots?: readonly { readonly message: Omit<Told, 'id'> }[];
}

export interface Option {
  readonly name: string;
  readonly type: number;
  readonly value?: string | number | boolean;
  readonly focused?: boolean;
}

export interface Interaction {
  readonly id: string;
  readonly application_id: string;
  readonly type: number;
  readonly token: string;
  readonly channel_id?: string;
  readonly guild_id?: string;
  readonly channel?: { readonly type?: number };
  /** 0 a server, 1 the bot's direct messages, 2 a chat among others. */
  readonly context?: number;
  /** `0`: the server that has the bot as a member. */
  readonly authorizing_integration_owners?: Readonly<Record<string, string>>;
  /** The bot's own permissions in the channel. */
  readonly app_permissions?: string;
  readonly member?: { readonly user: User; readonly permissions?: string };
  readonly user?: User;
  readonly message?: Told;
  readonly data?: {
    readonly name?: string;
    readonly type?: number;
    readonly options?: readonly Option[];
    readonly target_id?: string;
    readonly resolved?: { readonly messages?: Readonly<Record<string, Told>> };
    readonly custom_id?: string;
    readonly values?: readonly string[];
    readonly components?: readonly Component[];
  };
}

export interface Button {
  readonly type: 2;
  readonly style: 1 | 2;
  readonly label: string;
  readonly custom_id: string;
}

export interface Select {
  readonly type: 3;
  readonly custom_id: string;
  readonly placeholder: string;
  readonly options: readonly { readonly label: string; readonly value: string }[];
}

export interface Row {
  readonly type: 1;
  readonly components: readonly (Button | Select)[];
}

/** No message of ours pings anybody: without this Discord lets mentions of users through. */
export const nobody = { parse: [] } as const;

export interface Message {
  readonly content: string;
  readonly components: readonly Row[];
  readonly allowed_mentions: typeof nobody | { readonly parse: readonly []; readonly users: readonly [string] };
  readonly flags?: number;
  readonly attachments?: readonly { readonly id: string; readonly filename: string; readonly description?: string }[];
}

export interface Modal {
  readonly custom_id: string;
  readonly title: string;
  readonly components: readonly [
    {
      readonly type: 18;
      readonly label: string;
      readonly description: string;
      readonly component: {
        readonly type: 4;
        readonly custom_id: string;
        readonly style: 2;
        readonly required: true;
        readonly max_length: number;
      };
    },
  ];
}

export type Callback =
  | { readonly type: typeof answerType.pong }
  | { readonly type: typeof answerType.message | typeof answerType.update; readonly data: Message }
  | { readonly type: typeof answerType.messageLater; readonly data: { readonly flags: number } }
  | { readonly type: typeof answerType.updateLater }
  | {
      readonly type: typeof answerType.choices;
      readonly data: { readonly choices: readonly { readonly name: string; readonly value: string }[] };
    }
  | { readonly type: typeof answerType.modal; readonly data: Modal };

export interface File {
  readonly name: string;
  readonly data: Uint8Array;
  readonly contentType: string;
  /** Alternative text of a picture. */
  readonly description?: string;
}
