import { randomUUID } from 'node:crypto';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { BrowserContextOptions, Page } from 'playwright-core';
import type { CoveringView, HouseView } from '#domain/contract/views';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { pictureDrawn, pointAtRest, pointOn, stageOf } from './bench-hands.ts';
import { eventually, heading, PASSWORD } from './hands.ts';
import { hearRefusals, pressEverything } from './press-everything.ts';
import { houseScreens, openScreen, photograph } from './screens.ts';
import { prepareSite, type Site } from './site.ts';

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;
/** Screens that are a form of the record and nothing else. */
const FORMS = ['term-new', 'term-change', 'schedule', 'covering-new', 'covering-change', 'grid'];
const LOOKED_AT = ['journal', 'photos', 'bench', 'member', 'covering', 'schedule', 'empty-journal'];

describeInBrowser('what a role does not allow', () => {
  let app: App;
  let site: Site;
  let screens: Record<string, string>;
  beforeAll(async () => {
    app = await startApp();
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    screens = { ...houseScreens(site.things), ...(await prepareMore(site)) };
  });
  // Chromium says so of a dialog that a second press closes while its form is being sent.
  afterEach(() => expect(app.complaints(/Form submission canceled/)).toEqual([]));
  afterAll(() => app.close());

  /** Everything on every screen is pressed; what the server refused, and where somebody was told so. */
  const walk = async (page: Page, t: Words, role: string) => {
    const { refused, waiting } = hearRefusals(page);
    const told: string[] = [];
    for (const [name, address] of Object.entries(screens)) {
      await openScreen(page, address);
      if (await heading(page, t('roles.title')).isVisible()) told.push(name);
      if (LOOKED_AT.includes(name)) await photograph(page, `role-${role}-${name}`);
      await pressEverything(page);
      await eventually(() => waiting.size).toBe(0);
      expect([name, refused]).toEqual([name, []]);
    }
    return told;
  };
  const enter = async (role: 'inspector' | 'builder', options?: BrowserContextOptions): Promise<Page> => {
    const email = `${role}@example.org`;
    const { link } = await site.client.post<{ link: string }>(`${site.things.house}/people`, { email, role });
    const page = await app.open(options);
    const data = { name: 'Ren', email, password: PASSWORD };
    await page.request.post(`/api/v1/links/${link}`, { data });
    await site.client.post(`${screens['empty-journal']}/people`, { email, role });
    return page;
  };
  const drawsNothing = async (page: Page, t: Words) => {
    await openScreen(page, screens['bench'] ?? '');
    await pictureDrawn(page, t);
    for (const key of ['b', 'r', 't', 'x', 'h', 'Delete', 'Enter', '1']) await page.keyboard.press(key);
    // Twice from within the region of い三: the first press chooses it, the second would take hold of it.
    for (const to of [
      [0.4, 0.4],
      [0.6, 0.7],
    ] as const) {
      const [a, b] = [await pointAtRest(stageOf(page, t), [0.15, 0.2]), await pointOn(stageOf(page, t), to)];
      await page.mouse.move(a.x, a.y);
      await page.mouse.down();
      await page.mouse.move(b.x, b.y);
      await page.mouse.up();
    }
    expect(await page.locator('[data-hit=draft], .dialog-veil').count()).toBe(0);
    // What is on record about it is there.
    await page.getByText('い三').first().waitFor();
  };

  it('is not offered to an inspector, who adds photos, notes and answers', async () => {
    const t = await wordsOf('en');
    const page = await enter('inspector');
    const said = (await site.ledger('note.written')).length;
    expect((await walk(page, t, 'inspector')).sort()).toEqual([...FORMS, 'protection-new'].sort());
    // What is offered is taken: the walk has pressed what it saw.
    expect((await site.ledger('note.written')).length).toBeGreaterThan(said);
    expect(await site.ledger('findings.accepted')).not.toEqual([]);
    await drawsNothing(page, t);
    await openScreen(page, site.things.house);
    await page.getByText(t('houses.role', { role: t('common.role.inspector') }), { exact: true }).waitFor();
    await openScreen(page, screens['photos'] ?? '');
    await page.getByRole('button', { name: t('photos.choose') }).waitFor();
  });

  it('is not offered to a builder, who reads; on a phone, in Japanese', async () => {
    const t = await wordsOf('ja');
    const page = await enter('builder', { ...PHONE, locale: 'ja-JP', colorScheme: 'dark' });
    const said = (await site.ledger('note.written')).length;
    expect((await walk(page, t, 'builder')).sort()).toEqual([...FORMS, 'protection-new'].sort());
    await openScreen(page, screens['photos'] ?? '');
    expect(await page.getByRole('button', { name: t('photos.choose') }).count()).toBe(0);
    expect(await site.ledger('note.written')).toHaveLength(said);
  });
});

/** What else has acts: a closed covering, sheets that lie, a clock mark, a term, and a house with nothing in it. */
async function prepareMore({ client, things, photos }: Site): Promise<Record<string, string>> {
  const { house } = things;
  const { id: closed } = await client.post<CoveringView>(`${house}/coverings`, {
    ...{ id: randomUUID(), name: 'Loft floor', kind: 'floor', plannedDay: '2026-03-02' },
    hides: [{ mark: 'い一', least: 'raised' }],
  });
  await client.post(`/coverings/${closed}/close`, { closedAt: null, note: '', withoutRelease: 'dry' });
  await client.post(`${house}/protections`, {
    ...{ id: randomUUID(), name: 'North sill', what: 'sheet', laidAt: '2001-07-02T00:00:00.000Z' },
    hides: ['い一'],
  });
  await client.post(`/photos/${photos.cranes}/clock-mark`, {
    ...{ id: randomUUID(), trueTime: '2001-07-03T00:00:00.000Z' },
  });
  const { id: empty } = await client.post<HouseView>('/houses', {
    ...{ id: randomUUID(), name: 'Tea house', zone: 'Asia/Tokyo' },
  });
  return {
    ...{ 'covering-closed': `${house}/coverings/${closed}`, 'protection-new': `${house}/protection/new` },
    ...{ 'bench-box': `${house}/photos/${photos.box}`, 'empty-journal': `/houses/${empty}` },
    ...{ 'empty-photos': `/houses/${empty}/photos`, 'empty-members': `/houses/${empty}/members` },
    ...{ 'empty-coverings': `/houses/${empty}/coverings`, 'empty-report': `/houses/${empty}/report` },
  };
}
