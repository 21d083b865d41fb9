import { expect } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import type { Stage } from '#domain/frame/stage';
import { STAGES } from '#domain/frame/stage';
import type { Words } from '../../client/i18n/words.ts';
import { button, eventually, heading, link } from './hands.ts';

/** A place on the stage: 0…1 across and down what is seen of it. */
export type Spot = readonly [number, number];

export const stageOf = (page: Page, t: Words) =>
  page.getByRole('group', { name: t('bench.picture'), exact: true }).first();
export const tagRow = (page: Page, t: Words, mark: string) =>
  page.getByRole('listitem').filter({ has: button(page, t('bench.list.changeNamed', { mark })) });
export const said = (page: Page, words: string) => page.getByRole('status').getByText(words, { exact: true });

/** From the list of photos to one of them, until its picture is really drawn. */
export async function openOnBench(page: Page, t: Words, file: string): Promise<void> {
  await page.getByRole('link', { name: new RegExp(`^${file.replace('.', '\\.')}[,、]`) }).click();
  await heading(page, t('bench.title', { file })).waitFor();
  await pictureDrawn(page, t);
}

/** The middle of the canvas is not empty. */
export async function pictureDrawn(page: Page, t: Words): Promise<void> {
  const middle = (canvas: Element) => {
    // Read off a copy: Chromium warns of a canvas that is read itself.
    const copy = new OffscreenCanvas(1, 1).getContext('2d');
    if (!(canvas instanceof HTMLCanvasElement) || canvas.width === 0 || !copy) return 0;
    copy.drawImage(canvas, canvas.width / 2, canvas.height / 2, 1, 1, 0, 0, 1, 1);
    return copy.getImageData(0, 0, 1, 1).data[3];
  };
  const canvas = stageOf(page, t).locator('canvas').first();
  await canvas.waitFor();
  await eventually(() => canvas.evaluate(middle)).toBe(255);
}

export async function pointOn(stage: Locator, [x, y]: Spot): Promise<{ x: number; y: number }> {
  const box = await stage.boundingBox();
  if (!box) throw new Error('The picture is not on the screen.');
  return { x: box.x + x * box.width, y: box.y + y * box.height };
}

/** The same once the page has come to rest: what has just been said may still move it. */
export async function pointAtRest(stage: Locator, spot: Spot): Promise<{ x: number; y: number }> {
  let [before, now] = [{ x: NaN, y: NaN }, await pointOn(stage, spot)];
  while (before.x !== now.x || before.y !== now.y) {
    await stage.page().waitForTimeout(250);
    [before, now] = [now, await pointOn(stage, spot)];
  }
  return now;
}

export async function chooseTool(
  page: Page,
  t: Words,
  tool: 'look' | 'rectangle' | 'polygon' | 'tap',
): Promise<void> {
  await button(page, t(`bench.tool.${tool}`)).click();
}

export async function dragBox(page: Page, t: Words, from: Spot, to: Spot): Promise<void> {
  const stage = stageOf(page, t);
  await stage.scrollIntoViewIfNeeded();
  const [a, b] = [await pointOn(stage, from), await pointOn(stage, to)];
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move((a.x + b.x) / 2, (a.y + b.y) / 2);
  await page.mouse.move(b.x, b.y);
  await page.mouse.up();
  await draft(page, t).waitFor();
}

/** The drawing has the middle of the hand's way, and its size but for the width of the line around it. */
export async function drawnBetween(page: Page, t: Words, [x0, y0]: Spot, [x1, y1]: Spot): Promise<void> {
  /** How far off middle and size are, in px. What stands above may still move both. */
  const off = async () => {
    const [box, stage] = [await draft(page, t).boundingBox(), await stageOf(page, t).boundingBox()];
    if (!box || !stage) throw new Error('There is no drawing.');
    const middle = await pointOn(stageOf(page, t), [(x0 + x1) / 2, (y0 + y1) / 2]);
    const moved = [box.x + box.width / 2 - middle.x, box.y + box.height / 2 - middle.y];
    const grown = [box.width - (x1 - x0) * stage.width, box.height - (y1 - y0) * stage.height];
    return { moved: Math.max(...moved.map(Math.abs)), grown: Math.max(...grown.map(Math.abs)) };
  };
  await eventually(async () => (await off()).moved).toBeLessThan(2);
  expect((await off()).grown).toBeLessThan(20);
}

export const draft = (page: Page, t: Words) => button(page, t('bench.draft'));
export const markField = (page: Page, t: Words) => page.getByRole('combobox', { name: t('bench.form.mark') });

/** In the field that a drawing put the hand into: part of the mark, down to the first that fits, stage, Enter. */
export async function sayByKey(page: Page, t: Words, part: string, stage: Stage): Promise<void> {
  await eventually(() => markField(page, t).evaluate((input) => input === document.activeElement)).toBe(true);
  await page.keyboard.insertText(part);
  await page
    .getByRole('listbox', { name: t('bench.form.suggestions') })
    .getByRole('option')
    .first()
    .waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press(`Alt+${String(STAGES.indexOf(stage) + 1)}`);
  await page.keyboard.press('Enter');
}

/** The tag stands in the list and the server has it. */
export async function tagArrived(page: Page, t: Words, mark: string, stage: Stage): Promise<void> {
  const listed = tagRow(page, t, mark).filter({ hasText: t(`common.stage.${stage}`) });
  await listed.waitFor();
  await eventually(() => listed.getByText(t('bench.unsent.state')).count()).toBe(0);
}

export async function backToPhotos(page: Page, t: Words): Promise<void> {
  await link(page.getByRole('navigation', { name: t('common.youAreHere') }), t('common.nav.photos')).click();
  await heading(page, t('photos.title')).waitFor();
}

/**
 * One finger down, along, at rest, and up again, as the screen of a phone reports it. Lifted while it still
 * moves it would be a fling, and Chromium takes the next tap for the hand that stops it.
 */
export async function dragFinger(
  page: Page,
  from: { x: number; y: number },
  to: { x: number; y: number },
): Promise<void> {
  const screen = await page.context().newCDPSession(page);
  const start = Date.now() / 1000;
  const touch = (
    type: 'touchStart' | 'touchMove' | 'touchEnd',
    after: number,
    at?: { x: number; y: number },
  ) =>
    screen.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [], timestamp: start + after });
  await touch('touchStart', 0, from);
  for (const part of [0.25, 0.5, 0.75, 1])
    await touch('touchMove', part, {
      x: from.x + part * (to.x - from.x),
      y: from.y + part * (to.y - from.y),
    });
  await touch('touchMove', 1.5, { x: to.x, y: to.y + 1 });
  await touch('touchMove', 2, to);
  await touch('touchEnd', 2, undefined);
  await screen.detach();
}
