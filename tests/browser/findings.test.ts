import type { Page } from 'playwright-core';
import type { FindingsView } from '#domain/contract/findings';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, inOneGo, startApp, type App } from './app.ts';
import { eventually, goTo, signIn } from './hands.ts';
import { openScreen, photograph } from './screens.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const PHONE = { viewport: { width: 390, height: 844 }, colorScheme: 'dark', locale: 'ja-JP' } as const;

/** い三 is pegged on a photo of 2002, and only raised on one of 2020. */
describeInBrowser('what does not fit together', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;
  beforeAll(async () => {
    t = await wordsOf('en');
    app = await startApp();
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    await site.tag('box', 'い三', 'raised');
    await site.tag('house', 'い二', 'pegged');
    page = await app.open();
    await page.goto('/');
    await signIn(page, t, KEEPER);
  });
  inOneGo();
  afterEach(() => expect(app.complaints(/422/)).toEqual([]));
  afterAll(() => app.close());
  const group = (kind: 'stage-goes-back') =>
    page.locator('.finding-group', { has: page.getByRole('heading', { name: t(`findings.kind.${kind}`) }) });
  const row = (mark: string) =>
    page.getByRole('row').filter({ has: page.getByRole('rowheader', { name: mark }) });

  it('stands in the report at each record, which says how many stand by themselves', async () => {
    await openScreen(page, `${site.things.house}/report`);
    await row('い三').getByText(t('report.state.gap')).waitFor();
    await row('い三')
      .getByText(t('report.findings.open', { what: t('findings.kind.stage-goes-back') }))
      .waitFor();
    await row('い二').getByText(t('report.state.on-record')).waitFor();
    await photograph(page, 'report-findings');
  });

  it('is led to, told with its photos, and refuses an answer without a reason', async () => {
    await goTo(page, t, 'findings');
    await group('stage-goes-back').getByText('い三 is at an earlier stage').waitFor();
    expect(await group('stage-goes-back').locator('.finding-photos a').count()).toBe(2);
    await group('stage-goes-back')
      .getByRole('button', { name: /^Accept/ })
      .click();
    await page.getByRole('button', { name: t('findings.dialog.submit') }).click();
    await page.getByText(t('findings.dialog.needReason')).waitFor();
    await photograph(page, 'findings-accept');
  });

  it('counts again once accepted by name, and says so beside the record', async () => {
    await page.getByLabel(t('findings.dialog.reason')).fill('The rail was taken out and put back.');
    await page.getByRole('button', { name: t('findings.dialog.submit') }).click();
    await group('stage-goes-back').waitFor({ state: 'detached' });
    // Whoever goes on by keys stands at the finding that has come to its place.
    await eventually(() => page.evaluate(() => document.activeElement?.className)).toBe('finding');
    expect((await site.ledger('findings.accepted')).map(({ by }) => by?.name)).toEqual(['Mio']);
    await openScreen(page, `${site.things.house}/report`);
    await row('い三').getByText(t('report.state.on-record')).waitFor();
    await row('い三')
      .getByText('Accepted by Mio: stage goes back (The rail was taken out and put back.)')
      .waitFor();
    await row('い三').getByText(t('report.state.weigh')).waitFor();
    await photograph(page, 'report-accepted');
  });

  it('is taken back only with a reason, which stays on record', async () => {
    await openScreen(page, `${site.things.house}/findings?state=accepted`);
    await page.getByRole('button', { name: /^No longer accept: い三/ }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: t('findings.takeBack'), exact: true }).click();
    await dialog.getByText(t('clock.needReason')).waitFor();
    await dialog.getByLabel(t('clock.reason')).fill('It was another rail.');
    await dialog.getByRole('button', { name: t('findings.takeBack'), exact: true }).click();
    await page.getByText(t('findings.noneAccepted')).waitFor();
    expect((await site.ledger('finding.reopened')).map(({ payload }) => payload)).toMatchObject([
      { reason: 'It was another rail.' },
    ]);
    await openScreen(page, `${site.things.house}/findings`);
    await group('stage-goes-back')
      .getByRole('button', { name: /^Accept/ })
      .click();
    await page.getByLabel(t('findings.dialog.reason')).fill('The rail was taken out and put back.');
    // Somebody else answers meanwhile: what is typed stays, and it is said.
    const { findings } = await site.client.get<FindingsView>(
      `${site.things.house}/findings?kind=stage-goes-back`,
    );
    const seen = findings.map(({ key, basis }) => ({ key, basis }));
    await site.client.post(`${site.things.house}/findings/accept`, {
      findings: seen,
      reason: 'Seen by me too.',
    });
    await group('stage-goes-back').waitFor({ state: 'detached' });
    expect(await page.getByLabel(t('findings.dialog.reason')).inputValue()).toMatch(/^The rail/);
    await page.getByRole('button', { name: t('findings.dialog.submit') }).click();
    await page.getByRole('dialog').waitFor({ state: 'detached' });
  });

  it('comes up again when what it rests on changes, with the answer that was given', async () => {
    await openScreen(page, `${site.things.house}/findings?state=accepted`);
    await page.getByText('The rail was taken out and put back.').waitFor();
    await site.tag('box', 'い三', 'cut');
    await openScreen(page, `${site.things.house}/findings`);
    await group('stage-goes-back')
      .getByText(/accepted this on .*but what it rests on has changed/)
      .waitFor();
    const phone = await app.open(PHONE);
    await phone.goto('/');
    await signIn(phone, await wordsOf('ja'), KEEPER);
    await openScreen(phone, `${site.things.house}/report`);
    await photograph(phone, 'report-findings-phone-dark-japanese');
    await openScreen(phone, `${site.things.house}/findings`);
    await photograph(phone, 'findings-phone-dark-japanese');
  });
});
