/**
 * An answer as a small document. Strings are plain text: no renderer reads markup in them, each escapes them for its
 * platform, so that what a user typed stays inert. Numbers are already text, made by `units/print.ts`.
 */
export type Block =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'facts'; readonly rows: readonly { readonly label: string; readonly value: string }[] }
  | {
      readonly kind: 'table';
      readonly caption: string;
      readonly columns: readonly { readonly title: string; readonly align: 'left' | 'right' }[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: 'steps'; readonly steps: readonly string[] }
  | { readonly kind: 'list'; readonly title: string; readonly items: readonly string[] }
  | { readonly kind: 'picture'; readonly picture: Picture; readonly alt: string }
  /** A text to keep or to print. `name` is of letters, figures, dots and hyphens; `type` a media type (RFC 2046). */
  | {
      readonly kind: 'file';
      readonly name: string;
      readonly type: string;
      readonly text: string;
      readonly about: string;
    };

export type BlockKind = Block['kind'];

/** What a chart shows; how it is drawn is the renderer's business. */
export interface Picture {
  readonly title: string;
  readonly x: { readonly label: string; readonly unit: string };
  readonly y: { readonly label: string; readonly unit: string };
  readonly kind: 'curve' | 'bars';
  readonly series: readonly {
    readonly name: string;
    readonly points: readonly {
      readonly x: number | string;
      readonly y: number;
      readonly low?: number;
      readonly high?: number;
    }[];
  }[];
  /** Horizontal marks such as a target temperature. */
  readonly marks: readonly { readonly label: string; readonly y: number }[];
}

/** A next step that a person can take with one word or one button. */
export interface Action {
  readonly label: string;
  /** What the person would type. */
  readonly request: string;
}

export type NonEmpty<T> = readonly [T, ...T[]];

/** Only `bot/` builds one; see `commands/define.ts` for what a command supplies. */
export interface Answer {
  readonly command: string;
  readonly title: string;
  /** The verdict or figure in one sentence; shown first. */
  readonly lead: string;
  /** The short part, at most about eight lines. */
  readonly body: readonly Block[];
  /** Shown on request. */
  readonly details: readonly Block[];
  /** Each starts with "I took …". */
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly caution: readonly string[];
  readonly actions: readonly Action[];
  readonly result: Readonly<Record<string, unknown>>;
}

export type FaultCode = 'unclear' | 'impossible' | 'refused' | 'too-long' | 'unknown' | 'failed';

/** A request that was not answered, as data; worded once, shown through the same renderers. */
export interface Fault {
  readonly code: FaultCode;
  readonly message: string;
  /** What the person can change, or the one thing asked. */
  readonly hint: string;
  /** Answers a person can give with one word. */
  readonly candidates: readonly string[];
  /** Never empty for a question about something caustic. */
  readonly caution: readonly string[];
}

export type Result<T, E = Fault> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: E };
