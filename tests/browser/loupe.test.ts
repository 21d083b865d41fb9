import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { CDPSession, Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import {
  chooseTool,
  draft,
  pictureDrawn,
  pointAtRest,
  pointOn,
  said,
  stageOf,
  type Spot,
} from './bench-hands.ts';
import { button, eventually, signIn } from './hands.ts';
import { resultFile } from './screens.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 };

describeInBrowser('a finger on the picture', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;
  let screen: CDPSession;

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    page = await app.open(PHONE);
    await page.goto(`${site.things.house}/photos/${site.photos.cranes}`);
    await signIn(page, t, KEEPER);
    screen = await page.context().newCDPSession(page);
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  const touch = async (type: 'touchStart' | 'touchMove' | 'touchEnd', spot?: Spot) => {
    const at = spot && (await pointOn(stageOf(page, t), spot));
    await screen.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });
  };
  const loupe = () => page.locator('.bench-loupe');

  it('sees in the loupe what it hides, and nothing of the loupe once it is lifted', async () => {
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    await stageOf(page, t).scrollIntoViewIfNeeded();
    expect(await loupe().isVisible()).toBe(false);
    await touch('touchStart', [0.3, 0.5]);
    await touch('touchMove', [0.5, 0.6]);
    const under: Spot = [0.6, 0.7];
    await touch('touchMove', under);
    await eventually(() => loupe().isVisible()).toBe(true);
    const finger = await pointOn(stageOf(page, t), under);
    const box = await loupe().boundingBox();
    // Wholly above the finger: half a thumb of room between them.
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThan(finger.y - 50);
    expect(await loupeDifference(page, finger)).toBeLessThan(6);
    // Of what is seen: a picture of the whole page would take the page from under the finger.
    await page.screenshot({ path: await resultFile('bench-loupe.png') });
    await touch('touchEnd');
    await eventually(() => loupe().isVisible()).toBe(false);
    await draft(page, t).waitFor();
  });

  it('places a small box where the finger is lifted, not where it came down', async () => {
    await button(page, t('bench.drop')).first().tap();
    await chooseTool(page, t, 'tap');
    await touch('touchStart', [0.3, 0.3]);
    await touch('touchMove', [0.4, 0.4]);
    await touch('touchEnd');
    // The words come into sight meanwhile, and the picture moves with them.
    const off = async () => {
      const [box, lifted] = [await draft(page, t).boundingBox(), await pointOn(stageOf(page, t), [0.4, 0.4])];
      const middle = [(box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2] as const;
      return Math.hypot(middle[0] - lifted.x, middle[1] - lifted.y);
    };
    await eventually(off).toBeLessThan(4);
  });

  it('tags a row with two presses each, without any keyboard', async () => {
    await page.getByRole('combobox', { name: t('bench.form.mark') }).fill('い一');
    // The page may still be on its way to the words.
    await eventually(async () => {
      await page.getByText(t('common.stage.raised'), { exact: true }).first().tap();
      return page.getByRole('radio', { name: t('common.stage.raised'), checked: true }).count();
    }).toBe(1);
    await button(page, t('bench.form.place')).tap();
    await said(page, 'い一, raised: placed.').waitFor();
    const next = button(page, t('bench.form.placeNamed', { mark: 'い二', why: t('bench.form.why.next') }));
    // What was just placed scrolls the page to its words, at times past the picture: back to it, as a person does.
    await eventually(async () => {
      await stageOf(page, t).evaluate((stage) => stage.scrollIntoView({ block: 'center' }));
      const spot = await pointAtRest(stageOf(page, t), [0.6, 0.75]);
      await page.touchscreen.tap(spot.x, spot.y);
      // Another touch before the words are there would only begin anew.
      return next.waitFor({ timeout: 2000 }).then(
        () => true,
        () => false,
      );
    }).toBe(true);
    await next.tap();
    await said(page, 'い二, raised: placed.').waitFor();
  });
});

/** Mean difference (of 255) between the loupe beside its middle and the picture under the finger, a few pixels each. */
function loupeDifference(page: Page, finger: { x: number; y: number }): Promise<number> {
  return page.evaluate(({ x, y }) => {
    const glass = document.querySelector<HTMLCanvasElement>('.bench-loupe');
    const picture = document.querySelector<HTMLCanvasElement>('.bench-viewer canvas');
    if (!glass || !picture) return 255;
    const pixels = (canvas: HTMLCanvasElement, left: number, top: number) => {
      const copy = new OffscreenCanvas(canvas.width, canvas.height).getContext('2d');
      copy?.drawImage(canvas, 0, 0);
      return [...(copy?.getImageData(Math.round(left), Math.round(top), 1, 1).data ?? [])].slice(0, 3);
    };
    const { left, top } = picture.getBoundingClientRect();
    const density = window.devicePixelRatio;
    const middle = glass.width / 2;
    // Right and below of the finger: no line is being drawn there. The loupe shows twice the size.
    const differences = [6, 10, 14].flatMap((off) => {
      const shown = pixels(glass, middle + 2 * off * density, middle + 2 * off * density);
      const real = pixels(picture, (x - left + off) * density, (y - top + off) * density);
      return shown.map((value, i) => Math.abs(value - (real[i] ?? 0)));
    });
    return differences.reduce((sum, d) => sum + d, 0) / differences.length;
  }, finger);
}
