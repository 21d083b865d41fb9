import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { signIn } from './hands.ts';
import { openScreen, resultFile } from './screens.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const COVERINGS = 5;
/** With its heading more than half of an A4 page. */
const LINES = 11;

describeInBrowser('the report on paper', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    const marks = Array.from({ length: LINES }, (_, i) => `rail ${i + 1}`);
    await site.client.raw('POST', `${site.things.house}/schedule`, {
      body: ['mark,kind', ...marks.map((mark) => `${mark},nuki`)].join('\r\n'),
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
    page = await app.open();
    await page.goto(site.things.house);
    await signIn(page, t, KEEPER);
  });
  afterAll(() => app.close());

  it('leaves no page half empty because the next covering does not fit', async () => {
    await openScreen(page, `${site.things.house}/report`);
    await page.getByText('Wall 5', { exact: true }).waitFor();
    await page.emulateMedia({ media: 'print' });
    const pdf = await page.pdf({ path: await resultFile('report-paper.pdf'), preferCSSPageSize: true });
    // Page objects of ISO 32000-1, 7.7.3.3. As whole pieces each covering would take a page of its own.
    const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThan(2);
    expect(pages).toBeLessThanOrEqual(COVERINGS);
  });
});
