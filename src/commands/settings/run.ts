import type { Block, Result } from '../../answer/types.ts';
import { readScaleWish } from '../../reading/question/scale-target.ts';
import type { Own } from '../../store/port.ts';
import type { Style } from '../../units/print.ts';
import type { Context, Memory, Refusal, Said, Taken } from '../define.ts';
import { readPot } from '../heat-pot.ts';
import { capital, clipped, listed } from '../phrases.ts';
import { labelOf, type Setting, type Settings, settingNames, shownValue, styleOf, worded } from './values.ts';
import { settingsIn } from './words.ts';
import { zoneOf } from './zone.ts';

type Ran = Result<Said<'plain'>, Refusal<'plain'>>;

const example = 'For example: settings scale 0.1 g, superfat 8 %, ounces, °F, time zone Lisbon.';

export async function run({ text }: Taken, context: Context, memory: Memory): Promise<Ran> {
  const { words, forRoom } = whose(text);
  if (words === '') return { ok: true, value: await shown(context, memory) };
  if (forRoom && !memory.isHost)
    return no(
      'refused',
      'Only a host of this room sets what holds for everybody in it.',
      'Leave "for this room" out, and it holds for you.',
    );
  const owner = forRoom ? memory.room : memory.own;
  const document = await owner.get('settings', 'own');
  const before = (document?.data ?? {}) as Settings;
  const change = /^(?:reset|forget|clear|delete|remove)(?: (?:all|everything|all of (?:it|them)))?\W*$/i.test(words)
    ? { ok: true as const, value: { settings: {}, keys: settingNames.filter((key) => before[key] !== undefined) } }
    : changed(words, before, context);
  if (!change.ok) return change;
  const { settings: after, keys } = change.value;
  const written = await owner.commit([
    Object.keys(after).length === 0
      ? { do: 'remove', kind: 'settings', key: 'own' }
      : { do: 'put', kind: 'settings', key: 'own', data: { ...after }, expects: document?.version ?? 0 },
  ]);
  if (!written.ok)
    return no(
      'unclear',
      'Your settings were changed at the same moment from somewhere else, so I left them.',
      'Say it again.',
    );
  return { ok: true, value: told(keys, before, after, forRoom, context, memory) };
}

const no = (
  code: Refusal['code'],
  message: string,
  hint: string,
  candidates: readonly string[] = [],
): { readonly ok: false; readonly fault: Refusal<'plain'> } => ({
  ok: false,
  fault: { code, message, hint, candidates, caution: [] },
});

/** "for this room: scale 1 g". */
function whose(text: string): { readonly words: string; readonly forRoom: boolean } {
  const parts =
    /^\W*(?:for|of|in)\s+(?:this\s+|the\s+|our\s+)?(?:whole\s+)?(?:room|channel|server|chat|group|everybody|everyone|all)\b\s*[:,-]?\s*(.*)$/is.exec(
      text,
    );
  const words = (parts?.[1] ?? text).trim();
  return {
    words: /^(?:show|list|all|mine|me|what|are|my|(?:settings|preferences)\b|\W)*$/i.test(words) ? '' : words,
    forRoom: parts !== null,
  };
}

type Change = Result<{ readonly settings: Settings; readonly keys: readonly Setting[] }, Refusal<'plain'>>;

function changed(words: string, before: Settings, context: Context): Change {
  let settings: Settings = before;
  const keys: Setting[] = [];
  for (const said of settingsIn(words)) {
    if (said.is === 'wrong') return no('impossible', said.message, `${said.hint} Nothing was changed.`);
    if (said.is === 'unknown')
      return no('unclear', `I know no setting "${clipped(said.text)}".`, `${example} Nothing was changed.`, [
        'settings',
      ]);
    if (said.is === 'unset') {
      const { [said.key]: _gone, ...rest } = settings;
      settings = rest;
      keys.push(said.key);
      continue;
    }
    const checked = known(said.set, context);
    if (!checked.ok) return checked;
    settings = { ...settings, ...checked.value };
    keys.push(...(Object.keys(checked.value) as Setting[]));
  }
  return { ok: true, value: { settings, keys: [...new Set(keys)] } };
}

/** What stands in words is taken only as far as it will be understood when it is used. */
function known(set: Settings, context: Context): Result<Settings, Refusal<'plain'>> {
  const { timeZone, language, pot, mould } = set;
  if (timeZone !== undefined) {
    const found = zoneOf(timeZone);
    if (found.ok) return { ok: true, value: { timeZone: found.zone } };
    const { candidates } = found;
    const hint =
      candidates.length > 0
        ? `Did you mean ${listed(candidates, 'or')}?`
        : 'Name the nearest large city as in "Europe/Lisbon".';
    return no(
      'unclear',
      `I know no time zone "${clipped(timeZone)}".`,
      `${hint} Nothing was changed.`,
      candidates.map((zone) => `settings time zone ${zone}`),
    );
  }
  if (language !== undefined) {
    const tag = languageTag(language);
    return tag === null
      ? no(
          'unclear',
          `"${clipped(language)}" is no language tag.`,
          'Say it as in "language pt-BR" or "language de". Nothing was changed.',
        )
      : { ok: true, value: { language: tag } };
  }
  if (pot !== undefined) {
    return readPot(pot, context).described
      ? { ok: true, value: { pot: pot.trim() } }
      : no(
          'unclear',
          `I can’t see what kind of pot "${clipped(pot)}" is.`,
          'Say its size or kind, for example: pot 6 l slow cooker, lid off. Nothing was changed.',
        );
  }
  if (mould !== undefined) {
    const wish = readScaleWish(context.reader(), `mould ${mould}`);
    if (wish?.kind === 'sides' || wish?.kind === 'mould') return { ok: true, value: { mould: mould.trim() } };
    return wish?.kind === 'sides-of-what'
      ? no(
          'unclear',
          `Is the mould ${wish.said} in centimetres or inches?`,
          'Say it once more with the unit. Nothing was changed.',
          ['cm', 'inches'].map((unit) => `settings mould ${wish.said} ${unit}`),
        )
      : no(
          'unclear',
          `I can’t see the size of the mould in "${clipped(mould)}".`,
          'Say its inner sides or what it holds, for example: mould 24 x 8 x 6 cm. Nothing was changed.',
        );
  }
  return { ok: true, value: set };
}

