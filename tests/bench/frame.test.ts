import { afterAll, beforeAll, it } from 'vitest';
import type { Page } from 'playwright-core';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from '../browser/app.ts';
import { prepareFrame, wall, type FrameSite } from '../browser/frame-site.ts';
import { signIn } from '../browser/hands.ts';
import { openScreen } from '../browser/screens.ts';
import { KEEPER } from '../browser/site.ts';
import { randomUUID } from 'node:crypto';
import { sayTable } from './say-table.ts';

const MEMBERS = 3000;
const TIMES = 15;
const FRAME_MS = 1000 / 60;

describeInBrowser('a frame of three thousand members', () => {
  let app: App;
  let site: FrameSite;
  beforeAll(async () => {
    app = await startApp();
    site = await prepareFrame(app.server.origin, app.server.firstLink ?? '');
    // All in one elevation, which no house has: the worst that a sheet can be.
    const rails = Array.from(
      { length: MEMBERS },
      (_, i) => `貫${i},地貫,い一,い四,1F,${(i % 300) * 9},${(i % 300) * 9},24,${20 + (i % 7)}`,
    );
    await site.client.raw('POST', `${site.house}/schedule?fileName=many.csv`, {
      body: ['mark,kind,from,to,level,base,top,width,depth', ...rails].join('\r\n'),
      headers: { 'content-type': 'text/csv' },
    });
    const marks = Array.from({ length: 60 }, (_, i) => `貫${i * 7}`);
    await site.tag('2026-04-02', marks.slice(0, 30), 'raised');
    await site.tag('2026-04-20', marks, 'pegged');
    await site.client.post(`${site.house}/coverings`, {
      ...{ id: randomUUID(), name: 'Wall', kind: 'plaster', plannedDay: '2026-12-24', hides: [] },
      zone: wall('first', 'い', '一', '四'),
    });
  });
  afterAll(() => app.close());

  it('goes a day on', async () => {
    const page = await app.open();
    await page.goto('/');
    await signIn(page, await wordsOf('en'), KEEPER);
    await openScreen(page, `${site.house}/frame?line=い`);
    await page.locator('.frame-window').waitFor();
    const [step, bare] = [await msOf(page, 'slider'), await msOf(page, 'bare')];
    sayTable(`${MEMBERS} members in one elevation`, [
      {
        what: 'a step of the slider, against the same paths drawn anew',
        measured: `${step.toFixed(1)} ms, ${(step / FRAME_MS).toFixed(2)} of a frame at 60 Hz`,
        bare: `${bare.toFixed(1)} ms`,
        ratio: (step / bare).toFixed(2),
      },
    ]);
  });
});

/** The median time that a change keeps the page busy, its layout included. */
function msOf(page: Page, what: 'slider' | 'bare'): Promise<number> {
  return page.evaluate(
    async ({ slider, times }) => {
      const drawn = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
      const range = document.querySelector<HTMLInputElement>('.frame-day input');
      const inks = Array.from(document.querySelectorAll('.frame-window .frame-inks path'));
      const field = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value');
      const taken: number[] = [];
      for (let i = 0; i < times; i++) {
        await drawn();
        const start = performance.now();
        if (slider && range) {
          field?.set?.call(range, i % 2 === 0 ? '0' : range.max);
          range.dispatchEvent(new Event('input', { bubbles: true }));
        } else for (const ink of inks) ink.setAttribute('d', `${ink.getAttribute('d') ?? ''} `);
        // What the script takes, and the layout that it brings about.
        document.body.getBoundingClientRect();
        await new Promise((done) => setTimeout(done));
        taken.push(performance.now() - start);
      }
      return taken.sort((a, b) => a - b)[Math.floor(times / 2)] ?? NaN;
    },
    { slider: what === 'slider', times: TIMES },
  );
}
