import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import type { HouseView } from '#domain/contract/views';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { Client } from '../support/server.ts';
import { describeInBrowser, inOneGo, startApp, type App } from './app.ts';
import { button, eventually, field, hasFocus, heading, link, PASSWORD } from './hands.ts';
import { KEEPER } from './site.ts';

const COVERING = 'North wall, first coat';

/** By the keys alone, but for the system's own window in which a file is chosen. */
describeInBrowser('without a pointer', () => {
  let app: App;
  let t: Words;
  let page: Page;

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    const client = new Client(app.server.origin);
    const keeper = { name: 'Mio', email: KEEPER, password: PASSWORD };
    await client.post(`/links/${app.server.firstLink}`, keeper);
    const house = { id: crypto.randomUUID(), name: 'Boathouse', zone: 'Asia/Tokyo' };
    await client.post<HouseView>('/houses', house);
    page = await app.open();
    await page.goto('/');
  });
  inOneGo();
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  /** Tab by Tab, as long as it takes; never more than a person would bear. */
  async function tabTo(target: Locator): Promise<void> {
    await target.waitFor();
    for (let i = 0; i < 60; i++) {
      if (await hasFocus(target)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`60 times Tab did not lead to ${String(target)}.`);
  }
  async function press(target: Locator, key = 'Enter'): Promise<void> {
    await tabTo(target);
    await page.keyboard.press(key);
  }
  async function write(label: string, text: string): Promise<void> {
    await tabTo(field(page, label));
    await page.keyboard.type(text);
  }
  const goTo = async (part: 'members' | 'coverings' | 'report') => {
    await press(link(page.getByRole('navigation', { name: t('common.houseMenu') }), t(`common.nav.${part}`)));
    await heading(page, t(`${part}.title`)).waitFor();
  };
  const focusIsKept = () => eventually(() => hasFocus(page.locator('body'))).toBe(false);

  it('signs in and opens a house', async () => {
    await heading(page, t('account.signIn.title')).waitFor();
    await write(t('account.signIn.email'), KEEPER);
    await write(t('account.signIn.password'), PASSWORD);
    await page.keyboard.press('Enter');
    await press(link(page, 'Boathouse'));
    await heading(page, t('days.title')).waitFor();
    // The focus is where the new content begins, not at the head of the page again.
    await eventually(() => hasFocus(page.getByRole('main'))).toBe(true);
    await page.keyboard.press('Tab');
    const menu = page.getByRole('navigation', { name: t('common.houseMenu') });
    expect(await menu.locator(':focus').count()).toBe(0);
  });

  it('imports a schedule', async () => {
    await goTo('members');
    await press(link(page, t('members.import')).first());
    await heading(page, t('schedule.title')).waitFor();
    await focusIsKept();
    await tabTo(button(page, t('schedule.choose')));
    const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.keyboard.press('Enter')]);
    const buffer = Buffer.from(
      ['mark,kind,place', 'い一,柱,north', 'い二,柱,north', 'ろ一,貫,north'].join('\r\n'),
    );
    await chooser.setFiles({ name: 'frame.csv', mimeType: 'text/csv', buffer });
    await press(button(page, t('schedule.agree')));
    await page.getByText(/^Imported: 3 members added/).waitFor();
    await focusIsKept();
  });

  it('plans a covering', async () => {
    await goTo('coverings');
    await press(link(page, t('coverings.add')).first());
    await write(t('coverings.form.name'), COVERING);
    await tabTo(field(page, t('coverings.form.kind')));
    await page.keyboard.type('fl');
    expect(await field(page, t('coverings.form.kind')).inputValue()).toBe('floor');
    const members = page.getByRole('list', { name: t('coverings.form.members') });
    for (const mark of ['い一', 'ろ一'])
      await press(members.getByRole('checkbox', { name: new RegExp(`^${mark} `) }), 'Space');
    await page.getByText('2 members ticked', { exact: true }).waitFor();
    await press(button(page, t('coverings.form.save')));
    await heading(page, COVERING).waitFor();
  });

  it('reads the report', async () => {
    await goTo('report');
    await page.getByText('In all: 2 hidden, 0 on record, 2 without a record, 0 lost.').waitFor();
    await tabTo(page.getByRole('group', { name: t('report.table', { name: COVERING }) }));
    await press(page.getByRole('checkbox', { name: t('report.onlyGaps') }), 'Space');
    await eventually(() => new URL(page.url()).searchParams.get('only')).toBe('missing');
    await press(link(page, COVERING));
    await heading(page, COVERING).waitFor();
  });

  it('closes the covering, changes its mind once, and keeps its place afterwards', async () => {
    const close = button(page, t('coverings.one.close'));
    const dialog = page.getByRole('dialog', { name: `Has ${COVERING} closed?` });
    await press(close);
    await dialog.waitFor();
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
    expect(await hasFocus(close)).toBe(true);
    await page.keyboard.press('Enter');
    await write(t('hold.close.reason'), 'The painters are here.');
    await press(dialog.getByRole('checkbox', { name: t('coverings.close.agree') }), 'Space');
    await press(button(dialog, t('coverings.close.submit')));
    await page.getByText(/^closed .*, said by Mio$/).waitFor();
    await focusIsKept();
  });
});
