import { createHash } from 'node:crypto';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { between, oneOf, type Chance } from '../support/seeded.ts';

export interface SomeFile {
  readonly name: string;
  readonly bytes: Buffer;
  readonly sha256: string;
}

/** Small ones that come in fast, and some whose pictures take long enough to be killed half made. */
const SIZES = [
  { width: 96, height: 64 },
  { width: 320, height: 240 },
  { width: 640, height: 480 },
  { width: 2000, height: 1500 },
];

/** Makes as many different files as asked for from a few pictures, each with a comment of its own. */
export async function jpegSource(): Promise<(chance: Chance) => SomeFile> {
  const pictures = await Promise.all(
    SIZES.map((size, i) => makeJpeg(i, i === 0 ? {} : takenAt(`2026-04-0${i}T09:00:00`), size)),
  );
  return (chance) => {
    const number = Math.floor(between(chance, 0, 2 ** 48)).toString(36);
    const bytes = withComment(oneOf(chance, pictures), `frame ${number}`);
    return { name: `${number}.jpg`, bytes, sha256: sha256Of(bytes) };
  };
}

/** A COM segment after the start of the image: marker FF FE, length with itself, text (ITU-T T.81, B.2.4.5). */
export function withComment(jpeg: Buffer, text: string): Buffer {
  const comment = Buffer.from(text, 'latin1');
  const head = Buffer.from([0xff, 0xfe, 0, 0]);
  head.writeUInt16BE(comment.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, comment, jpeg.subarray(2)]);
}

export function sha256Of(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
