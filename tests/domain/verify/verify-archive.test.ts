import { describe, expect, it } from 'vitest';
import { canonicalJson } from '#domain/ledger/canonical-json';
import { parsePaper, type Paper } from '#domain/verify/check-paper';
import { verifyArchive } from '#domain/verify/verify-archive';
import { Wrong, type Place } from '#domain/verify/wrong';
import type { WrongCode } from '#domain/verify/wrong-sentences';
import { hashing } from '../../../server/storage/hashing.ts';
import {
  hashOf,
  inMemory,
  readManifest,
  seal,
  utf8,
  writeLedger,
  type Files,
  type JsonRecord,
  type Said,
} from '../../support/hand-made-archive.ts';
import {
  COVERING,
  HEADS,
  HOUSE,
  NEW_TAG,
  ORIGINAL,
  RELEASE,
  SAID,
  TABLES,
  release,
  someArchive,
  zoned,
} from './some-house.ts';

async function wrongOf(files: Files, paper: Paper | null = null): Promise<Wrong> {
  const found = await verifyArchive(inMemory(files), hashing, { paper }).catch((error: unknown) => error);
  expect(found).toBeInstanceOf(Wrong);
  return found as Wrong;
}

const size = SAID.length;
const heads = writeLedger(SAID).heads;
const head = heads.at(-1) ?? '';

describe('an archive in which nothing is wrong', () => {
  it('is told with what was checked', async () => {
    expect(await verifyArchive(inMemory(someArchive()), hashing)).toEqual({
      house: HOUSE,
      name: '谷の舟小屋',
      zone: 'Asia/Tokyo',
      entries: size,
      head,
      madeAt: '2026-05-01T00:00:00.000Z',
      originals: 1,
      bytes: ORIGINAL.length,
      records: 1,
      releases: 1,
      takenBack: 0,
      told: [
        {
          ...{ covering: COVERING, name: '北の壁' },
          releases: [
            {
              ...{ release: RELEASE, covering: COVERING, name: '北の壁', note: '', accepted: [] },
              ...{ seq: 9, at: '2026-04-01T00:00:09.000Z', by: 'Carpenter', role: 'owner' },
              head: { size: 9, hash: HEADS[9] },
              members: [{ mark: 'い二', tags: [NEW_TAG], isHiddenBefore: false }],
              takenBack: null,
              ended: null,
              since: [],
            },
          ],
          refusals: [],
          closings: [
            {
              ...{ covering: COVERING, name: '北の壁', closedAt: '2026-04-21T01:00:00.000Z', note: '' },
              ...{ seq: 10, at: '2026-04-01T00:00:10.000Z', by: 'Carpenter', role: 'owner' },
              ...{ release: RELEASE, without: null, takenBack: null },
            },
          ],
        },
      ],
      back: [size - 1],
      paper: null,
    });
  });

  it('may be read in pieces of any size, and tells how far it has come', async () => {
    const files = someArchive();
    const total = [...files.values()].reduce((sum, { length }) => sum + length, 0);
    for (const piece of [1, 7, 4096]) {
      let last = [0, 0];
      const progress = (...now: [number, number]) => void (last = now);
      await verifyArchive(inMemory(files, piece), hashing, { progress });
      expect(last).toEqual([total, total]);
    }
  });

  it('may have been opened in a folder by an operating system', async () => {
    const files = someArchive().set('originals/.DS_Store', utf8('x')).set('Thumbs.db', utf8('x'));
    await expect(verifyArchive(inMemory(files), hashing)).resolves.toBeDefined();
  });

  it('keeps what a later version of a statement says', async () => {
    const said = SAID.with(7, { kind: 'covering.planned', version: 2, payload: zoned });
    const last = writeLedger(said.slice(0, 9)).heads[9] ?? '';
    const given = release({ head: { size: 9, hash: last } });
    const tables = {
      ...TABLES,
      coverings: [{ ...TABLES['coverings']![0], zone: zoned.zone, except: zoned.except }],
      releases: [{ ...TABLES['releases']![0], head: { size: 9, hash: last } }],
    };
    const verdict = await verifyArchive(inMemory(someArchive(said.with(9, given), tables)), hashing);
    expect(verdict.releases).toBe(1);
  });
});

