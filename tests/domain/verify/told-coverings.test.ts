import { expect, it } from 'vitest';
import { verifyArchive } from '#domain/verify/verify-archive';
import { sayVerdict } from '../../../server/say-verdict.ts';
import { hashing } from '../../../server/storage/hashing.ts';
import {
  forgePage,
  inMemory,
  makeArchive,
  writeLedger,
  type Files,
  type JsonRecord,
  type Said,
} from '../../support/hand-made-archive.ts';
import { COVERING, RELEASE, SAID, TABLES, release, someArchive } from './some-house.ts';

const AGAIN = 'e0000000-0000-4000-8000-000000000002';
const KEI = { id: 'kei', name: 'kei' };

const verdictOf = (files: Files) => verifyArchive(inMemory(files), hashing);

it('is what the ledger says, whatever a forged index.html says', async () => {
  const told = await verdictOf(someArchive());
  const files = someArchive();
  forgePage(files, 'index.html', '<h1>北の壁</h1> released by the building authority');
  const forged = await verdictOf(files);
  expect(forged).toEqual(told);
  const said = sayVerdict(forged).join('\n');
  expect(said).toContain('“北の壁”');
  expect(said).toContain(
    `Released on 1 Apr 2026, 09:00 by Carpenter (keeper of the record), ledger entry No. 10; release ${RELEASE}`,
  );
  expect(said).toContain('nothing vouches for those two pages');
  expect(said).not.toContain('building authority');
});

const timeOf = (seq: number) => new Date(Date.UTC(2026, 3, 1, 0, 0, seq)).toISOString();

const word = (kind: string, payload: JsonRecord, by: JsonRecord = KEI): Said => ({
  ...{ kind, payload: { covering: COVERING, ...payload }, by },
});

/** Closed by mistake, taken back, renamed, released anew with a gap, and closed without a release in the end. */
const LATER: readonly Said[] = [
  word('role.granted', { person: KEI, role: 'inspector' }),
  word('covering.reopened', { reason: 'まだ塗っていない' }),
  word('release.withdrawn', { release: RELEASE, reason: '貫が違う' }),
  word('covering.changed', {
    ...{ name: '北の大壁', kind: 'plaster', plannedDay: null, note: '' },
    hides: [{ mark: 'い二', least: 'pegged' }],
  }),
];

function archiveWith(more: readonly Said[], covering: JsonRecord, releases: readonly JsonRecord[]): Files {
  const coverings = [{ ...TABLES['coverings']![0], ...covering }];
  return someArchive([...SAID, ...more], { ...TABLES, coverings, releases });
}