function languageTag(said: string): string | null {
  try {
    return Intl.getCanonicalLocales(said.replaceAll('_', '-'))[0] ?? null;
  } catch {
    return null;
  }
}

/** What I take where nothing is set, in the order of the settings. */
const usual: Readonly<Record<Setting, string>> = {
  weights: 'grams, or ounces where you write in them',
  temperature: 'as you write them, else °C',
  cup: 'US (237 mL)',
  step: '1 g',
  naoh: 'pure',
  koh: '90 % pure',
  superfat: '5 %',
  water: 'for a 33 % lye solution',
  decimal: 'point',
  room: '20 °C',
  pot: 'a usual one for the batch',
  mould: 'asked for',
  timeZone: 'UTC, on your own machine its clock',
  language: 'en',
  answers: 'neither brief nor full',
};

async function shown(context: Context, { own, room, isPrivate }: Memory): Promise<Said<'plain'>> {
  const [mine, rooms] = await Promise.all([of(own), of(room)]);
  const yours = isPrivate ? mine : {};
  const style = styleOf(context.style, yours);
  const owned = settingNames.filter((key) => yours[key] !== undefined);
  const shared = settingNames.filter((key) => rooms[key] !== undefined && yours[key] === undefined);
  const rest = settingNames.filter((key) => yours[key] === undefined && rooms[key] === undefined);
  const rows = [
    ...owned.map((key) => ({ label: labelOf(key), value: shownValue(key, yours, style) ?? '' })),
    ...shared.map((key) => ({
      label: labelOf(key),
      value: `${shownValue(key, rooms, style) ?? ''}, set for this room`,
    })),
  ];
  return said({
    title: 'Settings',
    lead:
      rows.length > 0
        ? 'This I take where you say nothing.'
        : isPrivate
          ? 'Nothing is set: I take what is usual.'
          : 'Nothing is set for this room.',
    body: [
      ...(rows.length > 0 ? [{ kind: 'facts', rows } as const] : []),
      ...(isPrivate
        ? []
        : [{ kind: 'text', text: 'Your own I show you in a direct message: others read this room.' } as const]),
      { kind: 'text', text: example },
    ],
    details: isPrivate
      ? [
          { kind: 'text', text: 'The usual:' },
          { kind: 'facts', rows: rest.map((key) => ({ label: labelOf(key), value: usual[key] })) },
        ]
      : [],
    actions: isPrivate && rest.length > 0 ? [{ label: 'the usual', request: 'details' }] : [],
    result: { ...(isPrivate ? { settings: yours } : {}), room: rooms },
  });
}

function told(
  keys: readonly Setting[],
  before: Settings,
  after: Settings,
  forRoom: boolean,
  context: Context,
  { isPrivate }: Memory,
): Said<'plain'> {
  const style: Style = styleOf(context.style, after);
  const now = keys.filter((key) => after[key] !== undefined);
  const gone = keys.filter((key) => after[key] === undefined);
  const set = now.map((key) => worded(key, after, style) ?? '');
  const back = gone.map((key) => {
    const was = shownValue(key, before, style);
    return `${labelOf(key)} ${usual[key]}${was === null || !isPrivate ? '' : ` (it was ${was})`}`;
  });
  const lead = [
    ...(set.length > 0
      ? [`${capital(forRoom ? 'for this room' : 'from now on')} I take ${listed(set)}, unless you say otherwise.`]
      : []),
    ...(back.length > 0 ? [`Back to the usual: ${listed(back)}.`] : []),
    ...(keys.length === 0 ? ['Nothing was set, so nothing changed.'] : []),
  ].join(' ');
  const body: Block[] = [];
  if (now.includes('language') && !/^en\b/.test(after.language ?? 'en'))
    body.push({
      kind: 'text',
      text: 'I speak English only so far; the language is kept for the day when I speak more.',
    });
  return said({
    title: 'Settings',
    lead,
    body,
    details: [],
    actions: [{ label: 'all settings', request: 'settings' }],
    result: {
      [forRoom ? 'room' : 'settings']:
        isPrivate || forRoom ? after : Object.fromEntries(now.map((key) => [key, after[key]])),
    },
  });
}

const of = async (owner: Own): Promise<Settings> => ((await owner.get('settings', 'own'))?.data ?? {}) as Settings;

const said = (
  parts: Pick<Said<'plain'>, 'title' | 'lead' | 'body' | 'details' | 'actions' | 'result'>,
): Said<'plain'> => ({
  assumptions: [],
  warnings: [],
  caution: [],
  ...parts,
});
