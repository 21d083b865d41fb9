import { readdirSync } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import path from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { PHOTO_FACTS } from '../../server/demo/render/facts/photo-facts.ts';
import { writeFacts } from '../../server/demo/render/facts/write-facts.ts';
import { stateOnDay } from '../../server/demo/render/shots/state-on-day.ts';
import { SHOTS } from '../../server/demo/render/shots/shots.ts';
import { readTruth } from '../../server/demo/render/truth/truth-file.ts';
import { ROOT } from '../support/project-files.ts';

/** The finished pictures. */
const FOLDER = path.join(ROOT, 'server', 'demo', 'photos');
const MOST_BYTES = { '.jpg': 9_000_000, '.json': 500_000 };
const inFolder = (name: string) => path.join(FOLDER, name);
/** Rendering takes a night: what is not there yet is no fault. */
const files = readdirSync(FOLDER);
const photos = PHOTO_FACTS.filter(({ name }) => files.includes(`${name}.jpg`));
const shots = SHOTS.filter(({ name }) => files.includes(`${name}.jpg`));

test('the folder holds photos of the table, each shot with its truth, and is small', async () => {
  const wanted = [...photos.map(({ name }) => `${name}.jpg`), ...shots.map(({ name }) => `${name}.json`)];
  expect(files.toSorted()).toEqual(wanted.sort());
  for (const [ending, most] of Object.entries(MOST_BYTES)) {
    const own = files.filter((file) => file.endsWith(ending)).map((file) => stat(inFolder(file)));
    expect((await Promise.all(own)).reduce((sum, { size }) => sum + size, 0)).toBeLessThan(most);
  }
});

describe.each(photos.map((facts) => [facts.name, facts] as const))('%s', (name, facts) => {
  test('says what the table says', async () => {
    const jpeg = await readFile(inFolder(`${name}.jpg`));
    expect((await writeFacts(jpeg, facts, '2026-04-01')).equals(jpeg)).toBe(true);
    const { width, height } = await sharp(jpeg).metadata();
    expect(width * 3).toBe(height * 4);
  });
});

describe.each(shots.map((shot) => [shot.name, shot] as const))('the truth of %s', (name, shot) => {
  test('knows only members that stand that day, at their stage, within the picture', async () => {
    const { day, width, height, members } = readTruth(await readFile(inFolder(`${name}.json`), 'utf8'));
    const stages = new Map(stateOnDay(shot).members.map(({ mark, stage }) => [mark, stage]));
    expect({ day, width, height }).toEqual({ day: shot.day, width: 1600, height: 1200 });
    for (const { mark, stage, bounds, pixels } of members) {
      expect(stage, mark).toBe(stages.get(mark));
      const [left = 0, top = 0, right = 0, bottom = 0] = bounds;
      expect(pixels).toBeLessThanOrEqual((right - left) * (bottom - top));
      expect(right <= width && bottom <= height && left >= 0 && top >= 0).toBe(true);
    }
  });
});
