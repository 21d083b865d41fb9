import { randomUUID } from 'node:crypto';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, inOneGo, startApp, type App } from './app.ts';
import { chooseTool, dragBox, markField, pictureDrawn } from './bench-hands.ts';
import { prepareFrame, type FrameSite } from './frame-site.ts';
import { button, field, heading, link, signIn, tick } from './hands.ts';
import { openScreen, photograph } from './screens.ts';
import { KEEPER } from './site.ts';

const RAIL = 'い地貫';
const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

describeInBrowser('sheets over a rail', () => {
  let app: App;
  let t: Words;
  let site: FrameSite;
  let page: Page;
  let under: string;
  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareFrame(app.server.origin, app.server.firstLink ?? '');
    await site.client.post(`${site.house}/coverings`, {
      ...{ id: randomUUID(), name: 'い通り 荒壁', kind: 'plaster', plannedDay: '2026-12-24', zone: null },
      hides: [{ mark: RAIL, least: 'raised' }],
    });
    await site.tag('2026-04-02', ['い一'], 'raised');
    under = await site.tag('2026-04-05', [RAIL], 'raised');
    page = await app.open();
    await page.goto('/');
    await signIn(page, t, KEEPER);
  });
  inOneGo();
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  const open = (address: string) => openScreen(page, `${site.house}/${address}`);
  const earlier = async (within: Page | Locator, time: string) => {
    await within.getByText(t('coverings.close.earlier'), { exact: true }).click();
    await field(within, t('coverings.close.at', { zone: 'Asia/Tokyo' })).fill(time);
  };

  it('are laid, and the photo under them is no record any more', async () => {
    await open('report');
    await page.getByRole('row').filter({ hasText: RAIL }).getByText(t('report.state.on-record')).waitFor();
    await open('coverings');
    await link(page, t('protection.lay')).click();
    await heading(page, t('protection.form.newTitle')).waitFor();
    await button(page, t('protection.form.save')).click();
    for (const fault of ['needName', 'needWhat', 'needMembers'] as const)
      await page.getByText(t(`protection.form.${fault}`), { exact: true }).waitFor();
    await field(page, t('protection.form.name')).fill('Rails on い');
    await field(page, t('protection.form.what')).fill('sheet, boards');
    await earlier(page, '2026-04-04T08:00');
    await field(page, t('protection.form.day')).fill('2026-04-06');
    await field(page, t('coverings.form.search')).fill(RAIL);
    await tick(page, new RegExp(RAIL));
    await photograph(page, 'protection-form-filled');
    await button(page, t('protection.form.save')).click();
    const lying = page.locator('.protection-item');
    await lying.getByText('Rails on い').waitFor();
    await lying.getByText(/since .*4 Apr 2026,? 08:00/).waitFor();
    await photograph(page, 'protection-lying');
    await open('report');
    const line = page.getByRole('row').filter({ hasText: RAIL });
    await line.getByText(/photographed, but while protection lay over it/).waitFor();
    await line.getByText(/lies under protection since .*lift it to photograph/).waitFor();
    await photograph(page, 'protection-report');
  });

  it('are told of where that photo is tagged, drawn on the frame and said in its list', async () => {
    await open(`photos/${under}`);
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    await dragBox(page, t, [0.3, 0.3], [0.6, 0.7]);
    await markField(page, t).fill(RAIL);
    await page
      .getByRole('status')
      .getByText(/Protection lay over い地貫 when this photo was taken/)
      .waitFor();
    await photograph(page, 'protection-bench');
    await markField(page, t).fill('い一');
    await page
      .getByRole('status')
      .getByText(/Protection lay over/)
      .waitFor({ state: 'detached' });
    // Of the tag that stands it is still said.
    expect(
      await page
        .locator('.bench-tags')
        .getByText(/Protection lay over い地貫/)
        .count(),
    ).toBe(1);
    await button(page.locator('.bench-words'), t('bench.drop')).click();
    await open('frame?line=い');
    const mark = page.locator('.frame-window .frame-sheeted');
    expect((await mark.getAttribute('d'))?.length).toBeGreaterThan(100);
    const row = page.getByRole('listitem').filter({ has: link(page, RAIL) });
    await row
      .getByText(/under protection since .*4 Apr 2026: Rails on い/)
      .last()
      .waitFor();
    await photograph(page, 'protection-frame');
    await open('frame?line=い&day=2026-04-03');
    expect(await mark.count()).toBe(0);
  });

  it('are lifted, and a new photo counts', async () => {
    await open('coverings');
    await button(page, t('protection.liftNamed', { name: 'Rails on い' })).click();
    const dialog = page.getByRole('dialog');
    await earlier(dialog, '2026-04-03T17:00');
    await button(dialog, t('protection.lifting.submit')).click();
    await dialog.getByText(t('protection.lifting.beforeLaying')).waitFor();
    await photograph(page, 'protection-lift');
    await field(dialog, t('coverings.close.at', { zone: 'Asia/Tokyo' })).fill('2026-04-06T17:00');
    await button(dialog, t('protection.lifting.submit')).click();
    await page.getByText(t('protection.lyingNone')).waitFor();
    await photograph(page, 'protection-lifted');
    await site.tag('2026-04-07', [RAIL], 'raised');
    await open('report');
    await page.getByRole('row').filter({ hasText: RAIL }).getByText(t('report.state.on-record')).waitFor();
    await open(`members/${encodeURIComponent(RAIL)}`);
    await page.getByText(/4 Apr 2026,? 08:00 to 6 Apr 2026,? 17:00 · all of it/).waitFor();
    await photograph(page, 'protection-history');
  });

  it('are corrected by whoever sees that a bay was meant, in Japanese on a phone', async () => {
    const ja = await wordsOf('ja');
    const phone = await app.open({ ...PHONE, locale: 'ja-JP' });
    await phone.goto('/');
    await signIn(phone, ja, KEEPER);
    await openScreen(phone, `${site.house}/coverings`);
    await button(phone, ja('protection.backNamed', { name: 'Rails on い' })).click();
    const dialog = phone.getByRole('dialog');
    await field(dialog, ja('clock.reason')).fill('南側だった');
    await photograph(phone, 'protection-phone-back');
    await button(dialog, ja('protection.takeBack.submit')).click();
    await button(phone, ja('protection.liftNamed', { name: 'Rails on い' })).waitFor();
    await photograph(phone, 'protection-phone-lying');
    await link(phone, ja('protection.changeNamed', { name: 'Rails on い' })).click();
    await heading(phone, ja('protection.form.changeTitle', { name: 'Rails on い' })).waitFor();
    await field(phone, ja('protection.form.what')).fill('養生紙');
    await photograph(phone, 'protection-phone-change');
    await button(phone, ja('protection.form.save')).click();
    await phone.locator('.protection-item').getByText('養生紙').waitFor();
    await phone.context().close();
  });
});
