import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';

const folder = new URL('../../deploy/schema/', import.meta.url);
const ajv = new Ajv2020({ allErrors: true, strict: true });

/** The value if the published schema takes it; else an error that names each fault. */
function judge<T>(name: string): (value: unknown) => T {
  const validate = ajv.compile<T>(JSON.parse(readFileSync(new URL(name, folder), 'utf8')));
  return (value) => {
    if (validate(value)) return value;
    const faults = validate.errors?.map(({ instancePath, message }) => `${instancePath || '/'} ${message}`);
    throw new Error(`${name}: ${faults?.join('; ')}\n${JSON.stringify(value)}`);
  };
}

export interface PrintedAnswer {
  readonly ok: true;
  readonly command: string;
  readonly title: string;
  readonly text: string;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly caution: readonly string[];
  readonly result: Readonly<Record<string, unknown>>;
}

interface PrintedFault {
  readonly ok: false;
  readonly fault: { readonly code: string; readonly message: string; readonly hint: string };
}

/** Throws unless the value is an answer after `answer-1.schema.json`. */
export const isAnswer: (value: unknown) => PrintedAnswer = judge<PrintedAnswer>('answer-1.schema.json');

const printedFault = judge<PrintedFault>('fault-1.schema.json');
/** Throws unless the value is a fault after `fault-1.schema.json`. */
export const isFault = (value: unknown): PrintedFault['fault'] => printedFault(value).fault;

/** Throws unless the value is what `recipe export` gives, after `recipes-1.schema.json`. */
export const isRecipes: (value: unknown) => unknown = judge<unknown>('recipes-1.schema.json');
