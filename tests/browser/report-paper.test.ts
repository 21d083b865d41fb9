import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { canReadPdf, overdrawn, pdfWords } from '../support/pdf-words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { signIn } from './hands.ts';
import { openScreen, resultFile } from './screens.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const COVERINGS = 5;
/** With its heading more than half of an A4 page. */
const LINES = 11;
/** A covering that fits below another one, and is not cut. */
const FEW = 5;

describeInBrowser('the report on paper', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    const marks = Array.from({ length: LINES }, (_, i) => `rail ${i + 1}`);
    const porch = Array.from({ length: FEW }, (_, i) => `porch${i + 1}`);
    await site.client.raw('POST', `${site.things.house}/schedule`, {
      body: ['mark,kind', ...[...marks, ...porch].map((mark) => `${mark},nuki`)].join('\r\n'),
      headers: { 'content-type': 'text/csv' },
    });
    for (let i = 1; i <= COVERINGS; i++)
      await site.client.post(`${site.things.house}/coverings`, {
        id: randomUUID(),
        name: `Wall ${i}`,
        kind: 'plaster',
        plannedDay: `2026-05-0${i}`,
        hides: marks.map((mark) => ({ mark, least: 'pegged' })),
      });
    await site.client.post(`${site.things.house}/coverings`, {
      id: randomUUID(),
      name: 'Porch',
      kind: 'floor',
      plannedDay: '2026-05-03',
      hides: porch.map((mark) => ({ mark, least: 'pegged' })),
    });
    page = await app.open();
    await page.goto(site.things.house);
    await signIn(page, t, KEEPER);
  });
  afterAll(() => app.close());

  const print = async (name: string) => {
    await openScreen(page, `${site.things.house}/report`);
    await page.getByText('Wall 5', { exact: true }).first().waitFor();
    await page.emulateMedia({ media: 'print' });
    const file = await resultFile(name);
    const pdf = await page.pdf({ path: file, preferCSSPageSize: true });
    // Page objects of ISO 32000-1, 7.7.3.3.
    const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    await page.emulateMedia({ media: null });
    return { file, pages };
  };

  it('leaves no page half empty because the next covering does not fit', async () => {
    const { pages } = await print('report-paper.pdf');
    // As whole pieces each covering would take a page of its own.
    expect(pages).toBeGreaterThan(2);
    expect(pages).toBeLessThanOrEqual(COVERINGS);
  });

  it('has every table in the same columns', async () => {
    await page.emulateMedia({ media: 'print' });
    const widths = await page.locator('.report-lines').evaluateAll((tables) =>
      tables.map((table) =>
        Array.from(table.querySelectorAll('thead th'))
          .map((cell) => Math.round(cell.getBoundingClientRect().width))
          .join(),
      ),
    );
    await page.emulateMedia({ media: null });
    expect(widths.length).toBeGreaterThanOrEqual(COVERINGS);
    expect(new Set(widths).size).toBe(1);
    expect(widths[0]?.split(',').every((width) => Number(width) > 20)).toBe(true);
  });

  it('has no way to a photo on it, whatever the width of the window', async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    await openScreen(page, `${site.things.house}/report`);
    const looks = page.locator('.report-look');
    await looks.first().waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await looks.evaluateAll((all) => all.filter((one) => one.checkVisibility()).length)).toBe(0);
    await page.emulateMedia({ media: null });
    await page.setViewportSize({ width: 1280, height: 900 });
  });

  it.skipIf(!canReadPdf())('says on each page which house, when, which page and which covering', async () => {
    const { file, pages } = await print('report-paper-heads.pdf');
    const words = pdfWords(file);
    expect(overdrawn(words)).toEqual([]);
    for (let n = 1; n <= pages; n++) {
      const here = words.filter((word) => word.page === n);
      const text = here.map((word) => word.text).join(' ');
      // Within the head margin of 16 mm.
      const margin = here.filter((word) => word.bottom < (16 / 25.4) * 72).map((word) => word.text);
      expect(margin.join(' ')).toMatch(/^Boathouse As of \d/);
      expect(text).toContain(`${n} / ${pages}`);
      // A table that goes on from the page before has its headings and the name of its covering again.
      const top = (...any: string[]) =>
        Math.min(...here.filter((word) => any.includes(word.text)).map((word) => word.top));
      if (!here.some((word) => word.text === 'rail')) continue;
      expect(top(t('report.columns.mark'))).toBeLessThan(top('rail', 'tie'));
      expect(top('Wall', 'Porch', '北の壁')).toBeLessThan(top(t('report.columns.mark')));
    }
  });

  it.skipIf(!canReadPdf())('does not cut a covering of few lines', async () => {
    const { file } = await print('report-paper-whole.pdf');
    const pagesOf = (mark: string) =>
      pdfWords(file).flatMap(({ text, page: at }) => (text === mark ? [at] : []));
    const few = Array.from({ length: FEW }, (_, i) => pagesOf(`porch${i + 1}`));
    expect(few.every((at) => at.length > 0)).toBe(true);
    expect(new Set(few.flat()).size).toBe(1);
  });
});
