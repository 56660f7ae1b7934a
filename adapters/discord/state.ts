/**
 * What a button needs in order to work: what its person said up to the answer, and what each button asks. It is
 * spread over the custom ids of the message's own buttons, so that it outlives the process and any replica can read
 * it; only what is too long for them stays in memory, bounded.
 */
import { hash } from 'node:crypto';
import { crc32, deflateRawSync, inflateRawSync } from 'node:zlib';
import { type Component, limits } from './wire.ts';

export interface State {
  /** What was said, the first first; saying it again leads to the answer. */
  readonly turns: readonly string[];
  /** What the buttons ask next. */
  readonly requests: readonly string[];
  /** Of the answer's figures: another answer to the same words is not the one that the buttons belong to. */
  readonly fingerprint: string;
}

/**
 * `a` asks a request, `q` answers the question of the message, `p` turns to a page, `s` shares, `o` opens a form on an
 * answer, `f` is the form of a command, `c` holds choices.
 */
export type Press = 'a' | 'q' | 'p' | 's' | 'o' | 'f' | 'c';

export interface Slot {
  readonly press: Press;
  /** Which request, or which page. */
  readonly number: number;
}

export interface Pressed extends Slot {
  readonly owner: string;
  /** null where the text that it belongs to is gone. */
  readonly state: State | null;
}

/** press 1, place 1, number 2, owner 11, key 6 */
const header = 21;
const room = limits.customId - header;

/** Words of the trade, so that a short recipe packs small; changing it makes older packed buttons unreadable. */
const dictionary = Buffer.from(
  'and at superfat lavender essential oil palm kernel sunflower cocoa butter shea butter castor oil lard tallow avocado rice bran ' +
    'sweet almond oil beeswax stearic acid citric acid milk KOH lye water sodium hydroxide 50 % details safety summary explain ' +
    'scale cool solution lye check step=0.1g unit=oz superfat=5% 250 g 500 g 100 g 450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water',
);

const turn = '\u001f';
const part = '\u001e';
/** Separators are control characters; a text that holds them keeps its words without them. */
const clear = (text: string): string =>
  text.includes(turn) || text.includes(part) ? text.replaceAll(turn, ' ').replaceAll(part, ' ') : text;
const join = (texts: readonly string[]): string => texts.map(clear).join(turn);
const split = (text: string): readonly string[] => (text === '' ? [] : text.split(turn));

const eight = Buffer.alloc(8);
const whole = new DataView(eight.buffer, eight.byteOffset, 8);
const owned = (owner: string): string => {
  whole.setBigUint64(0, /^\d{1,19}$/.test(owner) ? BigInt(owner) : 0n);
  return eight.toString('base64url');
};
const ownerOf = (text: string): string => Buffer.from(text, 'base64url').readBigUInt64BE().toString();

const digits = (number: number): string => number.toString(36).padStart(2, '0');

/** Six characters that another text hardly has: enough to see a part that is missing, and words that came out otherwise. */
export function checksum(text: string): string {
  whole.setUint32(0, crc32(text));
  return eight.toString('base64url', 0, 4);
}

/** By which a text is found again that others must not be able to make another of. */
const keyOf = (payload: string): string => hash('sha1', payload, 'base64url').slice(0, 6);

/** Longest texts kept in memory altogether, characters. */
const mostCharacters = 4_000_000;

export interface States {
  /** One custom id, or value of a choice, for each slot. */
  readonly write: (state: State, owner: string, slots: readonly Slot[]) => readonly string[];
  /** What was pressed, in a message with these components; null where it is none of ours. */
  readonly read: (pressed: string, components: readonly Component[]) => Pressed | null;
}

export function createStates(): States {
  const kept = new Map<string, string>();
  let characters = 0;

  const keep = (key: string, payload: string): void => {
    characters += payload.length - (kept.get(key)?.length ?? 0);
    kept.delete(key);
    kept.set(key, payload);
    // A map keeps the order of entry: the eldest goes.
    for (const [eldest, text] of kept) {
      if (characters <= mostCharacters) break;
      kept.delete(eldest);
      characters -= text.length;
    }
  };

  return {
    write: ({ turns, requests, fingerprint }, owner, slots) => {
      const payload = [fingerprint, join(turns), join(requests)].join(part).toWellFormed();
      let key = checksum(payload);
      const most = room * slots.length;
      let packed = `r${Buffer.from(payload).toString('base64url')}`;
      if (packed.length > most) packed = `z${deflateRawSync(payload, { dictionary }).toString('base64url')}`;
      if (packed.length > most) {
        packed = '';
        key = keyOf(payload);
        keep(key, payload);
      }
      const by = owned(owner);
      return slots.map(({ press, number }, i) => {
        const chunk = packed.slice(i * room, (i + 1) * room);
        return `${press}${i.toString(36)}${digits(number)}${by}${key}${chunk}`;
      });
    },
    read: (pressed, components) => {
      const found = /^([aqpsofc])([0-9a-z])([0-9a-z]{2})([\w-]{11})([\w-]{6})/.exec(pressed);
      if (!found) return null;
      const [, press = '', , number = '', by = '', key = ''] = found;
      const ids = [...new Set([pressed, ...idsIn(components)])].filter((id) => id.slice(4, header) === by + key);
      const chunks = ids.sort((a, b) => Number.parseInt(a.slice(1, 2), 36) - Number.parseInt(b.slice(1, 2), 36));
      const payload = unpack(chunks.map((id) => id.slice(header)).join(''), key) ?? kept.get(key) ?? null;
      const [fingerprint = '', turns = '', requests = ''] = payload?.split(part) ?? [];
      return {
        press: press as Press,
        number: Number.parseInt(number, 36),
        owner: ownerOf(by),
        state: payload === null ? null : { turns: split(turns), requests: split(requests), fingerprint },
      };
    },
  };
}

/** Custom ids of all components. */
export const idsIn = (components: readonly Component[]): string[] =>
  components.flatMap(({ custom_id, options, components: inner }) => [
    ...(custom_id === undefined ? [] : [custom_id]),
    ...(options ?? []).map(({ value }) => value),
    ...idsIn(inner ?? []),
  ]);

/** The payload whose checksum this is, or null where a part of it is missing. */
function unpack(packed: string, key: string): string | null {
  const bytes = Buffer.from(packed.slice(1), 'base64url');
  try {
    const payload = packed.startsWith('z')
      ? inflateRawSync(bytes, { dictionary, maxOutputLength: 100_000 }).toString()
      : bytes.toString();
    return checksum(payload) === key ? payload : null;
  } catch {
    return null;
  }
}
