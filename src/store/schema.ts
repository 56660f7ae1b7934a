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
}
