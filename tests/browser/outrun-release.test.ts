import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { ReleaseView } from '#domain/contract/review-views';
import type { CoveringView, TagView } from '#domain/contract/views';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { releaseAsSeen } from '../support/release.ts';
import { Client } from '../support/server.ts';
import { describeInBrowser, inOneGo, startApp, type App } from './app.ts';
import { button, eventually, PASSWORD, signIn, tick } from './hands.ts';
import { openScreen, photograph } from './screens.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const LONG = 'NORTH-ELEVATION-SECOND-FLOOR-RAIL-0001';
const DOUBT = 'This is い四, the ink mark is on the other side.';
const PHONE = {
  ...{ locale: 'ja-JP', viewport: { width: 390, height: 844 } },
  ...{ hasTouch: true, isMobile: true },
};

describeInBrowser('a release that what is on record has outrun', () => {
  let app: App;
  let t: Words;
  let ja: Words;
  let site: Site;
  let inspector: Client;
  let tag: TagView;
  let page: Page;
  let phone: Page;
  let release: ReleaseView;
  let address: string;
  const waived = Object.fromEntries(['い三', LONG].map((mark) => [mark, 'Seen on site, all pegs in.']));

  beforeAll(async () => {
    [t, ja, app] = await Promise.all([wordsOf('en'), wordsOf('ja'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', '谷の舟小屋');
    const { client, house, things } = site;
    const email = 'sato@example.org';
    const { link: way } = await client.post<{ link: string }>(`/houses/${house.id}/people`, {
      ...{ email, role: 'inspector' },
    });
    inspector = new Client(app.server.origin);
    await inspector.post(`/links/${way}`, { name: '佐藤 光', email, password: PASSWORD });
    await client.put(`/houses/${house.id}/release-rule`, { fourEyes: false, reason: 'I build alone.' });
    tag = await site.tag('house', 'い二', 'pegged');
    await client.post(`/coverings/${things.covering}/ready`, {});
    release = await releaseAsSeen(inspector, things.covering, waived);
    await inspector.post(`/tags/${tag.id}/dispute`, { reason: DOUBT });
    address = `${things.house}/coverings/${things.covering}`;
    page = await app.open();
    phone = await app.open(PHONE);
    for (const [one, words] of [
      [page, t],
      [phone, ja],
    ] as const) {
      await one.goto(address);
      await signIn(one, words, KEEPER);
    }
  }, 60_000);
  inOneGo();
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  const covering = async () => {
    const { coverings } = await site.client.get<{ coverings: CoveringView[] }>(
      `${site.things.house}/coverings`,
    );
    return coverings.find(({ id }) => id === site.things.covering);
  };
  const looks = async (name: string, at: string, hasTold: (words: Words) => string) => {
    for (const [one, words, look] of [
      [page, t, 'en'],
      [phone, ja, 'ja-phone'],
    ] as const) {
      await openScreen(one, at);
      await one.getByText(hasTold(words)).first().waitFor();
      await photograph(one, `outrun-${name}-${look}`);
    }
  };

  it('is said on the covering, in the list, the journal and the report, with the member', async () => {
    await looks('covering', address, (words) => words('hold.state.outrun'));
    await page.getByText('does not cover い二 any more', { exact: false }).waitFor();
    // The doubt stands in all that was said of it.
    await page.getByText(DOUBT, { exact: false }).first().waitFor();
    await looks('list', `${site.things.house}/coverings`, (words) => words('hold.state.outrun'));
    await looks('journal', site.things.house, (words) => words('days.hold.outrun'));
    await looks('report', `${site.things.house}/report`, (words) => words('hold.state.outrun'));
    await page.getByText(`Doubted by 佐藤 光: “${DOUBT}”`).first().waitFor();
  });

  it('closes only with a reason, and tells of which members beforehand', async () => {
    await openScreen(page, address);
    await button(page, t('coverings.one.close')).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByText(t('hold.close.outrun', { marks: 'い二' })).waitFor();
    await tick(dialog, t('coverings.close.agree'));
    await button(dialog, t('coverings.close.submit')).click();
    await dialog.getByText(t('hold.close.needReason')).waitFor();
    await photograph(page, 'outrun-closing');
    await button(dialog, t('common.cancel')).click();
    expect((await covering())?.closed).toBeNull();
  });

  it('is ready anew, which ends it, and is released and closed under the second one', async () => {
    await button(page, t('hold.ready.open')).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByText(t('hold.ready.outrun')).waitFor();
    await button(dialog, t('hold.ready.submit')).click();
    await eventually(async () => (await covering())?.hold.state).toBe('ready');
    const { covering: id } = site.things;
    const second = await releaseAsSeen(inspector, id, { ...waived, い二: 'Seen, hidden by a scaffold.' });
    expect(second.id).not.toBe(release.id);
    await openScreen(page, address);
    await button(page, t('coverings.one.close')).click();
    await button(dialog, t('coverings.close.submit')).click();
    await eventually(async () => (await covering())?.closed?.release).toBe(second.id);
    release = second;
  });

  it('is told wherever the covering is told of, once it is taken back after the closing', async () => {
    const reason = 'I stood before another wall.';
    await inspector.delete(`/releases/${release.id}?reason=${encodeURIComponent(reason)}`);
    const told = (words: Words) => words('hold.state.under-taken-back');
    await looks('back-covering', address, told);
    await looks('back-list', `${site.things.house}/coverings`, told);
    await looks('back-report', `${site.things.house}/report`, told);
    await page.getByText(reason, { exact: false }).first().waitFor();
    await page.getByText('had been accepted by 佐藤 光', { exact: false }).first().waitFor();
    await openScreen(page, `${site.things.house}/members/${encodeURIComponent('い二')}`);
    await page.getByText('had been accepted by 佐藤 光', { exact: false }).first().waitFor();
    await photograph(page, 'outrun-back-member');
    await openScreen(page, site.things.house);
    await page.getByText('closed under a release taken back since', { exact: false }).first().waitFor();
    const { secret } = await site.client.post<{ secret: string }>(`${site.things.house}/guests`, {
      ...{ id: crypto.randomUUID(), label: 'Family Ota', days: 7 },
      shows: { covering: site.things.covering },
    });
    await looks('back-guest', `/guest/${secret}`, told);
    await page.getByText(reason, { exact: false }).first().waitFor();
  });
});
