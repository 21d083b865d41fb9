import path from 'node:path';
import sharp from 'sharp';
import { it } from 'vitest';
import type { Region } from '#domain/photo/region';
import { GreyPictures } from '../../server/imaging/grey-picture.ts';
import { HeicDecoder } from '../../server/imaging/heic-decoder.ts';
import { measureRegion } from '../../server/imaging/measure-region.ts';
import { ROOT } from '../support/project-files.ts';
import { sayTable, seconds, type BenchRow } from './say-table.ts';

const PHOTO = path.join(ROOT, 'node_modules', 'exif', 'test', 'sony-alpha-6000.jpg');
const BOXES: Region[] = Array.from({ length: 20 }, (_, i) => ({
  shape: 'rectangle',
  x: 0.04 * i,
  y: 0.5,
  w: 0.06,
  h: 0.4,
}));

/** The shortest of three: what else the machine does is no part of it. */
async function shortest(work: () => Promise<unknown>): Promise<number> {
  const times = [];
  for (let i = 0; i < 3; i += 1) times.push(await seconds(work));
  return Math.min(...times);
}

it('regions of an original, measured', async () => {
  sharp.concurrency(1);
  sharp.cache(false);
  const bare = await shortest(() => sharp(PHOTO).raw().toBuffer());
  const row = async (what: string, regions: readonly Region[]): Promise<BenchRow> => {
    const ours = await shortest(async () => {
      const greys = new GreyPictures(new HeicDecoder('unused'));
      const picture = await greys.open(PHOTO, 'image/jpeg');
      for (const region of regions) if (picture) await measureRegion(picture, region);
      greys.close();
    });
    const ms = (time: number) => `${Math.round(time * 1000)} ms`;
    return { what, measured: ms(ours), bare: `${ms(bare)} sharp decode`, ratio: (ours / bare).toFixed(2) };
  };
  sayTable('regions of one 24 MP photo measured (aim: ratio ≤ 2.5)', [
    await row('one region', BOXES.slice(0, 1)),
    await row('twenty regions', BOXES),
    await row('the whole picture', [{ shape: 'rectangle', x: 0, y: 0, w: 1, h: 1 }]),
  ]);
});
