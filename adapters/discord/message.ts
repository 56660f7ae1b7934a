/**
 * An answer or a fault as one Discord message. Its text is its content, never an embed: people with previews off
 * would not see one. What is longer than a message is paged by buttons, the caution on every page, and the whole goes
 * along as a file.
 */
import {
  type Action,
  type Answer,
  type Fault,
  inert,
  makeRecent,
  markdown,
  offersOf,
  type Picture,
  pages,
  type Reply,
  renderPlain,
} from '../../src/index.ts';
import { checksum, type Slot, type States } from './state.ts';
import {
  type Button,
  type Callback,
  type File,
  flag,
  limits,
  type Message,
  nobody,
  type Row,
  type Select,
} from './wire.ts';

export interface Shown {
  readonly message: Message;
  /** What goes along as files, made only when asked for. */
  readonly files: (() => Promise<readonly File[]>) | null;
  /** A form to show instead, while nothing else has been. */
  readonly form?: Callback;
}

export interface View {
  readonly owner: string;
  readonly turns: readonly string[];
  /** From 0. */
  readonly page: number;
  /** Everybody in the channel sees it; else only who asked. */
  readonly shared: boolean;
  /** Somebody who is called, and nobody else. */
  readonly calls?: string;
  /** By which it is found again. */
  readonly mark?: string;
}

/** One line that a button or a choice can hold. */
const short = (text: string, most: number): string => {
  const clean = inert(text);
  const line = (/[^\S ]| {2}/.test(clean) ? clean.replace(/\s+/g, ' ') : clean).trim();
  return line.length <= most ? line : `${line.slice(0, most - 1).toWellFormed()}…`;
};

const said = (reply: Reply): Answer | Fault => (reply.ok ? reply.answer : reply.fault);

/** Of the last answers, which come again with each press of their buttons. */
const fingerprints = makeRecent<Answer | Fault, string>(4);
const drawings = makeRecent<Answer | Fault, Drawn>(4);

/** Tells whether the same words still lead to the same figures. */
export function fingerprintOf(reply: Reply): string {
  const all = said(reply);
  const known = fingerprints.get(all);
  if (known !== undefined) return known;
  const made = checksum('lead' in all ? all.command + JSON.stringify(all.result) : all.code + all.message);
  fingerprints.set(all, made);
  return made;
}

/** Buttons up to two rows; more candidates become a choice. */
const mostButtons = 10;

interface Drawn {
  /** What stands on a button, or is to be chosen, and its label. */
  readonly offers: readonly Action[];
  readonly labels: readonly string[];
  readonly pages: readonly string[];
  /** Pages of which the caution leaves no room. */
  readonly onlyFile: boolean;
}

/** In pages of at most so many characters; what stands whole on a button is not said a second time. */
function draw(all: Answer | Fault, max: number): Drawn {
  const whole = offersOf(all);
  const offers = whole.slice(0, 'lead' in all ? mostButtons : limits.selectOptions);
  const labels = offers.map(({ label }) => short(label, limits.label));
  const onButtons = offers.filter(
    ({ label }, i) => labels[i] !== '' && (labels[i] === label || labels[i] === inert(label).trim()),
  );
  const others = whole.filter((offer) => !onButtons.includes(offer));
  // candidates are said together, or not at all
  const left = 'lead' in all || others.length === 0 ? others : whole;
  return {
    offers,
    labels: labels.map((label, i) => label || `${i + 1}`),
    ...paged(all, left, max),
  };
}

function drawnOf(all: Answer | Fault, call: string): Drawn {
  const known = call === '' ? drawings.get(all) : undefined;
  if (known) return known;
  const made = draw(all, limits.content - call.length);
  if (call === '') drawings.set(all, made);
  return made;
}

export function show(reply: Reply, view: View, states: States): Shown {
  const all = said(reply);
  const call = view.calls === undefined ? '' : `<@${view.calls}> `;
  const drawn = drawnOf(all, call);
  const count = drawn.onlyFile ? 2 : drawn.pages.length;
  const page = Math.min(Math.max(0, view.page), drawn.pages.length - 1);
  const rest = count > 1 || ('lead' in all && all.body.some(({ kind }) => kind === 'picture' || kind === 'file'));
  return {
    message: {
      content: call + (drawn.pages[page] ?? '…'),
      flags: flag.noPreviews | (view.shared ? 0 : flag.onlyForYou),
      allowed_mentions: view.calls === undefined ? nobody : { parse: [], users: [view.calls] },
      components: rows(reply, drawn, { ...view, page }, count, states),
    },
    files: rest ? () => filesOf(all, count > 1) : null,
  };
}

