import { randomUUID } from 'node:crypto';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { StatedGrid } from '#domain/contract/frame-shapes';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { prepareFrame, wall, type FrameSite } from './frame-site.ts';
import { button, signIn } from './hands.ts';
import { openScreen, photograph } from './screens.ts';
import { KEEPER } from './site.ts';

const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

describeInBrowser('the grid', () => {
  let app: App;
  let site: FrameSite;
  let covering: string;
  let t: Words;
  let page: Page;
  beforeAll(async () => {
    app = await startApp();
    site = await prepareFrame(app.server.origin, app.server.firstLink ?? '');
    const plan = (name: string, from: string, to: string) =>
      site.client.post<{ id: string }>(`${site.house}/coverings`, {
        ...{ id: randomUUID(), name, kind: 'plaster', plannedDay: '2026-04-24', hides: [] },
        zone: wall('first', 'い', from, to),
      });
    await plan('い通り 一から二', '一', '二');
    const { id } = await plan('い通り 荒壁', '三', '四');
    covering = `${site.house}/coverings/${id}`;
    await site.client.post(`/coverings/${id}/close`, {
      withoutRelease: 'Nobody inspects this house.',
      closedAt: '2026-04-24T03:00:00.000Z',
    });
    t = await wordsOf('en');
    page = await app.open({ ...PHONE, locale: 'en-GB' });
    await page.goto('/');
    await signIn(page, t, KEEPER);
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  const second = () => page.getByRole('group', { name: t('grid.second.title') });
  const labels = () => second().getByLabel(t('grid.labels'), { exact: true });
  const bays = () => second().getByLabel(t('grid.bays'), { exact: true });
  const save = () => button(page, t('common.save')).click();
  const linesStated = async () =>
    (await site.client.get<{ grid: StatedGrid }>(`${site.house}/grid`)).grid.second.lines.length;

  it('says what is wrong with a bay at its field', async () => {
    await openScreen(page, `${site.house}/grid`);
    await bays().fill('0');
    await save();
    await expect.poll(() => bays().getAttribute('aria-invalid')).toBe('true');
    expect(await labels().getAttribute('aria-invalid')).not.toBe('true');
    await page.getByText(t('grid.wrong.bay-too-short', { label: '0' })).waitFor();
  });

  it('names what loses its place before it is saved, and the covering says so afterwards', async () => {
    await bays().fill('1820');
    await labels().fill('一 二 三');
    await save();
    const notice = page.getByRole('alert').filter({ hasText: '1 covering loses its zone' });
    await notice.getByText('い通り 荒壁 (closed)').waitFor();
    await notice.getByText(/\d+ members lose their places/).waitFor();
    expect(await notice.getByText('い通り 一から二').count()).toBe(0);
    expect(await linesStated()).toBe(4);
    await photograph(page, 'grid-losses');
    await button(page, 'Save all the same').click();
    await page.getByText(t('grid.saved')).waitFor();
    expect(await linesStated()).toBe(3);
    expect(await notice.count()).toBe(0);
    await openScreen(page, covering);
    await page.getByText('The grid no longer has the lines of its zone').waitFor();
    expect(await page.getByText(t('coverings.one.hidesNothing')).count()).toBe(0);
    await photograph(page, 'covering-zone-unread');
  });

  it('is saved at once where nothing is lost', async () => {
    await openScreen(page, `${site.house}/grid`);
    await labels().fill('一 二 三 四');
    await bays().fill('六尺');
    await save();
    await page.getByText(t('grid.saved')).waitFor();
    expect(await linesStated()).toBe(4);
  });
});
