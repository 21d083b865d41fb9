import { existsSync } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import path from 'node:path';
import sharp from 'sharp';
import { beforeAll, describe, expect, it } from 'vitest';
import { readability, VERDICTS } from '#domain/photo/legibility';
import { measureRegion } from '../../server/imaging/measure-region.ts';
import { groundVerdict } from '../calibration/bars.ts';
import { grey } from '../calibration/degrade.ts';
import { harmOf, judgeAt } from '../calibration/judge.ts';
import { HELD_SHARES } from '../calibration/levels.ts';
import { HELD_BACK, PACKAGED, realRegions } from '../calibration/real-regions.ts';
import { ROOT } from '../support/project-files.ts';

const FOLDER = path.join(ROOT, 'tests', 'calibration');
const rank = (verdict: (typeof VERDICTS)[number]) => VERDICTS.indexOf(verdict);

describe('the limits of legibility', () => {
  beforeAll(() => void sharp.concurrency(1));

  it('agree with bars that were harmed alike, at levels and in photos by which they were not chosen', async () => {
    const held = await realRegions(
      HELD_BACK.some((name) => existsSync(name)) ? HELD_BACK : PACKAGED.slice(2),
    );
    expect(held.length).toBeGreaterThan(5);
    let [same, all] = [0, 0];
    for (const share of HELD_SHARES) {
      const level = { across: 64, share };
      const ground = await groundVerdict(64, harmOf(level));
      for (const region of held) {
        const verdict = await judgeAt(region, level);
        expect(Math.abs(rank(verdict) - rank(ground)), `blur ${share}`).toBeLessThanOrEqual(1);
        // Whoever is in doubt does not refuse.
        if (ground !== 'unreadable') expect(verdict, `blur ${share}`).not.toBe('unreadable');
        same += Number(verdict === ground);
        all += 1;
      }
    }
    expect(same / all).toBeGreaterThan(0.8);
  });

  it.each(VERDICTS)('call the committed crop %s what its name says', async (name) => {
    const picture = await grey(sharp(path.join(FOLDER, `${name}.jpg`)));
    const whole = { shape: 'rectangle', x: 0, y: 0, w: 1, h: 1 } as const;
    expect(readability(await measureRegion(picture, whole)).verdict).toBe(name);
  });

  it('are shown with crops that together stay small', async () => {
    const sizes = await Promise.all(
      VERDICTS.map(async (name) => (await stat(path.join(FOLDER, `${name}.jpg`))).size),
    );
    expect(sizes.reduce((a, b) => a + b)).toBeLessThan(60_000);
    expect(JSON.parse(await readFile(path.join(FOLDER, 'legibility.json'), 'utf8'))).toHaveProperty('held');
  });
});
