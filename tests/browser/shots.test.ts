import { randomUUID } from 'node:crypto';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { BrowserContextOptions, Page } from 'playwright-core';
import type { ShotListView } from '#domain/contract/shot-views';
import { dayAfter } from '#domain/frame/invented/invented-house';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { canReadPdf, overdrawn, pdfWords } from '../support/pdf-words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { prepareFrame, wall, type FrameSite } from './frame-site.ts';
import { eventually, heading, link, signIn } from './hands.ts';
import { openScreen, photograph, resultFile } from './screens.ts';
import { KEEPER } from './site.ts';

const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

describeInBrowser('the shot list', () => {
  let app: App;
  let site: FrameSite;
  beforeAll(async () => {
    app = await startApp();
    site = await prepareFrame(app.server.origin, app.server.firstLink ?? '');
    const { client, house } = site;
    await site.tag('2026-04-02', ['い一', 'い二', 'い三', 'い四'], 'raised');
    const { today } = await client.get<ShotListView>(`${house}/shot-list`);
    const plan = (name: string, days: number, more: object) =>
      client.post(`${house}/coverings`, {
        ...{ id: randomUUID(), name, kind: 'plaster', plannedDay: dayAfter(today, days), hides: [] },
        ...more,
      });
    await plan('い通り 荒壁', 2, { zone: wall('first', 'い', '一', '四') });
    await plan('二階の床', 5, {
      kind: 'floor',
      zone: { shape: 'flat', corners: ['い一', 'に四'], bottom: 3100, top: 3260 },
    });
    await plan('に通り 荒壁', 20, { zone: wall('first', 'に', '一', '四') });
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  const enter = async (lang: 'en' | 'ja', options: BrowserContextOptions = {}): Promise<[Page, Words]> => {
    const page = await app.open({ ...options, locale: lang === 'ja' ? 'ja-JP' : 'en-GB' });
    const t = await wordsOf(lang);
    await page.goto(site.house);
    await signIn(page, t, KEEPER);
    return [page, t];
  };
  const marks = (page: Page) => page.locator('.shot-what a').allTextContents();

  it('is walked with a phone in Japanese, and ticks off what comes on record without moving it', async () => {
    const [page, t] = await enter('ja', PHONE);
    await link(page, t('common.toShots')).tap();
    await heading(page, t('shots.title')).waitFor();
    await page.locator('.walk-dot').first().waitFor();
    const before = await marks(page);
    expect(before).toContain('い胴貫');
    // Closes in twenty days, and a week is asked for.
    expect(before).not.toContain('に地貫');
    await page.getByText(t('shots.later', { count: 1 })).waitFor();
    await photograph(page, 'phone-390-ja-shots-begun');
    const row = page.locator('.shot').filter({ has: link(page, 'い胴貫') });
    expect(await row.count()).toBeGreaterThan(0);
    expect(await row.getByText(t('shots.state.on-record')).count()).toBe(0);

    await site.tag('2026-04-20', ['い胴貫'], 'pegged');
    await row.first().getByText(t('shots.state.on-record')).waitFor();
    await eventually(() => row.getByText(t('shots.state.on-record')).count()).toBe(await row.count());
    expect(await marks(page)).toEqual(before);
    await photograph(page, 'phone-390-ja-shots-ticked');

    // Away to the photos and back, by a page that was loaded anew: the walk is the same.
    await page
      .locator('.shot-place')
      .first()
      .getByRole('link', { name: t('shots.addPhotos') })
      .tap();
    await heading(page, t('photos.title')).waitFor();
    await page.goBack();
    await page.reload();
    await row.first().getByText(t('shots.state.on-record')).waitFor();
    expect(await marks(page)).toEqual(before);

    await page.getByRole('button', { name: t('shots.order') }).tap();
    await eventually(() => row.count()).toBe(0);
    expect((await marks(page)).length).toBeLessThan(before.length);
    await page.context().close();
  });

  it('is reached and used with the keyboard alone, in the language that one turns to', async () => {
    const [page, t] = await enter('en');
    await openScreen(page, `${site.house}/report`);
    await link(page, t('common.toShots')).focus();
    await page.keyboard.press('Enter');
    await heading(page, t('shots.title')).waitFor();
    await page.locator('.shot').first().waitFor();
    const soon = (await marks(page)).length;
    await page.getByRole('radio', { name: t('shots.days', { count: 7 }) }).focus();
    for (const days of ['14', 'all']) {
      await page.keyboard.press('ArrowRight');
      await page.waitForURL(new RegExp(`days=${days}$`));
    }
    await eventually(async () => (await marks(page)).length).toBeGreaterThan(soon);
    expect(await marks(page)).toContain('に地貫');
    await photograph(page, 'shots-all');
    await page.getByRole('button', { name: '日本語' }).focus();
    await page.keyboard.press('Enter');
    await heading(page, (await wordsOf('ja'))('shots.title')).waitFor();
    await link(page, 'に地貫').first().focus();
    await page.keyboard.press('Enter');
    await page.waitForURL((url) => decodeURIComponent(url.pathname).endsWith('/members/に地貫'));
    await page.context().close();
  });

  it.skipIf(!canReadPdf())('goes on A4 with its plan, its numbers and a box for each shot', async () => {
    const [page, t] = await enter('en');
    await openScreen(page, `${site.house}/shots?days=all`);
    const shots = page.locator('.shot');
    await shots.first().waitFor();
    const [count, places] = [await shots.count(), await page.locator('.shot-place').count()];
    await page.emulateMedia({ media: 'print' });
    const boxes = page.locator('.shot-tick');
    const sizes = await boxes.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().width));
    // 5 mm at 96 px an inch.
    expect(sizes.filter((size) => size > 15 && size < 24)).toHaveLength(count);
    const file = await resultFile('shots-paper.pdf');
    await page.pdf({ path: file, preferCSSPageSize: true });
    await page.emulateMedia({ media: null });
    const words = pdfWords(file);
    expect(overdrawn(words)).toEqual([]);
    const said = words.map(({ text }) => text);
    for (const mark of new Set(await marks(page))) expect(said, mark).toContain(mark);
    // Each number stands on the plan and at its place.
    for (let n = 1; n <= places; n++)
      expect(said.filter((text) => text === String(n)).length).toBeGreaterThan(1);
    expect(said.join(' ')).toContain(t('shots.tickHint'));
    // Of 210 mm (ISO 216) a margin is left, but for rounding.
    expect(Math.max(...words.map(({ right }) => right))).toBeLessThanOrEqual(595 - (11 / 25.4) * 72);
    await page.context().close();
  });

  it('ticks nothing off that closed without a record, and leaves what is settled out of the print', async () => {
    const { client, house } = site;
    await client.post(`${house}/protections`, {
      ...{ id: randomUUID(), name: 'North sheets', what: 'sheet', hides: ['に地貫'] },
      laidAt: '2026-04-10T00:00:00.000Z',
    });
    const [page, t] = await enter('en', PHONE);
    await openScreen(page, `${site.house}/shots?days=all`);
    const row = page.locator('.shot').filter({ has: link(page, 'い地貫') });
    await row.first().waitFor();
    const before = await marks(page);
    const under = page.locator('.shot').filter({ has: link(page, 'に地貫') });
    await under
      .first()
      .getByText(/North sheets.*lift it to photograph/u)
      .waitFor();

    const { coverings } = await client.get<ShotListView>(`${house}/shot-list`);
    const wallOnI = coverings.find(({ name }) => name === 'い通り 荒壁');
    await client.post(`/coverings/${wallOnI?.id ?? ''}/close`, {
      withoutRelease: 'Nobody inspects this house.',
    });
    await row.first().getByText(t('shots.state.lost'), { exact: true }).waitFor();
    expect(await marks(page)).toEqual(before);
    expect(await row.locator('.shot-tick svg').count()).toBe(0);
    await page
      .getByText(t('shots.closedSince', { count: 1, names: 'い通り 荒壁' }), { exact: true })
      .waitFor();
    const total = await page.locator('.shot').count();
    await page.getByText(t('shots.progress', { done: 0, total })).waitFor();
    await photograph(page, 'phone-390-shots-lost');

    await page.emulateMedia({ media: 'print' });
    expect(await row.first().isVisible()).toBe(false);
    expect(await under.first().isVisible()).toBe(true);
    const width = (of: string) =>
      page
        .locator(of)
        .first()
        .evaluate((line) => parseFloat(getComputedStyle(line).strokeWidth));
    expect(await width('.walk-missing')).toBeGreaterThan(5 * (await width('.walk-line')));
    await photograph(page, 'shots-print-left');
    await page.emulateMedia({ media: null });
    await page.getByRole('button', { name: t('shots.order') }).tap();
    await eventually(() => row.count()).toBe(0);
    await page.context().close();
  });
});
