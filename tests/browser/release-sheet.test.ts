import { randomUUID } from 'node:crypto';
import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { FindingsView } from '#domain/contract/findings';
import type { ReleaseView } from '#domain/contract/review-views';
import { checkAddress } from '#domain/record/sheet/check-address';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { temporaryFolder } from '../support/record.ts';
import { releaseAsSeen } from '../support/release.ts';
import { Client } from '../support/server.ts';
import { describeInBrowser, inOneGo, startApp, type App } from './app.ts';
import { PASSWORD, field, heading, link, signIn } from './hands.ts';
import { photograph, resultFile } from './screens.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const PHONE = {
  ...{ locale: 'ja-JP', viewport: { width: 390, height: 844 } },
  ...{ hasTouch: true, isMobile: true },
};

describeInBrowser('a release sheet, and what can be checked of it', () => {
  let app: App;
  let [t, ja]: Words[] = [];
  let site: Site;
  let release: ReleaseView;
  let code: string;
  let folder: string;
  let remove: () => Promise<void>;

  beforeAll(async () => {
    [t, ja, app] = await Promise.all([wordsOf('en'), wordsOf('ja'), startApp()]);
    ({ folder, remove } = await temporaryFolder());
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', '谷の舟小屋');
    const { client, house } = site;
    const email = 'sato@example.org';
    const { link: way } = await client.post<{ link: string }>(`/houses/${house.id}/people`, {
      ...{ email, role: 'inspector' },
    });
    const inspector = new Client(app.server.origin);
    await inspector.post(`/links/${way}`, { name: '佐藤 光', email, password: PASSWORD });
    const tag = await site.tag('house', 'い二', 'pegged');
    await inspector.post(`/tags/${tag.id}/dispute`, { reason: '込み栓が写っているか分からない' });
    const { findings } = await client.get<FindingsView>(`/houses/${house.id}/findings?kind=disputed`);
    await inspector.post(`/houses/${house.id}/findings/accept`, {
      findings: findings.map(({ key, basis }) => ({ key, basis })),
      reason: '左下に栓の頭が写っている',
    });
    const { covering } = site.things;
    await client.post(`/coverings/${covering}/ready`, {});
    const lines = ['い二', 'い三', 'NORTH-ELEVATION-SECOND-FLOOR-RAIL-0001'];
    const waived = Object.fromEntries(lines.map((mark) => [mark, '現場で見た']));
    release = await releaseAsSeen(inspector, covering, waived, '雨の前に塗る。');
    code = checkAddress(app.server.origin, release);
  }, 60_000);
  inOneGo();
  afterEach(() => expect(app.complaints(/40[14]/)).toEqual([]));
  afterAll(async () => {
    await app.close();
    await remove();
  });

  it('says at the record that it was doubted, by whom, and who answered, on screen and on paper', async () => {
    const address = `${site.things.house}/releases/${release.id}`;
    for (const [name, words, options] of [
      ['release-en', t, {}],
      ['release-ja-phone', ja, PHONE],
      ['release-ja-dark', ja, { locale: 'ja-JP', colorScheme: 'dark' }],
    ] as const) {
      const page = await app.open(options);
      await page.goto(address);
      await signIn(page, words!, KEEPER);
      const records = page.locator('.release-record').filter({ hasText: '込み栓が写っているか分からない' });
      await records.filter({ hasText: '左下に栓の頭が写っている' }).first().waitFor();
      await photograph(page, name);
      if (name === 'release-en') {
        await page.emulateMedia({ media: 'print' });
        await photograph(page, 'release-en-print');
      }
    }
    for (const lang of ['en', 'ja']) {
      const pdf = await site.client.raw('GET', `/releases/${release.id}/sheet?lang=${lang}`);
      await writeFile(await resultFile(`release-${lang}.pdf`), Buffer.from(await pdf.arrayBuffer()));
    }
  });

  it('leads whoever has only the sheet to what they can do, without an account', async () => {
    for (const [name, words, options] of [
      ['check-code-en', t, {}],
      ['check-code-ja-phone', ja, PHONE],
      ['check-code-ja-dark', ja, { locale: 'ja-JP', colorScheme: 'dark' }],
    ] as const) {
      const page = await app.open(options);
      await page.goto(code);
      await heading(page, words!('check.guide.title')).waitFor();
      const values = page.locator('.check-guide dl');
      await values.getByText(release.id, { exact: true }).waitFor();
      await values.getByText(release.headAfter, { exact: true }).waitFor();
      await values
        .getByText(String(release.seq + 1))
        .first()
        .waitFor();
      await photograph(page, name);
      await link(page, words!('check.guide.signIn')).click();
      await signIn(page, words!, KEEPER);
      await link(page, words!('check.guide.toRelease')).click();
      await page.locator('.release').waitFor();
      expect(new URL(page.url()).pathname).toBe(`${site.things.house}/releases/${release.id}`);
    }
  });

  it('holds the archive against the code, and says that the release was taken back since', async () => {
    const fetchArchive = async (name: string) => {
      const archive = path.join(folder, name);
      const answer = await site.client.raw('GET', `${site.things.house}/archive`);
      await writeFile(archive, Buffer.from(await answer.arrayBuffer()));
      return archive;
    };
    const page = await app.open(PHONE);
    await page.goto(code);
    await field(page, ja!('check.chooseZip')).setInputFiles(await fetchArchive('house.zip'));
    await page.getByText(ja!('check.paper.included', { release: release.id })).waitFor();
    await page.getByText('日本標準時（+09:00）').first().waitFor();
    await photograph(page, 'check-code-yes-ja-phone');
    const reason = encodeURIComponent('別の壁だった');
    await site.client.delete(`/releases/${release.id}?reason=${reason}`);
    await field(page, ja!('check.chooseZip')).setInputFiles(await fetchArchive('later.zip'));
    await page.getByText(/この承認は取り消されています.*別の壁だった/u).waitFor();
    await photograph(page, 'check-code-taken-back-ja-phone');
  });

  it('asks for values that can be read where the code has none', async () => {
    const page = await app.open();
    await page.goto(`/check?release=${randomUUID()}`);
    await heading(page, t!('check.title')).waitFor();
    await page.getByText(t!('check.paper.unusable')).waitFor();
  });
});
