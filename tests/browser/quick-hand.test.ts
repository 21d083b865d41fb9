import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { chooseTool, draft, markField, pictureDrawn, pointOn, stageOf, type Spot } from './bench-hands.ts';
import { eventually, signIn } from './hands.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

/** How much slower than this machine, as a phone of some years. */
const SLOWER = 6;
const TYPED = 'は4 b2';

describeInBrowser('a hand that is quicker than a slow machine', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    page = await app.open();
    await page.goto(`${site.things.house}/photos/${site.photos.cranes}`);
    await signIn(page, t, KEEPER);
    const machine = await page.context().newCDPSession(page);
    await machine.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  it.each([
    ['rectangle', [0.5, 0.6]],
    ['tap', [0.3, 0.3]],
  ] as const)('loses no key that is typed right after a drawing: %s', async (tool, end) => {
    await pictureDrawn(page, t);
    await chooseTool(page, t, tool);
    await drawAndType(page, t, [[0.3, 0.3], end], TYPED);
    await eventually(() => markField(page, t).inputValue()).toBe(TYPED);
    // None of the keys was taken for one of the bench.
    expect(await page.getByRole('radio', { checked: true }).count()).toBe(0);
    expect(await page.locator('.bench-tools').getAttribute('data-tool')).toBe(tool);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await eventually(() => draft(page, t).count()).toBe(0);
  });
});

/** All at once, without waiting for what the page makes of it. */
async function drawAndType(page: Page, t: Words, [from, to]: [Spot, Spot], text: string): Promise<void> {
  const [a, b] = [await pointOn(stageOf(page, t), from), await pointOn(stageOf(page, t), to)];
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move(b.x, b.y);
  await Promise.all([page.mouse.up(), page.keyboard.type(text)]);
}