it('tells what was taken back, what a gap was accepted for, and what closed without a release', async () => {
  const size = SAID.length + LATER.length;
  const head = writeLedger([...SAID, ...LATER]).heads[size] ?? '';
  const hides = [
    { mark: 'い二', least: 'pegged', stretch: null, state: 'waived', tags: [] },
    { mark: 'い三', least: 'pegged', stretch: null, state: 'hidden-before', tags: [] },
  ];
  const waived = [{ mark: 'い二', reason: '現場で見た。' }];
  const given = release({
    release: AGAIN,
    head: { size, hash: head },
    hides,
    waived,
    note: '二段目\n三段目',
  });
  const closing = {
    ...{ closedAt: '2026-04-28T01:00:00.000Z', note: '' },
    ...{ release: null, without: '雨\u001b[2J が近い' },
  };
  const closed = { ...word('covering.closed', closing), version: 2 };
  const more = [...LATER, { ...given, by: KEI }, closed];
  const files = archiveWith(
    more,
    {
      ...{ name: '北の大壁', plannedDay: null, hold: { said: 'covering.released', seq: size } },
      ...{ closedAt: '2026-04-28T01:00:00.000Z', closedBy: KEI, closeNote: '' },
      ...{ release: null, without: '雨\u001b[2J が近い' },
    },
    [
      {
        ...TABLES['releases']![0],
        withdrawn: { seq: SAID.length + 2, at: timeOf(SAID.length + 2), by: KEI, reason: '貫が違う' },
      },
      {
        ...{ release: AGAIN, covering: COVERING, seq: size, at: timeOf(size), by: KEI },
        ...{ head: { size, hash: head }, hides, waived, note: '二段目\n三段目', withdrawn: null },
      },
    ],
  );
  const verdict = await verdictOf(files);
  expect(verdict).toMatchObject({ releases: 2, takenBack: 1 });
  const kei = 'kei (inspector), ledger entry No.';
  const said = sayVerdict(verdict);
  expect(said.slice(said.indexOf('“北の大壁”'), -5)).toEqual([
    '“北の大壁”',
    `  Released on 1 Apr 2026, 09:00 by Carpenter (keeper of the record), ledger entry No. 10; release ${RELEASE}`,
    '    The covering was called “北の壁” then.',
    `    Taken back on 1 Apr 2026, 09:00 by ${kei} 17: 貫が違う`,
    '    It hides 1 member: い二 (1 record)',
    '  Closed on 21 Apr 2026, 10:00, said on 1 Apr 2026, 09:00 by Carpenter (keeper of the record), ledger entry No. 11',
    '    The covering was called “北の壁” then.',
    `    Under the release ${RELEASE}, which was taken back`,
    `    Closing taken back on 1 Apr 2026, 09:00 by ${kei} 16: まだ塗っていない`,
    `  Released on 1 Apr 2026, 09:00 by ${kei} 19; release ${AGAIN}`,
    '    It stands.',
    '    Accepted without a record: い二: 現場で見た。',
    '    It hides 2 members: い二 (0 records), い三 (hidden before by another layer)',
    '    Note: 二段目 / 三段目',
    `  Closed on 28 Apr 2026, 10:00, said on 1 Apr 2026, 09:00 by ${kei} 20`,
    '    Without release: 雨<U+001B>[2J が近い',
  ]);
});

it('says of whoever had no role that they had none, whatever the name looks like', async () => {
  const mayor = { id: 'mayor', name: 'Mayor (inspector)' };
  const reason = '見ていない';
  const withdrawn = { seq: SAID.length, at: timeOf(SAID.length), by: mayor, reason };
  const files = archiveWith(
    [word('release.withdrawn', { release: RELEASE, reason }, mayor)],
    { hold: { said: 'release.withdrawn', seq: SAID.length } },
    [{ ...TABLES['releases']![0], withdrawn }],
  );
  const said = sayVerdict(await verdictOf(files)).join('\n');
  expect(said).toContain('1 release, of which 1 was taken back.');
  expect(said).toMatch(
    /Taken back on .* by Mayor \(inspector\) \(no role in the house\), ledger entry No\. 15/u,
  );
});

it('says that nothing was released or closed', async () => {
  const files = makeArchive({
    said: SAID.slice(0, 3),
    tables: {
      ...{ coverings: [], photos: [], tags: [], releases: [] },
      members: [TABLES['members']![0], TABLES['members']![2]].map((row) => ({ ...row, retired: false })),
    },
    originals: [],
  });
  const verdict = await verdictOf(files);
  expect(verdict.told).toEqual([]);
  expect(sayVerdict(verdict)).toContain(
    'The ledger says of no covering that it was released, refused or closed.',
  );
});

it('tells of a release that ended when the covering was ready anew, and of no other', async () => {
  const reopened = word('covering.reopened', { reason: 'まだ塗っていない' });
  const ready = word('covering.ready', { note: '' });
  const more = [reopened, ready, ready];
  const seq = SAID.length + 2;
  const open = { closedAt: null, closedBy: null, closeNote: null, release: null, without: null };
  const files = archiveWith(more, { ...open, hold: { said: 'covering.ready', seq } }, TABLES['releases']!);
  const verdict = await verdictOf(files);
  // Said twice, it is the first that ended it.
  const ended = { seq: SAID.length + 1, by: 'kei' };
  expect(verdict.told).toMatchObject([{ releases: [{ release: RELEASE, takenBack: null, ended }] }]);
  expect(sayVerdict(verdict).join('\n')).toContain(
    `It ended: ready for inspection was said anew on 1 Apr 2026, 09:00 by kei`,
  );
});
