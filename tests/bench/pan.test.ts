import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { UploadOutcome } from '#domain/contract/views';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from '../browser/app.ts';
import { pictureDrawn, stageOf } from '../browser/bench-hands.ts';
import { signIn } from '../browser/hands.ts';
import { KEEPER, prepareSite, type Site } from '../browser/site.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { framesWhile, type Frames } from './frames.ts';
import { sayTable } from './say-table.ts';

const TWELVE_MEGAPIXELS = { width: 4000, height: 3000 };
const REGIONS = 200;
const MOVES = 150;

describeInBrowser('a large photo with many regions', () => {
  let app: App;
  let site: Site;
  beforeAll(async () => {
    app = await startApp();
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
  });
  afterAll(() => app.close());

  it('is panned', async () => {
    const t = await wordsOf('en');
    const [bare, full] = [await addPhoto(site, 1), await addPhoto(site, 2)];
    for (let i = 0; i < REGIONS; i++) await tagAt(site, full, i);
    const page = await app.open();
    await page.goto(`${site.things.house}/photos/${bare}`);
    await signIn(page, t, KEEPER);
    const measure = async (photo: string): Promise<Frames> => {
      await page.goto(`${site.things.house}/photos/${photo}`);
      await pictureDrawn(page, t);
      await page.waitForTimeout(1500);
      return framesWhile(page, () => panAbout(page, t));
    };
    const [withNone, withAll] = [await measure(bare), await measure(full)];
    sayTable('12 megapixels on the bench, panned', [
      {
        what: `${REGIONS} regions, against none`,
        measured: say(withAll),
        bare: say(withNone),
        ratio: (withAll.perSecond / withNone.perSecond).toFixed(2),
      },
    ]);
  });

  async function panAbout(page: Page, t: Awaited<ReturnType<typeof wordsOf>>): Promise<void> {
    const box = await stageOf(page, t).boundingBox();
    if (!box) throw new Error('The picture is not on the screen.');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    // In the gap between two regions, or the press would choose one.
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let i = 0; i < MOVES; i++)
      await page.mouse.move(x + 200 * Math.sin(i / 9), y + 120 * Math.cos(i / 7));
    await page.mouse.up();
  }
});

const say = ({ perSecond, inTime }: Frames) =>
  `${perSecond.toFixed(0)} frames/s, ${(100 * inTime).toFixed(0)} % within 1/50 s`;

async function addPhoto({ client, house }: Site, seed: number): Promise<string> {
  const bytes = await makeJpeg(seed, takenAt(`2026-04-0${seed}T10:00:00`), TWELVE_MEGAPIXELS);
  const { results } = await client.upload<{ results: UploadOutcome[] }>(house.id, [
    { name: `large-${seed}.jpg`, bytes },
  ]);
  const [outcome] = results;
  if (!outcome || outcome.outcome === 'refused') throw new Error('The photo was refused.');
  return outcome.photo.id;
}

/** Twenty in a row, ten rows. */
async function tagAt({ client }: Site, photo: string, i: number): Promise<void> {
  const [column, row] = [i % 20, Math.floor(i / 20)];
  await client.post(`/photos/${photo}/tags`, {
    id: randomUUID(),
    mark: `い${i + 1}`,
    stage: 'pegged',
    region: { shape: 'rectangle', x: 0.01 + column * 0.049, y: 0.01 + row * 0.098, w: 0.04, h: 0.08 },
  });
}
