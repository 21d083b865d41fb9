import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { draft, markField, pictureDrawn, stageOf, tagRow } from './bench-hands.ts';
import { button, eventually, goTo, hasFocus, heading, link, signIn } from './hands.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

describeInBrowser('the bench without a mouse', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;
  const isOnPicture = () => eventually(() => hasFocus(stageOf(page, t))).toBe(true);

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    page = await app.open();
    await page.goto(`${site.things.house}/photos/${site.photos.cranes}`);
    await signIn(page, t, KEEPER);
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  it('has the focus on the picture at the start and after each turn', async () => {
    await pictureDrawn(page, t);
    await isOnPicture();
    for (const [key, file] of [
      ['PageDown', site.fileNames.house],
      ['PageUp', site.fileNames.cranes],
    ] as const) {
      await page.keyboard.press(key);
      await heading(page, t('bench.title', { file })).waitFor();
      await isOnPicture();
    }
    await link(page, t('bench.next')).click();
    await heading(page, t('bench.title', { file: site.fileNames.house })).waitFor();
    await isOnPicture();
    await page.keyboard.press('PageUp');
    await heading(page, t('bench.title', { file: site.fileNames.cranes })).waitFor();
  });

  it('is reached by the second stop of Tab', async () => {
    await page.reload();
    await pictureDrawn(page, t);
    await link(page, t('common.skip')).focus();
    await page.keyboard.press('Tab');
    expect(await hasFocus(link(page, t('common.skipToPicture')))).toBe(true);
    await page.keyboard.press('Enter');
    await isOnPicture();
  });

  it('obeys the keys wherever on its page no field has the focus', async () => {
    const row = tagRow(page, t, 'い三');
    await button(row, t('bench.list.changeNamed', { mark: 'い三' })).focus();
    await page.keyboard.press('r');
    await draft(page, t).waitFor();
    const history = link(row, t('bench.list.history', { mark: 'い三' }));
    await history.focus();
    const before = await draft(page, t).boundingBox();
    await page.keyboard.press('Shift+ArrowRight');
    const after = await draft(page, t).boundingBox();
    expect((after?.width ?? 0) - (before?.width ?? 0)).toBeGreaterThan(2);
    // The hand stays where it was.
    expect(await hasFocus(history)).toBe(true);
    await markField(page, t).focus();
    await page.keyboard.press('p');
    expect(await markField(page, t).inputValue()).toBe('p');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await eventually(() => draft(page, t).count()).toBe(0);
    await isOnPicture();
  });

  it('turns to and from a photo that was added since the order was read', async () => {
    await page.getByText('1 of 4', { exact: true }).waitFor();
    const added = { name: 'added-later.jpg', bytes: await makeJpeg(7, takenAt('2003-01-01T10:00:00')) };
    await site.client.upload(site.house.id, [added]);
    await goTo(page, t, 'photos');
    await page.getByRole('link', { name: /^added-later\.jpg/ }).click();
    await page.getByText('3 of 5', { exact: true }).waitFor();
    await isOnPicture();
    await page.keyboard.press('PageUp');
    await heading(page, t('bench.title', { file: site.fileNames.house })).waitFor();
  });
});
