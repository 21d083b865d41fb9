import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { makeJpeg } from '../support/pictures.ts';
import { describeInBrowser, inOneGo, startApp, type App } from './app.ts';
import {
  chooseTool,
  draft,
  dragBox,
  drawnBetween,
  markField,
  pictureDrawn,
  pointOn,
  sayByKey,
  stageOf,
  tagArrived,
  tagRow,
} from './bench-hands.ts';
import { button, chooseFiles, eventually, goTo, heading, link, signIn } from './hands.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

/** What the browser and the viewer say when a request is cut off. */
const CUT_OFF =
  /ERR_INTERNET_DISCONNECTED|ERR_CONNECTION_REFUSED|Image load aborted|dynamically imported module/;

describeInBrowser('a weak network and a window that is loaded again', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;
  const placedOf = async (mark: string) =>
    (await site.ledger('tag.placed')).filter((entry) => Reflect.get(entry.payload as object, 'mark') === mark)
      .length;
  /** In the picture, wherever the page is scrolled to. */
  const placeOfDraft = async () => {
    const [box, stage] = [await draft(page, t).boundingBox(), await stageOf(page, t).boundingBox()];
    if (!box || !stage) throw new Error('There is no drawing.');
    return { ...box, x: box.x - stage.x, y: box.y - stage.y };
  };
  /** As the browser tells it; not by the button, which goes away if the program tries again by itself first. */
  const networkComesBack = async () => {
    await page.unrouteAll({ behavior: 'wait' });
    await page.context().setOffline(true);
    await page.context().setOffline(false);
  };

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    page = await app.open();
    await page.goto(`${site.things.house}/photos/${site.photos.house}`);
    await signIn(page, t, KEEPER);
  });
  inOneGo();
  afterEach(() => expect(app.complaints(CUT_OFF)).toEqual([]));
  afterAll(() => app.close());

  it('keeps a drawing that was not placed, with what was typed, over a reload', async () => {
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    await dragBox(page, t, [0.5, 0.3], [0.6, 0.6]);
    await markField(page, t).fill('い二');
    await page.keyboard.press('Alt+3');
    const before = await placeOfDraft();
    await page.reload();
    await pictureDrawn(page, t);
    await draft(page, t).waitFor();
    // Once the picture has come to rest.
    await eventually(async () => {
      const after = await placeOfDraft();
      const sides = ['x', 'y', 'width', 'height'] as const;
      return Math.max(...sides.map((side) => Math.abs(before[side] - after[side])));
    }).toBeLessThan(2);
    expect(await markField(page, t).inputValue()).toBe('い二');
    expect(await page.getByRole('radio', { name: t('common.stage.pegged') }).isChecked()).toBe(true);
    await button(page, t('bench.form.place')).click();
    await tagArrived(page, t, 'い二', 'pegged');
    await page.reload();
    await tagArrived(page, t, 'い二', 'pegged');
    expect(await draft(page, t).count()).toBe(0);
  });

  it('leaves the picture where it is under the hand while its small ones come in', async () => {
    const { cranes } = site.photos;
    const answer = `**/api/v1/photos/${cranes}`;
    // As it is right after an upload: only the whole picture can be shown.
    await page.route(answer, async (route) => {
      const response = await route.fetch();
      await route.fulfill({ response, json: { ...(await response.json()), pictures: 'pending' } });
    });
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.goto(`${site.things.house}/photos/${cranes}`);
    await pictureDrawn(page, t);
    await button(page, t('bench.zoom.in')).click();
    await chooseTool(page, t, 'rectangle');
    const [from, to] = [
      await pointOn(stageOf(page, t), [0.5, 0.3]),
      await pointOn(stageOf(page, t), [0.6, 0.6]),
    ];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2);
    await page.unroute(answer);
    await site.tag('cranes', 'い二', 'raised');
    await tagArrived(page, t, 'い二', 'raised');
    await page.mouse.move(to.x, to.y);
    await page.mouse.up();
    await drawnBetween(page, t, [0.5, 0.3], [0.6, 0.6]);
    await button(page, t('bench.drop')).first().click();
    await page.goto(`${site.things.house}/photos/${site.photos.house}`);
  });

  it('shows a picture that came only at the second try', async () => {
    const previews = `**/api/v1/photos/${site.photos.cranes}/{preview,whole}`;
    await page.route(previews, (route) => route.abort('internetdisconnected'));
    const refused = page.waitForEvent('requestfailed', (request) =>
      request.url().includes(site.photos.cranes),
    );
    await page.goto(`${site.things.house}/photos/${site.photos.cranes}`);
    await refused;
    await page.unroute(previews);
    await pictureDrawn(page, t);
    await page.goto(`${site.things.house}/photos/${site.photos.house}`);
  });

  it('keeps a tag that was placed without network and sends it once when it is back', async () => {
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    await page.context().setOffline(true);
    await dragBox(page, t, [0.7, 0.3], [0.8, 0.6]);
    await sayByKey(page, t, 'い一', 'raised');
    await tagRow(page, t, 'い一').getByText(t('bench.unsent.state')).waitFor();
    await page.getByText(t('bench.unsent.count', { count: 1 })).waitFor();
    // Pressing in vain must not say it twice.
    await button(page, t('bench.unsent.now')).click();
    expect(await placedOf('い一')).toBe(0);
    await page.context().setOffline(false);
    await tagArrived(page, t, 'い一', 'raised');
    await eventually(() => page.getByText(t('bench.unsent.count', { count: 1 })).count()).toBe(0);
    await page.reload();
    await tagArrived(page, t, 'い一', 'raised');
    expect(await placedOf('い一')).toBe(1);
  });

  it('sends what waits from every other screen, and says there that it waits', async () => {
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    // The report has been fetched beforehand, as all screens are after a while.
    await goTo(page, t, 'report');
    await page.goBack();
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    await page.context().setOffline(true);
    await dragBox(page, t, [0.1, 0.7], [0.2, 0.9]);
    await sayByKey(page, t, 'い一', 'pegged');
    await tagRow(page, t, 'い一').getByText(t('bench.unsent.state')).waitFor();
    await goTo(page, t, 'report');
    await page.getByText(t('bench.unsent.count', { count: 1 })).waitFor();
    const before = await placedOf('い一');
    await page.context().setOffline(false);
    await eventually(() => placedOf('い一')).toBe(before + 1);
    await eventually(() => page.getByText(t('bench.unsent.count', { count: 1 })).count()).toBe(0);
    await page.goto(`${site.things.house}/photos/${site.photos.house}`);
  });

  it('says which screen could not be fetched, leaves the way to the others, and fetches it when asked again', async () => {
    const other = await app.open();
    await other.route('**/assets/ledger-screen*', (route) => route.abort('internetdisconnected'));
    await other.goto(site.things.house);
    await signIn(other, t, KEEPER);
    const menu = other.getByRole('navigation', { name: t('common.houseMenu') });
    await link(menu, t('common.nav.ledger')).click();
    await heading(other, t('common.notLoaded.title')).waitFor();
    await link(menu, t('common.nav.journal')).click();
    await heading(other, t('days.title')).waitFor();
    await link(menu, t('common.nav.ledger')).click();
    await heading(other, t('common.notLoaded.title')).waitFor();
    // In vain, and without leaving the page for the browser's own word.
    await other.route('**/health', (route) => route.abort('internetdisconnected'));
    const knocked = other.waitForEvent('requestfailed', (request) => request.url().endsWith('/health'));
    await button(other, t('common.notLoaded.again')).click();
    await knocked;
    await heading(other, t('common.notLoaded.title')).waitFor();
    await other.unrouteAll({ behavior: 'wait' });
    await button(other, t('common.notLoaded.again')).click();
    await heading(other, t('ledger.title')).waitFor();
    await other.close();
  });

  it('adds photos by itself once a server that was gone answers again', async () => {
    const other = await app.open();
    await other.route('**/photos', (route) =>
      route.request().method() === 'POST' ? route.abort('connectionrefused') : route.continue(),
    );
    await other.goto(`${site.things.house}/photos`);
    await signIn(other, t, KEEPER);
    const before = (await site.ledger('photo.added')).length;
    const chosen = { name: 'late.jpg', mimeType: 'image/jpeg', buffer: await makeJpeg(77) };
    await chooseFiles(other, button(other, t('photos.choose')), [chosen]);
    await other.getByText(t('photos.queue.unheard', { count: 1 })).waitFor();
    await other.unrouteAll({ behavior: 'wait' });
    await eventually(async () => (await site.ledger('photo.added')).length).toBe(before + 1);
    await eventually(() => other.getByText(t('photos.queue.unheard', { count: 1 })).count()).toBe(0);
    await other.close();
  });

  it('sends what waited although the window was loaded again before the network was back', async () => {
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    // Only what is said is held up: the answer to a write never comes, the rest of the site is there.
    await page.route('**/tags', (route) => route.abort('internetdisconnected'));
    await dragBox(page, t, [0.85, 0.3], [0.95, 0.6]);
    await sayByKey(page, t, 'い通り地貫', 'raised');
    await tagRow(page, t, 'い通り地貫').getByText(t('bench.unsent.state')).waitFor();
    await page.reload();
    await tagRow(page, t, 'い通り地貫').getByText(t('bench.unsent.state')).waitFor();
    expect(await placedOf('い通り地貫')).toBe(0);
    await networkComesBack();
    await tagArrived(page, t, 'い通り地貫', 'raised');
    expect(await placedOf('い通り地貫')).toBe(1);
  });

  it('says a thing once although the answer to it was lost on the way', async () => {
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    await page.route('**/tags', async (route) => {
      await route.fetch();
      await route.abort('internetdisconnected');
    });
    await dragBox(page, t, [0.4, 0.7], [0.5, 0.9]);
    await sayByKey(page, t, 'は又五', 'raised');
    const mark = 'は又五通り東側小屋組二重梁上束';
    await eventually(() => placedOf(mark)).toBe(1);
    await page.getByText(t('bench.unsent.count', { count: 1 })).waitFor();
    await networkComesBack();
    await tagArrived(page, t, mark, 'raised');
    expect(await tagRow(page, t, mark).count()).toBe(1);
    expect(await placedOf(mark)).toBe(1);
  });
});
