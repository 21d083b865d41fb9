import { readability, type LegibilityMeasures, type Verdict } from '#domain/photo/legibility';
import type { GreyPicture } from '../../server/imaging/grey-picture.ts';
import { measureRegion } from '../../server/imaging/measure-region.ts';
import { harm, shrinkTo, type Harm } from './degrade.ts';
import { ACROSS } from './real-regions.ts';

const WHOLE = { shape: 'rectangle', x: 0, y: 0, w: 1, h: 1 } as const;

/** Blur as a share of the narrow side; other harm as it is. */
export interface Level extends Harm {
  readonly across: number;
  readonly share: number;
}

export const harmOf = ({ across, share, gain, noise = 2, quality = 85 }: Level): Harm => ({
  blur: share * across,
  noise,
  quality,
  ...(gain === undefined ? {} : { gain }),
});

export async function measureAt(region: GreyPicture, level: Level): Promise<LegibilityMeasures> {
  const shrunk = await shrinkTo(region, level.across / ACROSS);
  return measureRegion(await harm(shrunk, harmOf(level)), WHOLE);
}

export async function judgeAt(region: GreyPicture, level: Level): Promise<Verdict> {
  return readability(await measureAt(region, level)).verdict;
}
