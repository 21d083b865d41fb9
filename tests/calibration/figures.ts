import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import sharp from 'sharp';
import type { GreyPicture } from '../../server/imaging/grey-picture.ts';
import { BARS, contrastLeft, groundVerdict } from './bars.ts';
import type { Figure } from './figure.ts';
import { writeCrops } from './crops.ts';
import { harmOf, measureAt, judgeAt, type Level } from './judge.ts';
import { CHOSEN_SHARES, HELD_SHARES, levels } from './levels.ts';
import { plot } from './plot.ts';
import { CHOSEN_BY, HELD_BACK, PACKAGED, realRegions } from './real-regions.ts';

export async function calibrate(folder: string): Promise<void> {
  sharp.concurrency(1);
  const chosen = await realRegions([...PACKAGED, ...CHOSEN_BY]);
  const held = await realRegions(HELD_BACK);
  const figures = {
    chosen: { regions: chosen.length, levels: await figuresOf(chosen, levels(CHOSEN_SHARES)) },
    held: { regions: held.length, levels: await figuresOf(held, levels(HELD_SHARES)) },
    sizes: await barsBySize(),
    light: await barsByLight(),
    recompressed: await recompressed(held),
  };
  await writeFile(path.join(folder, 'legibility.json'), `${JSON.stringify(figures, null, 1)}\n`);
  await writeFile(path.join(folder, 'legibility.svg'), plot(figures.chosen.levels, figures.held.levels));
  await writeCrops(folder);
}

async function figuresOf(regions: readonly GreyPicture[], at: readonly Level[]): Promise<Figure[]> {
  const figures: Figure[] = [];
  for (const level of at) {
    const judged = { clear: 0, weak: 0, unreadable: 0 };
    const blurs: number[] = [];
    for (const region of regions) {
      judged[await judgeAt(region, level)] += 1;
      blurs.push((await measureAt(region, level)).coarseBlur);
    }
    blurs.sort((a, b) => a - b);
    const measured = [0, 0.5, 1].map((part) => round(blurs[Math.round(part * (blurs.length - 1))] ?? 0));
    figures.push({
      ...level,
      ground: await groundVerdict(level.across, harmOf(level)),
      ...(await bars(level)),
      judged,
      measured,
    });
  }
  return figures;
}

async function bars(level: Level) {
  const contrast = {
    large: round(await contrastLeft(level.across, BARS.large, harmOf(level))),
    small: round(await contrastLeft(level.across, BARS.small, harmOf(level))),
  };
  return { contrast };
}

/** A camera in focus blurs by 0.6 px. *Common practice.* */
async function barsBySize() {
  const sizes = [8, 10, 12, 14, 16, 20, 24, 28, 32, 40, 48, 64];
  return Promise.all(
    sizes.map(async (across) => ({ across, ...(await bars({ across, share: 0.6 / across })) })),
  );
}

async function barsByLight() {
  const gains = [2.8, 2.4, 2, 1.6, 1, 0.5, 0.25, 0.12, 0.08, 0.06, 0.05];
  return Promise.all(
    gains.map(async (gain) => ({
      middle: 120 * gain,
      ...(await bars({ across: 96, share: 0, gain, noise: 1 })),
    })),
  );
}

/** Compression must not pass for sharpness: of blurred regions none may become clear by it. */
async function recompressed(regions: readonly GreyPicture[]) {
  const found = [];
  for (const quality of [95, 70, 40, 20])
    for (const share of [0, 0.05, 0.14]) {
      const judged = { clear: 0, weak: 0, unreadable: 0 };
      for (const region of regions) judged[await judgeAt(region, { across: 64, share, quality })] += 1;
      found.push({ quality, share, judged });
    }
  return found;
}

const round = (value: number) => Math.round(value * 1000) / 1000;
