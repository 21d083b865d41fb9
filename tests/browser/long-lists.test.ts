import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Browser, Locator, Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { openSite, type BenchSite } from '../bench/site.ts';
import { wordsOf } from '../client/words.ts';
import { launchBrowser } from '../support/chromium.ts';
import { fillLongHouse } from '../support/long-house.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { OWNER } from '../support/server.ts';
import { DESKTOP, HARMLESS, describeInBrowser, inOneGo } from './app.ts';
import { button, drawn, eventually, field, hasFocus, heading, link } from './hands.ts';
import { openScreen, resultFile } from './screens.ts';

const SIZE = { photos: 10_000, members: 5_000 };
/** What a window of 1280 × 900 and as much again above and below can hold, with room to spare. */
const MOST_TILES = 200;
const MOST_ROWS = 80;

describeInBrowser('a house of 10,000 photos and 5,000 members', () => {
  let site: BenchSite;
  let browser: Browser;
  let page: Page;
  let t: Words;
  let base: string;
  let complaints: string[] = [];

  beforeAll(async () => {
    const empty = await openSite('embedded');
    if (!empty) throw new Error('unreachable');
    site = await empty.whileStopped(async (place) => void (await fillLongHouse(place, empty.house, SIZE)));
    base = `/houses/${site.house}`;
    [browser, t] = await Promise.all([launchBrowser(), wordsOf('en')]);
    page = await openPage(browser, site, (text) => complaints.push(text));
  });
  afterEach(() => {
    expect(complaints).toEqual([]);
    complaints = [];
  });
  afterAll(async () => {
    await browser?.close();
    await site?.end();
  });
  inOneGo();

  const tiles = () => page.locator('.photos-tile');
  const tileLinks = () => page.locator('.photos-tile a[href]');
  const inWindow = () => tiles().evaluateAll((all) => all.map((tile) => tile.getBoundingClientRect().top));
  const y = () => page.evaluate(() => Math.round(window.scrollY));
  const height = () => page.evaluate(() => document.documentElement.scrollHeight);
  const show = async (name: string) =>
    void (await page.screenshot({ path: await resultFile(`long-${name}.png`) }));

  it('has the wall at its true height, few tiles of it in the page, and pictures wherever one stops', async () => {
    let thumbs = 0;
    page.on('request', (request) => (thumbs += request.url().endsWith('/thumb') ? 1 : 0));
    await openScreen(page, `${base}/photos`);
    await page.getByText('10,000 photos', { exact: true }).waitFor();
    await eventually(() => drawn(tiles().locator('img'))).toBeGreaterThan(5);
    const whole = await height();
    await show('wall');
    await page.mouse.move(600, 500);
    for (let i = 0; i < 15; i++) {
      await page.mouse.wheel(0, 700);
      expect(await tiles().count()).toBeLessThan(MOST_TILES);
    }
    await show('wall-scrolled');
    const before = thumbs;
    await page.keyboard.press('End');
    await eventually(y).toBeGreaterThan(whole - 2000);
    await page.getByRole('region', { name: t('photos.list.undated') }).waitFor();
    await eventually(() => drawn(tiles().locator('img'))).toBeGreaterThan(20);
    await show('wall-end');
    expect(await tiles().count()).toBeLessThan(MOST_TILES);
    expect(await height()).toBeCloseTo(whole, -2);
    // Only those at the end, none of the thousands on the way.
    expect(thumbs - before).toBeLessThan(MOST_TILES);
    const tops = await inWindow();
    expect(tops.filter((top) => top > 0 && top < 900).length).toBeGreaterThan(10);
    await page
      .getByRole('region', { name: t('photos.list.undated') })
      .getByText(t('photos.list.undatedText'))
      .waitFor();
  });

  it('goes from tile to tile by Tab and by arrows, and keeps the focus however far one scrolls', async () => {
    await page.keyboard.press('Home');
    await eventually(y).toBe(0);
    const first = tiles().first().locator('a');
    await eventually(() => first.getAttribute('href')).not.toBeNull();
    await first.focus();
    const place = () =>
      page.evaluate(() => {
        const { day, position } = (document.activeElement as HTMLElement).dataset;
        return { day, position: Number(position) };
      });
    const { day } = await place();
    await page.keyboard.press('Tab');
    expect(await place()).toEqual({ day, position: 1 });
    await page.keyboard.press('ArrowRight');
    expect(await place()).toEqual({ day, position: 2 });
    for (let i = 0; i < 30; i++) await page.keyboard.press('ArrowDown');
    const far = await place();
    expect(far.day).not.toBe(day);
    const box = await page.locator(':focus').boundingBox();
    expect(box?.y).toBeGreaterThan(40);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(900);
    await page.keyboard.press('End');
    await eventually(y).toBeGreaterThan(50_000);
    await eventually(() => tileLinks().count()).toBeGreaterThan(20);
    expect(await place()).toEqual(far);
    const item = page.locator('.photos-tile:has(:focus)');
    expect(await item.getAttribute('aria-posinset')).toBe(String(far.position + 1));
    expect(Number(await item.getAttribute('aria-setsize'))).toBeGreaterThan(far.position);
    await page.keyboard.press('ArrowLeft');
    await eventually(() =>
      page.locator(':focus').evaluate((e) => e.getBoundingClientRect().top),
    ).toBeGreaterThan(0);
  });

  const goDeep = async () => {
    // What has just come back to its place may scroll once more.
    await eventually(() => page.evaluate(() => (window.scrollTo(0, 40_000), window.scrollY))).toBe(40_000);
    return middleTile(page);
  };

  it.each(['the way back on the screen', 'the browser’s own'])(
    'comes back from a photo to its place by %s',
    async (way) => {
      await openScreen(page, `${base}/photos`);
      const tile = await goDeep();
      const [from, name] = [await y(), (await tile.getAttribute('aria-label')) ?? ''];
      await tile.click();
      await link(page, t('bench.next')).waitFor();
      if (way.startsWith('the way'))
        await link(
          page.getByRole('navigation', { name: t('common.youAreHere') }),
          t('common.nav.photos'),
        ).click();
      else await page.goBack();
      await heading(page, t('photos.title')).waitFor();
      await eventually(() => page.locator(':focus').getAttribute('aria-label')).toBe(name);
      expect(Math.abs((await y()) - from)).toBeLessThanOrEqual(2);
    },
  );

  it('lands at another photo to which one has gone on meanwhile', async () => {
    await (await goDeep()).click();
    for (let i = 0; i < 3; i++) {
      const before = page.url();
      await link(page, t('bench.next')).click();
      await eventually(() => page.url()).not.toBe(before);
    }
    const id = new URL(page.url()).pathname.split('/').at(-1) ?? '';
    await link(
      page.getByRole('navigation', { name: t('common.youAreHere') }),
      t('common.nav.photos'),
    ).click();
    await eventually(() => page.locator(':focus').getAttribute('href')).toContain(id);
    await eventually(() =>
      page.locator(':focus').evaluate((e) => e.getBoundingClientRect().top),
    ).toBeGreaterThan(40);
  });

  it('lets nothing jump when somebody adds photos above', async () => {
    const tile = await goDeep();
    const at = async () => (await tile.boundingBox())?.y;
    const [before, whole] = [await at(), await height()];
    const files = await Promise.all(
      [1, 2].map(async (i) => ({
        name: `${i}.jpg`,
        bytes: await makeJpeg(i + 50, takenAt(`2026-11-0${i}T10:00:00`)),
      })),
    );
    await site.client.upload(site.house, files);
    await eventually(height).toBeGreaterThan(whole + 200);
    expect(Math.abs(((await at()) ?? 0) - (before ?? 0))).toBeLessThanOrEqual(2);
    await show('wall-added');
  });

  it('narrows the wall by several words at once, and the bench walks the same photos', async () => {
    await openScreen(page, `${base}/photos`);
    await page.getByRole('combobox', { name: t('photos.filter.mark') }).fill('nuki');
    await page.getByRole('option').first().waitFor();
    await page.keyboard.press('Enter');
    await button(page, /^No longer: .+貫/).waitFor();
    await page.getByLabel(t('photos.filter.by')).selectOption({ label: 'Mio' });
    const status = page.getByRole('status').getByText(/^\d+ photos?$/);
    await button(
      page,
      t('photos.filter.remove', { word: t('photos.filter.addedBy', { name: 'Mio' }) }),
    ).waitFor();
    const query = new URL(page.url()).searchParams;
    expect([...query.keys()].sort()).toEqual(['by', 'mark']);
    const { photos } = await site.client.get<{ photos: string[] }>(`${base}/photo-order?${query.toString()}`);
    await eventually(() => status.innerText()).toMatch(new RegExp(`^${photos.length} `));
    await show('filtered');
    const id = (await tileLinks().first().getAttribute('href'))?.match(/photos\/([^?]+)/)?.[1] ?? '';
    await tileLinks().first().click();
    const place = { at: String(photos.indexOf(id) + 1), total: String(photos.length) };
    await page.getByText(t('bench.place', place)).waitFor();
    await page.goBack();
    await button(page, t('photos.filter.all')).click();
    await page.getByText('10,002 photos', { exact: true }).waitFor();
  });

  it('finds among 5,000 members at each key, and comes back to words and place', async () => {
    await openScreen(page, `${base}/members`);
    const rows = page.getByRole('list', { name: t('members.list') }).getByRole('listitem');
    await eventually(() => rows.count()).toBeGreaterThan(10);
    await show('members');
    expect(await rows.count()).toBeLessThan(MOST_ROWS);
    await field(page, t('members.search')).fill('貫 ろ');
    await eventually(() => rows.first().innerText()).toContain('貫');
    const count = Number(await rows.first().getAttribute('aria-setsize'));
    expect(count).toBeLessThan(SIZE.members / 8);
    await page.mouse.move(600, 700);
    for (let i = 0; i < 6; i++) await page.mouse.wheel(0, 300);
    await eventually(y).toBeGreaterThan(1500);
    // By its mark: while the list is still on its way, the twentieth is now this one and now that.
    const mark = await rows.nth(20).getByRole('link').innerText();
    const member = page.getByRole('link', { name: mark, exact: true });
    await member.scrollIntoViewIfNeeded();
    const from = await y();
    await member.click();
    await heading(page, new RegExp(`^${mark}`)).waitFor();
    await link(
      page.getByRole('navigation', { name: t('common.youAreHere') }),
      t('common.nav.members'),
    ).click();
    const back = page.getByRole('link', { name: mark, exact: true });
    await eventually(() => hasFocus(back)).toBe(true);
    expect(await field(page, t('members.search')).inputValue()).toBe('貫 ろ');
    expect(Math.abs((await y()) - from)).toBeLessThan(900);
    await page.keyboard.press('ArrowDown');
    await eventually(() => page.locator(':focus').innerText()).not.toBe(mark);
    expect(await rows.count()).toBeLessThan(MOST_ROWS);
  });
});

async function openPage(
  browser: Browser,
  { server }: BenchSite,
  complain: (text: string) => void,
): Promise<Page> {
  const context = await browser.newContext({ ...DESKTOP, baseURL: server.origin });
  context.setDefaultTimeout(20_000);
  await context.request.post('/api/v1/session', { data: OWNER });
  const page = await context.newPage();
  page.on('pageerror', (error) => complain(error.message));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type()) && !HARMLESS.test(message.text()))
      complain(message.text());
  });
  return page;
}

/** The tile in the middle of the window, once it is known which photo it is. */
async function middleTile(page: Page): Promise<Locator> {
  const read = () =>
    page.evaluate(() => {
      const tile = document.elementsFromPoint(500, 450).find((element) => element.matches('.photos-tile a'));
      return tile?.getAttribute('href') ?? '';
    });
  await eventually(read).not.toBe('');
  return page.locator(`a[href="${await read()}"]`);
}
