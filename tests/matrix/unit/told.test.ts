// Events as they come: what the specification says, and what it does not.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { editOf, messageOf, relationOf } from '../../../adapters/matrix/told.ts';

const none = { thread: null, repliesTo: null, edits: null, sign: null };

describe('relations', () => {
  // Client-server API v1.16, "Forming relationships between events".
  test('of each kind', () => {
    const of = (relates: object) => relationOf({ 'm.relates_to': relates });
    expect(relationOf({})).toEqual(none);
    expect(of({ 'm.in_reply_to': { event_id: '$a' } })).toEqual({ ...none, repliesTo: '$a' });
    expect(of({ rel_type: 'm.replace', event_id: '$a' })).toEqual({ ...none, edits: '$a' });
    expect(of({ rel_type: 'm.annotation', event_id: '$a', key: '🔍' })).toEqual({
      ...none,
      sign: { on: '$a', key: '🔍' },
    });
    const thread = { rel_type: 'm.thread', event_id: '$root', 'm.in_reply_to': { event_id: '$b' } };
    expect(of(thread)).toEqual({ ...none, thread: '$root', repliesTo: '$b' });
    expect(of({ ...thread, is_falling_back: true })).toEqual({ ...none, thread: '$root' });
  });

  test('of any shape', () => {
    fc.assert(
      fc.property(
        fc.dictionary(fc.constantFrom('m.relates_to', 'x'), fc.anything()),
        (content) => void relationOf(content),
      ),
    );
  });
});

describe('messages', () => {
  test('words are of text and emotes; a notice is a bot’s', () => {
    expect(messageOf({ msgtype: 'm.text', body: 'a' }, false)).toEqual({
      kind: 'words',
      text: 'a',
      html: '',
      mentions: [],
    });
    expect(messageOf({ msgtype: 'm.emote', body: 'a' }, false).kind).toBe('words');
    expect(messageOf({ msgtype: 'm.notice', body: 'a' }, false)).toEqual({ kind: 'notice' });
    expect(messageOf({ msgtype: 'm.image', body: 'a' }, false)).toEqual({ kind: 'other', type: 'm.image' });
    expect(messageOf({ msgtype: 'm.text' }, false)).toEqual({ kind: 'other', type: 'm.text' });
  });

  test('the body is read, whatever the HTML says', () => {
    const message = messageOf({ msgtype: 'm.text', body: '66 g', formatted_body: '<b>99 g</b>' }, false);
    expect(message).toMatchObject({ text: '66 g' });
  });

  test('a reply loses the quotation that old clients put before it, and no other', () => {
    // Client-server API v1.12, "Fallbacks for rich replies" (no longer made since v1.13).
    const body = '> <@ada:example.org> 500 g lard\n> 66 g NaOH\n\ncheck';
    expect(messageOf({ msgtype: 'm.text', body }, true)).toMatchObject({ text: 'check' });
    expect(messageOf({ msgtype: 'm.text', body }, false)).toMatchObject({ text: body });
    expect(messageOf({ msgtype: 'm.text', body: '> 500 g lard\ncheck' }, true)).toMatchObject({
      text: '> 500 g lard\ncheck',
    });
    expect(messageOf({ msgtype: 'm.text', body: '> * <@ada:example.org> waves' }, true)).toMatchObject({ text: '' });
  });

  test('an edit has its words inside', () => {
    expect(editOf({ body: '* b', 'm.new_content': { msgtype: 'm.text', body: 'b' } })).toMatchObject({ text: 'b' });
    expect(editOf({ body: '* b' })).toBeNull();
  });

  test('of any shape', () => {
    const keys = fc.constantFrom('msgtype', 'body', 'formatted_body', 'm.mentions', 'm.new_content');
    fc.assert(
      fc.property(
        fc.dictionary(keys, fc.oneof(fc.anything(), fc.constant('m.text'))),
        fc.boolean(),
        (content, isReply) => {
          messageOf(content, isReply);
          editOf(content);
        },
      ),
    );
  });
});
