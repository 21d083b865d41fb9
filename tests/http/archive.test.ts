import { execFile } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdir, open, readFile, rm, truncate, writeFile } from 'node:fs/promises';
import http from 'node:http';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { FindingsView } from '#domain/contract/findings';
import type {
  ArchiveSizeView,
  CoveringView,
  HouseView,
  LedgerEntryView,
  PhotoDetailView,
} from '#domain/contract/views';
import type { PhotoFacts } from '#domain/contract/shapes';
import { HOLD_NAMES } from '#domain/record/hold-names';
import { photoId } from '../../server/services/ingest-photo.ts';
import type { PhotoFiles } from '../../server/services/photo-files.ts';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import type { Files } from '../support/hand-made-archive.ts';
import { readFiles, verifyFile } from '../support/read-archive.ts';
import { temporaryFolder } from '../support/record.ts';
import { sampleHouse } from '../support/sample-house.ts';
import { newHouse, startServer, type Client, type TestServer } from '../support/server.ts';
import { someReadings } from '../support/some-readings.ts';

const run = promisify(execFile);
const GIGABYTE = 1024 ** 3;

describeOverBothDatabases('the archive of a house', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let house: HouseView;
  let folder: string;
  let remove: () => Promise<void>;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    house = await sampleHouse(server.owner);
    ({ folder, remove } = await temporaryFolder());
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
    await remove();
  });

  const fetchArchive = async (client: Client, of = house.id, lang = 'en') => {
    const response = await client.raw('GET', `/houses/${of}/archive?lang=${lang}`);
    const bytes = Buffer.from(await response.arrayBuffer());
    const file = path.join(folder, `${randomUUID()}.zip`);
    await writeFile(file, bytes);
    return { response, bytes, file };
  };

  it('is one ZIP of the length that was said beforehand, in which nothing is wrong', async () => {
    const { response, bytes, file } = await fetchArchive(server.owner);
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('application/zip');
    expect(response.headers.get('content-disposition')).toMatch(
      /^attachment; filename=arakabe-boathouse-\d{4}-\d\d-\d\d\.zip$/,
    );
    expect(response.headers.get('content-length')).toBe(String(bytes.length));
    const { size, head } = await server.owner.get<{ size: number; head: string }>(
      `/houses/${house.id}/ledger`,
    );
    expect(await verifyFile(file)).toMatchObject({
      ...{ house: house.id, name: '谷の Boathouse', entries: size, head },
      ...{ originals: 2, records: 1, releases: 1, back: [] },
    });
    const said = await server.owner.get<ArchiveSizeView>(`/houses/${house.id}/archive/size`);
    expect(said).toMatchObject({ entries: size, originals: 2 });
    expect(said.bytes).toBeLessThan(bytes.length);
  });

  it('is a ZIP that Info-ZIP finds no fault with, either, and is right when unpacked', async () => {
    const { file } = await fetchArchive(server.owner);
    // Debian's unzip 6.0, another reader of the same format (PKWARE APPNOTE).
    const tested = await run('unzip', ['-t', file]).catch((error: unknown) => error as { code: string });
    if ('code' in tested && tested.code === 'ENOENT') return;
    expect(tested).toMatchObject({ stdout: expect.stringContaining('No errors detected') as string });
    const unpacked = path.join(folder, 'unpacked');
    await run('unzip', ['-q', file, '-d', unpacked]);
    expect((await verifyFile(unpacked)).house).toBe(house.id);
  });

  it('holds a page without script, in the language asked for, in which no text becomes markup', async () => {
    const files = await readFiles((await fetchArchive(server.owner, house.id, 'ja')).file);
    const page = new TextDecoder().decode(files.get('index.html'));
    expect(page).toContain('「谷の Boathouse」の記録');
    expect(page).toContain('北の壁 &#60;1&#62;');
    expect(page).toContain('承認なしにふさいだ。理由：雨が近い');
    expect(page).toContain('記録なしで認めた部材：い二：貫が見えない &#60;面&#62;');
    expect(page).toContain('梁 0 &#38; &#60;b&#62;.jpg');
    expect(page).toContain('ろ&#60;一&#62;');
    expect(page).toContain('時刻は建物の時間帯、日本標準時（+09:00）です。');
    expect(page).toContain('保証するものはありません');
    expect(page).not.toMatch(/<script|<b>|<一>|https?:\/\//u);
    const originals = [...files.keys()].filter((name) => name.startsWith('originals/'));
    expect(originals.length).toBe(2);
    for (const name of originals) expect(page).toContain(`src="${name}"`);
  });

  it('says whose word a release is, where it stands, and for whom a gap was accepted', async () => {
    const { coverings } = await server.owner.get<{ coverings: CoveringView[] }>(
      `/houses/${house.id}/coverings`,
    );
    const release = coverings.find(({ name }) => name === '南の壁')?.hold.release;
    const { entries } = await server.owner.get<{ entries: LedgerEntryView[] }>(`/houses/${house.id}/ledger`);
    const seq = entries.find(({ kind }) => kind === 'covering.released')?.seq ?? NaN;
    const pageIn = async (lang: string) =>
      pageOf(await readFiles((await fetchArchive(server.owner, house.id, lang)).file));
    const page = await pageIn('en');
    expect(page).toContain('Times are those of the house: Japan Standard Time (+09:00).');
    const words = `released, by owner (keeper of the record) · ledger entry No. ${seq + 1} · release number ${release}`;
    expect(page).toContain(words);
    const accepted =
      /accepted without a record by owner on \d+ \w+ \d{4}, \d\d:\d\d: 貫が見えない &#60;面&#62;/u;
    expect(page).toMatch(new RegExp(`>い二</a>, at least raised: ${accepted.source}`, 'u'));
    expect(page).toMatch(new RegExp(`>南の壁</a>: ${accepted.source}`, 'u'));
    // It has a tag, but on a picture of 32 pixels, where nobody can read it.
    expect(page).toMatch(new RegExp(`>ろ&#60;一&#62;</a>, at least raised: ${accepted.source}`, 'u'));
    // A tag of い一 that was replaced is no record of it; the wall closed without one.
    expect(page).toContain('>い一</a>, at least pegged: lost: tagged on no photo');
    expect(page).toContain('owner was given the role of keeper of the record');
    const japanese = await pageIn('ja');
    expect(japanese).toMatch(/>い二<\/a>、必要な段階「建て方」：ownerが記録なしで認めた（/u);
    expect(japanese).toContain('>い一</a>、必要な段階「緊結」：記録なしで隠蔽（どの写真にも記入がない）');
    expect(japanese).toContain(
      `承認、owner（記録の責任者） · 台帳の第${seq + 1}項目 · 承認の番号 ${release}`,
    );
    expect(japanese).toContain('ownerに「記録の責任者」の役割');
  });

  it('is in the language that the request accepts where none is asked for', async () => {
    const languageOf = async (accepted: string) => {
      const response = await server.owner.raw('GET', `/houses/${house.id}/archive`, {
        headers: { 'accept-language': accepted },
      });
      const file = path.join(folder, `${randomUUID()}.zip`);
      await writeFile(file, Buffer.from(await response.arrayBuffer()));
      return /<html lang="(\w+)">/u.exec(pageOf(await readFiles(file)))?.[1];
    };
    expect(await languageOf('ja,en-US;q=0.7')).toBe('ja');
    expect(await languageOf('en-GB,ja;q=0.5')).toBe('en');
    expect(await languageOf('de')).toBe('en');
  });

  it('tells the story of each covering in order, and coverings by their day', async () => {
    const { owner } = server;
    const told = await sampleHouse(owner);
    const inspector = await server.join(told.id, 'kei@example.org', 'inspector');
    const { coverings } = await owner.get<{ coverings: CoveringView[] }>(`/houses/${told.id}/coverings`);
    const south = coverings.find(({ name }) => name === '南の壁');
    const { photos } = await owner.get<{ photos: { id: string }[] }>(`/houses/${told.id}/photos`);
    const details = await Promise.all(photos.map(({ id }) => owner.get<PhotoDetailView>(`/photos/${id}`)));
    const tag = details.flatMap(({ allTags }) => allTags).find(({ state }) => state === 'standing');
    await inspector.delete(
      `/releases/${south?.hold.release}?reason=${encodeURIComponent('貫を <見て> いない')}`,
    );
    await inspector.post(`/tags/${tag?.id}/dispute`, { reason: '栓が見えない' });
    const { findings } = await owner.get<FindingsView>(`/houses/${told.id}/findings?kind=disputed`);
    await owner.post(`/houses/${told.id}/findings/accept`, {
      findings: findings.map(({ key, basis }) => ({ key, basis })),
      reason: '拡大すれば見える',
    });
    await owner.post(`/coverings/${south?.id}/ready`, { note: 'もう一度' });
    await inspector.post(`/coverings/${south?.id}/refusal`, {
      ...{ lacking: [{ mark: 'い二', note: '端' }], note: '撮り直し' },
    });
    await owner.post(`/houses/${told.id}/coverings`, {
      ...{ id: randomUUID(), name: 'あとの床', kind: 'floor', plannedDay: null, hides: [] },
    });
    const pageIn = async (lang: string) =>
      pageOf(await readFiles((await fetchArchive(owner, told.id, lang)).file));
    const inOrder = (page: string, parts: readonly string[]) => {
      expect(parts.filter((part) => !page.includes(part))).toEqual([]);
      const at = parts.map((part) => page.indexOf(part));
      expect(at).toEqual(at.toSorted((a, b) => a - b));
    };
    const page = await pageIn('en');
    // Closed in 2026, planned for 2099, without a day.
    inOrder(page, ['>北の壁 &#60;1&#62;</h3>', '>南の壁</h3>', '>あとの床</h3>']);
    inOrder(page, [
      '<th>Inspection before it closes</th> <td>closed without release: 雨が近い</td>',
      ...[
        'said to be ready for inspection',
        'id="r-',
        ' release taken back, by kei (inspector) · ledger entry No. ',
        ` · release number ${south?.hold.release} · 貫を &#60;見て&#62; いない`,
      ],
      ...[
        'tag of ろ&#60;一&#62; doubted, by kei (inspector) · ledger entry No. ',
        '栓が見えない',
        'answered, by owner (keeper of the record)',
        '拡大すれば見える',
        'もう一度',
      ],
      ...[
        'refused, by kei (inspector)',
        ' · 撮り直し',
        'い二: 端',
        '<th>Inspection before it closes</th> <td>not inspected yet</td>',
      ],
      '柱 hashira, post',
    ]);
    const japanese = await pageIn('ja');
    inOrder(japanese, [
      '承認なしにふさいだ。理由：雨が近い',
      '検査を依頼',
      '承認を取り消し',
      '差し戻し、kei（検査員） · 台帳の第',
      ' · 撮り直し',
    ]);
  });

  it('does not say that a covering may close when more is hidden than was released', async () => {
    const { owner } = server;
    const told = await sampleHouse(owner);
    const { coverings } = await owner.get<{ coverings: CoveringView[] }>(`/houses/${told.id}/coverings`);
    const south = coverings.find(({ name }) => name === '南の壁');
    const pageIn = async (lang: string) =>
      pageOf(await readFiles((await fetchArchive(owner, told.id, lang)).file));
    expect(await pageIn('en')).toContain('<td>released: it may close</td>');
    expect(await pageIn('ja')).toContain('<td>承認済み（ふさいでよい）</td>');
    await owner.put(`/coverings/${south?.id}`, {
      ...{ name: '南の壁', kind: 'plaster', plannedDay: '2099-05-20', note: '' },
      hides: ['い一', 'い二', 'ろ<一>'].map((mark) => ({ mark, least: 'raised' })),
    });
    const page = await pageIn('en');
    expect(page).not.toContain('it may close');
    expect(page).toContain(
      `<td>${HOLD_NAMES.en.outrun}; members that it does not cover now: い一. It may not close before it is inspected anew.</td>`,
    );
    const japanese = await pageIn('ja');
    expect(japanese).not.toContain('ふさいでよい');
    expect(japanese).toContain(
      `<td>${HOLD_NAMES.ja.outrun}（承認が及ばない部材：い一）。ふさいではいけない。</td>`,
    );
  });

  it('is as of one size of the ledger, whatever is said while it is read', async () => {
    const response = await server.owner.raw('GET', `/houses/${house.id}/archive`);
    const before = await server.owner.get<{ size: number }>(`/houses/${house.id}/ledger`);
    await server.owner.put(`/houses/${house.id}/members/${encodeURIComponent('は一')}`, { kind: '柱' });
    const file = path.join(folder, 'meanwhile.zip');
    await writeFile(file, Buffer.from(await response.arrayBuffer()));
    expect((await verifyFile(file)).entries).toBe(before.size);
    expect((await verifyFile((await fetchArchive(server.owner)).file)).entries).toBe(before.size + 1);
  });

  it('is for the keeper of the record and for inspectors', async () => {
    const statusFor = async (role: string) => {
      const client = await server.join(house.id, `${role}@example.org`, role);
      const ask = async (end: string) =>
        (await client.raw('HEAD', `/houses/${house.id}/archive${end}`)).status;
      return [await ask(''), await ask('/size')];
    };
    expect(await statusFor('inspector')).toEqual([200, 200]);
    expect(await statusFor('carpenter')).toEqual([403, 403]);
    expect(await statusFor('builder')).toEqual([403, 403]);
  });

  it('is refused with the name of an original that is not on disk', async () => {
    const other = await sampleHouse(server.owner, 1);
    const { photos } = await server.owner.get<{ photos: { sha256: string; fileName: string }[] }>(
      `/houses/${other.id}/photos`,
    );
    const [photo] = photos;
    const original = server.running.core.context.files.original(photo?.sha256 ?? '');
    const bytes = await readFile(original);
    await rm(original);
    try {
      const response = await server.owner.raw('GET', `/houses/${other.id}/archive`);
      expect(response.status).toBe(500);
      expect(await response.json()).toMatchObject({
        code: 'original-missing',
        params: { file: photo?.fileName },
      });
    } finally {
      await writeFile(original, bytes);
    }
  });

  it('is read no faster than whoever asked for it reads, and no longer than they stay', async () => {
    const large = await newHouse(server.owner, 'Large');
    const { context } = server.running.core;
    for (const seed of [1, 2, 3]) await addSparse(context.files, large.id, seed);
    const reading = countReading(context.files);
    try {
      const request = http.get(`${server.running.origin}/api/v1/houses/${large.id}/archive`, {
        headers: { authorization: `Bearer ${await tokenOf(server.owner)}` },
      });
      const response = await new Promise<http.IncomingMessage>((resolve) =>
        request.once('response', resolve),
      );
      expect(Number(response.headers['content-length'])).toBeGreaterThan(6 * GIGABYTE);
      response.pause();
      await settled(reading);
      const [read, memory] = [reading.bytes, process.memoryUsage()];
      // What lies in the sockets' buffers and in the pieces in hand.
      expect(read).toBeLessThan(32 * 1024 ** 2);
      response.resume();
      while (reading.bytes < read + 100 * 1024 ** 2) await sleep(5);
      response.pause();
      await settled(reading);
      expect(process.memoryUsage().arrayBuffers - memory.arrayBuffers).toBeLessThan(64 * 1024 ** 2);
      expect(reading.open).toBe(1);
      response.destroy();
      for (let i = 0; i < 200 && reading.open > 0; i++) await sleep(10);
      expect(reading.open).toBe(0);
    } finally {
      reading.stop();
    }
  });

  async function tokenOf(client: Client): Promise<string> {
    return (await client.post<{ secret: string }>('/tokens', { id: randomUUID(), name: 'archive' })).secret;
  }

  /** A photo of two gigabytes of nothing, which takes no room on disk. */
  async function addSparse(files: PhotoFiles, of: string, seed: number): Promise<void> {
    const sha256 = seed.toString(16).padStart(64, 'a');
    const facts: PhotoFacts = {
      ...{ sha256, bytes: 2 * GIGABYTE, mediaType: 'image/tiff', fileName: `${seed}.tif` },
      ...{ width: 4000, height: 3000, readings: someReadings({}) },
    };
    const original = files.original(sha256);
    await mkdir(path.dirname(original), { recursive: true });
    await (await open(original, 'w')).close();
    await truncate(original, facts.bytes);
    await server.running.core.context.store.write(of, null, (writing) =>
      writing.say({ kind: 'photo.added', version: 2, payload: { ...facts, photo: photoId(of, sha256) } }),
    );
  }

  it('tells of a gap whose acceptance was taken back after the closing whose word it had been', async () => {
    const { coverings } = await server.owner.get<{ coverings: CoveringView[] }>(
      `/houses/${house.id}/coverings`,
    );
    const wall = coverings.find(({ name }) => name === '南の壁');
    await server.owner.post(`/coverings/${wall?.id}/close`, {});
    await server.owner.delete(`/releases/${wall?.hold.release}?reason=${encodeURIComponent('別の壁だった')}`);
    const page = pageOf(await readFiles((await fetchArchive(server.owner, house.id, 'en')).file));
    const told =
      /lost: [^<]*accepted without a record by owner on [^<]*: 貫が見えない &#60;面&#62;; that release was taken back by owner on [^<]*: 別の壁だった/u;
    expect(page).toMatch(new RegExp(`>い二</a>, at least raised: ${told.source}`, 'u'));
  });
});

/** index.html, with one space between words. */
const pageOf = (files: Files) => new TextDecoder().decode(files.get('index.html')).replace(/\s+/gu, ' ');

interface Reading {
  bytes: number;
  open: number;
  stop(): void;
}

/** Counts what is read of originals, and how many are open. */
function countReading(files: PhotoFiles): Reading {
  const readOriginal = files.readOriginal.bind(files);
  const reading: Reading = { bytes: 0, open: 0, stop: () => void (files.readOriginal = readOriginal) };
  files.readOriginal = async function* (sha256) {
    reading.open += 1;
    try {
      for await (const piece of readOriginal(sha256)) {
        reading.bytes += piece.length;
        yield piece;
      }
    } finally {
      reading.open -= 1;
    }
  };
  return reading;
}

/** Until nothing more is read. */
async function settled(reading: Reading): Promise<void> {
  for (let before = -1; before !== reading.bytes;) {
    before = reading.bytes;
    await sleep(150);
  }
}
