import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { hamming, tellsApart } from '#domain/photo/alike';
import { differenceHash, pictureTraits } from '../../server/imaging/picture-traits.ts';
import { HAS_SAMPLES, sample, saySoWithoutSamples } from '../support/samples.ts';

/** Nine columns whose grey values are these, as a PNG. */
function columns(values: readonly number[]): Promise<Buffer> {
  const data = Buffer.from(Array.from({ length: 8 }, () => values).flat());
  return sharp(data, { raw: { width: 9, height: 8, channels: 1 } })
    .png()
    .toBuffer();
}

describe('the difference hash', () => {
  it('sets a bit where the left of two is darker, the first one highest', async () => {
    expect(await differenceHash(await columns([0, 9, 9, 9, 9, 9, 9, 9, 9]))).toBe('80'.repeat(8));
    expect(await differenceHash(await columns([9, 9, 9, 9, 9, 9, 9, 0, 9]))).toBe('01'.repeat(8));
    expect(await differenceHash(await columns([0, 1, 2, 3, 4, 5, 6, 7, 8]))).toBe('ff'.repeat(8));
  });

  it('of a blank picture tells nothing apart', async () => {
    const blank = await sharp({ create: { width: 60, height: 40, channels: 3, background: '#999' } })
      .png()
      .toBuffer();
    expect(tellsApart(await differenceHash(blank))).toBe(false);
  });

  saySoWithoutSamples();
  const opencv = (name: string) => sample('registration', 'opencv', name);

  // Measured with an independent program: blur, JPEG and half size change at most one bit, other pictures 27 to 38.
  it.skipIf(!HAS_SAMPLES)('stays the same for the same picture and differs for another', async () => {
    const graf = opencv('graf1.png');
    const hash = await differenceHash(graf);
    const half = await sharp(graf).resize(400).jpeg({ quality: 40 }).toBuffer();
    const blurred = await sharp(graf).blur(4).png().toBuffer();
    expect(hamming(hash, await differenceHash(half))).toBeLessThanOrEqual(2);
    expect(hamming(hash, await differenceHash(blurred))).toBeLessThanOrEqual(2);
    for (const name of ['graf3.png', 'leuvenA.jpg', 'left01.jpg', 'home.jpg', 'box.png'])
      expect(hamming(hash, await differenceHash(opencv(name)))).toBeGreaterThan(20);
  });

  it.skipIf(!HAS_SAMPLES)('goes with a sharpness by which the sharper of two is found', async () => {
    const picture = await sharp(opencv('graf1.png')).jpeg({ quality: 80 }).toBuffer();
    const soft = await sharp(opencv('graf1.png')).blur(1.2).jpeg({ quality: 80 }).toBuffer();
    expect((await pictureTraits(picture)).sharpness).toBeGreaterThan(
      2 * (await pictureTraits(soft)).sharpness,
    );
  });
});
