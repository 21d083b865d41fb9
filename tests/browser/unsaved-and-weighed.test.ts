import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, inOneGo, startApp, type App } from './app.ts';
import { pictureDrawn, tagRow } from './bench-hands.ts';
import { button, signIn } from './hands.ts';
import { openScreen, photograph } from './screens.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

describeInBrowser('what is not settled', () => {
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
  inOneGo();
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());
  const bench = (photo: 'house' | 'deck') =>
    openScreen(page, `${site.things.house}/photos/${site.photos[photo]}`);
  const stage = (name: 'raised' | 'pegged') => page.getByRole('radio', { name: t(`common.stage.${name}`) });
  const change = () => button(tagRow(page, t, 'い三'), t('bench.list.changeNamed', { mark: 'い三' })).click();

  it('is a change of a tag that was left: it comes back as unsaved, beside what the tag says', async () => {
    const notice = page.getByText(t('bench.form.left.words', { words: 'い三, pegged' }));
    await bench('house');
    await pictureDrawn(page, t);
    await change();
    await stage('raised').check({ force: true });
    expect(await notice.count()).toBe(0);
    await bench('deck');
    await pictureDrawn(page, t);
    await bench('house');
    await notice.waitFor();
    expect(await stage('raised').isChecked()).toBe(true);
    await photograph(page, 'bench-change-left');
    await button(page.locator('.bench-words'), t('bench.leave')).click();
    await change();
    expect(await stage('pegged').isChecked()).toBe(true);
    expect(await notice.count()).toBe(0);
  });

  it('is a record to be weighed, which a covering names before it closes, and the list counts', async () => {
    const date = { taken: '2026-04-03T03:00:00.000Z', withinS: 3600, reason: 'site diary' };
    await site.client.put(`/photos/${site.photos.deck}/date`, date);
    await openScreen(page, `${site.things.house}/coverings`);
    const covering = page.getByRole('row').filter({ hasText: '荒壁' });
    await covering.getByText(`2 / 3, ${t('report.count.weigh', { count: 1 })}`).waitFor();
    await photograph(page, 'coverings-weigh');
    await openScreen(page, `${site.things.house}/coverings/${site.things.covering}`);
    await button(page, t('coverings.one.close')).click();
    const weighed = page.getByRole('dialog').getByRole('group', { name: t('report.weigh', { count: 1 }) });
    await weighed.getByRole('listitem').waitFor();
    await photograph(page, 'covering-close-weigh');
    expect(await weighed.getByRole('listitem').innerText()).toMatch(
      /^NORTH-ELEVATION-.*pegged, 3 Apr 2026, 12:00 ± 60 min \(dated by hand\)/,
    );
  });
});
