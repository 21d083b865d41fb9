import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page, Route } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { button, chooseFiles, eventually, field, goTo, heading, link, signIn, tick } from './hands.ts';
import { openScreen } from './screens.ts';
import { sitePhotos } from './site-photos.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

describeInBrowser('what was typed and not saved', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;
  const question = () => page.getByRole('alertdialog', { name: t('common.unsaved.title') });
  const stay = () => button(question(), t('common.unsaved.stay')).click();
  const leave = () => button(question(), t('common.unsaved.leave')).click();
  /** Reloads, and says whether the browser asked; answers no. */
  const asksOnReload = async () => {
    let asked = false;
    page.once('dialog', (dialog) => {
      asked = dialog.type() === 'beforeunload';
      void dialog.dismiss();
    });
    await page.evaluate(() => setTimeout(() => window.location.reload(), 0));
    await page.waitForTimeout(700);
    return asked;
  };

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    page = await app.open();
    await page.goto(site.things.house);
    await signIn(page, t, KEEPER);
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  it('is asked about before a note of the day is left, and is still there after staying', async () => {
    await openScreen(page, `${site.things.house}/days/2002-02-23`);
    await openScreen(page, `${site.things.house}/days/2002-02-24`);
    const note = field(page, t('days.day.ownNote'));
    const written = `${await note.inputValue()} Rain.`;
    await note.fill(written);
    await link(page, t('days.day.before')).click();
    await stay();
    await heading(page, 'Sun, 24 Feb 2002').waitFor();
    expect(await note.inputValue()).toBe(written);
    expect(await asksOnReload()).toBe(true);
    expect(await note.inputValue()).toBe(written);
    await button(page, t('common.signOut')).click();
    await stay();
    await button(page, t('days.day.saveNote')).click();
    await page.getByText(t('days.day.noteSaved')).waitFor();
    await link(page, t('days.day.before')).click();
    await heading(page, 'Sat, 23 Feb 2002').waitFor();
  });

  it('is asked about before a covering that is being filled in is left, not once it is saved', async () => {
    await goTo(page, t, 'coverings');
    await link(page, t('coverings.add')).first().click();
    await heading(page, t('coverings.form.newTitle')).waitFor();
    await page.goBack();
    await heading(page, t('coverings.title')).waitFor();
    await link(page, t('coverings.add')).first().click();
    await field(page, t('coverings.form.name')).fill('Loft floor');
    await tick(page.getByRole('list', { name: t('coverings.form.members') }), /^い一 /);
    await page.goBack();
    await stay();
    expect(await field(page, t('coverings.form.name')).inputValue()).toBe('Loft floor');
    await button(page, t('coverings.form.save')).click();
    await heading(page, 'Loft floor').waitFor();
    await link(page, t('coverings.one.change')).click();
    await field(page, t('coverings.form.note')).fill('boards from the east');
    await link(page, t('common.cancel')).click();
    await leave();
    await heading(page, 'Loft floor').waitFor();
    expect(await page.getByText('boards from the east').count()).toBe(0);
  });

  it('offers the actions of a covering once all of them are known, so that none moves under a finger', async () => {
    let sendReport = () => {};
    const reportIsWanted = new Promise<void>((resolve) => {
      sendReport = resolve;
    });
    const asked = page.waitForRequest(/closing-report/);
    await page.route(/closing-report/, async (route) => {
      await reportIsWanted;
      await route.continue();
    });
    await page.goto(page.url());
    await heading(page, 'Loft floor').waitFor();
    await asked;
    const change = page.locator('.page-actions').getByText(t('coverings.one.change'), { exact: true });
    await change.waitFor({ state: 'hidden' });
    sendReport();
    await link(page, t('coverings.one.toGaps', { count: 1 })).waitFor();
    expect(await change.isVisible()).toBe(true);
    const address = page.url();
    await link(page, t('coverings.one.toGaps', { count: 1 })).click();
    await page.getByRole('heading', { name: /^Loft floor/, level: 3 }).waitFor();
    const isFirstInSight = () =>
      page.evaluate(() => {
        const wanted = document.querySelector(`[id="${location.hash.slice(1)}"]`)?.getBoundingClientRect();
        return wanted !== undefined && wanted.top >= 0 && wanted.bottom <= innerHeight;
      });
    await eventually(isFirstInSight).toBe(true);
    await page.goto(address);
    await page.unroute(/closing-report/);
  });

  it('is asked about in the details of the house and the form of a member', async () => {
    await openScreen(page, `${site.things.house}/settings`);
    const name = field(page, t('houses.fields.name'));
    await name.fill('Boathouse by the ferry');
    await link(page, t('common.nav.people')).click();
    await stay();
    await button(page, t('common.save')).click();
    await page.getByText(t('houses.settings.saved')).waitFor();
    await goTo(page, t, 'people');
    // The only keeper cannot be taken away.
    await page.getByText(t('people.onlyOne')).waitFor();
    expect(await button(page, t('people.removeNamed', { name: 'Mio' })).count()).toBe(0);

    await page.goto(`${site.things.house}/members/${encodeURIComponent('い一')}`);
    await button(page, t('members.edit')).click();
    const form = page.getByRole('dialog', { name: t('members.editTitle', { mark: 'い一' }) });
    await field(form, t('members.fields.place')).fill('south wall');
    await page.keyboard.press('Escape');
    await stay();
    expect(await field(form, t('members.fields.place')).inputValue()).toBe('south wall');
    await button(form, t('common.cancel')).click();
    await leave();
    await form.waitFor({ state: 'detached' });
    expect(await page.getByText('south wall').count()).toBe(0);
  });

  it('of photos: asks while they are sent in a browser that keeps nothing, and says so', async () => {
    const { deck, box } = await sitePhotos();
    await page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('This browser keeps nothing.', 'InvalidStateError');
      };
    });
    await openScreen(page, `${site.things.house}/photos`);
    const uploads = /\/houses\/[^/]+\/photos$/;
    const held: Route[] = [];
    await page.route(uploads, (route) =>
      route.request().method() === 'POST' ? void held.push(route) : route.continue(),
    );
    await page.route('**/photos/known?*', (route) => route.fulfill({ json: { photo: null } }));
    await chooseFiles(page, button(page, t('photos.choose')), [
      { ...deck, name: 'first.jpg' },
      { ...box, name: 'second.jpg' },
    ]);
    await page.getByText(t('photos.queue.atRisk', { count: 2 })).waitFor();
    await eventually(() => held.length).toBe(2);
    expect(await asksOnReload()).toBe(true);
    await goTo(page, t, 'journal');
    await page.getByText(t('photos.queue.lineAtRisk')).waitFor();
    for (const route of held) await route.continue();
    await page.getByText(t('photos.queue.line', { sent: '2', total: '2' })).waitFor();
    expect(await asksOnReload()).toBe(false);
  });
});
