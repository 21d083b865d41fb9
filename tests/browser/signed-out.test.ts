import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { TagView } from '#domain/contract/views';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { Client } from '../support/server.ts';
import { describeInBrowser, inOneGo, startApp, type App } from './app.ts';
import {
  chooseTool,
  draft,
  dragBox,
  markField,
  pictureDrawn,
  said,
  sayByKey,
  tagArrived,
  tagRow,
} from './bench-hands.ts';
import { PASSWORD, button, eventually, goTo, heading, link, signIn } from './hands.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const MATE = 'ren@example.org';

describeInBrowser('what the bench says of what was said, and being signed out', () => {
  let app: App;
  let t: Words;
  let site: Site;
  let page: Page;
  let bench: string;
  const notice = () => page.getByText(t('common.signedOut'), { exact: true });
  const otherWindow = (method: 'post' | 'delete', email?: string) =>
    page.request[method]('/api/v1/session', {
      headers: { origin: app.server.origin },
      ...(email === undefined ? {} : { data: { email, password: PASSWORD } }),
    });

  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    const { link: invitation } = await site.client.post<{ link: string | null }>(
      `/houses/${site.house.id}/people`,
      {
        email: MATE,
        role: 'carpenter',
      },
    );
    const token = invitation?.split('/').at(-1) ?? '';
    await new Client(app.server.origin).post(`/links/${token}`, {
      name: 'Ren',
      email: MATE,
      password: PASSWORD,
    });
    bench = `${site.things.house}/photos/${site.photos.house}`;
    page = await app.open();
    await page.goto(bench);
    await signIn(page, t, KEEPER);
  });
  inOneGo();
  afterEach(() => expect(app.complaints(/ERR_INTERNET_DISCONNECTED|ERR_FAILED|40[19]/)).toEqual([]));
  afterAll(() => app.close());

  it('says "placed" only when the server has answered', async () => {
    const words = { mark: 'い一', stage: t('common.stage.raised') };
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    let answer = () => {};
    const mayAnswer = new Promise<void>((resolve) => (answer = resolve));
    await page.route('**/tags', async (route) => {
      await mayAnswer;
      await route.continue();
    });
    await dragBox(page, t, [0.4, 0.3], [0.45, 0.6]);
    await sayByKey(page, t, 'い一', 'raised');
    await said(page, t('bench.form.fate.on-its-way', words)).waitFor();
    expect(await said(page, t('bench.form.placed', words)).count()).toBe(0);
    answer();
    await said(page, t('bench.form.placed', words)).waitFor();
    await page.unrouteAll({ behavior: 'wait' });
  });

  it('says that it waits while there is no connection', async () => {
    const words = { mark: 'い通り地貫', stage: t('common.stage.raised') };
    // On the first visit the words of the trade come after all else, and a reading is typed here.
    await page.waitForFunction(() =>
      performance.getEntriesByType('resource').some(({ name }) => /\/kinds-[^/]*\.js/.test(name)),
    );
    await page.context().setOffline(true);
    await dragBox(page, t, [0.5, 0.3], [0.55, 0.6]);
    await sayByKey(page, t, 'じぬき', 'raised');
    await said(page, t('bench.form.fate.offline', words)).waitFor();
    await page.context().setOffline(false);
    await said(page, t('bench.form.placed', words)).waitFor();
  });

  it('says so after a refusal, and gives the drawing back to be put right', async () => {
    const mark = 'い三';
    const [first] = (
      await site.client.get<{ allTags: TagView[] }>(`/photos/${site.photos.house}`)
    ).allTags.filter((tag) => tag.mark === mark);
    await button(tagRow(page, t, mark), t('bench.list.changeNamed', { mark })).click();
    await page.keyboard.press('Alt+5');
    // Meanwhile somebody withdraws the tag; the events that would tell of it are late.
    await page.route('**/photos/*', (route) => route.abort());
    await site.client.delete(`/tags/${first?.id ?? ''}?reason=`);
    await page.keyboard.press('Enter');
    await said(page, t('bench.form.fate.refused', { mark, stage: t('common.stage.plastered') })).waitFor();
    await page.unrouteAll({ behavior: 'ignoreErrors' });
    app.complaints();
    // Also after a reload; and the tag of before is then known to be gone.
    await page.reload();
    await button(page, t('bench.unsent.putRightNamed', { mark })).click();
    await eventually(() => markField(page, t).inputValue()).toBe(mark);
    await draft(page, t).waitFor();
    await button(page, t('bench.form.place')).click();
    await tagArrived(page, t, mark, 'plastered');
  });

  it('tells on the bench of being signed out elsewhere, waits without asking again, and goes on after signing in', async () => {
    const words = { mark: 'い一', stage: t('common.stage.cut') };
    await chooseTool(page, t, 'rectangle');
    expect((await otherWindow('delete')).ok()).toBe(true);
    let asked = 0;
    page.on('request', (request) => (asked += /\/tags$/.test(request.url()) ? 1 : 0));
    await dragBox(page, t, [0.6, 0.3], [0.65, 0.6]);
    await sayByKey(page, t, 'い一', 'cut');
    await notice().waitFor();
    await said(page, t('bench.form.fate.signed-out', words)).waitFor();
    await page.getByText(t('bench.unsent.signedOut', { count: 1 })).waitFor();
    await page.context().setOffline(true);
    await page.context().setOffline(false);
    await page.waitForTimeout(11_000);
    // Not even once where the screen has heard it before the outbox.
    expect(asked).toBeLessThanOrEqual(1);
    await button(page, t('common.signIn')).click();
    await heading(page, t('account.signIn.title')).waitFor();
    await page.getByText(t('account.signIn.again')).waitFor();
    expect(await notice().count()).toBe(0);
    await signIn(page, t, KEEPER);
    await eventually(() => new URL(page.url()).pathname).toBe(bench);
    await tagRow(page, t, 'い一')
      .filter({ hasText: t('common.stage.cut') })
      .waitFor();
    await eventually(() => page.getByText(t('bench.unsent.state')).count()).toBe(0);
  });

  it('tells it on every other screen, with the way back to it', async () => {
    await goTo(page, t, 'members');
    await otherWindow('delete');
    // A part that was not looked at yet has nothing to show: there one is led to signing in at once.
    await link(page, t('common.nav.people')).click();
    await page.getByText(t('account.signIn.again')).waitFor();
    await signIn(page, t, KEEPER);
    await heading(page, t('people.title')).waitFor();
  });

  it('sends nothing in the name of somebody else who signs in here, and says that it is held back', async () => {
    await page.goto(bench);
    await pictureDrawn(page, t);
    await chooseTool(page, t, 'rectangle');
    await otherWindow('delete');
    await dragBox(page, t, [0.7, 0.3], [0.75, 0.6]);
    await sayByKey(page, t, 'じぬき', 'cut');
    await notice().waitFor();
    await button(page, t('common.signIn')).click();
    await signIn(page, t, MATE);
    await page.getByText(t('bench.unsent.otherPerson', { count: 1 })).waitFor();
    const byRen = async () => (await site.ledger('tag.placed')).filter((entry) => entry.by?.name === 'Ren');
    expect(await byRen()).toEqual([]);

    // Back, by another window of the same browser: this one learns it, says it, and only then sends.
    const second = await page.context().newPage();
    await second.goto('/');
    await button(second, t('common.signOut')).click();
    await signIn(second, t, KEEPER);
    await page.getByText(t('common.otherAccount', { name: 'Mio' })).waitFor();
    await button(page, t('common.close')).click();
    await eventually(() => page.getByText(t('common.otherAccount', { name: 'Mio' })).count()).toBe(0);
    await tagRow(page, t, 'い通り地貫')
      .filter({ hasText: t('common.stage.cut') })
      .waitFor();
    await eventually(() => page.getByText(t('bench.unsent.state')).count()).toBe(0);
    expect(await byRen()).toEqual([]);
    await second.close();
  });

  it('tells nothing to whoever signs out on purpose', async () => {
    await page.goto(bench);
    await pictureDrawn(page, t);
    let alerts = 0;
    await page.exposeFunction('alerted', () => (alerts += 1));
    await page.evaluate(() =>
      new MutationObserver(() => {
        if (document.querySelector('.signed-out, .notice-problem'))
          void (window as unknown as { alerted: () => void }).alerted();
      }).observe(document.body, { childList: true, subtree: true }),
    );
    // Something is always being asked while one leaves.
    await page.route('**/photos?*', async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 500));
      await route.continue();
    });
    await button(page, t('common.signOut')).click();
    await heading(page, t('account.signIn.title')).waitFor();
    await page.waitForTimeout(1000);
    expect(alerts).toBe(0);
    expect(await page.getByText(t('account.signIn.again')).count()).toBe(0);
    await page.unrouteAll({ behavior: 'ignoreErrors' });
  });
});
