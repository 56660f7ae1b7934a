// Pictures as a client of another make gets them: decrypted, compared with what the core draws.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { createBot, drawPicture } from '../../../src/index.ts';
import type { Human } from '../human.ts';
import { flawsOf } from '../judge.ts';
import { openWorld, type World } from '../world.ts';

const question = '92 °C at 0 min, 86 at 10 min, room 20, target 70';

let world: World;
let ann: Human;
beforeAll(async () => {
  world = await openWorld();
  ann = await world.human();
});
afterAll(() => world?.close());

/** Width and height of a PNG: W3C PNG specification, IHDR, the first chunk. */
const sizeOf = (png: Buffer): { readonly w: number; readonly h: number } => {
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  return { w: png.readUInt32BE(16), h: png.readUInt32BE(20) };
};

test.each([false, true])('a chart (encrypted: %s)', async (encrypted) => {
  const room = await world.room(ann, { encrypted });
  const asked = await ann.say(room, `!lye cool ${question}`);
  const { content, decrypted } = await ann.until(
    () => ann.repliesTo(asked).find((one) => one.content.msgtype === 'm.image'),
    'the picture',
  );
  expect(decrypted).toBe(encrypted);
  expect(flawsOf(content)).toEqual([]);

  const reply = await createBot().ask({ platform: 'test', place: 'x', person: 'y', text: `cool ${question}` });
  const block = reply.ok ? reply.answer.body.find(({ kind }) => kind === 'picture') : undefined;
  if (block?.kind !== 'picture') throw new Error('the core draws nothing here');
  const { png } = await drawPicture(block.picture);

  const { data } = await ann.download(content);
  expect(data.equals(Buffer.from(png))).toBe(true);
  expect(content.info).toMatchObject({ mimetype: 'image/png', size: data.length, ...sizeOf(data) });
  // Words for who cannot see it.
  expect(content.body).toContain(block.alt.slice(0, 40));

  const { thumbnail_info: info, thumbnail_file, thumbnail_url } = content.info;
  const small = (await ann.download({ file: thumbnail_file, url: thumbnail_url })).data;
  expect(info).toMatchObject({ mimetype: 'image/png', size: small.length, ...sizeOf(small) });
  expect(info.w).toBeLessThan(content.info.w);

  if (encrypted) {
    expect(content.url).toBeUndefined();
    expect(thumbnail_url).toBeUndefined();
    expect(content.file).toMatchObject({ v: 'v2', key: { alg: 'A256CTR' } });
    const stored = await ann.download({ url: content.file.url });
    expect(stored.data.includes('PNG')).toBe(false);
  } else {
    expect(content.file).toBeUndefined();
  }
});
