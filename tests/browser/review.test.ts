import { randomUUID } from 'node:crypto';
import { afterAll, afterEach, beforeAll, expect, it, vi } from 'vitest';
import type { Page } from 'playwright-core';
import type { ReviewView } from '#domain/contract/review-views';
import type {
  CoveringView,
  HouseView,
  PhotoDetailView,
  TagView,
  UploadOutcome,
} from '#domain/contract/views';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { Client } from '../support/server.ts';
import { describeInBrowser, inOneGo, startApp, type App } from './app.ts';
import { answerButton, button, eventually, field, heading, link, PASSWORD, signIn } from './hands.ts';
import { isLookedAt, openScreen, photograph, resultFile } from './screens.ts';
import { KEEPER } from './site.ts';
import { sitePhotos } from './site-photos.ts';

const COUNT = 60;
const GAPS = 4;
const MARKS = Array.from({ length: COUNT }, (_, i) => `北${String(i + 1).padStart(2, '0')}`);
const WALL = 'North wall, first coat';

describeInBrowser('reviewing a covering', () => {
  let app: App;
  let t: Words;
  let keeper: Client;
  let house: string;
  let photo: string;
  let inspector: Page;
  let covering: string;
  const people: Record<string, Client> = {};

  const join = async (email: string, role: string) => {
    const { link: way } = await keeper.post<{ link: string }>(`/houses/${house}/people`, {
      ...{ email, role },
    });
    const client = new Client(app.server.origin);
    await client.post(`/links/${way}`, { name: email.split('@')[0], email, password: PASSWORD });
    people[role] = client;
  };
  const plan = async (name: string, marks: readonly string[]) => {
    const id = randomUUID();
    const hides = marks.map((mark) => ({ mark, least: 'raised' }));
    const facts = { id, name, kind: 'plaster', plannedDay: '2099-05-01', hides };
    await keeper.post(`/houses/${house}/coverings`, facts);
    await people['carpenter']?.post(`/coverings/${id}/ready`, {
      note: 'All photographed but the short ones.',
    });
    return id;
  };
  const boxAt = (at: number) => ({
    x: 0.05 + (at % 8) * 0.1,
    y: 0.05 + Math.floor(at / 8) * 0.1,
    w: 0.2,
    h: 0.2,
  });
  const tag = async (client: Client | undefined, mark: string, box: number | ReturnType<typeof boxAt>) =>
    await client?.post<TagView>(`/photos/${photo}/tags`, {
      ...{ id: randomUUID(), mark, stage: 'raised' },
      region: { shape: 'rectangle', ...(typeof box === 'number' ? boxAt(box) : box) },
    });
  const stateOf = async (id: string) =>
    (await keeper.get<{ coverings: CoveringView[] }>(`/houses/${house}/coverings`)).coverings.find(
      (one) => one.id === id,
    )?.hold;
  const review = (id: string) => `/houses/${house}/coverings/${id}/review`;
  const place = (page: Page) => page.locator('.review-member [role=status]').innerText();

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    keeper = new Client(app.server.origin);
    const first = app.server.firstLink ?? '';
    await keeper.post(`/links/${first}`, { name: 'Mio', email: KEEPER, password: PASSWORD });
    const facts = { id: randomUUID(), name: 'Boathouse', zone: 'Asia/Tokyo' };
    ({ id: house } = await keeper.post<HouseView>('/houses', facts));
    await keeper.raw('POST', `/houses/${house}/schedule?fileName=frame.csv`, {
      body: ['番付,部材', ...MARKS.map((mark, i) => `${mark},${i === 9 ? '通し柱' : '柱'}`)].join('\r\n'),
      headers: { 'content-type': 'text/csv' },
    });
    const { name, buffer } = (await sitePhotos()).house;
    const { results } = await keeper.upload<{ results: UploadOutcome[] }>(house, [{ name, bytes: buffer }]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error('The photo was refused.');
    photo = outcome.photo.id;
    await Promise.all([join('haru@example.org', 'carpenter'), join('sato@example.org', 'inspector')]);
    await Promise.all(MARKS.slice(GAPS).map((mark, i) => tag(people['carpenter'], mark, i)));
    const unmeasured = async () => {
      const { allTags } = await keeper.get<PhotoDetailView>(`/photos/${photo}`);
      return allTags.filter(({ legibility }) => legibility.verdict === null).length;
    };
    // What is found out later is news to whoever reviews.
    await vi.waitUntil(async () => (await unmeasured()) === 0, { timeout: 30_000, interval: 100 });
    covering = await plan(WALL, MARKS);
    inspector = await app.open();
    await inspector.goto('/');
    await signIn(inspector, t, 'sato@example.org');
  }, 60_000);
  inOneGo();
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  it('shows a member with its record, crop beside the whole picture, and keeps the answers over a reload', async () => {
    await openScreen(inspector, review(covering));
    await inspector.getByText(t('hold.review.answered', { answered: 0, all: COUNT })).waitFor();
    await photograph(inspector, 'review-gap');
    await inspector.keyboard.press('m');
    await eventually(() => place(inspector)).toContain('2 of 60');
    await inspector.locator('.review-list').getByRole('button', { name: /^北05/ }).click();
    await inspector.getByRole('img', { name: /with 北05 outlined/ }).waitFor();
    await photograph(inspector, 'review-record');
    await inspector.keyboard.press('s');
    await eventually(() => place(inspector)).toContain('6 of 60');
    await inspector.reload();
    await inspector.getByText(t('hold.review.answered', { answered: 2, all: COUNT })).waitFor();
  });

  it('shows the whole picture as large as one likes, by a press or a key', async () => {
    await openScreen(inspector, review(covering));
    await inspector.locator('.review-list').getByRole('button', { name: /^北05/ }).click();
    await inspector.getByRole('img', { name: /with 北05 outlined/ }).waitFor();
    await button(inspector, t('hold.review.large.open')).click();
    const dialog = inspector.getByRole('dialog');
    const width = () => dialog.locator('.review-large-sheet').evaluate((sheet) => sheet.clientWidth);
    const isInSight = () =>
      dialog.locator('.review-large').evaluate((frame) => {
        const inner = frame.querySelector('polygon')?.getBoundingClientRect();
        const outer = frame.getBoundingClientRect();
        return inner !== undefined && inner.left >= outer.left && inner.right <= outer.right;
      });
    await eventually(isInSight).toBe(true);
    await photograph(inspector, 'review-large');
    const before = await width();
    await button(dialog, t('hold.review.large.more')).click();
    await eventually(width).toBeGreaterThan(before * 1.4);
    for (let press = 0; press < 8; press++)
      if (await button(dialog, t('hold.review.large.less')).isEnabled())
        await button(dialog, t('hold.review.large.less')).click();
    await eventually(async () => (await width()) < before).toBe(true);
    await button(dialog, t('hold.review.large.close')).click();
    await dialog.waitFor({ state: 'detached' });
    await inspector.keyboard.press('z');
    await dialog.waitFor();
    await inspector.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
  });

  it('asks again for a member whose evidence has changed meanwhile', async () => {
    await tag(people['carpenter'], '北05', 30);
    await inspector.getByText(t('hold.review.answered', { answered: 1, all: COUNT })).waitFor();
    await inspector.locator('.review-list').getByRole('button', { name: /^北05/ }).click();
    await inspector.getByText(t('hold.review.changed')).waitFor();
    await photograph(inspector, 'review-changed');
  });

  it('doubts a record, which is a gap from then on', async () => {
    await inspector.locator('.review-list').getByRole('button', { name: /^北60/ }).click();
    await eventually(() => place(inspector)).toContain('60 of 60');
    await inspector.keyboard.press('d');
    const dialog = inspector.getByRole('dialog');
    await field(dialog, t('clock.reason')).fill('This is 北59.');
    await button(dialog, t('hold.doubt.submit')).click();
    await dialog.waitFor({ state: 'detached' });
    await button(inspector, `北60 ${t('hold.review.accept')}`).waitFor();
    // It is a gap now, which comes first when the screen is opened anew; until then nothing moves.
    expect(await place(inspector)).toContain('60 of 60');
    expect(await inspector.locator('.review-choose strong').last().innerText()).toBe('北60');
    await inspector.getByText(/Doubted by sato on .*: “This is 北59”/).waitFor();
    expect(await button(inspector, t('hold.doubt.open')).count()).toBe(0);
    await inspector.keyboard.press('d');
    expect(await inspector.getByRole('dialog').count()).toBe(0);
    await eventually(() => field(inspector, t('hold.review.whatLacks')).inputValue()).toBe('This is 北59.');
    expect(await field(inspector, t('hold.review.why')).inputValue()).toBe('');
    await photograph(inspector, 'review-doubted');
    await inspector.setViewportSize({ width: 390, height: 844 });
    await inspector.locator('.review-one').evaluate((one) => one.scrollIntoView());
    await photographWindow(inspector, 'review-doubted-390');
    await expectAllAtOnce(inspector);
    await inspector.setViewportSize({ width: 1280, height: 800 });
  });

  it('refuses nothing without a word of what is missing, and names before it does what is not in the refusal', async () => {
    const end = async () => {
      await inspector.keyboard.press('e');
      await heading2(inspector, t('hold.review.end.title')).waitFor();
    };
    const refuse = button(inspector, t('hold.review.end.refuse'));
    const note = field(inspector, t('hold.review.end.note'));
    await end();
    await refuse.click();
    await inspector.getByText(t('hold.review.end.needWords')).waitFor();
    expect(await note.evaluate((area) => area === document.activeElement)).toBe(true);
    expect(await inspector.getByRole('alertdialog').count()).toBe(0);
    await photograph(inspector, 'review-refuse-without-words');
    await inspector.keyboard.type('Photos from the other side.');
    await refuse.click();
    const sure = inspector.getByRole('alertdialog', {
      name: t('hold.review.end.refuseTitle', { name: WALL }),
    });
    await sure.getByText(t('hold.review.end.refuseAsk')).waitFor();
    await sure.getByText(t('hold.review.end.missing', { count: 1 })).waitFor();
    await sure
      .getByRole('listitem')
      .filter({ hasText: `北01${t('hold.review.end.noWords')}` })
      .waitFor();
    await sure.getByText(/“Photos from the other side\.”/).waitFor();
    await sure.getByText(t('hold.review.end.doubted', { count: 1 })).waitFor();
    const doubted = sure.getByRole('listitem').filter({ hasText: 'This is 北59.' });
    await sure.getByText(t('hold.review.end.notIn', { count: COUNT - 1 })).waitFor();
    await photograph(inspector, 'review-refuse');
    await inspector.keyboard.press('Enter');
    await sure.waitFor({ state: 'detached' });
    expect((await stateOf(covering))?.state).toBe('ready');
    await refuse.click();
    await button(doubted, '北60').click();
    await eventually(() => place(inspector)).toContain('60 of 60');
    await eventually(() => inspector.locator('.review-one:focus').count()).toBe(1);
    await eventually(() => field(inspector, t('hold.review.whatLacks')).inputValue()).toBe('This is 北59.');
    await end();
    await note.fill('');
    await button(inspector.locator('.review-member'), '北60').first().click();
    await eventually(() => place(inspector)).toContain('60 of 60');
  });

  it('refuses with what is missing, by name', async () => {
    await inspector.keyboard.press('l');
    await inspector.keyboard.type(' Another photo.');
    await inspector.keyboard.press('Enter');
    await eventually(() => place(inspector)).toContain('2 of 60');
    for (const key of ['w', ...'seen on site', 'Enter']) await inspector.keyboard.press(key);
    await eventually(() => place(inspector)).toContain('3 of 60');
    await inspector.locator('.review-list').getByRole('button', { name: /^北06/ }).click();
    await eventually(() => place(inspector)).toContain('6 of 60');
    await inspector.keyboard.press('s');
    await eventually(() => place(inspector)).toContain('7 of 60');
    await inspector.keyboard.press('e');
    await inspector.getByText(t('hold.review.end.missing', { count: 2 })).waitFor();
    await photograph(inspector, 'review-end');
    expect(await inspector.getByText(t('hold.review.end.doubted', { count: 1 })).count()).toBe(0);
    await button(inspector, t('hold.review.end.refuse')).click();
    const sure = inspector.getByRole('alertdialog');
    await sure.getByText('This is 北59. Another photo.').waitFor();
    await button(sure, t('hold.review.end.refuseYes')).click();
    await heading(inspector, WALL).waitFor();
    await inspector.getByText(t('hold.state.refused'), { exact: true }).waitFor();
    await photograph(inspector, 'covering-refused');
    expect((await stateOf(covering))?.lacking).toEqual([
      { mark: '北01', note: '' },
      { mark: '北60', note: 'This is 北59. Another photo.' },
    ]);
  });

  it('says at the next review what was refused and why, and keeps what was answered of the others', async () => {
    const { evidence } = await keeper.get<ReviewView>(`/coverings/${covering}/review`);
    const doubted = evidence.find(({ tag: { mark } }) => mark === '北60');
    await keeper.delete(`/tags/${doubted?.tag.id ?? ''}`);
    await tag(people['carpenter'], '北60', 50);
    await people['carpenter']?.post(`/coverings/${covering}/ready`, { note: 'Here it is.' });
    await openScreen(inspector, review(covering));
    // Of 北02 the reason, of 北06 that it was seen; 北05 has changed, 北01 and 北60 were refused.
    await inspector.getByText(t('hold.review.answered', { answered: 2, all: COUNT })).waitFor();
    await inspector.getByText(/^Said to be ready .*by haru\. “Here it is\.”$/).waitFor();
    const last = inspector.getByRole('region', { name: /^Refused on .* by sato$/ });
    await last.getByText(t('hold.review.before.withNews', { count: 1 })).waitFor();
    await last.getByText(t('hold.review.before.withoutNews', { count: 1 })).waitFor();
    await photograph(inspector, 'review-again');
    await inspector.setViewportSize({ width: 390, height: 844 });
    await inspector.emulateMedia({ colorScheme: 'dark' });
    await photograph(inspector, 'review-again-390-dark');
    await inspector.emulateMedia({ colorScheme: 'light' });
    await inspector.setViewportSize({ width: 1280, height: 800 });
    expect(await place(inspector)).toContain('1 of 60');
    await inspector.getByText(t('hold.review.before.noNews')).waitFor();
    await button(last, '北60').click();
    await inspector.getByText(/Refused on .* by sato: “This is 北59\. Another photo\.”/).waitFor();
    await inspector.getByText(t('hold.review.before.news')).waitFor();
    await answerButton(inspector, t('hold.review.seen')).waitFor();
    await photograph(inspector, 'review-again-refused');
    await inspector.locator('.review-list').getByRole('button', { name: /^北02/ }).click();
    await eventually(() => field(inspector, t('hold.review.why')).inputValue()).toBe('seen on site');
  });

  it('takes at most one and a half presses a member, from opening to released', async () => {
    // Another browser, in which nothing has been answered.
    await inspector.evaluate(() => localStorage.clear());
    await openScreen(inspector, `/houses/${house}/coverings/${covering}`);
    let presses = 0;
    const press = async (key: string) => {
      presses += 1;
      await inspector.keyboard.press(key);
    };
    presses += 1;
    await link(inspector, t('hold.toReview')).click();
    await inspector.getByText(t('hold.review.answered', { answered: 0, all: COUNT })).waitFor();
    for (let i = 0; i < COUNT; i++) {
      await eventually(() => place(inspector)).toContain(`${i + 1} of 60`);
      if (i >= GAPS) await press('s');
      else if (i > 0) await press('1');
      else for (const key of ['w', ...'seen on site', 'Enter']) await press(key);
    }
    presses += 2;
    await button(inspector, t('hold.review.end.release')).click();
    const sure = inspector.getByRole('alertdialog', { name: t('hold.review.end.askTitle', { name: WALL }) });
    await button(sure, t('hold.review.end.yes')).click();
    await heading(inspector, WALL).waitFor();
    await inspector.getByText(t('hold.state.released'), { exact: true }).waitFor();
    await photograph(inspector, 'covering-released');
    expect(await stateOf(covering)).toMatchObject({ state: 'released' });
    expect(presses / COUNT).toBeLessThanOrEqual(1.5);
  });

  it.each([
    ['en', { width: 1280, height: 800 }],
    ['ja', { width: 1280, height: 800 }],
    ['en', { width: 390, height: 844 }],
    ['ja', { width: 390, height: 844 }],
  ] as const)(
    'shows a member, all that is known of it and every button at once (%s, %o)',
    async (lang, viewport) => {
      const id = await plan(`East wall ${lang} ${viewport.width}`, ['北01', '北02', '北10']);
      const words = await wordsOf(lang);
      const isPhone = viewport.width < 500;
      const page = await app.open({
        ...{ viewport, hasTouch: isPhone, isMobile: isPhone, locale: lang === 'ja' ? 'ja-JP' : 'en-GB' },
      });
      await page.goto('/');
      await signIn(page, words, 'sato@example.org');
      await openScreen(page, review(id));
      await field(page, words('hold.review.why')).fill(lang === 'ja' ? '現場で確認' : 'seen on site');
      await button(page, `北01 ${words('hold.review.accept')}`).click();
      await eventually(() => place(page)).toContain('2');
      await photographWindow(page, `review-gap-${lang}-${viewport.width}`);
      await expectAllAtOnce(page);
      await button(page, `北02 ${words('hold.review.missing')}`).click();
      await page.getByRole('img', { name: /北10/ }).first().waitFor();
      await photographWindow(page, `review-fits-${lang}-${viewport.width}`);
      await expectAllAtOnce(page);
      expect(await page.locator('.review-keys').isVisible()).toBe(!isPhone);
    },
  );

  it('gives a long crop the width of a phone, an upright one a half, and enlarges either picture', async () => {
    const id = await plan('West wall', ['北03', '北04']);
    await tag(people['carpenter'], '北03', { x: 0.1, y: 0.1, w: 0.1, h: 0.8 });
    await tag(people['carpenter'], '北04', { x: 0.05, y: 0.4, w: 0.9, h: 0.1 });
    // So low that little room is left to the pictures.
    const page = await app.open({ viewport: { width: 390, height: 600 }, hasTouch: true, isMobile: true });
    await page.goto('/');
    await signIn(page, t, 'sato@example.org');
    await openScreen(page, review(id));
    const boxes = () =>
      page.locator('.review-picture').evaluateAll((pictures) =>
        pictures.map((picture) => {
          const { left, right, top, bottom } = picture.getBoundingClientRect();
          const { naturalWidth, naturalHeight } = picture.querySelector('img') ?? new Image();
          return { left, right, top, bottom, ratio: naturalWidth / naturalHeight };
        }),
      );
    await eventually(() => place(page)).toContain('1 of 2');
    await eventually(async () => {
      const [crop, whole] = await boxes();
      return crop !== undefined && whole !== undefined && crop.ratio < 1 && whole.left >= crop.right;
    }).toBe(true);
    await button(page, t('hold.review.forth')).click();
    await eventually(() => place(page)).toContain('2 of 2');
    await eventually(async () => {
      const [crop, whole] = await boxes();
      if (!crop || !whole) return false;
      const width = crop.right - crop.left;
      return width > 340 && crop.bottom - crop.top >= width / crop.ratio - 1 && whole.top >= crop.bottom;
    }).toBe(true);
    await expectAllAtOnce(page);
    await photographWindow(page, 'review-long-390-600');
    for (const which of [0, 1]) {
      await page.locator('.review-picture').nth(which).tap();
      await button(page.getByRole('dialog'), t('hold.review.large.close')).click();
      await page.getByRole('dialog').waitFor({ state: 'detached' });
    }
  });

  it('says in place why nobody releases what they alone recorded, and lets others only look', async () => {
    const id = await plan('South wall', ['北01', '北10']);
    await tag(keeper, '北01', 3);
    const mio = await app.open({ colorScheme: 'dark' });
    await mio.goto('/');
    await signIn(mio, t, KEEPER);
    await openScreen(mio, review(id));
    await mio.getByText(t('hold.review.own')).waitFor();
    for (const answered of [1, 2]) {
      await answerButton(mio, t('hold.review.seen')).click();
      await mio.getByText(t('hold.review.answered', { answered, all: 2 })).waitFor();
    }
    await mio.getByText(t('hold.review.end.own', { count: 1 })).waitFor();
    expect(await button(mio, t('hold.review.end.release')).count()).toBe(0);
    await photograph(mio, 'review-own-dark');
    const inJapanese = await wordsOf('ja');
    const carpenter = await app.open({
      ...{ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale: 'ja-JP' },
    });
    await carpenter.goto('/');
    await signIn(carpenter, inJapanese, 'haru@example.org');
    await openScreen(carpenter, review(id));
    await carpenter.getByText(inJapanese('hold.review.readOnly')).waitFor();
    await photograph(carpenter, 'review-phone-ja');
    expect(await answerButton(carpenter, inJapanese('hold.review.seen')).count()).toBe(0);
  });
});

