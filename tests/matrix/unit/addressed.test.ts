// Which messages are for the bot, and which words of them are the request.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Heard, requestIn, type Self } from '../../../adapters/matrix/addressed.ts';

const self: Self = { id: '@lye-bot:example.org', names: ['lye-bot', 'Soap (helper) 🧼'] };
const heard: Heard = { text: '', html: '', mentions: [], isToUs: false };
const request = (text: string, more: Partial<Heard> = {}) => requestIn({ ...heard, ...more, text }, self, '!lye');

describe('in a room', () => {
  test.each([
    ['!lye check 500 g lard', 'check 500 g lard'],
    ['  !LYE: help', 'help'],
    ['!lye\n500 g lard\n66 g NaOH', '500 g lard\n66 g NaOH'],
    ['!lye', ''],
    ['lye-bot: 500 g lard', '500 g lard'],
    ['hey lye-bot is my lye ok? 500 g lard', 'is my lye ok? 500 g lard'],
    ['@lye-bot 500 g lard', '500 g lard'],
    ['@lye-bot:example.org: 500 g lard', '500 g lard'],
    ['Soap (helper) 🧼: 500 g lard', '500 g lard'],
    ['500 g lard ok, lye-bot?', '500 g lard ok?'],
    ['500 g lard ok @lye-bot', '500 g lard ok'],
  ])('%j is for the bot', (text, words) => {
    expect(request(text)).toBe(words);
  });

  test.each([
    '500 g lard, 66 g lye',
    '!lyeing',
    'I like lye-bot',
    'lye-bottle 500 g',
    'who is lye-bot?',
    '!check 500 g lard',
  ])('%j is not', (text) => {
    expect(request(text)).toBeNull();
  });
});

describe('a mention', () => {
  // Client-server API v1.16, `m.mentions`, and the pill of `m.room.message`.
  test('that the client marked may stand anywhere', () => {
    expect(request('is it ok lye-bot 500 g lard', { mentions: [self.id] })).toBe('is it ok  500 g lard');
    expect(request('500 g lard', { mentions: [self.id] })).toBe('500 g lard');
    expect(request('500 g lard', { mentions: ['@other:example.org'] })).toBeNull();
  });

  test.each([
    'https://matrix.to/#/@lye-bot:example.org',
    'https://matrix.to/#/%40lye-bot%3Aexample.org',
    'matrix:u/lye-bot:example.org',
  ])('is a link to %s in the HTML of an old client', (link) => {
    expect(request('soap: 500 g lard', { html: `<a href="${link}">soap</a>: 500 g lard` })).toBe('soap: 500 g lard');
    expect(request('soap: 500 g lard', { html: `${link}` })).toBeNull();
    expect(request('soap: 500 g lard', { html: `<a href="${link}x">soap</a>` })).toBeNull();
  });
});

test('everything is for the bot where nobody else is', () => {
  expect(request('500 g lard', { isToUs: true })).toBe('500 g lard');
  expect(request('!lye 500 g lard', { isToUs: true })).toBe('500 g lard');
  expect(request('lye-bot: 500 g lard', { isToUs: true })).toBe('500 g lard');
});

test('any text and any name is read, and only ever shortened', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.string({ unit: 'grapheme', minLength: 1 }), (text, name) => {
      const words = requestIn({ ...heard, text, isToUs: true }, { id: '@x:y', names: [name] }, '!lye');
      expect((words ?? '').length).toBeLessThanOrEqual(text.length);
    }),
  );
});
