/** A batch record as rows, before it becomes a text, a page or a table. */
export interface Sheet {
  readonly title: string;
  readonly facts: readonly { readonly label: string; readonly value: string }[];
  readonly weights: readonly {
    readonly name: string;
    readonly planned: string;
    readonly taken: string;
    readonly plannedGrams: number | null;
    readonly takenGrams: number | null;
    readonly lot: string;
  }[];
  readonly times: readonly { readonly at: number; readonly when: string; readonly what: string }[];
  readonly temperatures: readonly {
    readonly at: number;
    readonly when: string;
    readonly shown: string;
    readonly celsius: number;
    readonly stage: string;
  }[];
  readonly deviations: readonly string[];
  readonly notes: readonly { readonly at: number; readonly when: string; readonly text: string }[];
}