describe('what stands on paper', () => {
  const paper = { size: 10, head: heads[10] ?? '', release: RELEASE };

  it('is found in the archive', async () => {
    const read = (given: Paper) => verifyArchive(inMemory(someArchive()), hashing, { paper: given });
    expect((await read(paper)).paper).toEqual({
      ...paper,
      includesRelease: true,
      withdrawn: null,
      ended: null,
      since: [],
    });
    const before = { size: 9, head: HEADS[9] ?? '', release: RELEASE };
    expect((await read(before)).paper).toEqual({
      ...before,
      includesRelease: false,
      withdrawn: null,
      ended: null,
      since: [],
    });
    expect((await read({ ...paper, release: null })).paper?.release).toBeNull();
  });

  it('is told to be taken back since, where it was', async () => {
    const payload = { release: RELEASE, covering: COVERING, reason: '貫が違う' };
    const back = { by: { id: 'p1', name: '佐藤' }, at: '2026-05-01T00:00:00.000Z' };
    const said = [...SAID, { kind: 'release.withdrawn', payload, ...back }];
    const taken = { seq: said.length - 1, ...back, reason: payload.reason };
    const tables = {
      ...TABLES,
      coverings: [{ ...TABLES['coverings']![0], hold: { said: 'release.withdrawn', seq: taken.seq } }],
      releases: [{ ...TABLES['releases']![0], withdrawn: taken }],
    };
    const verdict = await verifyArchive(inMemory(someArchive(said, tables)), hashing, { paper });
    const { seq } = taken;
    const told = { seq, at: back.at, by: '佐藤', role: null, reason: '貫が違う' };
    expect(verdict.paper?.withdrawn).toEqual(told);
    expect(verdict).toMatchObject({ releases: 1, takenBack: 1, told: [{ releases: [{ takenBack: told }] }] });
  });

  it('is told to be another, or of another release', async () => {
    expect(await wrongOf(someArchive(), { ...paper, head: HEADS[9] ?? '' })).toMatchObject({
      code: 'paper-head',
      place: { file: 'ledger.jsonl', line: 10 },
    });
    expect((await wrongOf(someArchive(), { ...paper, size: size + 1 })).code).toBe('paper-size');
    expect((await wrongOf(someArchive(), { ...paper, release: COVERING })).code).toBe('paper-release');
  });

  it('is read as it was typed, or not at all', () => {
    const typed = {
      size: ' 10 ',
      head: ` ${(heads[10] ?? '').toUpperCase().replace(/(.{8})/g, '$1 ')}`,
      release: ' ',
    };
    expect(parsePaper(typed)).toEqual({ ...paper, release: null });
    for (const change of [{ size: null }, { size: '-1' }, { size: '1.5' }, { head: null }, { head: 'ab' }])
      expect(parsePaper({ ...typed, ...change })).toBeUndefined();
  });
});

/** A change of the files, and the first thing that must be named for it. */
type Case = [code: WrongCode, place: Place, change: (files: Files) => void];

const LEDGER = 'ledger.jsonl';
const PHOTO = `originals/${hashOf(ORIGINAL)}.jpg`;
const lines = writeLedger(SAID).lines;
const text = (files: Files, name: string) => new TextDecoder().decode(files.get(name));
const put = (files: Files, name: string, content: string) => void files.set(name, utf8(content));
const manifest = (files: Files, change: JsonRecord) => seal(files, { ...readManifest(files), ...change });
const row = (files: Files, name: string, change: (table: JsonRecord[]) => unknown) => {
  const table = JSON.parse(text(files, name)) as JsonRecord[];
  put(files, name, canonicalJson(change(table)));
};
/** The ledger written anew with all its hashes, and the manifest with it. */
const say = (files: Files, said: readonly Said[]) => {
  const written = writeLedger(said);
  put(files, LEDGER, written.lines.join(''));
  manifest(files, { size: said.length, head: written.heads.at(-1) ?? '' });
};
const line = (number: number, change: (line: string) => string) => (files: Files) =>
  put(files, LEDGER, lines.with(number - 1, change(lines[number - 1] ?? '')).join(''));
const closing = (change: JsonRecord): Said => {
  const said = SAID[10]!;
  return { ...said, payload: { ...said.payload, ...change } };
};
const given = (change: JsonRecord) => (files: Files) => say(files, SAID.with(9, release(change)));

