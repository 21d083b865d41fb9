import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { MediaType } from '#domain/contract/shapes';
import { colourAt, colourName, put, sign, useImaging } from './some-pictures.ts';

const { imaging, file } = useImaging();

async function make(name: string, bytes: Uint8Array, mediaType: MediaType = 'image/jpeg') {
  const original = await put(file(name), bytes);
  const to = { thumb: file(`${name}-made/thumb.jpg`), preview: file(`${name}-made/preview.jpg`) };
  return { ...(await imaging().makePictures(original, mediaType, to)), ...to };
}

describe('thumbnail and preview', () => {
  it('fit inside 320 and 1600, JPEG, without metadata', async () => {
    const exif = { IFD0: { Make: 'Kamera' } };
    const made = await make('large', await sign(3000, 2000).withExif(exif).jpeg().toBuffer());
    expect(made.state).toBe('ready');
    expect(await sharp(made.thumb).metadata()).toMatchObject({ format: 'jpeg', width: 320, height: 213 });
    const preview = await sharp(made.preview).metadata();
    expect(preview).toMatchObject({ width: 1600, height: 1067, space: 'srgb' });
    expect([preview.exif, preview.icc, preview.xmp]).toEqual([undefined, undefined, undefined]);
  });

  it('never enlarge', async () => {
    const made = await make('small', await sign(40, 30).jpeg().toBuffer());
    expect(await sharp(made.preview).metadata()).toMatchObject({ width: 40, height: 30 });
  });

  it('keep one pixel of a strip', async () => {
    const made = await make('strip', await sign(12_000, 1).png().toBuffer(), 'image/png');
    expect(await sharp(made.thumb).metadata()).toMatchObject({ width: 320, height: 1 });
  });

  // Where red, blue and green of the stored picture must come to lie: check against Exif 0x0112, "0th row / 0th column".
  it.each([
    [1, 'red', 'blue', 'green'],
    [2, 'blue', 'red', 'green'],
    [3, 'green', 'green', 'blue'],
    [4, 'green', 'green', 'red'],
    [5, 'red', 'green', 'blue'],
    [6, 'green', 'red', 'green'],
    [7, 'green', 'blue', 'green'],
    [8, 'blue', 'green', 'red'],
  ])('stand upright for orientation %i', async (orientation, topLeft, topRight, bottomLeft) => {
    const made = await make(`o${orientation}`, await sign().withMetadata({ orientation }).jpeg().toBuffer());
    const corners = [await colourAt(made.thumb, 0.1, 0.1), await colourAt(made.thumb, 0.9, 0.1)];
    corners.push(await colourAt(made.thumb, 0.1, 0.9));
    expect(corners.map(colourName)).toEqual([topLeft, topRight, bottomLeft]);
  });

  it('put transparent parts on white', async () => {
    const clear = sharp({ create: { width: 8, height: 8, channels: 4, background: '#00000000' } });
    const made = await make('clear', await clear.png().toBuffer(), 'image/png');
    expect(await colourAt(made.preview, 0.5, 0.5)).toEqual([255, 255, 255]);
  });

  it('turn a wide colour space into sRGB', async () => {
    const p3 = await sign().withIccProfile('p3').jpeg({ quality: 100 }).toBuffer();
    const made = await make('p3', p3);
    expect(colourName(await colourAt(made.preview, 0.1, 0.1))).toBe('red');
    const [red = 0] = await colourAt(made.preview, 0.1, 0.1);
    expect(Math.abs(red - 0xd0)).toBeLessThan(6);
  });

  it('say that a file is damaged, and still show what is left', async () => {
    const noise = { type: 'gaussian' as const, mean: 128, sigma: 40 };
    const whole = await sharp({ create: { width: 800, height: 600, channels: 3, background: '#888', noise } })
      .jpeg()
      .toBuffer();
    const made = await make('half', whole.subarray(0, whole.length / 2));
    expect(made.state).toBe('damaged');
    expect(await sharp(made.thumb).metadata()).toMatchObject({ width: 320, height: 240 });
  });

  it('say that nothing can be read and write nothing', async () => {
    const made = await make('nothing', Buffer.from('\xff\xd8\xff\xe0', 'latin1'));
    expect(made.state).toBe('unreadable');
    await expect(readFile(made.thumb)).rejects.toThrow('ENOENT');
  });

  it('leave no temporary file behind', async () => {
    const made = await make('tidy', await sign().jpeg().toBuffer());
    expect((await readdir(path.dirname(made.thumb))).sort()).toEqual(['preview.jpg', 'thumb.jpg']);
  });
});
