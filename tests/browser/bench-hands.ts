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
  await page.getByRole('link', { name: new RegExp(`^${file.replace('.', '\\.')}, `) }).click();
  await heading(page, t('bench.title', { file })).waitFor();
  await pictureDrawn(page, t);
}

/** The middle of the canvas is not empty. */
export async function pictureDrawn(page: Page, t: Words): Promise<void> {
  const middle = (canvas: Element) => {
    if (!(canvas instanceof HTMLCanvasElement) || canvas.width === 0) return 0;
    const pixel = canvas.getContext('2d')?.getImageData(canvas.width / 2, canvas.height / 2, 1, 1).data;
    return pixel?.[3] ?? 0;
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

export async function chooseTool(
  page: Page,
  t: Words,
  tool: 'look' | 'rectangle' | 'polygon',
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
