import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { chooseTool, draft, dragBox, pictureDrawn, pointOn, stageOf } from './bench-hands.ts';
import { signIn } from './hands.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

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
});
