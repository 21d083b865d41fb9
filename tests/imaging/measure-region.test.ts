import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { readability, VERDICTS } from '#domain/photo/legibility';
import type { Region } from '#domain/photo/region';
import type { GreyPicture } from '../../server/imaging/grey-picture.ts';
import { laplacianVariance } from '../../server/imaging/laplacian-variance.ts';
import { measureRegion } from '../../server/imaging/measure-region.ts';
import { harm, shrinkTo } from '../calibration/degrade.ts';
import { PACKAGED, realRegions } from '../calibration/real-regions.ts';
import { HAS_SAMPLES, sample, saySoWithoutSamples } from '../support/samples.ts';
import { put, useImaging } from './some-pictures.ts';

const { imaging, file } = useImaging();
const WHOLE: Region = { shape: 'rectangle', x: 0, y: 0, w: 1, h: 1 };

/** A grey picture from a rule. */
function drawn(width: number, height: number, grey: (x: number, y: number) => number): GreyPicture {
  const data = Uint8Array.from({ length: width * height }, (_, i) => grey(i % width, Math.floor(i / width)));
  return { width, height, data };
}
const verdictOf = async (picture: GreyPicture, region: Region = WHOLE) =>
  readability(await measureRegion(picture, region));
const board = drawn(300, 200, (x, y) => 90 + 60 * Number(Math.floor(x / 20) % 2 === Math.floor(y / 20) % 2));

describe('the variance of the Laplacian', () => {
  // Calculated by hand: one column of each side of the step answers ±255; in the checkerboard all answer ±1020.
  it.each<[string, GreyPicture, number]>([
    ['of a constant', drawn(40, 30, () => 77), 0],
    ['of a step over 100 columns', drawn(100, 50, (x) => (x < 50 ? 0 : 255)), 1300.5],
    ['of a checkerboard', drawn(64, 64, (x, y) => 255 * ((x + y) % 2)), 1_040_400],
  ])('%s', (_name, { data, width, height }, expected) =>
    expect(laplacianVariance(data, width, height)).toBeCloseTo(expected, 6),
  );

  // Run of OpenCV 4.6 (cvtColor BGR2GRAY, Laplacian, default border) on the file of the Debian package opencv-doc.
  it.skipIf(!HAS_SAMPLES)('of graf1 is that of OpenCV', async () => {
    const { data, info } = await sharp(sample('registration', 'opencv', 'graf1.png'))
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const grey = Uint8Array.from({ length: info.width * info.height }, (_, i) => {
      const [r, g, b] = data.subarray(3 * i, 3 * i + 3) as unknown as [number, number, number];
      return Math.round(0.299 * r + 0.587 * g + 0.114 * b);
    });
    expect(laplacianVariance(grey, info.width, info.height)).toBeCloseTo(685.32, 0);
  });
});

describe('a region', () => {
  it.each<[string, number, string[]]>([
    ['blank', 128, ['blurred']],
    ['black', 0, ['blurred', 'too-dark']],
    ['white', 255, ['blurred', 'too-bright']],
  ])('that is %s cannot be read', async (_name, grey, reasons) =>
    expect(await verdictOf(drawn(200, 100, () => grey))).toEqual({ verdict: 'unreadable', reasons }),
  );

  it('of a sharp board is clear, whole and up to the border', async () => {
    expect(await verdictOf(board)).toEqual({ verdict: 'clear', reasons: [] });
    const corner: Region = { shape: 'rectangle', x: 0.5, y: 0.4, w: 0.5, h: 0.6 };
    expect((await verdictOf(board, corner)).verdict).toBe('clear');
  });

  it.each<[string, Region]>([
    ['one pixel', { shape: 'rectangle', x: 0.5, y: 0.5, w: 1 / 300, h: 1 / 200 }],
    ['less than a pixel', { shape: 'rectangle', x: 0.99999, y: 0.99999, w: 0.00001, h: 0.00001 }],
    [
      'a thread',
      {
        shape: 'polygon',
        points: [
          [0, 0],
          [1, 1],
          [1, 0.99],
          [0, 0.000001],
        ],
      },
    ],
  ])('of %s is too small, and measured all the same', async (_name, region) => {
    const measures = await measureRegion(board, region);
    for (const value of Object.values(measures)) expect(Number.isFinite(value)).toBe(true);
    expect(readability(measures)).toMatchObject({ verdict: 'unreadable' });
    expect(readability(measures).reasons).toContain('too-small');
  });

  it('is only what lies inside the outline', async () => {
    // Above the slanting line all is white, below it lies the board.
    const half = drawn(300, 200, (x, y) => (y < (x * 200) / 300 ? 255 : (board.data[y * 300 + x] as number)));
    const below: Region = {
      shape: 'polygon',
      points: [
        [0, 0.06],
        [0, 1],
        [0.9, 1],
      ],
    };
    const above: Region = {
      shape: 'polygon',
      points: [
        [0.06, 0],
        [1, 0],
        [1, 0.94],
      ],
    };
    expect((await measureRegion(half, below)).highlights).toBe(0);
    expect((await measureRegion(half, above)).highlights).toBe(1);
    expect((await verdictOf(half, above)).verdict).toBe('unreadable');
    expect((await verdictOf(half, below)).verdict).toBe('clear');
  });

  it('does not take noise for detail', async () => {
    const plain = drawn(400, 300, () => 120);
    for (const noise of [1, 2, 3])
      expect((await verdictOf(await harm(plain, { noise }))).verdict).toBe('unreadable');
  });

  it('measures the blur that was given to it', async () => {
    const edge = drawn(256, 256, (x) => (x < 128 ? 60 : 180));
    for (const share of [0.04, 0.08, 0.12]) {
      const { coarseBlur } = await measureRegion(await harm(edge, { blur: share * 256, noise: 1 }), WHOLE);
      expect(Math.abs(coarseBlur - share)).toBeLessThan(0.25 * share);
    }
  });
});

