import { execFileSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import jsqr from 'jsqr';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { FindingsView } from '#domain/contract/findings';
import type { ReleaseView } from '#domain/contract/review-views';
import type { HouseView, LedgerEntryView, TagView } from '#domain/contract/views';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { canReadPdf, overdrawn, pdfWords } from '../support/pdf-words.ts';
import { makeSquares, takenAt } from '../support/pictures.ts';
import { addPhoto, releaseAsSeen } from '../support/release.ts';
import { someGrid } from '../support/some-grid.ts';
import { codeOf, newHouse, startServer, type Client, type TestServer } from '../support/server.ts';

const MARKS = ['い一', 'い二', 'い三', 'ろ一'] as const;
const REFUSED = '根元が写っていない';
const WAIVED = 'Seen on site, stands dry.';
const CAUTIONS = {
  en: 'It does not replace an inspection that the law requires',
  ja: '法令で求められる検査の代わりにはなりません',
} as const;
/** The Japanese name of the zone is that of CLDR; Japan has kept UTC+9 since 1888 (tz database, file asia). */
const SAID = {
  en: [
    '± 60 s',
    'Japan Standard Time (+09:00)',
    'sato (inspector)',
    'Keeper of the record owner',
    'Tagged by haru (carpenter)',
  ],
  ja: ['±60秒', '日本標準時（+09:00）', '記録の責任者 owner', 'sato（検査員）', '記入 haru（大工）'],
} as const;
/** A wall of three posts with a rail through them and a post that goes on above it. */
const SCHEDULE = [
  '番付,種類,始点,終点,階,下端,上端,断面',
  'い一,柱,い一,,1F,,,120角',
  'い二,柱,い二,,1F,0,5000,120角',
  'い通り貫,貫,い一,い四,1F,1350,,15×105',
].join('\n');
const WALL = { shape: 'wall', family: 'first', line: 'い', from: '一', to: '三', bottom: 450, top: 3250 };

describeOverEitherDatabase('a release on paper', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let carpenter: Client;
  let inspector: Client;
  let house: HouseView;
  let release: ReleaseView;
  let tags: TagView[];

  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    const { owner } = server;
    house = await newHouse(owner, '谷の舟小屋');
    carpenter = await server.join(house.id, 'haru@example.org');
    inspector = await server.join(house.id, 'sato@example.org', 'inspector');
    for (const mark of MARKS)
      await owner.put(`/houses/${house.id}/members/${encodeURIComponent(mark)}`, { kind: '柱' });
    const bytes = await makeSquares(7, takenAt('2026-04-01T09:30:00'));
    const photo = await addPhoto(carpenter, house.id, 'north.jpg', bytes);
    const region = { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.4, h: 0.4 };
    tags = [];
    for (const mark of MARKS.slice(1))
      tags.push(
        await carpenter.post(`/photos/${photo}/tags`, { id: randomUUID(), mark, stage: 'raised', region }),
      );
    const covering = randomUUID();
    const hides = MARKS.map((mark) => ({ mark, least: 'raised' }));
    const facts = { name: '北の壁 / 荒壁', kind: 'plaster', plannedDay: '2099-05-01', hides };
    await owner.post(`/houses/${house.id}/coverings`, { id: covering, ...facts });
    await carpenter.post(`/coverings/${covering}/ready`, {});
    const lacking = [{ mark: 'い一', note: REFUSED }];
    await inspector.post(`/coverings/${covering}/refusal`, { lacking, note: '' });
    await carpenter.post(`/coverings/${covering}/ready`, {});
    release = await releaseAsSeen(inspector, covering, { い一: WAIVED }, '込み栓は全部見た。');
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  const sheet = (lang: 'en' | 'ja', who = inspector) =>
    who.raw('GET', `/releases/${release.id}/sheet?lang=${lang}`);
  /** Written to disk, for the programs that read it. */
  const onDisk = async (lang: 'en' | 'ja') => {
    const file = path.join(server.dataFolder, `${randomUUID()}.pdf`);
    await writeFile(file, Buffer.from(await (await sheet(lang)).arrayBuffer()));
    return file;
  };
  const textOf = (file: string) =>
    unbroken(execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' }));

  it('is a PDF with a safe name, kept by nobody on the way', async () => {
    const answer = await sheet('ja');
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe('application/pdf');
    expect(answer.headers.get('cache-control')).toBe('no-store');
    const disposition = decodeURIComponent(answer.headers.get('content-disposition') ?? '');
    expect(disposition).toContain("filename*=UTF-8''承認書：北の壁 _ 荒壁.pdf");
    const bytes = Buffer.from(await answer.arrayBuffer());
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    // ISO 32000-1, 14.9.2: the language of the document.
    expect(bytes.toString('latin1')).toContain('/Lang (ja-JP)');
  });

  it.skipIf(!canReadPdf()).each(['en', 'ja'] as const)(
    'says what was released, on what, and what it is not, and nothing over anything else: %s',
    async (lang) => {
      const file = await onDisk(lang);
      const needles = [...MARKS, '谷の舟小屋', WAIVED, '込み栓は全部見た。', 'sato', 'haru', 'north.jpg'];
      needles.push(`い一${lang === 'ja' ? '：' : ': '}${REFUSED}`);
      needles.push(release.headAfter, release.id, CAUTIONS[lang], ...SAID[lang]);
      const text = textOf(file);
      for (const needle of needles) expect(text).toContain(unbroken(needle));
      expect(overdrawn(pdfWords(file))).toEqual([]);
    },
  );

  it.skipIf(!canReadPdf())('has a code that leads to the check of this release', async () => {
    const page = ['-r', '150', '-f', '1', '-l', '1', '-png', await onDisk('ja')];
    const png = execFileSync('pdftoppm', page, { maxBuffer: 1 << 26 });
    const { data, info } = await sharp(png).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
    // Reference: jsQR, a reader of ISO/IEC 18004 symbols that shares nothing with the writer.
    const read = jsqr(Uint8ClampedArray.from(data), info.width, info.height);
    const { origin } = server.running;
    // Under this head lie the release's own words, too.
    const own = `/houses/${house.id}/ledger?from=${release.seq}&limit=1`;
    const { entries } = await server.owner.get<{ entries: LedgerEntryView[] }>(own);
    const [said] = entries;
    expect(said).toMatchObject({ kind: 'covering.released', payload: { release: release.id } });
    const noted = `head=${said?.head ?? ''}&size=${release.seq + 1}`;
    expect(read?.data).toBe(`${origin}/check?release=${release.id}&${noted}`);
  });

  it.skipIf(!canReadPdf())('tells what came later as later, and keeps what was released', async () => {
    const [changed] = tags;
    await carpenter.delete(`/tags/${changed?.id}?reason=${encodeURIComponent('The wrong post.')}`);
    const text = textOf(await onDisk('en'));
    const [before, after] = text.split(unbroken('Later than the release'));
    expect(before).toContain(unbroken('い二 柱 hashira, post on record'));
    expect(after).toContain(unbroken('Records that counted then count no more.'));
    expect(after).toMatch(/Countsnomore:north\.jpg.*takenbackbyharu/u);
    // Above all else, too: whoever reads the first page alone must know.
    expect(text.indexOf(unbroken('this release stands, but not for い二'))).toBeGreaterThan(-1);
    expect(text.indexOf(unbroken('but not for い二'))).toBeLessThan(text.indexOf(unbroken('Released by')));
    const reason = encodeURIComponent('The wrong wall.');
    await inspector.delete(`/releases/${release.id}?reason=${reason}`);
    expect(textOf(await onDisk('en'))).toContain(
      unbroken('This release does not stand. sato (inspector) took it back'),
    );
  });

  it.skipIf(!canReadPdf())(
    'tells what was doubted and answered, and names parts by the grid of then',
    async () => {
      const { owner } = server;
      const wall = await newHouse(owner, '川の舟小屋');
      const mio = await server.join(wall.id, 'mio@example.org');
      const kei = await server.join(wall.id, 'kei@example.org', 'inspector');
      await owner.put(`/houses/${wall.id}/grid`, { ...someGrid(), unit: 'mm' });
      await owner.raw('POST', `/houses/${wall.id}/schedule?fileName=a.csv`, {
        body: SCHEDULE,
        headers: { 'content-type': 'text/csv' },
      });
      const bytes = await makeSquares(8, takenAt('2026-04-01T09:30:00'));
      const photo = await addPhoto(mio, wall.id, 'river.jpg', bytes);
      const region = { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.4, h: 0.4 };
      const tag = randomUUID();
      const facts = { id: tag, mark: 'い通り貫', stage: 'pegged', region };
      await mio.post(`/photos/${photo}/tags`, { ...facts, stretch: { from: '一', to: '二' } });
      const other = { ...facts, id: randomUUID(), mark: 'い一' };
      await mio.post(`/photos/${photo}/tags`, other);
      const covering = randomUUID();
      await owner.post(`/houses/${wall.id}/coverings`, {
        ...{ id: covering, name: '川の壁', kind: 'plaster', plannedDay: '2099-05-01', hides: [] },
        zone: { ...WALL, face: 'both', over: 'over-posts' },
      });
      await kei.post(`/tags/${tag}/dispute`, { reason: '仕口が写っていない。' });
      const { findings } = await owner.get<FindingsView>(`/houses/${wall.id}/findings?kind=disputed`);
      const [doubt] = findings;
      const named = [{ key: doubt?.key, basis: doubt?.basis }];
      await owner.post(`/houses/${wall.id}/findings/accept`, { findings: named, reason: '右端に写っている' });
      await mio.post(`/coverings/${covering}/ready`, {});
      const waived = { い通り貫: '見た', い一: '見た', い二: '見た' };
      const { id } = await releaseAsSeen(kei, covering, waived);
      // What is said later is no part of the release.
      await kei.post(`/tags/${tag}/dispute`, { reason: 'やはり写っていない' });
      await owner.put(`/houses/${wall.id}/grid`, { ...someGrid(910), unit: 'mm' });
      const text = async (lang: 'en' | 'ja') => {
        const answer = await kei.raw('GET', `/releases/${id}/sheet?lang=${lang}`);
        const file = path.join(server.dataFolder, `${randomUUID()}.pdf`);
        await writeFile(file, Buffer.from(await answer.arrayBuffer()));
        expect(overdrawn(pdfWords(file))).toEqual([]);
        return textOf(file).split(unbroken(lang === 'en' ? 'Later than the release' : '承認より後のこと'));
      };
      const [before = '', after = ''] = await text('ja');
      expect(before).toContain(unbroken('隠れる部分は一〜三'));
      expect(before).toContain(unbroken('隠れる部分は下端から0.00〜2.80 m'));
      expect(before).toContain(unbroken('い一 柱（はしら） 記録あり 必要な段階「緊結」、全長が隠れる'));
      expect(before).toContain(unbroken('記録がない部分：二〜三'));
      expect(before).toMatch(
        /承認の前に疑義あり：.*、kei（検査員）が疑義「仕口が写っていない」。.*、.*（記録の責任者）が回答「右端に写っている」/u,
      );
      expect(before).not.toContain('やはり');
      expect(after).toContain('kei（検査員）が疑義「やはり写っていない」');
      const [english = ''] = await text('en');
      expect(english).toMatch(/doubtedbykei\(inspector\)on.*;answeredby.*\(keeperoftherecord\)on/u);
      expect(english).toContain(unbroken('hidden from 一 to 三'));
      expect(english).toContain(unbroken('hidden from 0.00 to 2.80 m above its foot'));
    },
  );

  it('is for the people of the house alone', async () => {
    expect((await sheet('en', server.anonymous())).status).toBe(401);
    const other = await newHouse(server.owner, 'Tea house');
    const stranger = await server.join(other.id, 'ren@example.org');
    expect((await sheet('en', stranger)).status).toBe(404);
    expect(await codeOf(inspector.get(`/releases/${randomUUID()}/sheet`))).toBe('not-found');
  });
});

/** Where lines break is the paper's business. */
function unbroken(text: string): string {
  return text.replace(/\s+/gu, '');
}
