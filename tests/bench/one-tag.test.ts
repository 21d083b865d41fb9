import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, it } from 'vitest';
import type { Page } from 'playwright-core';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from '../browser/app.ts';
import { prepareFrame, type FrameSite } from '../browser/frame-site.ts';
import { signIn } from '../browser/hands.ts';
import { openScreen } from '../browser/screens.ts';
import { KEEPER } from '../browser/site.ts';
import { sayTable, type BenchRow } from './say-table.ts';

const MEMBERS = 5000;
const LISTED = 50;
const TIMES = 9;

describeInBrowser(`one tag among ${MEMBERS} members, on a screen that is open`, () => {
  let app: App;
  let site: FrameSite;
  let photo = '';
  beforeAll(async () => {
    app = await startApp();
    site = await prepareFrame(app.server.origin, app.server.firstLink ?? '');
    const marks = Array.from({ length: MEMBERS }, (_, i) => `貫${i}`);
    const rails = marks.map((mark, i) => {
      const line = 'いろはに'[i % 4] ?? 'い';
      return `${mark},地貫,${line}一,${line}四,1F,${(i % 300) * 9},${(i % 300) * 9},24,20`;
    });
    await site.client.raw('POST', `${site.house}/schedule?fileName=many.csv`, {
      body: ['mark,kind,from,to,level,base,top,width,depth', ...rails].join('\r\n'),
      headers: { 'content-type': 'text/csv' },
    });
    const plan = (facts: object) =>
      site.client.post(`${site.house}/coverings`, {
        ...{ id: randomUUID(), kind: 'plaster', plannedDay: '2026-12-24', zone: null, hides: [], ...facts },
      });
    for (let i = 0; i < MEMBERS; i += LISTED) {
      const hides = marks.slice(i, i + LISTED).map((mark) => ({ mark, least: 'pegged' }));
      await plan({ name: `Wall ${i / LISTED}`, hides });
    }
    photo = await site.tag('2026-04-02', [], 'raised');
  });
  afterAll(() => app.close());

  it('is on the report and on the frame', async () => {
    const page = await app.open();
    await page.goto('/');
    await signIn(page, await wordsOf('en'), KEEPER);
    const rows: BenchRow[] = [];
    for (const screen of ['closing-report', 'frame'] as const) {
      const address = screen === 'frame' ? `${site.house}/frame?line=い` : `${site.house}/report`;
      await openScreen(page, address);
      await page
        .locator(screen === 'frame' ? '.frame-window' : '.report-lines')
        .first()
        .waitFor();
      const shown: number[] = [];
      for (let i = 0; i < TIMES; i++)
        shown.push(await untilShown(page, screen, `貫${i * 4 + (screen === 'frame' ? 400 : 0)}`));
      const bare: number[] = [];
      for (let i = 0; i < TIMES; i++) bare.push(await wholeOf(page, `/api/v1${site.house}/${screen}`));
      const [ours, whole] = [median(shown), median(bare)];
      rows.push({
        what: `${screen}: from the server's yes to the screen`,
        measured: `${ours.toFixed(0)} ms, at most ${Math.max(...shown).toFixed(0)}`,
        bare: `${whole.toFixed(0)} ms to fetch the whole`,
        ratio: (whole / ours).toFixed(2),
      });
    }
    sayTable(`one tag among ${MEMBERS} members`, rows);
  });

  /** In the page: says the tag, and waits for the drawing or table to change. */
  function untilShown(page: Page, screen: string, mark: string): Promise<number> {
    const tag = {
      ...{ id: randomUUID(), mark, stage: 'pegged', stretch: null },
      region: { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.5, h: 0.5 },
    };
    return page.evaluate(
      async ({ address, tag, isFrame }) => {
        const shown = document.querySelector(isFrame ? '.frame-window' : 'main') as Element;
        const told = () =>
          isFrame
            ? Array.from(shown.querySelectorAll('path'), (path) => path.getAttribute('d')).join('|').length
            : Array.from(shown.querySelectorAll('.report-facts'), (part) => part.textContent).join();
        const before = told();
        const changed = new Promise<number>((done) => {
          const watcher = new MutationObserver(() => {
            if (told() === before) return;
            watcher.disconnect();
            requestAnimationFrame(() => setTimeout(() => done(performance.now())));
          });
          watcher.observe(shown, { subtree: true, childList: true, characterData: true, attributes: true });
        });
        await fetch(address, {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify(tag),
        });
        const said = performance.now();
        const at = await changed;
        await new Promise((done) => setTimeout(done, 3000));
        return at - said;
      },
      { address: `/api/v1/photos/${photo}/tags`, tag, isFrame: screen === 'frame' },
    );
  }
});

function wholeOf(page: Page, address: string): Promise<number> {
  return page.evaluate(async (path) => {
    const start = performance.now();
    await (await fetch(path)).json();
    return performance.now() - start;
  }, address);
}

const median = (all: readonly number[]) => all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)] ?? NaN;
