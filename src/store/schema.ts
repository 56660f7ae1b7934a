/** The tables as the queries see them. Instants and counts are whole numbers, `data` and `about` are JSON text. */

export interface Schema {
  readonly owner: { readonly id: string; readonly erase_at: number | null };
  /** Who owns: a person's account on a platform, or a room of it. */
  readonly account: { readonly kind: string; readonly platform: string; readonly name: string; readonly owner: string };
  /** An owner that became part of another one when accounts were linked. */
  readonly joined: { readonly old: string; readonly owner: string };
  readonly document: {
    readonly owner: string;
    readonly kind: string;
    readonly key: string;
    readonly data: string;
    readonly version: number;
    readonly saved_at: number;
    readonly until: number | null;
  };
  readonly reminder: {
    readonly owner: string;
    readonly id: string;
    readonly due_at: number;
    /** When it may be claimed: when it is due, while it is claimed the end of the lease, then the next try. */
    readonly ring_at: number;
    readonly set_at: number;
    /** Times that it was claimed since it was set or moved. */
    readonly attempts: number;
    readonly platform: string;
    readonly place: string;
    readonly person: string;
    readonly address: string;
    readonly about: string;
    readonly batch: string | null;
  };
  readonly link_code: { readonly code: string; readonly owner: string; readonly until: number };
  readonly value: {
    readonly space: string;
    readonly key: string;
    readonly value: string;
    readonly until: number | null;
  };
  /** Owners that were erased; a backup from before must not bring them back. Their ids were made up, and name nobody. */
  readonly erased: { readonly owner: string; readonly at: number };
}

type Column = 'text' | 'whole';
type Tables = { readonly [T in keyof Schema]: { readonly [C in keyof Schema[T]]-?: Column } };

/** Every column, for copying; a table stands behind those that it refers to. */
export const tables: Tables = {
  owner: { id: 'text', erase_at: 'whole' },
  account: { kind: 'text', platform: 'text', name: 'text', owner: 'text' },
  joined: { old: 'text', owner: 'text' },
  document: {
    owner: 'text',
    kind: 'text',
    key: 'text',
    data: 'text',
    version: 'whole',
    saved_at: 'whole',
    until: 'whole',
  },
  reminder: {
    owner: 'text',
    id: 'text',
    due_at: 'whole',
    ring_at: 'whole',
    set_at: 'whole',
    attempts: 'whole',
    platform: 'text',
    place: 'text',
    person: 'text',
    address: 'text',
    about: 'text',
    batch: 'text',
  },
  link_code: { code: 'text', owner: 'text', until: 'whole' },
  value: { space: 'text', key: 'text', value: 'text', until: 'whole' },
  erased: { owner: 'text', at: 'whole' },
};
