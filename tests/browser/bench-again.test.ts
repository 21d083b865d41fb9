import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { TagView } from '#domain/contract/views';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import {
  chooseTool,
  dragBox,
  draft,
  markField,
  pictureDrawn,
  pointOn,
  said,
  stageOf,
  tagArrived,
  tagRow,
} from './bench-hands.ts';
import { button, eventually, hasFocus, signIn } from './hands.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

describeInBrowser('saying it again, otherwise, and not at all', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;
  const onRecord = async () => {
    const { allTags } = await site.client.get<{ allTags: TagView[] }>(`/photos/${site.photos.cranes}`);
    return allTags.filter(({ state }) => state === 'standing');
  };
  const marks = async () => (await onRecord()).map(({ mark }) => mark as string).sort();
  const place = async (typed: string, stage: string) => {
    await page.keyboard.type(typed);
    await page.keyboard.press(stage);
    await page.keyboard.press('Enter');
  };

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    page = await app.open();
    await page.goto(`${site.things.house}/photos/${site.photos.cranes}`);
    await signIn(page, t, KEEPER);
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  it('knows a mark by how it is read, and proposes what follows', async () => {
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    await dragBox(page, t, [0.35, 0.2], [0.4, 0.6]);
    await place('i1', 'Alt+3');
    await tagArrived(page, t, 'い一', 'pegged');
    await dragBox(page, t, [0.45, 0.2], [0.5, 0.6]);
    expect(await markField(page, t).inputValue()).toBe('い二');
    await button(page, t('bench.form.placeNamed', { mark: 'い二', why: t('bench.form.why.next') })).click();
    await said(page, 'い二, pegged: placed.').waitFor();
    await tagArrived(page, t, 'い二', 'pegged');
  });

  it('says the same again by one key', async () => {
    await dragBox(page, t, [0.55, 0.2], [0.6, 0.6]);
    await page.keyboard.type('ろ');
    await page.keyboard.press('Escape');
    await page.keyboard.press('ArrowUp');
    expect(await markField(page, t).inputValue()).toBe('い二');
    await page.keyboard.press('Enter');
    await eventually(marks).toEqual(['い一', 'い三', 'い二', 'い二'].sort());
  });

  it('takes back what was said, step by step, and says it again, and the record keeps all of it', async () => {
    const before = (await site.ledger('tag.withdrawn')).length;
    await page.keyboard.press('Control+z');
    await eventually(marks).toEqual(['い一', 'い三', 'い二'].sort());
    await page.keyboard.press('Control+z');
    await eventually(marks).toEqual(['い一', 'い三'].sort());
    await button(page, t('bench.redo')).click();
    await eventually(marks).toEqual(['い一', 'い三', 'い二'].sort());
    const withdrawn = await site.ledger('tag.withdrawn');
    expect(withdrawn).toHaveLength(before + 2);
    expect(withdrawn.at(-1)?.payload).toMatchObject({ reason: 'taken back' });
  });

  it('splits a region by a line: one side keeps its member, the other is said next', async () => {
    await page.keyboard.press('x');
    const stage = stageOf(page, t);
    const [from, to] = [await pointOn(stage, [0.43, 0.4]), await pointOn(stage, [0.52, 0.41])];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 3 });
    await page.mouse.up();
    await page.getByRole('region', { name: t('bench.form.changeTitle', { mark: 'い二' }) }).waitFor();
    await page.getByText(t('bench.form.waiting', { count: 1 })).waitFor();
    await page.keyboard.press('Enter');
    await draft(page, t).waitFor();
    await eventually(() => hasFocus(markField(page, t))).toBe(true);
    await page.keyboard.type('い三');
    await page.keyboard.press('Enter');
    await eventually(marks).toEqual(['い一', 'い三', 'い三', 'い二'].sort());
    const upper = (await onRecord()).find(({ mark }) => mark === 'い二')?.region;
    const lower = (await onRecord()).filter(({ mark }) => mark === 'い三').at(-1)?.region;
    if (upper?.shape !== 'rectangle' || lower?.shape !== 'rectangle') throw new Error('No boxes.');
    expect(lower.y).toBeCloseTo(upper.y + upper.h, 6);
    expect(lower.w).toBeCloseTo(upper.w, 6);
  });

  it('keeps what waits for its words through a reload', async () => {
    await tagRow(page, t, 'い一').getByRole('button', { pressed: false }).first().click();
    // With a tag chosen, the words still say how the next one begins.
    expect(await page.getByText(t('bench.form.drawFirst'), { exact: true }).isVisible()).toBe(true);
    await stageOf(page, t).focus();
    await page.keyboard.press('h');
    await page.getByText(t('bench.form.waiting', { count: 1 })).waitFor();
    await page.reload();
    await pictureDrawn(page, t);
    await page.getByText(t('bench.form.waiting', { count: 1 })).waitFor();
    await button(page, t('bench.leave')).first().click();
    await eventually(() => page.getByText(t('bench.form.waiting', { count: 1 })).count()).toBe(0);
  });

  it('puts a chosen tool into the hand of the next photo too', async () => {
    await chooseTool(page, t, 'tap');
    await stageOf(page, t).focus();
    await page.keyboard.press('PageDown');
    await pictureDrawn(page, t);
    await eventually(() => page.locator('.bench-tools').getAttribute('data-tool')).toBe('tap');
  });
});
