import type { Result } from '../../answer/types.ts';
import { type Context, type Memory, nothingMore, type Refusal, type Said, type Taken } from '../define.ts';
import { listed } from '../phrases.ts';
import { agrees } from '../recipes/shelf.ts';
import { countedOf, type Everything, everythingOf } from './everything.ts';

type Ran = Result<Said<'plain'>, Refusal<'plain'>>;

export async function run({ text, options }: Taken, _context: Context, memory: Memory): Promise<Ran> {
  const [, word = '', rest = ''] = /^\W*([a-z]*)\s*([\s\S]*?)\s*$/i.exec(text) ?? [];
  switch (word.toLowerCase()) {
    case 'export':
      return exported(memory);
    case 'delete':
    case 'erase':
    case 'forget':
      return erased(options, text, memory);
    case 'link':
      return rest === '' ? newCode(memory) : linked(rest, memory);
    case 'unlink':
      return unlinked(options, text, memory);
    default:
      return { ok: true, value: await told(memory) };
  }
}

const no = (code: Refusal['code'], message: string, hint: string, more: Partial<Refusal<'plain'>> = {}): Ran => ({
  ok: false,
  fault: { code, message, hint, candidates: [], caution: [], ...more },
});

const said = (parts: Pick<Said<'plain'>, 'title' | 'lead' | 'result'> & Partial<Said<'plain'>>): Said<'plain'> => ({
  ...nothingMore,
  ...parts,
});

const readByOthers = (what: string): Ran =>
  no('refused', `Others read this room, so I don’t show ${what} here.`, 'Ask me in a direct message.');

/** Minutes that a conversation is remembered. */
const rests = 30;

async function told(memory: Memory): Promise<Said<'plain'>> {
  const counted = memory.isPrivate ? countedOf(await everythingOf(memory)) : null;
  return said({
    title: 'Privacy',
    lead: 'I keep what you told me to keep, and nothing else.',
    body: [
      {
        kind: 'facts',
        rows: [
          {
            label: 'Recipes, settings, batches, reminders',
            value: 'because you asked me to keep them; until you delete them; only you see them',
          },
          {
            label: 'A recipe that you share',
            value:
              'a copy in that room, without your name; until it is taken back, or 30 days after the room has no assistant any more',
          },
          {
            label: 'Our conversation',
            value: `its last turns, so that you can go on with "and at 8 %"; at most ${rests} minutes; "restart" forgets it at once`,
          },
          {
            label: 'Accounts',
            value: 'the numbers that your platforms know you by, as long as something is kept for them',
          },
          { label: 'The log of the host', value: 'that something was asked and how it ended: no words, no names' },
        ],
      },
      ...(counted === null
        ? []
        : [
            {
              kind: 'text',
              text: counted.length === 0 ? 'Of you I keep nothing.' : `Of you I keep ${listed(counted)}.`,
            } as const,
          ]),
      {
        kind: 'text',
        text: 'What you delete is gone at once from what I work with. The host’s backups hold it until they are next replaced: the host’s own notice says when.',
      },
    ],
    actions: [
      { label: 'export all of mine', request: 'privacy export' },
      { label: 'delete all of mine', request: 'privacy delete' },
    ],
    result: { kept: counted ?? [] },
  });
}

async function exported(memory: Memory): Promise<Ran> {
  if (!memory.isPrivate) return readByOthers('what is yours');
  const everything = await everythingOf(memory);
  const counted = countedOf(everything);
  return {
    ok: true,
    value: said({
      title: 'All of yours',
      lead: counted.length === 0 ? 'I keep nothing of yours.' : `All that I keep of you: ${listed(counted)}.`,
      body: [
        {
          kind: 'file',
          name: 'lyeward-export.json',
          type: 'application/json',
          text: `${JSON.stringify(everything, null, 1)}\n`,
          about: 'all of it as data',
        },
      ],
      result: { ...everything },
    }),
  };
}

async function erased(options: Taken['options'], text: string, memory: Memory): Promise<Ran> {
  const everything: Everything = await everythingOf(memory);
  const counted = countedOf(everything);
  if (options['confirm'] !== 'yes') {
    const what = memory.isPrivate && counted.length > 0 ? `: ${listed(counted)}` : '';
    return no(
      'unclear',
      `Delete everything that I keep of you${what}? It can’t be brought back.`,
      'Answer "delete everything". To keep a copy first, say "privacy export".',
      {
        candidates: ['delete everything'],
        complete: (answer) =>
          agrees(answer, 'delete everything|delete all|delete')
            ? { text, options: { ...options, confirm: 'yes' } }
            : null,
      },
    );
  }
  await memory.own.erase();
  return {
    ok: true,
    value: said({
      title: 'Deleted',
      lead: 'Everything of yours is deleted, and our conversation is forgotten.',
      body: [
        {
          kind: 'text',
          text: 'Copies that you shared to rooms stay there, without your name: a host of the room can take them away. Backups of the host hold what was yours until they are next replaced.',
        },
      ],
      result: { deleted: true },
      forgets: true,
    }),
  };
}

async function newCode({ own, isPrivate, now }: Memory): Promise<Ran> {
  if (!isPrivate) return readByOthers('a code that opens what is yours');
  const code = await own.newLinkCode(now);
  return {
    ok: true,
    value: said({
      title: 'Join accounts',
      lead: `Your code is ${code}. It works once, for 15 minutes.`,
      body: [
        {
          kind: 'text',
          text: `Write "privacy link ${code}" to me from your other account. Then both own the same recipes, settings, batches and reminders. Give it to nobody: whoever has it sees and changes all of yours.`,
        },
      ],
      result: { code },
    }),
  };
}

async function linked(code: string, memory: Memory): Promise<Ran> {
  if (!/^[a-z0-9][a-z0-9 -]{2,20}$/i.test(code))
    return no(
      'unclear',
      'That is no code of mine.',
      'Say "privacy link" on the other account, and write the code behind the same words here.',
    );
  const done = await memory.link(code);
  if (!done.ok)
    return done.why === 'same-owner'
      ? no('unclear', 'These two accounts are joined already.', 'Nothing was changed.')
      : no(
          'unclear',
          'I know no such code, or its 15 minutes are over.',
          'Say "privacy link" on the other account for a new one.',
        );
  return {
    ok: true,
    value: said({
      title: 'Joined',
      lead: 'Your accounts are joined: both own the same things now.',
      body: [
        {
          kind: 'text',
          text: 'Where two things had one name, one of them got a number. "privacy unlink" parts this account again.',
        },
      ],
      actions: [{ label: 'my recipes', request: 'recipe list' }],
      result: { linked: true },
    }),
  };
}

async function unlinked(options: Taken['options'], text: string, memory: Memory): Promise<Ran> {
  const accounts = await memory.own.accounts();
  if (accounts.length < 2)
    return no('unclear', 'This account is joined to no other.', '"privacy link" gives you a code to join one.');
  if (options['confirm'] !== 'yes')
    return no(
      'unclear',
      'Part this account from the others? All that is kept stays with them, and this one starts with nothing.',
      'Answer "yes".',
      {
        candidates: ['yes'],
        complete: (answer) => (agrees(answer, 'unlink') ? { text, options: { ...options, confirm: 'yes' } } : null),
      },
    );
  await memory.unlink();
  return {
    ok: true,
    value: said({
      title: 'Parted',
      lead: 'This account stands alone again. What was kept stays with your other account.',
      result: { linked: false },
      forgets: true,
    }),
  };
}