const heading2 = (page: Page, name: string) => page.getByRole('heading', { name, exact: true, level: 2 });

/** Of WCAG 2.5.5, and the project's own least size of what a thumb meets. */
const THUMB = 44;

/** Nothing of the member lies outside the window, under something else or behind a scroll bar. */
async function expectAllAtOnce(page: Page): Promise<void> {
  await expect
    .poll(() =>
      page.evaluate((thumb) => {
        const all = (query: string) =>
          Array.from(document.querySelectorAll<HTMLElement>(`.review-one :is(${query})`));
        const isShown = (part: Element) => part.checkVisibility();
        const isOutside = ({ left, top, right, bottom }: DOMRect) =>
          left < -1 || top < -1 || right > innerWidth + 1 || bottom > innerHeight + 1;
        const parts = all(
          '.review-one > *, .review-picture, .review-told > *, button, textarea, summary',
        ).filter(isShown);
        const outside = parts.filter((part) => isOutside(part.getBoundingClientRect()));
        const covered = parts.filter((part) => {
          const { x, y, width, height } = part.getBoundingClientRect();
          const over = document.elementFromPoint(x + width / 2, y + height / 2);
          return over === null || !(part.contains(over) || over.contains(part));
        });
        const small = all('button, textarea, summary').filter((part) => {
          const { width, height } = part.getBoundingClientRect();
          return isShown(part) && (height < thumb || width < thumb);
        });
        const cut = all('.review-told').filter((told) => told.scrollHeight > told.clientHeight + 1);
        const name = (part: Element) => part.className || part.textContent;
        return {
          outside: outside.map(name),
          covered: covered.map(name),
          small: small.map(name),
          cut: cut.map(name),
        };
      }, THUMB),
    )
    .toEqual({ outside: [], covered: [], small: [], cut: [] });
}

async function photographWindow(page: Page, name: string): Promise<void> {
  if (isLookedAt) await page.screenshot({ path: await resultFile(`${name}.png`) });
}
