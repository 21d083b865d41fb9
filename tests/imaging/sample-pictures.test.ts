import { access } from 'node:fs/promises';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { HAS_SAMPLES, sample, sampleNames, saySoWithoutSamples } from '../support/samples.ts';
import { difference, useImaging } from './some-pictures.ts';

const { imaging, file } = useImaging();

async function thumbOf(
  set: string,
  name: string,
): Promise<{ thumb: string; state: string; width: number; height: number }> {
  const inspection = await imaging().inspect(sample(set, name));
  if (!inspection.ok) throw new Error(`${set}/${name}: ${inspection.code}`);
  const to = { thumb: file(`${name}-t.jpg`), preview: file(`${name}-p.jpg`) };
  const { state } = await imaging().makePictures(sample(set, name), inspection.mediaType, to);
  return { thumb: to.thumb, state, width: inspection.width, height: inspection.height };
}

/** Mean difference a channel of 255 below which two thumbs show the same: JPEG noise gives less than 2, a turned picture 30 and more. */
const SAME = 6;

describe('pictures of the samples', () => {
  saySoWithoutSamples();

  it.each(HAS_SAMPLES ? ['Landscape', 'Portrait'] : [])(
    '%s stands upright in all eight orientations',
    async (scene) => {
      const first = (await thumbOf('orientation', `${scene}_1.jpg`)).thumb;
      for (let o = 2; o <= 8; o += 1) {
        const { thumb } = await thumbOf('orientation', `${scene}_${o}.jpg`);
        expect([scene, o, (await difference(first, thumb)) < SAME]).toEqual([scene, o, true]);
      }
    },
  );

  it.each(sampleNames('orientation').filter((name) => name.startsWith('pillow')))(
    '%s is the same picture',
    async (name) => {
      const first = (await thumbOf('orientation', 'pillow_hopper_2.jpg')).thumb;
      expect(await difference(first, (await thumbOf('orientation', name)).thumb)).toBeLessThan(SAME);
    },
  );

  it.each(sampleNames('heic'))('heic/%s has thumb and preview of the right shape', async (name) => {
    const { thumb, state, width, height } = await thumbOf('heic', name);
    const made = await sharp(thumb).metadata();
    expect(state).toBe('ready');
    await access(thumb.replace('-t.jpg', '-p.jpg'));
    expect(Math.max(made.width, made.height)).toBe(Math.min(320, Math.max(width, height)));
    expect(Math.abs(made.width / made.height - width / height)).toBeLessThan(0.02);
  });

  // The decoder has turned it already and its Exif still says 6: turned twice it would be 4032 × 3024.
  it.each(HAS_SAMPLES ? ['iphonexr_orient6_offset-0600_heading.heic', 'arrow_up.heic'] : [])(
    '%s is turned once',
    async (name) => {
      const inspection = await imaging().inspect(sample('heic', name));
      expect(inspection).toMatchObject({ width: 3024, height: 4032, readings: { orientation: 6 } });
      const crop = await imaging().crop(sample('heic', name), 'image/heic', { x: 0, y: 0, w: 1, h: 1 }, 300);
      expect(await sharp(crop).metadata()).toMatchObject({ width: 300, height: 400 });
    },
  );
});