const stamped = (payload: JsonRecord) => (files: Files) =>
  say(files, SAID.with(11, { kind: 'head.stamped', payload }));

const CASES: Case[] = [
  ['stamp-head', { file: LEDGER, line: 12 }, stamped({ size: 9, head: HEADS[8] ?? '' })],
  ['stamp-head', { file: LEDGER, line: 12 }, stamped({ size: 13, head: HEADS[8] ?? '' })],
  ['file-missing', { file: 'manifest.json' }, (files) => files.delete('manifest.json')],
  ['file-missing', { file: LEDGER }, (files) => files.delete(LEDGER)],
  ['file-missing', { file: PHOTO }, (files) => files.delete(PHOTO)],
  ['file-extra', { file: '../x' }, (files) => put(files, '../x', 'x')],
  ['not-utf8', { file: 'manifest.json' }, (files) => files.set('manifest.json', Uint8Array.of(0x7b, 0xff))],
  [
    'not-utf8',
    { file: 'manifest.json' },
    (files) => put(files, 'manifest.json', `\ufeff${text(files, 'manifest.json')}`),
  ],
  ['not-json', { file: 'manifest.json' }, (files) => put(files, 'manifest.json', '{')],
  ['not-canonical', { file: 'manifest.json', byte: 1 }, (files) => put(files, 'manifest.json', `{ "a":1}`)],
  [
    'not-canonical',
    { file: 'manifest.json', byte: 0 },
    (files) => put(files, 'manifest.json', '["\\ud800"]'),
  ],
  ['manifest-form', { file: 'manifest.json' }, (files) => put(files, 'manifest.json', '[]')],
  ['manifest-form', { file: 'manifest.json' }, (files) => manifest(files, { size: -1 })],
  ['manifest-form', { file: 'manifest.json' }, (files) => manifest(files, { pages: [] })],
  ['manifest-newer', { file: 'manifest.json' }, (files) => manifest(files, { version: 2 })],
  [
    'manifest-checksum',
    { file: 'manifest.json' },
    (files) => put(files, 'manifest.json', text(files, 'manifest.json').replace('2026', '2027')),
  ],
  ['manifest-house', { file: 'manifest.json' }, (files) => manifest(files, { house: COVERING })],
  ['manifest-size', { file: 'manifest.json' }, (files) => manifest(files, { size: size - 1 })],
  ['manifest-head', { file: 'manifest.json' }, (files) => manifest(files, { head: HEADS[3] ?? '' })],
  ['manifest-size', { file: 'manifest.json' }, (files) => put(files, LEDGER, lines.slice(0, -1).join(''))],
  [
    'manifest-original',
    { file: 'manifest.json' },
    (files) => {
      files.delete(PHOTO);
      manifest(files, { originals: [] });
    },
  ],
  ['line-form', { file: LEDGER, line: 3 }, line(3, (was) => was.replace('"head"', '"Head"'))],
  ['line-form', { file: LEDGER, line: 3 }, line(3, () => '\n')],
  ['line-cut', { file: LEDGER, line: size }, line(size, (was) => was.slice(0, -1))],
  ['not-utf8', { file: LEDGER, line: 2 }, line(2, (was) => `\ufeff${was}`)],
  ['not-json', { file: LEDGER, line: 2 }, line(2, (was) => was.replace('"kind"', '"kind'))],
  [
    'not-canonical',
    { file: LEDGER, line: 1, byte: 9 },
    line(1, (was) => was.replace('{"entry":{', '{"entry":  {')),
  ],
  ['entry-form', { file: LEDGER, line: 2 }, line(2, (was) => was.replace('"seq":1', '"sez":1'))],
  [
    'entry-form',
    { file: LEDGER, line: 4 },
    (files) => say(files, SAID.with(3, { kind: 'member.entered', version: 2, payload: {} })),
  ],
  ['entry-place', { file: LEDGER, line: 3 }, (files) => put(files, LEDGER, lines.toSpliced(2, 1).join(''))],
  ['entry-house', { file: LEDGER, line: 3 }, line(3, (was) => was.replace(HOUSE, COVERING))],
  [
    'entry-kind',
    { file: LEDGER, line: 2 },
    (files) => say(files, SAID.with(1, { kind: 'toString', payload: {} })),
  ],
  ['entry-kind', { file: LEDGER, line: 2 }, (files) => say(files, SAID.with(1, { ...SAID[1]!, version: 9 }))],
  ['entry-leaf', { file: LEDGER, line: 2 }, line(2, (was) => was.replace('Carpenter', 'carpenter'))],
  [
    'entry-head',
    { file: LEDGER, line: 4 },
    line(4, (was) => was.replace(/"head":"./u, (m) => `"head":"${m.endsWith('0') ? '1' : '0'}`)),
  ],
  ['release-covering', { file: LEDGER, line: 10 }, given({ covering: RELEASE })],
  [
    'release-unknown',
    { file: LEDGER, line: 12 },
    (files) =>
      say(
        files,
        SAID.with(11, {
          kind: 'release.withdrawn',
          payload: { release: COVERING, covering: COVERING, reason: 'x' },
        }),
      ),
  ],
  [
    'closing-release',
    { file: LEDGER, line: 11 },
    (files) => say(files, SAID.with(10, closing({ release: COVERING }))),
  ],
  [
    'entry-form',
    { file: LEDGER, line: 11 },
    (files) => say(files, SAID.with(10, closing({ closedAt: '2026-13-41T01:00:00.000Z' }))),
  ],
  ['entry-form', { file: LEDGER, line: 2 }, line(2, (was) => was.replace('2026-04-01T', '2026-13-41T'))],
  ['manifest-form', { file: 'manifest.json' }, (files) => manifest(files, { madeAt: 'yesterday' })],
  ['release-size', { file: LEDGER, line: 10 }, given({ head: { size: 10, hash: HEADS[9] ?? '' } })],
  ['release-head', { file: LEDGER, line: 10 }, given({ head: { size: 9, hash: HEADS[8] ?? '' } })],
  ['release-tag', { file: LEDGER, line: 10 }, given({ hides: [{ mark: 'い二', tags: [COVERING] }] })],
  [
    'table-hash',
    { file: 'manifest.json' },
    (files) =>
      manifest(files, {
        tables: (readManifest(files)['tables'] as JsonRecord[]).map((one) => ({
          ...one,
          sha256: '0'.repeat(64),
        })),
      }),
  ],
  [
    'table-row',
    { file: 'tables/tags.json' },
    (files) => row(files, 'tables/tags.json', ([tag]) => [{ ...tag, stage: 'cut' }]),
  ],
  [
    'table-row',
    { file: 'tables/members.json' },
    (files) => row(files, 'tables/members.json', (rows) => rows.slice(1)),
  ],
  [
    'table-row',
    { file: 'tables/releases.json' },
    (files) => row(files, 'tables/releases.json', (rows) => [...rows, ...rows]),
  ],
  ['table-row', { file: 'tables/photos.json' }, (files) => put(files, 'tables/photos.json', '{}')],
  ['page-hash', { file: 'index.html' }, (files) => put(files, 'index.html', 'x')],
  ['original-length', { file: PHOTO }, (files) => files.set(PHOTO, ORIGINAL.subarray(1))],
  ['original-hash', { file: PHOTO }, (files) => files.set(PHOTO, ORIGINAL.with(3, 0))],
];

describe('the first thing that is wrong', () => {
  it.each(CASES)('%s at %o', async (code, place, change) => {
    const files = someArchive();
    change(files);
    const wrong = await wrongOf(files);
    expect({ code: wrong.code, place: wrong.place }).toEqual({ code, place });
    expect(wrong.message).not.toMatch(/\{\{|undefined/u);
  });

  it('may be that the archive names a file twice, or cannot be read', async () => {
    const archive = inMemory(someArchive());
    const twice = { ...archive, files: [...archive.files, archive.files[0]!] };
    await expect(verifyArchive(twice, hashing)).rejects.toMatchObject({ code: 'file-twice' });
    const broken = {
      ...archive,
      read: async function* () {
        yield await Promise.reject<Uint8Array>(new Error('bad sector'));
      },
    };
    await expect(verifyArchive(broken, hashing)).rejects.toMatchObject({
      code: 'file-unreadable',
      params: { reason: 'bad sector' },
    });
  });
});
