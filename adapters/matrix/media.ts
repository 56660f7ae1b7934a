/** Pictures and files as messages: uploaded first, sealed where the room is encrypted. */
import type { MatrixClient } from 'matrix-js-sdk';
import { seal } from './attachment.ts';
import { type Enclosed, line, type Picture } from './message.ts';
import { persist } from './persist.ts';
import type { Content } from './told.ts';

export interface Media {
  /** Contents of messages, one at a time: each is drawn when the one before has gone. */
  readonly contents: (enclosed: Enclosed, isEncrypted: boolean) => AsyncGenerator<Content>;
}

/** More pictures than this are told in words alone. */
const mostPictures = 4;

export function createMedia(client: MatrixClient, stop: AbortSignal): Media {
  async function upload(data: Uint8Array, type: string): Promise<string> {
    const body = data as unknown as Parameters<MatrixClient['uploadContent']>[0];
    const uploaded = await persist(() => client.uploadContent(body, { type, includeFilename: false }), stop);
    return uploaded.content_uri;
  }

  /** `url`, or `file` where it is sealed; the names differ for a thumbnail. */
  async function stored(data: Uint8Array, type: string, isEncrypted: boolean, prefix = ''): Promise<Content> {
    if (!isEncrypted) return { [`${prefix}url`]: await upload(data, type) };
    const { data: sealed, file } = seal(data);
    return { [`${prefix}file`]: file(await upload(sealed, 'application/octet-stream')) };
  }

  async function imageOf({ picture, alt }: Picture, number: number, isEncrypted: boolean): Promise<Content> {
    const { drawPicture } = await import('../../src/index.ts');
    const { png, width, height, small } = await drawPicture(picture);
    const thumbnail = small();
    const type = 'image/png';
    return {
      msgtype: 'm.image',
      body: line(alt) || line(picture.title) || 'picture',
      filename: `picture-${number}.png`,
      ...(await stored(png, type, isEncrypted)),
      info: {
        mimetype: type,
        size: png.length,
        w: width,
        h: height,
        ...(await stored(thumbnail.png, type, isEncrypted, 'thumbnail_')),
        thumbnail_info: { mimetype: type, size: thumbnail.png.length, w: thumbnail.width, h: thumbnail.height },
      },
      'm.mentions': {},
    };
  }

  return {
    contents: async function* ({ pictures, files }, isEncrypted) {
      for (const [i, picture] of pictures.slice(0, mostPictures).entries())
        yield await imageOf(picture, i + 1, isEncrypted);
      for (const { name, type, text, about } of files) {
        const data = Buffer.from(text);
        yield {
          msgtype: 'm.file',
          body: line(about) || name,
          filename: name,
          ...(await stored(data, `${type}; charset=utf-8`, isEncrypted)),
          info: { mimetype: type, size: data.length },
          'm.mentions': {},
        };
      }
    },
  };
}
