// Answers as Matrix messages, over arbitrary answers with hostile strings.
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { instead, letterOf, placed } from '../../../adapters/matrix/message.ts';
import { answer, fault } from '../../contract/answers.ts';

const anything = fc.oneof({ weight: 3, arbitrary: answer }, { weight: 1, arbitrary: fault });
const bare = (text: string): string => text.replace(/[^\p{L}\p{N}]/gu, '');

test('every part has its caution, calls nobody, and fits an event with room for encryption', () => {
  fc.assert(
    fc.property(anything, (said) => {
      for (const part of letterOf(said).parts) {
        const { body, formatted_body: html, 'm.mentions': mentions, msgtype } = part;
        expect([msgtype, mentions]).toEqual(['m.notice', {}]);
        expect(JSON.stringify(part).length).toBeLessThan(40_000);
        expect(`${body} ${html}`).not.toMatch(/@(?!\u200b|&#8203;)/);
        for (const caution of said.caution) expect(bare(String(body))).toContain(bare(caution));
      }
    }),
  );
});

test('what is far too long goes into a file, the verdict and the caution into the message', () => {
  const rows = Array.from({ length: 4000 }, (_, i) => ({ label: `Oil ${i}`, value: `${i} g` }));
  fc.assert(
    fc.property(answer, (said) => {
      const caution = ['Goggles, gloves, long sleeves.'];
      const { parts, enclosed } = letterOf({ ...said, caution, body: [{ kind: 'facts', rows }] });
      expect(parts).toHaveLength(1);
      expect(String(parts[0]?.['body'])).toContain(caution[0]);
      expect(enclosed.files[0]?.text).toContain('Oil 3999: 3999 g');
      expect(enclosed.files[0]?.text).toContain(caution[0]);
    }),
    { numRuns: 5 },
  );
});

test('only a reminder calls somebody, and only its asker', () => {
  const calls = { id: '@ada:example.org', name: 'Ada <b>\u202e@room' };
  fc.assert(
    fc.property(anything, (said) => {
      const [first, ...rest] = letterOf(said, { calls }).parts;
      expect(first).toMatchObject({ msgtype: 'm.text', 'm.mentions': { user_ids: [calls.id] } });
      expect(String(first?.['formatted_body'])).toMatch(
        /^<p><a href="https:\/\/matrix\.to\/#\/%40ada%3Aexample\.org">Ada b@\u200broom<\/a>:<\/p>/,
      );
      for (const part of rest) expect(part['m.mentions']).toEqual({});
    }),
    { numRuns: 20 },
  );
});

test('relations are as the specification forms them', () => {
  const content = { msgtype: 'm.notice', body: 'b', 'm.mentions': {} };
  expect(placed(content, { thread: null, repliesTo: null })).toEqual(content);
  expect(placed(content, { thread: null, repliesTo: '$q' })['m.relates_to']).toEqual({
    'm.in_reply_to': { event_id: '$q' },
  });
  expect(placed(content, { thread: '$r', repliesTo: '$q' })['m.relates_to']).toEqual({
    rel_type: 'm.thread',
    event_id: '$r',
    is_falling_back: false,
    'm.in_reply_to': { event_id: '$q' },
  });
  expect(instead(content, '$a')).toEqual({
    msgtype: 'm.notice',
    body: '* b',
    'm.mentions': {},
    'm.new_content': content,
    'm.relates_to': { rel_type: 'm.replace', event_id: '$a' },
  });
});
