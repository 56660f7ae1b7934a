/**
 * What is kept beyond one answer: recipes, settings, batches, conversations, reminders, and what a platform must not
 * forget. A backend keeps it durably: once `commit` has resolved, nothing of it is lost, and before that nothing of it
 * is seen. Instants are milliseconds since 1970 (UTC).
 */

/** An account of a platform. Accounts that their person has linked own the same things. */
export interface Account {
  readonly platform: string;
  readonly person: string;
}

/** A room, a channel, a chat: defaults of its own, set by its host. */
export interface Room {
  readonly platform: string;
  readonly place: string;
}

/** `context` is the conversation of the last minutes, by place. */
export type Kind = 'recipe' | 'settings' | 'batch' | 'context';

/** JSON that its writer knows the shape of. */
export type Data = Readonly<Record<string, unknown>>;

export interface Document {
  readonly kind: Kind;
  /** As it is looked up; unique for its owner and kind. At most 200 characters. */
  readonly key: string;
  readonly data: Data;
  /** 1 when new, one more at each change. */
  readonly version: number;
  readonly savedAt: number;
}

/** Where and when somebody is told something. */
export interface NewReminder {
  /** Chosen by the asker: the same id committed twice is one reminder. At most 64 characters. */
  readonly id: string;
  readonly dueAt: number;
  readonly platform: string;
  readonly place: string;
  /** The account that is told, as its platform names it. */
  readonly person: string;
  /** How the adapter finds the way back (a thread, a message to reply to); its own words, which nobody else reads. */
  readonly address: string;
  /** What it is about, worded when it is due; `batch` where it belongs to one. */
  readonly about: Data;
  /** The key of the batch that it belongs to: it goes with it. */
  readonly batch: string | null;
}

export interface Reminder extends NewReminder {
  readonly setAt: number;
}

/** A reminder that one process has taken on itself until the lease ends. */
export interface Claimed extends Reminder {
  /** Whose it is, to look at the batch that it is about. */
  readonly own: Own;
  /** 1 for the first try. More than 1: it may have been told already. */
  readonly attempt: number;
}

export type Change =
  /** `expects`: the version that it replaces, 0 where there must be none yet, null where any will do. */
  | {
      readonly do: 'put';
      readonly kind: Kind;
      readonly key: string;
      readonly data: Data;
      readonly expects: number | null;
      /** Gone after this. */
      readonly until?: number;
    }
  | { readonly do: 'remove'; readonly kind: Kind; readonly key: string }
  | { readonly do: 'remind'; readonly reminder: NewReminder }
  | { readonly do: 'move'; readonly id: string; readonly dueAt: number }
  | { readonly do: 'cancel'; readonly id: string };

/** `conflict`: somebody else changed it in the meantime; nothing was written. */
export type Committed = { readonly ok: true } | { readonly ok: false; readonly why: 'conflict' };

export interface Page {
  /** Keys that begin so. */
  readonly prefix?: string;
  /** Keys behind this one. */
  readonly after?: string;
  /** At most 1000. */
  readonly limit: number;
}

/** What belongs to one person, or to one room. Nothing here can name what is another's. */
export interface Own {
  readonly get: (kind: Kind, key: string) => Promise<Document | null>;
  /** By key, in the order of its code points. */
  readonly list: (kind: Kind, page: Page) => Promise<readonly Document[]>;
  readonly count: (kind: Kind) => Promise<number>;
  /** The next first; those that are being told are among them. */
  readonly reminders: () => Promise<readonly Reminder[]>;
  /** All of the changes or none; resolves once they would survive a power cut. */
  readonly commit: (changes: readonly Change[]) => Promise<Committed>;
  /** Everything of this owner goes for good: documents, reminders, links. */
  readonly erase: () => Promise<void>;
  /** Everything goes at this instant, unless null is said before. */
  readonly eraseAt: (at: number | null) => Promise<void>;
  /** A code that lets one other account in, once, for some minutes. */
  readonly newLinkCode: (now: number) => Promise<string>;
  /** The accounts that own this; one where nothing is linked. */
  readonly accounts: () => Promise<readonly Account[]>;
}

export type Linked = { readonly ok: true } | { readonly ok: false; readonly why: 'unknown-code' | 'same-owner' };

/** What an adapter must not forget, as it likes it: sessions, sync positions, what was answered. */
export interface Values {
  readonly get: (key: string) => Promise<string | null>;
  readonly set: (key: string, value: string, until?: number) => Promise<void>;
  readonly delete: (key: string) => Promise<void>;
}

export interface Bells {
  /** Due reminders of these platforms, the eldest first, each for one process only until `leaseUntil`. */
  readonly claim: (ask: {
    readonly platforms: readonly string[];
    readonly now: number;
    readonly leaseUntil: number;
    readonly limit: number;
  }) => Promise<readonly Claimed[]>;
  /** Told: it is gone, unless it was moved meanwhile. What `changes` say of its owner goes with it, in one commit. */
  readonly told: (claimed: Claimed, changes?: readonly Change[]) => Promise<void>;
  /** Not told: another try at `at`. */
  readonly again: (claimed: Claimed, at: number) => Promise<void>;
  /** When the next one of these platforms is due or its lease ends; null without any. */
  readonly next: (platforms: readonly string[]) => Promise<number | null>;
}

/** Null where nothing is kept. */
export interface Both {
  readonly own: Data | null;
  readonly room: Data | null;
}

export interface Store {
  readonly of: (account: Account) => Own;
  readonly room: (room: Room) => Own;
  /** What a person and a room keep under the same key, looked up at once: every question asks for it. */
  readonly both: (who: Account & Room, kind: Kind, key: string) => Promise<Both>;
  /** Joins this account to the owner of the code; what both had is owned by both, names made distinct. */
  readonly link: (account: Account, code: string, now: number) => Promise<Linked>;
  /** The account stands alone again; what was owned stays with the others. */
  readonly unlink: (account: Account) => Promise<void>;
  readonly bells: Bells;
  /** Of one adapter. */
  readonly values: (space: string) => Values;
  /** Takes away what has outlived its time. */
  readonly sweep: (now: number) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** What a backend cannot do now, in a person's words: another process holds the file, the disk is full, no server. */
export class StoreTrouble extends Error {
  override readonly name = 'StoreTrouble';
  readonly code: 'held' | 'newer' | 'full' | 'read-only' | 'corrupt' | 'unreachable';
  /** What can be done about it. */
  readonly hint: string;

  constructor(code: StoreTrouble['code'], message: string, hint: string, cause?: unknown) {
    super(message, { cause });
    this.code = code;
    this.hint = hint;
  }
}
