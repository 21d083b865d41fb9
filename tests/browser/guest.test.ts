import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { Client } from '../support/server.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, DESKTOP, startApp, type App } from './app.ts';
import {
  button,
  drawn,
  eventually,
  field,
  goTo,
  heading,
  lookAtAll,
  makeAccount,
  PASSWORD,
  signIn,
} from './hands.ts';
import { openScreen, photograph } from './screens.ts';
import { violations } from './checks/axe.ts';
import { smallTargets } from './checks/targets.ts';
import { spilt } from './checks/overflow.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const NEW = 'a password that is new';

describeInBrowser('links for who has no account, or no password', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let keeper: Page;
  let mate: Client;
  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    keeper = await app.open();
    await keeper.goto(site.things.house);
    await signIn(keeper, t, KEEPER);
    mate = new Client(app.server.origin);
  });
  // Chromium writes each refusal down: of a link that has ended.
  afterEach(() => expect(app.complaints(/4(04|10)/)).toEqual([]));
  afterAll(() => app.close());

  it('shows a guest one covering and no way further, until the keeper ends it', async () => {
    await goTo(keeper, t, 'people');
    await field(keeper, t('people.guests.label')).fill('Family Ota');
    const coverings = field(keeper, t('people.guests.covering'));
    await coverings.selectOption({ index: 1 });
    await button(keeper, t('people.guests.submit')).click();
    const address = await keeper.getByRole('textbox', { name: t('people.guests.link') }).inputValue();
    await keeper
      .getByRole('row')
      .filter({ hasText: 'Family Ota' })
      .getByText(t('people.guests.never'))
      .waitFor();
    await photograph(keeper, 'desktop-light-people-guests');

    const guest = await app.open();
    await guest.goto(address);
    await guest.getByText(/^For Family Ota, until/).waitFor();
    const pictures = guest.getByRole('img');
    await lookAtAll(pictures);
    await eventually(() => drawn(pictures)).toBe(1);
    const ways = await guest.getByRole('link').evaluateAll((all) => all.map((a) => a.getAttribute('href')));
    expect(ways.filter((href) => !href?.startsWith('/api/v1/guest/'))).toEqual([]);
    expect(await violations(guest, 'light')).toEqual([]);
    await photograph(guest, 'desktop-light-guest-covering');

    await button(keeper, t('people.guests.endNamed', { label: 'Family Ota' })).click();
    await button(keeper.getByRole('alertdialog'), t('people.guests.end')).click();
    await keeper.getByText(t('people.guests.none')).waitFor();
    await guest.reload();
    await heading(guest, t('guest.deadTitle')).waitFor();
    await photograph(guest, 'desktop-light-guest-dead');
  });

  it('shows a guest one member on a phone in Japanese, by day and by night', async () => {
    const body = { id: crypto.randomUUID(), shows: { mark: 'い三' }, label: '太田様' };
    const { secret } = await site.client.post<{ secret: string }>(`${site.things.house}/guests`, body);
    const phone = {
      viewport: { width: 390, height: 844 },
      deviceScaleFactor: 2,
      hasTouch: true,
      isMobile: true,
    };
    const guest = await app.open({ ...DESKTOP, ...phone, locale: 'ja-JP' });
    await openScreen(guest, `/guest/${secret}`);
    const found = [
      ...(await violations(guest, 'light')),
      ...(await smallTargets(guest)),
      ...(await spilt(guest)),
    ];
    await photograph(guest, 'phone-390-ja-guest-member');
    await guest.emulateMedia({ colorScheme: 'dark' });
    found.push(...(await violations(guest, 'dark')));
    await photograph(guest, 'phone-390-ja-dark-guest-member');
    expect(found).toEqual([]);
  });

  it('ends an invitation, and gives back a lost password that ends every session', async () => {
    await goTo(keeper, t, 'people');
    const invite = async (email: string) => {
      await field(keeper, t('people.email')).fill(email);
      await field(keeper, t('people.days')).selectOption({ label: '1 day' });
      await button(keeper, t('people.submit')).click();
      await keeper.getByText(t('people.linkTitle', { email })).waitFor();
      return keeper.getByRole('textbox', { name: t('people.link') }).inputValue();
    };
    const ended = await invite('late@example.org');
    await button(keeper, t('people.endInvitationNamed', { email: 'late@example.org' })).click();
    await button(keeper.getByRole('alertdialog'), t('people.endInvitation')).click();
    await eventually(() => keeper.getByRole('row').filter({ hasText: 'late@example.org' }).count()).toBe(0);
    const person = await app.open();
    await person.goto(ended);
    await heading(person, t('account.link.deadTitle')).waitFor();

    await person.goto(await invite('ren@example.org'));
    await makeAccount(person, t, 'Ren');
    await keeper.reload();
    await button(keeper, t('people.password.openNamed', { name: 'Ren' })).click();
    await button(keeper.getByRole('dialog'), t('people.password.make')).click();
    const link = await keeper.getByRole('textbox', { name: t('people.password.link') }).inputValue();
    await photograph(keeper, 'desktop-light-people-password-link');
    await mate.post('/session', { email: 'ren@example.org', password: PASSWORD });
    await person.goto(link);
    await person.getByText(/^Mio made this link, for the account ren@example\.org/).waitFor();
    await photograph(person, 'desktop-light-new-password');
    await field(person, t('password.next')).fill(NEW);
    await button(person, t('password.link.submit')).click();
    await heading(person, t('houses.title')).waitFor();
    expect(await mate.get('/session')).toEqual({ account: null });
  });

  it('changes a password and signs out everywhere', async () => {
    const person = await app.open();
    await person.goto('/account');
    await field(person, t('account.signIn.email')).fill('ren@example.org');
    await field(person, t('account.signIn.password')).fill(NEW);
    await button(person, t('account.signIn.submit')).click();
    await heading(person, t('password.account.title')).waitFor();
    await field(person, t('password.present')).fill(NEW);
    await field(person, t('password.next')).fill(PASSWORD);
    await button(person, t('password.submit')).click();
    await person.getByText(t('password.changed')).waitFor();
    await person
      .getByRole('row')
      .filter({ hasText: t('password.sessions.here') })
      .getByText('Chrome on')
      .waitFor();
    await photograph(person, 'desktop-light-account');
    await mate.post('/session', { email: 'ren@example.org', password: PASSWORD });
    await button(person, t('password.sessions.end')).click();
    await button(person.getByRole('alertdialog'), t('password.sessions.end')).click();
    await heading(person, t('account.signIn.title')).waitFor();
    expect(await mate.get('/session')).toEqual({ account: null });
  });
});
