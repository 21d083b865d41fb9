import { randomUUID } from 'node:crypto';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { CoveringView } from '#domain/contract/views';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { prepareFrame, wall, type FrameSite } from './frame-site.ts';
import { button, field, signIn } from './hands.ts';
import { openScreen, photograph } from './screens.ts';
import { KEEPER } from './site.ts';

const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

describeInBrowser('the layers of a wall', () => {
  let app: App;
  let site: FrameSite;
  let rough: string;
  beforeAll(async () => {
    app = await startApp();
    site = await prepareFrame(app.server.origin, app.server.firstLink ?? '');
    await site.tag('2026-04-20', ['い地貫'], 'pegged');
    const { id } = await site.client.post<{ id: string }>(`${site.house}/coverings`, {
      ...{ id: randomUUID(), name: 'い通り 荒壁', kind: 'plaster', plannedDay: '2026-04-24', hides: [] },
      zone: { ...wall('first', 'い', '一', '四'), face: 'lower' },
    });
    rough = `${site.house}/coverings/${id}`;
    await site.client.post(`/coverings/${id}/close`, {
      withoutRelease: 'Nobody inspects this house.',
      closedAt: '2026-04-24T03:00:00.000Z',
    });
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  const enter = async (lang: 'en' | 'ja', options: BrowserContextOptions = {}): Promise<[Page, Words]> => {
    const page = await app.open({ ...options, locale: lang === 'ja' ? 'ja-JP' : 'en-GB' });
    const t = await wordsOf(lang);
    await page.goto('/');
    await signIn(page, t, KEEPER);
    return [page, t];
  };

  it('are planned one after the other, face by face, and told on the page of each', async () => {
    const [page, t] = await enter('en');
    await openScreen(page, rough);
    await page.getByText('can still be photographed from the side of ろ').first().waitFor();
    await page.getByRole('link', { name: 'Plan the next layer here' }).click();
    await page.waitForURL(/coverings\/new\?over=/);
    await expect
      .poll(() => field(page, t('coverings.form.name')).inputValue())
      .toBe('い通り 荒壁, back coat');
    const face = page.getByRole('combobox', { name: t('coverings.zone.face') });
    expect(await face.inputValue()).toBe('higher');
    expect(await field(page, t('coverings.zone.field.line')).inputValue()).toBe('い');
    await photograph(page, 'layers-next');
    const where = page.getByRole('combobox', { name: 'Where the next layer lies' });
    await where.selectOption('same');
    expect(await face.inputValue()).toBe('lower');
    await where.selectOption('other-face');
    await field(page, t('coverings.form.day')).fill('2026-12-24');
    await button(page, t('coverings.form.save')).click();
    await page.waitForURL((url) => url.search === '' && !url.pathname.endsWith('/new'));
    const { coverings } = await site.client.get<{ coverings: CoveringView[] }>(`${site.house}/coverings`);
    expect(coverings.find(({ name }) => name.endsWith('back coat'))?.zone).toMatchObject({ face: 'higher' });

    await page.getByRole('heading', { name: 'Other layers here' }).waitFor();
    await photograph(page, 'layers-back-coat');
    await page.getByRole('link', { name: 'い通り 荒壁', exact: true }).click();
    await page.getByText('from the side of ろ until Thu, 24 Dec 2026').first().waitFor();
    await photograph(page, 'layers-rough-coat');
    await page.context().close();
  });

  it('stand in the report where something can still be done, in Japanese, on a phone and in the dark', async () => {
    const [page] = await enter('ja', { ...PHONE, colorScheme: 'dark' });
    await openScreen(page, `${site.house}/report`);
    await page
      .getByText(/ろ通りの側から.*12月24日.*まで撮影できる/)
      .first()
      .waitFor();
    await photograph(page, 'layers-report-ja-dark');
    await openScreen(page, rough);
    await page.getByRole('heading', { name: '同じところのほかの層' }).waitFor();
    await photograph(page, 'layers-rough-ja-dark');
    await openScreen(page, `${site.house}/frame?line=い`);
    await page.locator('.frame-sheet').first().waitFor();
    await photograph(page, 'layers-frame-ja-dark');
    await openScreen(page, rough.replace(/coverings\/(.*)$/, 'coverings/new?over=$1'));
    await page.getByText('「い通り 荒壁」から写しました').waitFor();
    await photograph(page, 'layers-next-ja-dark');
    await page.context().close();
  });
});
