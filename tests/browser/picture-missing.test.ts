import { rm } from 'node:fs/promises';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { PAUSES_MS } from '../../client/parts/use-picture.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { chooseTool, draft, dragBox, pictureDrawn, pointOn, stageOf } from './bench-hands.ts';
import { signIn } from './hands.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const THUMB = /\/photos\/[^/]+\/thumb$/;
const PICTURES = /\/photos\/[^/]+\/(thumb|preview|whole)$/;

describeInBrowser('a picture that does not come', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    page = await app.open();
    await page.goto('/');
    await signIn(page, t, KEEPER);
  });
  afterAll(() => app.close());

  it('says so, and nothing is drawn on what nobody sees', async () => {
    await page.route(PICTURES, (route) => route.abort());
    await page.goto(`${site.things.house}/photos/${site.photos.cranes}`);
    await page.getByText(t('bench.coming'), { exact: true }).waitFor();
    await chooseTool(page, t, 'rectangle');
    const [from, to] = [
      await pointOn(stageOf(page, t), [0.3, 0.3]),
      await pointOn(stageOf(page, t), [0.5, 0.6]),
    ];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y);
    await page.mouse.up();
    await page.waitForTimeout(300);
    expect(await draft(page, t).count()).toBe(0);
  });

  it('comes by itself once the network is back', async () => {
    await page.unroute(PICTURES);
    await page.evaluate(() => window.dispatchEvent(new Event('online')));
    await pictureDrawn(page, t);
    expect(await page.getByText(t('bench.coming'), { exact: true }).count()).toBe(0);
    await dragBox(page, t, [0.3, 0.3], [0.5, 0.6]);
  });

  it('comes by itself in lists, too, where the folder of pictures was lost', async () => {
    await rm(path.join(app.dataFolder, 'pictures'), { recursive: true });
    // Another browser, which has kept none of them.
    const list = await openSignedIn();
    const answers: number[] = [];
    list.on('response', (answer) => {
      if (THUMB.test(answer.url())) answers.push(answer.status());
    });
    await list.goto(`${site.things.house}/photos`);
    const count = Object.keys(site.photos).length;
    await list.waitForFunction(allDrawn, { of: '.photos-tile img', count });
    expect(answers.filter((status) => status === 404).length).toBeGreaterThanOrEqual(count);
    await list.goto(site.things.house);
    await list.waitForFunction(allDrawn, { of: '.thumb img', count: 1 });
  });

  it('is asked for a few times in a list, then given up until the network is back', async () => {
    const list = await openSignedIn();
    await list.clock.install();
    let asked = 0;
    await list.route(THUMB, (route) => {
      asked += 1;
      return route.abort();
    });
    await list.goto(`${site.things.house}/photos`);
    const count = Object.keys(site.photos).length;
    for (let round = 1; round <= 1 + PAUSES_MS.length; round++) {
      await expect.poll(() => asked, { timeout: 20_000 }).toBe(round * count);
      const says = round > PAUSES_MS.length ? t('common.thumb.missing') : t('common.loading');
      await expect
        .poll(() => list.locator('.photos-tile').getByText(says, { exact: true }).count(), {
          timeout: 20_000,
        })
        .toBe(count);
      await list.clock.runFor(PAUSES_MS[round - 1] ?? 120_000);
    }
    expect(asked).toBe(count * (1 + PAUSES_MS.length));
    await list.unroute(THUMB);
    await list.evaluate(() => window.dispatchEvent(new Event('online')));
    await list.waitForFunction(allDrawn, { of: '.photos-tile img', count });
  });

  async function openSignedIn(): Promise<Page> {
    const opened = await app.open();
    await opened.goto('/');
    await signIn(opened, t, KEEPER);
    return opened;
  }
});

/** Runs in the page. */
function allDrawn({ of, count }: { of: string; count: number }): boolean {
  const pictures = Array.from(document.querySelectorAll<HTMLImageElement>(of));
  return pictures.length >= count && pictures.every(({ naturalWidth }) => naturalWidth > 0);
}