function paged(all: Answer | Fault, offers: readonly Action[], max: number): Pick<Drawn, 'pages' | 'onlyFile'> {
  try {
    const drawn = pages(all, markdown, { details: false, offers, max });
    return { pages: drawn.map((page) => page.trim() || '…'), onlyFile: false };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    // No page has room beside such a caution, and none may go without it.
    return { pages: ['This is too long for a message: all of it, the caution too, is in the file.'], onlyFile: true };
  }
}

function rows(
  reply: Reply,
  { offers, labels }: Drawn,
  { owner, turns: told, page, shared, mark }: View,
  count: number,
  states: States,
): readonly Row[] {
  const { code } = reply.ok ? { code: null } : reply.fault;
  const buttons: { readonly label: string; readonly slot: Slot }[] = [];
  const button = (press: Slot['press'], number: number, label: string) =>
    buttons.push({ slot: { press, number }, label });
  const chosen = offers.length > mostButtons;
  // What kept something is never asked again: its buttons stand alone, and the file holds its other pages.
  const again = reply.kept?.again;
  const turns = reply.kept ? (again ? [again] : []) : told;
  if (page > 0 && !reply.kept) button('p', page - 1, `Page ${page} of ${count}`);
  if (page < count - 1 && !reply.kept) button('p', page + 1, `Page ${page + 2} of ${count}`);
  const asks = reply.ok ? 'a' : 'q';
  if (!chosen) {
    for (const [i, label] of labels.entries()) button(asks, i, label);
  }
  // Whoever is asked something, or whose recipe was not found, can write it in a form of several lines.
  button('o', 0, code === 'unclear' ? 'Answer in words' : code === null ? 'Ask on' : 'Write again');
  if (reply.ok && !shared && !reply.kept) button('s', 0, 'Share to channel');

  const choices = chosen ? offers.map((_, number): Slot => ({ press: asks, number })) : [];
  const slots = [
    ...buttons.map(({ slot }) => slot),
    ...choices,
    ...(chosen ? [{ press: 'c', number: 0 } as const] : []),
  ];
  const requests = offers.map(({ request }) => request);
  const fingerprint = mark ?? (reply.kept ? '' : fingerprintOf(reply));
  const ids = states.write({ turns, requests, fingerprint }, owner, slots);

  const all: Row[] = [];
  if (chosen) {
    const options = offers.map(({ label }, i) => ({
      label: short(label, limits.selectText) || `${i + 1}`,
      value: ids[buttons.length + i] ?? '',
    }));
    const select: Select = { type: 3, custom_id: ids.at(-1) ?? '', placeholder: 'Which one?', options };
    all.push({ type: 1, components: [select] });
  }
  for (let from = 0; from < buttons.length; from += limits.buttonsInRow) {
    const row = buttons.slice(from, from + limits.buttonsInRow);
    all.push({ type: 1, components: row.map(({ label, slot }, i) => buttonOf(slot, label, ids[from + i] ?? '')) });
  }
  return all;
}

const buttonOf = ({ press }: Slot, label: string, id: string): Button => ({
  type: 2,
  style: press === 'q' ? 1 : 2,
  label,
  custom_id: id,
});

interface Alt {
  readonly picture: Picture;
  readonly alt: string;
}

const pictures = (all: Answer | Fault): readonly Alt[] =>
  'lead' in all ? all.body.flatMap((block) => (block.kind === 'picture' ? [block] : [])) : [];

const texts = (all: Answer | Fault) =>
  'lead' in all ? all.body.flatMap((block) => (block.kind === 'file' ? [block] : [])) : [];

async function filesOf(all: Answer | Fault, long: boolean): Promise<readonly File[]> {
  const files: File[] = [];
  if (long) {
    const text = renderPlain(all, { details: false });
    files.push({ name: 'answer.txt', data: Buffer.from(text), contentType: 'text/plain; charset=utf-8' });
  }
  for (const { name, type, text, about } of texts(all).slice(0, limits.attachments - files.length)) {
    const description = short(about, limits.altText);
    files.push({ name, data: Buffer.from(text), contentType: `${type}; charset=utf-8`, description });
  }
  if (pictures(all).length === 0) return files;
  const { drawPicture } = await import('../../src/index.ts');
  for (const { picture, alt } of pictures(all).slice(0, limits.attachments - files.length)) {
    const { png } = await drawPicture(picture);
    const name = `picture-${files.length + 1}.png`;
    files.push({ name, data: png, contentType: 'image/png', description: short(alt, limits.altText) || picture.title });
  }
  return files;
}
