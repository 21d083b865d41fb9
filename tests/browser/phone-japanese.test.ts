import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { ja } from '../../client/i18n/ja.ts';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import {
  chooseTool,
  draft,
  dragFinger,
  drawnBetween,
  markField,
  openOnBench,
  pointOn,
  stageOf,
  tagArrived,
} from './bench-hands.ts';
import {
  button,
  chooseFiles,
  drawn,
  eventually,
  goTo,
  hasFocus,
  heading,
  link,
  lookAtAll,
  row,
  signIn,
} from './hands.ts';
import { openScreen, photograph } from './screens.ts';
import { damagedPhoto } from './site-photos.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const PHONE = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  hasTouch: true,
  isMobile: true,
  locale: 'ja-JP',
  timezoneId: 'Asia/Tokyo',
} as const;
const NARROW = { width: 320, height: 693 };

describeInBrowser('on a phone, in Japanese', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('ja'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', '谷の舟小屋');
    page = await app.open(PHONE);
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  it('speaks Japanese to a Japanese phone and signs in', async () => {
    await page.goto('/');
    await heading(page, ja.account.signIn.title).waitFor();
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('ja');
    await photograph(page, 'phone-390-ja-sign-in');
    await signIn(page, t, KEEPER);
    await link(page, '谷の舟小屋').tap();
    await heading(page, ja.days.title).waitFor();
  });

  it('takes photos and shows them', async () => {
    await goTo(page, t, 'photos');
    const tiles = page
      .getByRole('listitem')
      .filter({ has: page.getByRole('link', { name: /\.(jpg|HEIC)/ }) });
    await eventually(() => tiles.count()).toBe(4);
    await lookAtAll(tiles);
    await eventually(() => drawn(tiles.locator('img'))).toBe(4);
    await chooseFiles(page, button(page, t('photos.choose')), [await damagedPhoto()]);
    await page
      .getByText(t('problems.code.photo-damaged', { file: 'truncated_before_sos.jpg' }), { exact: true })
      .waitFor();
    app.complaints(/4\d\d/);
  });

  it('draws with a finger, and has the words of the drawing before it', async () => {
    await openOnBench(page, t, site.fileNames.cranes);
    await chooseTool(page, t, 'rectangle');
    const stage = stageOf(page, t);
    await stage.scrollIntoViewIfNeeded();
    await dragFinger(page, await pointOn(stage, [0.3, 0.25]), await pointOn(stage, [0.6, 0.7]));
    await draft(page, t).waitFor();
    await page.getByText(t('bench.sayNow'), { exact: true }).waitFor();
    await eventually(() => isWhollySeen(markField(page, t))).toBe(true);
    await eventually(() => isWhollySeen(button(page, t('bench.form.place')))).toBe(true);
    // On the words, but not in the field: that would open the phone's own keyboard over the picture.
    expect(await hasFocus(page.getByRole('form', { name: t('bench.sayNow') }))).toBe(true);
    await photograph(page, 'phone-390-ja-drawn');
    await drawnBetween(page, t, [0.3, 0.25], [0.6, 0.7]);
    await markField(page, t).fill('じぬき');
    await page.getByRole('option').first().tap();
    await eventually(() => markField(page, t).inputValue()).toBe('い通り地貫');
    await page.getByText(t('common.stage.pegged'), { exact: true }).first().tap();
    await button(page, t('bench.form.place')).tap();
    await tagArrived(page, t, 'い通り地貫', 'pegged');
    const [placed] = (await site.ledger('tag.placed')).slice(-1);
    expect(placed?.payload).toMatchObject({
      mark: 'い通り地貫',
      stage: 'pegged',
      region: { shape: 'rectangle' },
    });
  });

  it.each([PHONE.viewport, { width: 844, height: 390 }, { width: 1024, height: 600 }, NARROW])(
    'gives the picture half of a window of $width × $height, and thumbs their room',
    async (viewport) => {
      await page.setViewportSize(viewport);
      await openScreen(page, `${site.things.house}/photos/${site.photos.cranes}`);
      await stageOf(page, t).waitFor();
      const seen = await stageOf(page, t).evaluate((stage) => {
        const { top, bottom } = stage.getBoundingClientRect();
        return (Math.min(bottom, window.innerHeight) - Math.max(top, 0)) / window.innerHeight;
      });
      expect(seen).toBeGreaterThanOrEqual(0.5);
      // WCAG 2.2, 2.5.5 asks for 44 CSS pixels.
      const small = await page.locator('.bench-tools button:visible').evaluateAll((all) =>
        all.flatMap((one) => {
          const { width, height } = one.getBoundingClientRect();
          return width < 44 || height < 44 ? [`${one.textContent}: ${width} × ${height}`] : [];
        }),
      );
      expect(small).toEqual([]);
      await page.setViewportSize(PHONE.viewport);
    },
  );

  it.each([PHONE.viewport, NARROW])(
    'has the ways to the photos before and after in one row of $width px, and the name uncut',
    async (viewport) => {
      await page.setViewportSize(viewport);
      await openScreen(page, `${site.things.house}/photos/${site.photos.house}`);
      const ways = [t('bench.previous'), t('bench.next')].map((name) => link(page, name));
      const [before, after] = await Promise.all(ways.map((way) => way.boundingBox()));
      expect(before?.y).toBe(after?.y);
      const back = page.getByRole('navigation', { name: t('common.youAreHere') }).getByRole('link');
      // Nothing lies over the way back.
      await back.click({ trial: true });
      expect((after?.x ?? 0) + (after?.width ?? 0)).toBeLessThanOrEqual(viewport.width);
      const name = heading(page, t('bench.title', { file: site.fileNames.house }));
      expect(await name.evaluate((node) => node.scrollHeight - node.clientHeight)).toBe(0);
      await page.setViewportSize(PHONE.viewport);
    },
  );

  it('reports in Japanese what is missing', async () => {
    await goTo(page, t, 'report');
    await page.getByText(t('report.whole', { hidden: 3, onRecord: 1, gaps: 2, lost: 0 })).waitFor();
    const lines = page.getByRole('table');
    expect(await row(lines, 'い三').innerText()).toContain(t('report.state.on-record'));
    expect(await row(lines, 'い二').innerText()).toContain(t('report.miss.no-photo'));
  });
});

const isWhollySeen = (element: Locator): Promise<boolean> =>
  element.evaluate((node) => {
    const { top, bottom } = node.getBoundingClientRect();
    return top >= 0 && bottom <= window.innerHeight;
  });
