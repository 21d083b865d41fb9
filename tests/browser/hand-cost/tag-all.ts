import { randomUUID } from 'node:crypto';
import type { Locator, Page } from 'playwright-core';
import type { HouseView, UploadOutcome } from '#domain/contract/views';
import type { Words } from '../../../client/i18n/words.ts';
import type { Client } from '../../support/server.ts';
import { makeJpeg, takenAt } from '../../support/pictures.ts';
import { markField, pictureDrawn, pointOn, said, stageOf } from '../bench-hands.ts';
import { button, eventually, hasFocus, heading } from '../hands.ts';
import type { Member, Scenario } from './scenarios.ts';

export interface Site {
  readonly house: string;
  readonly photos: readonly string[];
}

/** A house with the scenario's schedule and twelve photos nobody has tagged. */
export async function prepare(client: Client, { photos, what }: Scenario): Promise<Site> {
  const { id: house } = await client.post<HouseView>('/houses', {
    id: randomUUID(),
    name: what,
    zone: 'Asia/Tokyo',
  });
  const rows = [...new Map(photos.flat().map(({ mark, kind }) => [mark, kind]))];
  await client.raw('POST', `/houses/${house}/schedule?fileName=frame.csv`, {
    body: ['番付,部材', ...rows.map((row) => row.join(','))].join('\r\n'),
    headers: { 'content-type': 'text/csv' },
  });
  const files = photos.map(async (_, i) => ({
    name: fileName(i),
    bytes: await makeJpeg(i + 1, takenAt(`2026-05-01T10:${String(i).padStart(2, '0')}:00`)),
  }));
  const { results } = await client.upload<{ results: UploadOutcome[] }>(house, await Promise.all(files));
  const ids = results.map((result) => (result.outcome === 'refused' ? '' : result.photo.id));
  return { house, photos: ids };
}

const fileName = (i: number) => `wall-${String(i + 1).padStart(2, '0')}.jpg`;

/** Counts what a hand does: each press of a button of the mouse, with the drag that follows, and each key. */
class Hand {
  count = 0;
  constructor(readonly page: Page) {}

  async key(name: string): Promise<void> {
    // Alt and a digit are two keys.
    this.count += name.split('+').length;
    await this.page.keyboard.press(name);
  }
  async type(text: string): Promise<void> {
    this.count += text.length;
    await this.page.keyboard.type(text);
  }
  async press(what: Locator): Promise<void> {
    this.count += 1;
    await what.click();
  }
  async drag(stage: Locator, i: number): Promise<void> {
    this.count += 1;
    const [from, to] = [
      await pointOn(stage, [0.3 + i * 0.08, 0.3]),
      await pointOn(stage, [0.35 + i * 0.08, 0.6]),
    ];
    await this.page.mouse.move(from.x, from.y);
    await this.page.mouse.down();
    await this.page.mouse.move(to.x, to.y);
    await this.page.mouse.up();
  }
}

/** Tags everything by the shortest honest path: reads what the screen proposes, and types only what it does not. */
export async function tagAll(page: Page, t: Words, scenario: Scenario, site: Site): Promise<number> {
  await page.goto(`/houses/${site.house}/photos/${site.photos[0]}`);
  await pictureDrawn(page, t);
  await eventually(() => hasFocus(stageOf(page, t))).toBe(true);
  const hand = new Hand(page);
  await hand.key('b');
  for (const [p, members] of scenario.photos.entries()) {
    if (p > 0) {
      await hand.key('PageDown');
      await heading(page, t('bench.title', { file: fileName(p) })).waitFor();
      await pictureDrawn(page, t);
      await page.waitForTimeout(300);
    }
    for (const [i, member] of members.entries()) {
      await hand.drag(stageOf(page, t), i);
      await say(hand, t, scenario, member);
      await said(page, `${member.mark}, pegged: placed.`).waitFor();
      if (scenario.inARow && i === 0) await hand.press(page.getByText(t('bench.row.label'), { exact: true }));
    }
  }
  return hand.count;
}

async function say(hand: Hand, t: Words, { inARow }: Scenario, { mark, part, typed }: Member): Promise<void> {
  const { page } = hand;
  const placed = said(page, `${mark}, pegged: placed.`);
  const field = markField(page, t);
  if (
    inARow &&
    (await placed
      .or(field)
      .first()
      .evaluate((found) => found.tagName !== 'INPUT'))
  )
    return;
  const isStageKnown = (await page.getByRole('radio', { checked: true }).count()) > 0;
  const likely = button(page, new RegExp(`^Place ${mark}:`));
  if ((await field.inputValue()) === mark) {
    await hand.key('Enter');
  } else if (isStageKnown && (await likely.count()) > 0) {
    await hand.press(likely);
  } else if (isStageKnown) {
    await hand.type(part);
    await hand.press(page.getByRole('option', { name: new RegExp(`^${mark} `) }));
  } else {
    await hand.type(typed);
    await hand.key('Alt+3');
    await hand.key('Enter');
  }
}