describe('regions of real photos', () => {
  const rank = async (picture: GreyPicture) => VERDICTS.indexOf((await verdictOf(picture)).verdict);

  // Fine grain drowns in blur before the edges do, so that a weak region may once become clear; none comes back
  // from unreadable.
  it('do not get better when they are blurred, shrunk or darkened', async () => {
    const regions = await realRegions(PACKAGED);
    expect(regions.length).toBeGreaterThan(8);
    const better: string[] = [];
    let steps = 0;
    for (const [i, region] of regions.entries()) {
      const follow = async (
        what: string,
        levels: readonly number[],
        how: (step: number) => Promise<GreyPicture>,
      ) => {
        let before = 0;
        for (const step of levels) {
          steps += 1;
          const now = await rank(await how(step));
          if (now < before) better.push(`${i} ${what} ${step} ${VERDICTS[before]}`);
          before = Math.max(before, now);
        }
      };
      await follow('blur', [0, 1, 3, 6, 12, 24], (blur) => harm(region, { blur, noise: 2 }));
      await follow('size', [1, 0.7, 0.4, 0.2, 0.12, 0.05], (factor) => shrinkTo(region, factor));
      await follow('light', [1, 0.5, 0.25, 0.1, 0.04, 0.01], (gain) => harm(region, { gain, noise: 1 }));
    }
    expect(better.filter((step) => step.endsWith('unreadable'))).toEqual([]);
    expect(better.length).toBeLessThanOrEqual(0.02 * steps);
  });
});

describe('measuring an original', () => {
  saySoWithoutSamples();

  it.skipIf(!HAS_SAMPLES)('decodes HEIC, upright', async () => {
    const path = sample('buildings', 'timber_box_iphone11pro.HEIC');
    const [measures] = (await imaging().measure(path, 'image/heic', [WHOLE])) ?? [];
    expect(measures?.acrossPx).toBe(3024);
    expect(measures && readability(measures).verdict).toBe('clear');
  });

  it('says nothing of a file that cannot be decoded', async () => {
    const path = await put(file('broken.jpg'), Buffer.from('ffd8ffe000104a464946', 'hex'));
    expect(await imaging().measure(path, 'image/jpeg', [WHOLE])).toBeNull();
    expect(await imaging().measure(path, 'image/heic', [WHOLE])).toBeNull();
  });

  it('turns the picture upright first', async () => {
    // Stored with black on the left; orientation 6 has it at the top.
    const stored = await sharp({ create: { width: 400, height: 200, channels: 3, background: '#fff' } })
      .composite([
        { input: { create: { width: 200, height: 200, channels: 3, background: '#000' } }, left: 0, top: 0 },
      ])
      .withMetadata({ orientation: 6 })
      .jpeg()
      .toBuffer();
    const path = await put(file('turned.jpg'), stored);
    const top: Region = { shape: 'rectangle', x: 0, y: 0, w: 1, h: 0.4 };
    const [measures] = (await imaging().measure(path, 'image/jpeg', [top])) ?? [];
    expect(measures).toMatchObject({ acrossPx: 160, shadows: 1 });
  });

  it('is bounded for the largest picture that is taken', async () => {
    const path = file('large.jpg');
    await sharp({
      create: { width: 10_000, height: 9_990, channels: 3, background: '#777' },
      limitInputPixels: false,
    })
      .jpeg()
      .toFile(path);
    const slanting: Region = {
      shape: 'polygon',
      points: [
        [0, 0],
        [0.01, 0],
        [1, 1],
        [0.99, 1],
      ],
    };
    const start = performance.now();
    expect(await imaging().measure(path, 'image/jpeg', [WHOLE, slanting])).toHaveLength(2);
    expect(performance.now() - start).toBeLessThan(15_000);
  });
});
