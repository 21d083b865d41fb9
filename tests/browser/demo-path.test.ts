import path from 'node:path';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import type { Language } from '../../client/i18n/language.ts';
import type { Words } from '../../client/i18n/words.ts';
import { PHOTO_FACTS } from '../../server/demo/render/facts/photo-facts.ts';
import { WEST_WALL } from '../../server/demo/story/inspections.ts';
import type { Who } from '../../server/demo/story/people.ts';
import { PHOTOS } from '../../server/demo/story/photos.ts';
import { startDemo, type Demo } from '../../server/start-demo.ts';
import { wordsOf } from '../client/words.ts';
import { launchBrowser } from '../support/chromium.ts';
import { truthOf } from '../support/demo-truth.ts';
import { ROOT } from '../support/project-files.ts';
import { describeInBrowser, DESKTOP, HARMLESS, inOneGo } from './app.ts';
import {
  chooseTool,
  dragBox,
  openOnBench,
  pointOn,
  said,
  sayByKey,
  stageOf,
  type Spot,
} from './bench-hands.ts';
import { answerButton, button, eventually, goTo, heading, link } from './hands.ts';
import { photograph } from './screens.ts';

/** Nobody has tagged it, and the newest photo of the west wall shows it. */
const LEFT = 'い通り内法貫';
const NO_PHOTO = 'tagged on no photo';
const WALL_PHOTO = 'west-lath-going-on';
/** A picture of a part of that wall, from near, on which nothing is tagged. */
const NEAR_PHOTO = 'west-post-lath';
/** By `sharpnessOf`, the picture of the wall has 24 as it is and 10 as a thumbnail that is drawn larger. */
const SHARP = 16;
const SMALL = { width: 1280, height: 800 };
/** Where the README's pictures lie; they are made anew by `npm run readme-pictures`. */
const README = process.env['ARAKABE_README_PICTURES'] === '1' ? path.join(ROOT, 'client/readme') : null;

