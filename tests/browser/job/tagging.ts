import { expect, it } from 'vitest';
import {
  backToPhotos,
  chooseTool,
  dragBox,
  draft,
  drawnBetween,
  openOnBench,
  pointOn,
  said,
  sayByKey,
  stageOf,
  tagArrived,
  tagRow,
} from '../bench-hands.ts';
import { button, eventually, field, hasFocus, tick } from '../hands.ts';
import { photograph } from '../screens.ts';
import { nameOf, type Job } from './job.ts';

/** Saying what the photographs show: by mouse, outline, keyboard; changed and withdrawn. */
export function tagging(job: Job): void {
  it('tags with the mouse and the keys, exactly where the hand has drawn', async () => {
    const { page, t } = job;
    await openOnBench(page, t, nameOf(job, 'cranes'));
    await chooseTool(page, t, 'rectangle');
    await dragBox(page, t, [0.3, 0.3], [0.5, 0.7]);
    await drawnBetween(page, t, [0.3, 0.3], [0.5, 0.7]);
    await sayByKey(page, t, '三', 'raised');
    await said(page, 'い三, raised: placed.').waitFor();
    await tagArrived(page, t, 'い三', 'raised');
  });

  it('tags an outline of corners', async () => {
    const { page, t } = job;
    await chooseTool(page, t, 'polygon');
    for (const spot of [
      [0.55, 0.3],
      [0.75, 0.35],
      [0.72, 0.6],
      [0.58, 0.55],
    ] as const) {
      const { x, y } = await pointOn(stageOf(page, t), spot);
      await page.mouse.click(x, y);
    }
    await page.keyboard.press('Enter');
    await sayByKey(page, t, 'jinuki', 'raised');
    await said(page, 'い通り貫一, raised: placed.').waitFor();
    await tagArrived(page, t, 'い通り貫一', 'raised');
    if (job.keepsPictures) await photograph(page, 'bench-tagged-en');
    await backToPhotos(page, t);
  });

  it('tags wholly by keyboard', async () => {
    const { page, t } = job;
    await openOnBench(page, t, nameOf(job, 'deck'));
    await eventually(() => hasFocus(stageOf(page, t))).toBe(true);
    await page.keyboard.press('r');
    await draft(page, t).waitFor();
    const before = await draft(page, t).boundingBox();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    const after = await draft(page, t).boundingBox();
    expect((after?.x ?? 0) - (before?.x ?? 0)).toBeGreaterThan(2);
    expect((after?.height ?? 0) - (before?.height ?? 0)).toBeGreaterThan(2);
    await page.keyboard.press('Enter');
    await sayByKey(page, t, 'ろ二', 'pegged');
    await said(page, 'ろ二, pegged: placed.').waitFor();
    await tagArrived(page, t, 'ろ二', 'pegged');
    await page.getByText(t('photos.capture.undated')).waitFor();
    await backToPhotos(page, t);
  });

  it('changes a tag, and withdraws another with its reason', async () => {
    const { page, t } = job;
    await openOnBench(page, t, nameOf(job, 'house'));
    await chooseTool(page, t, 'rectangle');
    await dragBox(page, t, [0.3, 0.3], [0.45, 0.6]);
    await sayByKey(page, t, '三', 'raised');
    await tagArrived(page, t, 'い三', 'raised');
    await button(tagRow(page, t, 'い三'), t('bench.list.changeNamed', { mark: 'い三' })).click();
    const form = page.getByRole('region', { name: t('bench.form.changeTitle', { mark: 'い三' }) });
    await form.getByText('pegged', { exact: true }).click();
    await button(form, t('bench.form.save')).click();
    await said(page, 'い三, pegged: changed.').waitFor();
    await tagArrived(page, t, 'い三', 'pegged');

    await dragBox(page, t, [0.6, 0.4], [0.75, 0.6]);
    await sayByKey(page, t, 'い二', 'pegged');
    await tagArrived(page, t, 'い二', 'pegged');
    await button(tagRow(page, t, 'い二'), t('bench.list.withdrawNamed', { mark: 'い二' })).click();
    const dialog = page.getByRole('dialog', { name: 'Withdraw い二, pegged?' });
    await field(dialog, t('bench.withdraw.reason')).fill('That is the neighbour.');
    await button(dialog, t('bench.withdraw.submit')).click();
    await said(page, 'い二, pegged: withdrawn.').waitFor();
    await tick(page, 'Show what was superseded or withdrawn (2)');
    await page.getByText('Reason: That is the neighbour.').waitFor();
    expect(await tagRow(page, t, 'い二').count()).toBe(0);
    expect(await tagRow(page, t, 'い三').count()).toBe(1);
    await backToPhotos(page, t);

    await openOnBench(page, t, nameOf(job, 'box'));
    await chooseTool(page, t, 'rectangle');
    await dragBox(page, t, [0.4, 0.4], [0.6, 0.6]);
    await sayByKey(page, t, 'い一', 'cut');
    await tagArrived(page, t, 'い一', 'cut');
  });
}
