import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowserOverEitherDatabase, inOneGo, startApp, type App } from './app.ts';
import { chooseTool, dragBox, pictureDrawn, sayByKey, tagArrived, tagRow } from './bench-hands.ts';
import { button, eventually, field, goTo, heading, link, makeAccount, openHouse, signIn } from './hands.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

describeInBrowserOverEitherDatabase('several people', (make) => {
  let app: App;
  let t: Words;
  let site: Site;
  let keeper: Page;
  let mate: Page;
  const bench = () => `${site.things.house}/photos/${site.photos.house}`;

  /** Gives a role on the people page and resolves to the one-time link. */
  const invite = async (email: string, role: string): Promise<string> => {
    await goTo(keeper, t, 'people');
    await field(keeper, t('people.email')).fill(email);
    await field(keeper, t('people.addRole')).selectOption({ label: role });
    await button(keeper, t('people.submit')).click();
    const told = keeper.getByText(t('people.linkTitle', { email }));
    await told.waitFor();
    // In sight, with the focus, and the person stands in the list as asked.
    await eventually(() => keeper.evaluate(() => document.activeElement?.textContent)).toContain(email);
    await keeper.getByRole('row').filter({ hasText: email }).getByText(t('people.invited')).waitFor();
    return keeper.getByRole('textbox', { name: t('people.link') }).inputValue();
  };

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp(make)]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    [keeper, mate] = [await app.open(), await app.open()];
    await keeper.goto(site.things.house);
    await signIn(keeper, t, KEEPER);
  });
  inOneGo();
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  it('lets a second person join through a link, in the role that was given', async () => {
    await mate.goto(await invite('ren@example.org', t('common.role.carpenter')));
    await heading(mate, 'Join the record of Boathouse').waitFor();
    await mate.getByText('You will work on it as carpenter.').waitFor();
    // Whoever invited has said the address: it is shown, and not asked for.
    await mate.getByText('ren@example.org').waitFor();
    expect(await field(mate, t('account.signIn.email')).count()).toBe(0);
    await makeAccount(mate, t, 'Ren');
    // In the house that the link was for.
    await heading(mate, t('days.title')).waitFor();
    await goTo(mate, t, 'people');
    await mate.getByText(t('people.onlyKeeper')).waitFor();
    expect(await button(mate, t('people.submit')).count()).toBe(0);
    await keeper.reload();
    await keeper.getByRole('row').filter({ hasText: 'Ren' }).getByText('carpenter').waitFor();
  });

  it('loses nothing of two who tag the same photo, and each sees the other without a reload', async () => {
    for (const page of [keeper, mate]) {
      await page.goto(bench());
      await pictureDrawn(page, t);
      await chooseTool(page, t, 'rectangle');
    }
    // Both have drawn before either has said anything.
    await dragBox(keeper, t, [0.3, 0.3], [0.4, 0.6]);
    await dragBox(mate, t, [0.6, 0.3], [0.7, 0.6]);
    await sayByKey(keeper, t, 'い一', 'raised');
    await sayByKey(mate, t, 'い二', 'raised');
    for (const page of [keeper, mate])
      for (const [mark, who] of [
        ['い一', 'Mio'],
        ['い二', 'Ren'],
      ] as const) {
        await tagArrived(page, t, mark, 'raised');
        await tagRow(page, t, mark)
          .getByText(new RegExp(`^${who}, `))
          .waitFor();
      }
    await eventually(async () =>
      (await site.ledger('tag.placed')).map((entry) => entry.by?.name).sort(),
    ).toEqual([...['Mio', 'Mio', 'Mio', 'Mio', 'Ren']]);
  });

  it('keeps both words of two who change the same tag at once', async () => {
    for (const page of [keeper, mate]) {
      await button(tagRow(page, t, 'い一'), t('bench.list.changeNamed', { mark: 'い一' })).click();
      const form = page.getByRole('region', { name: t('bench.form.changeTitle', { mark: 'い一' }) });
      await form.getByText(page === keeper ? 'pegged' : 'cut', { exact: true }).click();
    }
    for (const page of [keeper, mate]) await button(page, t('bench.form.save')).click();
    await eventually(async () => (await site.ledger('tag.superseded')).length).toBe(2);
    await keeper.reload();
    await pictureDrawn(keeper, t);
    await eventually(() => tagRow(keeper, t, 'い一').count()).toBe(2);
    // Each of the two is told of the other, here and to whoever reads the member's history.
    const told = keeper.getByText(/^Two statements stand from the same earlier tag/);
    expect(await tagRow(keeper, t, 'い一').filter({ has: told }).count()).toBe(2);
    await tagRow(keeper, t, 'い一')
      .filter({ hasText: /Beside this one stands: い一, cut \(Ren/ })
      .waitFor();
    await keeper.goto(`${site.things.house}/members/${encodeURIComponent('い一')}`);
    await eventually(() => told.count()).toBe(2);
  });

  it('shows nothing of a house to a stranger, not even that it is there', async () => {
    const elsewhere = await app.open();
    await keeper.goto('/');
    await button(keeper, t('houses.open')).click();
    await openHouse(keeper, t, 'Tea house', 'Asia/Tokyo');
    await elsewhere.goto(await invite('sora@example.org', t('common.role.builder')));
    await makeAccount(elsewhere, t, 'Sora');
    await link(elsewhere, 'Tea house').waitFor();
    expect(await elsewhere.getByText('Boathouse').count()).toBe(0);
    for (const address of [site.things.house, bench(), `${site.things.house}/report`]) {
      await elsewhere.goto(address);
      await heading(elsewhere, t('common.notFound.title')).waitFor();
      expect(await elsewhere.getByText('Boathouse').count()).toBe(0);
    }
    const files = ['original', 'thumb', 'crop?xywh=percent:0,0,50,50'];
    for (const file of files) {
      const answer = await elsewhere.request.get(`/api/v1/photos/${site.photos.house}/${file}`);
      expect([file, answer.status()]).toEqual([file, 404]);
    }
    // Chromium writes every 404 down.
    expect(app.complaints(/404/)).toEqual([]);
  });
});
