import { expect, test } from 'vitest';
import { completions } from '../../adapters/console/complete.ts';
import { messagesIn } from '../../adapters/console/messages.ts';

const commands = ['check', 'lye', 'convert', 'scale', 'mix', 'scent', 'help', 'safety'];

const recipe = `Shed soap

Olive oil 450 g
Scent: lavender 20 g
Mix the lye into the water.
Lye
102 g NaOH

water 230 g`;

test.each([
  ['a recipe is one message, its empty lines and its headings that are commands too', recipe, [recipe]],
  ['a command before it belongs to it', `check:\n${recipe}`, [`check:\n${recipe}`]],
  [
    'lines that all begin with a command are messages',
    'convert 1 lb in g\n\nlye: 500 g lard\nhelp\nquit',
    ['convert 1 lb in g', 'lye: 500 g lard', 'help', 'quit'],
  ],
  [
    'a command without an object stands alone',
    `${recipe}\ndetails\nand at 8 %?\nquit`,
    [recipe, 'details', 'and at 8 %?', 'quit'],
  ],
  ['line ends of every kind', 'a\r\nb\rc', ['a\nb\nc']],
  ['nothing is no message', ' \n\n', []],
])('%s', (_name, text, messages) => expect(messagesIn(text, commands)).toEqual(messages));

const names = ['check', 'convert', 'Palm oil', 'palm kernel oil', 'lard', 'kokum butter'];

test.each([
  ['che', ['check'], 'che'],
  ['check 450 g palm', ['Palm oil', 'palm kernel oil'], 'palm'],
  ['check 450 g palm k', ['palm kernel oil'], 'palm k'],
  ['check:PALM ', ['Palm oil', 'palm kernel oil'], 'PALM '],
  ['450 g lard, 200 g xyz', [], '450 g lard, 200 g xyz'],
  ['', [], ''],
  ['450 ', [], '450 '],
])('%j is continued by %j', (line, hits, end) => expect(completions(line, names)).toEqual([hits, end]));
