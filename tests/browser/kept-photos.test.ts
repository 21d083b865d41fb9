import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { BrowserContext, Page, Route } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { makeJpeg } from '../support/pictures.ts';
import { Client } from '../support/server.ts';
import { describeInBrowser, inOneGo, startApp, type App } from './app.ts';
import { button, chooseFiles, eventually, goTo, heading, PASSWORD, signIn } from './hands.ts';
import { openScreen, photograph } from './screens.ts';
import type { SitePhoto } from './site-photos.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const CUT_OFF = /ERR_INTERNET_DISCONNECTED|ERR_FAILED|dynamically imported module/;
const MATE = 'ren@example.org';
const POSTED = /\/houses\/[^/]+\/photos$/;

describeInBrowser('photos that were chosen and not yet sent', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;
  let context: BrowserContext;
  /** How many more photos may reach the server; the rest hang, or are cut off. */
  let room = 0;
  /** Photos whose bytes left the browser for the server. */
  let posts = 0;

  const files = (from: number, n: number): Promise<SitePhoto[]> =>
    Promise.all(
      Array.from({ length: n }, async (_, i) => ({
        name: `wall-${String(from + i).padStart(2, '0')}.jpg`,
        mimeType: 'image/jpeg',
        buffer: await makeJpeg(from + i),
      })),
    );
  const added = async (start = 'wall-'): Promise<string[]> =>
    (await site.ledger('photo.added'))
      .map(({ payload, by }) => [String(Reflect.get(payload as object, 'fileName')), by?.name])
      .filter(([name]) => name?.startsWith(start))
      .map(([name, by]) => `${name} ${by}`)
      .sort();
  const expected = (from: number, n: number, by: string) =>
    Array.from({ length: n }, (_, i) => `wall-${String(from + i).padStart(2, '0')}.jpg ${by}`);
  const gate = async (route: Route) => {
    if (route.request().method() !== 'POST') return route.continue();
    if (room <= 0) return room === 0 ? undefined : route.abort('internetdisconnected');
    room -= 1;
    posts += 1;
    return route.continue();
  };
  const newPage = async () => {
    const opened = await context.newPage();
    await opened.goto(site.things.house);
    return opened;
  };

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    const { link } = await site.client.post<{ link: string }>(`${site.things.house}/people`, {
      email: MATE,
      role: 'carpenter',
    });
    await new Client(app.server.origin).post(`/links/${link}`, {
      name: 'Ren',
      email: MATE,
      password: PASSWORD,
    });
    page = await app.open();
    context = page.context();
    await page.goto(`${site.things.house}/photos`);
    await signIn(page, t, KEEPER);
    await context.route(POSTED, gate);
  });
  inOneGo();
  afterEach(() => expect(app.complaints(CUT_OFF)).toEqual([]));
  afterAll(() => app.close());

  it('go on by themselves after the page has died and after a reload; each arrives once', async () => {
    room = 3;
    await chooseFiles(page, button(page, t('photos.choose')), await files(1, 12));
    await eventually(added).toHaveLength(3);
    await page.getByText(t('photos.queue.kept')).waitFor();
    await photograph(page, 'kept-photos-list');
    await goTo(page, t, 'report');
    await page.getByText(t('photos.queue.line', { sent: '3', total: '12' })).waitFor();
    await photograph(page, 'kept-photos-line');

    // The renderer's process ends: no handler runs.
    const died = page.waitForEvent('crash');
    const debug = await context.newCDPSession(page);
    void debug.send('Page.crash').catch(() => undefined);
    await died;
    await page.close();
    room = 4;
    page = await newPage();
    await heading(page, t('days.title')).waitFor();
    await eventually(added).toHaveLength(7);
    await page.getByText(t('photos.queue.line', { sent: '4', total: '9' })).waitFor();

    room = Infinity;
    await page.reload();
    await eventually(added).toEqual(expected(1, 12, 'Mio'));
    await page.getByText(t('photos.queue.line', { sent: '5', total: '5' })).waitFor();
    // Two are on their way at a time. What was under way when its page ended is sent again, and recognised.
    expect(posts).toBeLessThanOrEqual(12 + 2 * 2);
    await page.reload();
    await heading(page, t('days.title')).waitFor();
    await page.waitForTimeout(500);
    expect(await page.getByText(/photos sent/).count()).toBe(0);
  });

  it('are not sent again when only the answer was lost', async () => {
    room = 0;
    await openScreen(page, `${site.things.house}/photos`);
    await context.unroute(POSTED);
    await context.route(POSTED, async (route) => {
      if (route.request().method() !== 'POST') return route.continue();
      posts += 1;
      await route.fetch();
      return route.abort('internetdisconnected');
    });
    const before = posts;
    await chooseFiles(page, button(page, t('photos.choose')), await files(20, 1));
    await eventually(() => added('wall-20')).toHaveLength(1);
    await page.getByText(t('photos.queue.unheard', { count: 1 })).waitFor();
    await page.reload();
    await page.getByText(/ 1 already here, /).waitFor();
    expect(posts).toBe(before + 1);
    await context.unroute(POSTED);
    await context.route(POSTED, gate);
  });

  it('wait for their person on a shared phone, whose name is said, and go out in no other', async () => {
    room = -1;
    await openScreen(page, `${site.things.house}/photos`);
    await chooseFiles(page, button(page, t('photos.choose')), await files(30, 4));
    await page.getByText(t('photos.queue.unheard', { count: 4 })).waitFor();
    await page.getByText(t('photos.queue.kept')).waitFor();
    await button(page, t('common.signOut')).click();
    await signIn(page, t, MATE);
    room = Infinity;
    const before = posts;
    for (const again of [false, true]) {
      if (again) await page.reload();
      else await page.goto(`${site.things.house}/photos`);
      await page.getByText(t('photos.queue.others', { count: 4, name: 'Mio' })).waitFor();
    }
    await photograph(page, 'kept-photos-others');
    await chooseFiles(page, button(page, t('photos.choose')), await files(40, 1));
    await eventually(() => added('wall-40')).toEqual(['wall-40.jpg Ren']);
    expect(posts).toBe(before + 1);
    await button(page, t('common.signOut')).click();
    await signIn(page, t, KEEPER);
    await eventually(() => added('wall-3')).toEqual(expected(30, 4, 'Mio'));
  });

  it('go out once although two windows are open', async () => {
    room = 2;
    const before = posts;
    await openScreen(page, `${site.things.house}/photos`);
    await chooseFiles(page, button(page, t('photos.choose')), await files(50, 6));
    await eventually(() => added('wall-5')).toHaveLength(2);
    const other = await newPage();
    await other.getByText(t('photos.queue.line', { sent: '0', total: '4' })).waitFor();
    await other.setViewportSize({ width: 320, height: 640 });
    await photograph(other, 'kept-photos-phone');
    // The other goes on when the first, which holds two files, is closed.
    room = Infinity;
    await page.close();
    await eventually(() => added('wall-5')).toEqual(expected(50, 6, 'Mio'));
    await other.getByText(t('photos.queue.line', { sent: '4', total: '4' })).waitFor();
    expect(posts).toBeLessThanOrEqual(before + 6);
    page = other;
  });
});
