import { randomUUID } from 'node:crypto';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { BrowserContextOptions, Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { chooseTool, dragBox, pictureDrawn } from './bench-hands.ts';
import { prepareFrame, wall, type FrameSite } from './frame-site.ts';
import { button, eventually, signIn } from './hands.ts';
import { openScreen, photograph, resultFile } from './screens.ts';
import { KEEPER } from './site.ts';

const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

describeInBrowser('the frame', () => {
  let app: App;
  let site: FrameSite;
  let photo: string;
  beforeAll(async () => {
    app = await startApp();
    site = await prepareFrame(app.server.origin, app.server.firstLink ?? '');
    const { client, house } = site;
    const tag: FrameSite['tag'] = (...said) => site.tag(...said);
    photo = await tag('2026-04-02', ['い一', 'い二', 'い三', 'い四', 'い通り土台', '一通り土台'], 'raised');
    await tag('2026-04-08', ['い二上', 'い三上', 'い通り胴差', 'い通り桁', 'に一', 'に四'], 'cut');
    await tag('2026-04-20', ['い一', 'い二', 'い地貫', 'い内法貫'], 'pegged');
    await tag('2026-04-20', ['い胴貫'], 'pegged', { from: '一', to: '二' });
    await tag('2026-04-20', ['に二', 'に三'], 'lath-on');
    const plan = (name: string, zone: object, plannedDay: string) =>
      client.post<{ id: string }>(`${house}/coverings`, {
        ...{ id: randomUUID(), name, kind: 'plaster', plannedDay, hides: [] },
        zone,
      });
    await plan('い通り 荒壁', wall('first', 'い', '一', '四'), '2026-12-24');
    const { id } = await plan('に通り 荒壁', wall('first', 'に', '二', '三'), '2026-04-25');
    await client.post(`/coverings/${id}/close`, {
      withoutRelease: 'Nobody inspects this house.',
      closedAt: '2026-04-25T03:00:00.000Z',
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
  const inkLength = (page: Page, ink: string) =>
    page.locator(`.frame-window .frame-ink-${ink}`).evaluate((path) => (path.getAttribute('d') ?? '').length);

  it('shows what is missing in vermilion, as it stood on any day, and is walked by keys', async () => {
    const [page, t] = await enter('en');
    await openScreen(page, `${site.house}/frame`);
    await page.getByRole('img', { name: /Elevation い on .*\d+ gaps?/ }).waitFor();
    await photograph(page, 'frame-desktop');
    const gap = page.locator('.frame-window .frame-ink-gap');
    const vermilion = await page.evaluate(() =>
      getComputedStyle(document.documentElement).getPropertyValue('--vermilion').trim(),
    );
    expect(vermilion).toBe('#a92f17');
    expect(await gap.evaluate((path) => getComputedStyle(path).stroke)).toBe('rgb(169, 47, 23)');
    expect(await inkLength(page, 'pegged')).toBeGreaterThan(0);

    await button(page, t('frame.dayBefore')).click();
    await button(page, t('frame.dayBefore')).click();
    await page.getByRole('img', { name: /on .*20 Apr 2026/ }).waitFor();
    await button(page, t('frame.dayBefore')).click();
    await page.getByRole('img', { name: /on .*8 Apr 2026/ }).waitFor();
    expect(await inkLength(page, 'pegged')).toBe(0);
    expect(await inkLength(page, 'not-yet')).toBeGreaterThan(0);
    await eventually(() => page.url()).toContain('day=2026-04-08');
    await photograph(page, 'frame-before');
    await openScreen(page, `${site.house}/frame?line=い`);

    const members = page.getByRole('list', { name: /Members of Elevation い/ });
    await members.getByRole('link').first().focus();
    await page.keyboard.press('End');
    await page.keyboard.press('Home');
    for (let i = 0; i < 40; i++) {
      const text = await page.evaluate(() => document.activeElement?.textContent);
      if (text === 'い胴貫') break;
      await page.keyboard.press('ArrowDown');
    }
    await page.locator('.frame-highlight').waitFor();
    // Of three bays one is on a photo: 3640 of 5460 mm are missing, by hand.
    await page
      .locator('.frame-tell')
      .getByText(/from 二 to 四, 3\.64 m of 5\.46 m/)
      .waitFor();
    await photograph(page, 'frame-told');
    await page.keyboard.press('Enter');
    await page.waitForURL(/members\//);
    await page.context().close();
  });

  it('tells of a member under the pointer and opens it by a press', async () => {
    const [page] = await enter('en');
    await openScreen(page, `${site.house}/frame?line=い`);
    const box = await page.locator('.frame-window').boundingBox();
    if (!box) throw new Error('There is no drawing.');
    const tell = page.locator('.frame-tell');
    const at = async (x: number, y: number) => page.mouse.move(box.x + box.width * x, box.y + box.height * y);
    let found = '';
    for (let x = 0.2; x < 0.8 && found === ''; x += 0.01) {
      await at(x, 0.55);
      found =
        (await tell
          .locator('strong')
          .first()
          .textContent({ timeout: 200 })
          .catch(() => '')) ?? '';
    }
    expect(found).not.toBe('');
    await page.mouse.down();
    await page.mouse.up();
    await page.waitForURL((url) => decodeURIComponent(url.pathname).endsWith(`/members/${found}`));
    await page.context().close();
  });

  it('gives its mark to the field of a tag, and places nothing', async () => {
    const [page, t] = await enter('en');
    await openScreen(page, `${site.house}/photos/${photo}`);
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    await dragBox(page, t, [0.7, 0.2], [0.9, 0.7]);
    const { tags: before } = await site.client.get<{ tags: number }>(`/photos/${photo}`);
    await button(page, t('frame.pick.open')).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('img', { name: /Elevation い/ }).waitFor();
    await photograph(page, 'frame-pick');
    await button(dialog, 'い胴貫').click();
    await dialog.waitFor({ state: 'detached' });
    expect(await page.getByRole('combobox', { name: t('bench.form.mark') }).inputValue()).toBe('い胴貫');
    const { tags } = await site.client.get<{ tags: number }>(`/photos/${photo}`);
    expect(tags).toBe(before);
    await page.context().close();
  });

  it('stands in Japanese on a phone, in the dark, and on plans', async () => {
    for (const [lang, options, name, query] of [
      ['ja', PHONE, 'phone-ja', ''],
      ['en', { colorScheme: 'dark' }, 'dark', ''],
      ['ja', {}, 'ja-closed', '?line=に'],
      ['ja', {}, 'ja-gable', '?line=一'],
      ['en', {}, 'plan', '?level=2F'],
    ] as const) {
      const [page] = await enter(lang, options);
      await openScreen(page, `${site.house}/frame${query}`);
      await page.locator('.frame-window').waitFor();
      await photograph(page, `frame-${name}`);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0);
      await page.context().close();
    }
  });

  it('is printed on A3, a sheet for each drawing', async () => {
    const [page] = await enter('en');
    await openScreen(page, `${site.house}/frame`);
    const sheets = await page.locator('.frame-choice-link').count();
    await page.emulateMedia({ media: 'print' });
    await page.locator('.frame-page').first().waitFor();
    const pdf = await page.pdf({ path: await resultFile('frame.pdf'), preferCSSPageSize: true });
    const text = pdf.toString('latin1');
    expect(text.match(/\/Type \/Page\b/g)).toHaveLength(sheets);
    // A3 is 297 × 420 mm (ISO 216).
    const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(text) ?? [];
    expect(Number(width)).toBeCloseTo((420 / 25.4) * 72, -1);
    expect(Number(height)).toBeCloseTo((297 / 25.4) * 72, -1);
    await page.context().close();
  });
});
