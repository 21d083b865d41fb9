import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { HouseView } from '#domain/contract/views';
import { dayIn, formatDay } from '../../client/i18n/format.ts';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { newHouse } from '../support/server.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { button, eventually, field, heading, link, signIn } from './hands.ts';
import { openScreen, photograph } from './screens.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

/** More than come with the page, and than one page of those that come after. */
const DAYS = 40;
const dayOf = (n: number) => new Date(Date.UTC(2025, 3, 1 + n)).toISOString().slice(0, 10);
/** Later than it is added, and still a year that a camera may write. */
const FUTURE = `${new Date().getFullYear() + 2}-01-01`;

describeInBrowser('the front page of a house', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let fresh: HouseView;
  let page: Page;

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    fresh = await newHouse(site.client, 'Fresh house');
    const exif = (day: string) => takenAt(`${day}T09:00:00`);
    const small = { width: 64, height: 48 };
    const files = await Promise.all(
      [...Array(DAYS).keys()].map(async (n) => ({
        name: `day-${n}.jpg`,
        bytes: await makeJpeg(n, exif(dayOf(n)), small),
      })),
    );
    await site.client.upload(site.house.id, files);
    const future = await makeJpeg(DAYS + 1, exif(FUTURE), small);
    await site.client.upload(site.house.id, [{ name: 'future.jpg', bytes: future }]);
    page = await app.open();
    await page.goto('/');
    await signIn(page, t, KEEPER);
    await openScreen(page, site.things.house);
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  it('shows three things to look at on the first visit, and never again', async () => {
    const tour = page.getByRole('region', { name: t('days.tour.title') });
    const steps = tour.getByRole('link');
    await eventually(() => steps.allInnerTexts()).toEqual([
      t('common.nav.report'),
      t('days.tour.photo'),
      t('common.nav.frame'),
    ]);
    const first = () => steps.evaluateAll((links) => links.findIndex((a) => a.matches('.button-act')));
    expect(await first()).toBe(0);
    await steps.first().click();
    await heading(page, t('report.title')).waitFor();
    await page.goBack();
    await eventually(first).toBe(1);
    await steps.nth(1).click();
    await page.waitForURL(/\/photos\//);
    await page.goBack();
    await photograph(page, 'front-page-tour-en');
    await button(tour, t('days.tour.end')).click();
    await eventually(() => tour.count()).toBe(0);
    await openScreen(page, site.things.house);
    expect(await tour.count()).toBe(0);
  });

  it('says first what closes next and which members miss a record, each leading to its page', async () => {
    const next = page.locator('section').filter({ has: page.getByRole('heading', { name: t('days.next') }) });
    await next.getByText('hides 3 members, with 2 gaps', { exact: true }).waitFor();
    await next.getByText(t('report.short.no-photo'), { exact: true }).waitFor();
    // The reading over the kanji is heard once: as romaji with the gloss.
    await link(next, 'い二 hashira, post').click();
    // Its stage stands beside the name once the member is read.
    await page.getByRole('heading', { level: 1, name: /^い二/ }).waitFor();
    await page.goBack();
    await heading(page, t('days.title')).waitFor();
    await photograph(page, 'front-page-en');
  });

  it('shows every day once, more of them as the end comes near', async () => {
    const days = page.getByRole('list', { name: t('days.days') });
    const first = await days
      .getByRole('listitem')
      .filter({ has: page.locator('p') })
      .count();
    expect(first).toBeLessThan(DAYS);
    const oldest = link(days, formatDay('2001-07-11', 'en'));
    await expect
      .poll(
        async () => {
          await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
          return oldest.count();
        },
        { timeout: 30_000 },
      )
      .toBe(1);
    const written = await days.locator('> li > a').allInnerTexts();
    expect(new Set(written).size).toBe(written.length);
    // The last of the days stands above the list, as the last one with anything on it; one is 2020, two are earlier.
    const expected = [...Array(DAYS - 1).keys()].map((n) => formatDay(dayOf(DAYS - 2 - n), 'en'));
    expect(written.slice(0, DAYS - 1)).toEqual(expected);
    expect(written).toHaveLength(DAYS - 1 + 3);
  });

  it('keeps a date that cannot be out of the days and says why', async () => {
    const wrong = page.getByRole('region', { name: t('days.impossible', { count: 1 }) });
    await wrong.getByText(t('days.doubt.after-upload'), { exact: true }).waitFor();
    const days = page.getByRole('list', { name: t('days.days') });
    expect(await link(days, formatDay(FUTURE, 'en')).count()).toBe(0);
    await link(wrong, formatDay(FUTURE, 'en')).click();
    await heading(page, formatDay(FUTURE, 'en')).waitFor();
    await page.getByText(t('days.doubt.after-upload'), { exact: true }).waitFor();
    await page.goBack();
  });

  it("takes today's note, and shows it", async () => {
    await button(page, t('days.writeNote')).click();
    await field(page, t('days.day.ownNote')).fill('Frost in the morning.');
    await button(page, t('days.day.saveNote')).click();
    await page.getByText(t('days.day.noteSaved')).waitFor();
    const today = dayIn('Asia/Tokyo', new Date());
    const { notes } = await site.client.get<{ notes: { text: string }[] }>(
      `${site.things.house}/days/${today}`,
    );
    expect(notes.map(({ text }) => text)).toEqual(['Frost in the morning.']);
    await openScreen(page, site.things.house);
    await page.getByText('Frost in the morning.', { exact: true }).waitFor();
    await button(page, t('days.changeNote')).waitFor();
  });

  it('tells a fresh house what to do, in order', async () => {
    await openScreen(page, `/houses/${fresh.id}`);
    const steps = page.getByRole('region', { name: t('days.first.title') }).getByRole('link');
    await eventually(() => steps.allInnerTexts()).toEqual([
      t('days.first.schedule.do'),
      t('days.first.photos.do'),
      t('days.first.covering.do'),
      t('days.first.firstDay.do'),
    ]);
    await photograph(page, 'front-page-fresh-en');
  });
});