describeInBrowser('ten minutes with the demo', () => {
  let demo: Demo;
  let browser: Browser;
  let t: Words;
  let page: Page;
  let complaints: string[] = [];

  beforeAll(async () => {
    const order = { port: null, photoFolder: path.join(ROOT, 'server/demo/photos'), photos: PHOTOS };
    const { signal } = new AbortController();
    [t, browser, demo] = await Promise.all([
      wordsOf('en'),
      launchBrowser(),
      startDemo({ ...order, now: new Date(), signal, say: () => undefined }),
    ]);
    page = await goIn('carpenter', 'en');
  }, 300_000);
  inOneGo();
  afterEach(() => {
    expect(complaints.filter((text) => !HARMLESS.test(text))).toEqual([]);
    complaints = [];
  });
  afterAll(async () => {
    await browser.close();
    await demo.stop();
  });

  /** Through a door of the demo, in a browser of one's own. */
  async function goIn(who: Who, lang: Language): Promise<Page> {
    const locale = lang === 'ja' ? 'ja-JP' : 'en-GB';
    const context = await browser.newContext({ ...DESKTOP, viewport: SMALL, locale });
    context.setDefaultTimeout(20_000);
    const opened = await context.newPage();
    opened.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
    });
    const door = demo.doors.find(({ address }) => address.endsWith(`/${who}`));
    await opened.goto(door?.address ?? '');
    await opened.getByRole('heading', { level: 1 }).waitFor();
    return opened;
  }

  /** On the stage, which shows the photo whole, the outline that the truth of the photo has of a member. */
  async function cornersOf(mark: string): Promise<Spot[]> {
    const { width, height, members } = await truthOf({ shot: WALL_PHOTO });
    const { outline } = members.find((member) => member.mark === mark) ?? { outline: [] };
    const box = await stageOf(page, t).boundingBox();
    if (!box) throw new Error('There is no picture.');
    const scale = Math.min(box.width / width, box.height / height);
    const [left, top] = [(box.width - width * scale) / 2, (box.height - height * scale) / 2];
    // Not on the very edge, where a press may fall beside the picture.
    const within = (value: number, most: number) => Math.max(4, Math.min(most - 4, value));
    return Array.from({ length: outline.length / 2 }, (_, i): Spot => {
      const [x = 0, y = 0] = outline.slice(2 * i, 2 * i + 2);
      return [(left + within(x, width) * scale) / box.width, (top + within(y, height) * scale) / box.height];
    });
  }

  const fileOf = (name: string) => PHOTO_FACTS.find((facts) => facts.name === name)?.fileName ?? '';
  const lineOf = (mark: string) =>
    page
      .getByRole('row')
      .filter({ has: link(page, mark) })
      .first()
      .innerText();

  it.runIf(README)('is pictured for the README as it opens', async () => {
    for (const lang of ['en', 'ja'] as const) {
      const [words, shown] = [await wordsOf(lang), await goIn('carpenter', lang)];
      const keep = (name: string) =>
        shown.screenshot({ path: path.join(README ?? '', `${name}-${lang}.jpg`), type: 'jpeg', quality: 72 });
      await goTo(shown, words, 'report');
      await link(shown, WEST_WALL).first().waitFor();
      await keep('closing-report');
      await goTo(shown, words, 'photos');
      await openOnBench(shown, words, fileOf(WALL_PHOTO));
      // The sharp picture comes after the small one and fades in: nothing in the page tells when.
      await shown.waitForTimeout(5000);
      await keep('bench');
      await shown.context().close();
    }
  });

  it('opens on what closes tomorrow, with three things to look at', async () => {
    await heading(page, t('days.title')).waitFor();
    const tour = page.getByRole('region', { name: t('days.tour.title') });
    await eventually(() => tour.getByRole('link').count()).toBe(3);
    await link(page, WEST_WALL).first().waitFor();
    await photograph(page, 'demo-1-journal');
    await link(tour, t('common.nav.report')).click();
  });

  it('names in the report what nobody has on record', async () => {
    await heading(page, t('report.title')).waitFor();
    await eventually(() => lineOf(LEFT)).toContain(NO_PHOTO);
    await photograph(page, 'demo-2-report');
  });

  it('shows a photo sharp on a tablet, whose window is less than half as wide as the picture', async () => {
    const context = await browser.newContext({
      ...{ ...DESKTOP, viewport: { width: 820, height: 1180 } },
      storageState: await page.context().storageState(),
    });
    const tablet = await context.newPage();
    await tablet.goto(`${new URL(page.url()).origin}/houses/${demo.house}/photos`);
    await openOnBench(tablet, t, fileOf(NEAR_PHOTO));
    await eventually(() => sharpnessOf(tablet)).toBeGreaterThan(SHARP);
    await context.close();
  });

  it('takes no rail that the picture cuts off for all of it, unasked', async () => {
    await goTo(page, t, 'photos');
    await openOnBench(page, t, fileOf(NEAR_PHOTO));
    await chooseTool(page, t, 'rectangle');
    await dragBox(page, t, [0.3, 0.3], [0.999, 0.4]);
    await sayByKey(page, t, LEFT, 'lath-on');
    await page
      .getByRole('alert')
      .getByText(t('bench.stretch.cut', { mark: LEFT }))
      .waitFor();
    await photograph(page, 'demo-cut-off');
    await page.getByLabel(t('bench.stretch.from'), { exact: true }).selectOption('一');
    await page.getByLabel(t('bench.stretch.to'), { exact: true }).selectOption('二');
    await button(page, t('bench.form.place')).click();
    await said(page, `${LEFT}, lath on: placed.`).waitFor();
    await page
      .getByText(t('bench.stretch.shown', { from: '一', to: '二' }))
      .first()
      .waitFor();
    await button(page, t('bench.undo')).click();
    await eventually(() => page.getByText(t('bench.stretch.shown', { from: '一', to: '二' })).count()).toBe(
      0,
    );
  });

  it('finds it on a photo that is there, and tags it', async () => {
    await goTo(page, t, 'photos');
    await openOnBench(page, t, fileOf(WALL_PHOTO));
    await chooseTool(page, t, 'polygon');
    for (const spot of await cornersOf(LEFT)) {
      const { x, y } = await pointOn(stageOf(page, t), spot);
      await page.mouse.click(x, y);
    }
    await page.keyboard.press('Enter');
    await sayByKey(page, t, LEFT, 'lath-on');
    await said(page, `${LEFT}, lath on: placed.`).waitFor();
    await photograph(page, 'demo-3-bench');
    await goTo(page, t, 'report');
    await eventually(() => lineOf(LEFT)).not.toContain(NO_PHOTO);
  });

  it('shows the frame, what does not fit, and the history of a member', async () => {
    await link(page.getByRole('navigation', { name: t('common.houseMenu') }), t('common.nav.frame')).click();
    await heading(page, t('common.nav.frame')).waitFor();
    await photograph(page, 'demo-4-frame');
    await goTo(page, t, 'findings');
    await page.getByText(/^Taken 2,\d{3} m from the site/).waitFor();
    await page.getByText('The file holds no time that can be used.', { exact: true }).waitFor();
    await photograph(page, 'demo-5-findings');
    await page.goto(`${new URL(page.url()).origin}/houses/${demo.house}/members/${encodeURIComponent(LEFT)}`);
    await page.getByRole('table', { name: t('members.history.stages') }).waitFor();
    await photograph(page, 'demo-6-member');
  });

  it('lets the inspector review the wall member by member', async () => {
    const inspector = await goIn('inspector', 'en');
    const tour = inspector.getByRole('region', { name: t('days.tour.title') });
    await tour.getByText(t('days.tour.photoLook')).waitFor();
    await link(tour, t('days.tour.review')).click();
    await heading(inspector, `Review of ${WEST_WALL}`).waitFor();
    await answerButton(inspector, t('hold.review.accept'))
      .or(answerButton(inspector, t('hold.review.seen')))
      .first()
      .waitFor();
    await photograph(inspector, 'demo-7-review');
    // Of two records each shows a part of this rail: it is seen once both were opened.
    await inspector
      .locator('.review-list')
      .getByRole('button', { name: /^い通り腰貫/ })
      .click();
    await answerButton(inspector, t('hold.review.nextRecord', { count: 1 })).click();
    await answerButton(inspector, t('hold.review.seen')).waitFor();
    await photograph(inspector, 'demo-7-second-record');
    await inspector.context().close();
  });
});

/** Of the middle of what is drawn, without labels: the mean step from a pixel to the next, of 255. */
function sharpnessOf(page: Page): Promise<number> {
  return page
    .locator('.bench-viewer canvas')
    .first()
    .evaluate((canvas) => {
      if (!(canvas instanceof HTMLCanvasElement)) return 0;
      const [side, copy] = [200, new OffscreenCanvas(200, 200).getContext('2d')];
      const [left, top] = [(canvas.width - side) / 2, (canvas.height - side) / 2];
      copy?.drawImage(canvas, left, top, side, side, 0, 0, side, side);
      const { data } = copy?.getImageData(0, 0, side, side) ?? { data: [] };
      let sum = 0;
      for (let i = 4; i < data.length; i += 4) sum += Math.abs((data[i] ?? 0) - (data[i - 4] ?? 0));
      return sum / (side * side);
    });
}
