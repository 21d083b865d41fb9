import { describe, expect, it } from 'vitest';
import { verifyArchive, type Verdict } from '#domain/verify/verify-archive';
import { sayVerdict } from '../../../server/say-verdict.ts';
import { hashing } from '../../../server/storage/hashing.ts';
import { inMemory, writeLedger, type JsonRecord, type Said } from '../../support/hand-made-archive.ts';
import { COVERING, NEW_TAG, RELEASE, SAID, TABLES, someArchive } from './some-house.ts';

const OTHER_TAG = 'a0000000-0000-4000-8000-000000000003';
const KEI = { id: 'kei', name: 'kei' };
const LAST_TAG = TABLES['tags']![0]!;
const { photo: PHOTO = '', stage = '', region = {}, stretch = null, note = '' } = LAST_TAG;
const REPLACING = {
  ...{ tag: OTHER_TAG, supersedes: NEW_TAG, mark: 'い三' },
  photo: PHOTO,
  stage,
  region,
  stretch,
  note,
};

const ROLE: Said = { kind: 'role.granted', payload: { person: KEI, role: 'inspector' } };
const word = (kind: string, payload: JsonRecord, by?: JsonRecord): Said => ({
  ...{ kind, payload, version: kind === 'tag.superseded' ? 2 : 1 },
  ...(by ? { by } : {}),
});
const doubt = (reason: string, tag = NEW_TAG) =>
  word('tag.disputed', { tag, photo: PHOTO, mark: 'い二', reason }, KEI);
const finding = (tag: string, kind = 'disputed') => ({
  ...{ key: `${kind}:${tag}`, kind, photos: [PHOTO], marks: ['い二'], covering: null },
});
const answer = (reason: string, tag = NEW_TAG) =>
  word('findings.accepted', { findings: [{ ...finding(tag), basis: '0'.repeat(64) }], reason });
const reopen = (reason: string) => word('finding.reopened', { ...finding(NEW_TAG), reason }, KEI);
const withdraw = (reason: string) =>
  word('tag.withdrawn', { tag: NEW_TAG, photo: PHOTO, mark: 'い二', reason });
const supersede = word('tag.superseded', { ...REPLACING, was: 'い二' });

const instant = (seq: number) => new Date(Date.UTC(2026, 3, 1, 0, 0, seq)).toISOString();

/** After the release and its closing `later` is said, and these tags stand in the end. */
async function verdictAfter(
  later: readonly Said[],
  tags: readonly JsonRecord[] = TABLES['tags']!,
  paper = { isAtHand: false },
): Promise<Verdict> {
  const said = [...SAID, ROLE, ...later];
  const head = writeLedger(said).heads.at(-1) ?? '';
  const options = paper.isAtHand ? { paper: { size: said.length, head, release: RELEASE } } : {};
  return verifyArchive(inMemory(someArchive(said, { ...TABLES, tags })), hashing, options);
}

const released = (verdict: Verdict) => verdict.told[0]?.releases[0];
const linesOf = (verdict: Verdict) => sayVerdict(verdict).map((line) => line.trim());
const NO = SAID.length + 2;
const BY_KEI = 'on 1 Apr 2026, 09:00 by kei (inspector), ledger entry No.';
const BY_HARU = 'on 1 Apr 2026, 09:00 by Carpenter (keeper of the record), ledger entry No.';

describe('what was said after a release of the records that it rests on', () => {
  it('is nothing where nothing was said of them', async () => {
    const verdict = await verdictAfter([doubt('別の柱', 'a0000000-0000-4000-8000-000000000009')]);
    expect(released(verdict)?.since).toEqual([]);
    expect(linesOf(verdict)).toContain('It stands.');
  });

  it('is a doubt with its reason, and then the release does not plainly stand', async () => {
    const verdict = await verdictAfter([doubt('楔が見えない')]);
    expect(released(verdict)?.since).toMatchObject([
      { tag: NEW_TAG, mark: 'い二', state: 'doubted', said: [{ what: 'doubted', by: 'kei', seq: NO - 1 }] },
    ]);
    const lines = linesOf(verdict);
    expect(lines).not.toContain('It stands.');
    expect(lines).toContain('It stands, but of the 1 record that it rests on, 1 is doubted since.');
    expect(lines).toContain(`Record of い二: doubted ${BY_KEI} ${NO}: 楔が見えない`);
  });

  it('is an answer to a doubt, by whom and why', async () => {
    const verdict = await verdictAfter([doubt('楔が見えない'), answer('拡大すれば見える')]);
    expect(released(verdict)?.since).toMatchObject([{ state: 'answered' }]);
    const lines = linesOf(verdict);
    expect(lines).toContain(
      'It stands; of the 1 record that it rests on, 1 was doubted since, and the doubt was answered.',
    );
    expect(lines).toContain(`Record of い二: doubt answered ${BY_HARU} ${NO + 1}: 拡大すれば見える`);
  });

  it.each([
    ['an answer that was taken back', reopen('よく見ると違う'), 'answer taken back'],
    ['another doubt after the answer', doubt('よく見ると違う'), 'doubted'],
  ])('is a doubt again by %s', async (_what, again, words) => {
    const verdict = await verdictAfter([doubt('楔が見えない'), answer('見える'), again]);
    expect(released(verdict)?.since).toMatchObject([{ state: 'doubted' }]);
    expect(linesOf(verdict)).toContain(`Record of い二: ${words} ${BY_KEI} ${NO + 2}: よく見ると違う`);
  });

  it('is not that another finding was accepted', async () => {
    const burst = [{ ...finding(NEW_TAG, 'unreadable'), basis: '0'.repeat(64) }];
    const verdict = await verdictAfter([
      ...[doubt('楔が見えない'), word('findings.accepted', { findings: burst, reason: '読める' })],
    ]);
    expect(released(verdict)?.since).toMatchObject([{ state: 'doubted', said: [{ what: 'doubted' }] }]);
  });

  it('is that a record was withdrawn, whatever is said of it later', async () => {
    const verdict = await verdictAfter([withdraw('見間違い'), doubt('楔'), answer('見える')], []);
    expect(released(verdict)?.since).toMatchObject([{ state: 'withdrawn' }]);
    const lines = linesOf(verdict);
    expect(lines).toContain('It stands, but of the 1 record that it rests on, 1 was withdrawn since.');
    expect(lines).toContain(`Record of い二: withdrawn ${BY_HARU} ${NO}: 見間違い`);
  });

  it('is that a record was replaced, and what stands in its place', async () => {
    const saidBy = LAST_TAG['saidBy'] ?? null;
    const verdict = await verdictAfter([supersede], [{ ...REPLACING, saidAt: instant(NO - 1), saidBy }]);
    expect(released(verdict)?.since).toMatchObject([{ mark: 'い二', state: 'superseded' }]);
    expect(linesOf(verdict)).toContain(`Record of い二: replaced ${BY_HARU} ${NO}: now い三, pegged`);
  });

  it('is told to whoever holds a paper, too', async () => {
    const verdict = await verdictAfter([doubt('楔が見えない')], undefined, { isAtHand: true });
    expect(verdict.paper?.since).toMatchObject([{ tag: NEW_TAG, state: 'doubted' }]);
    expect(linesOf(verdict)).toContain(
      'Since it was given, 1 record that it rests on is doubted, withdrawn or replaced; see below.',
    );
  });
});

it('tells refusals, what was missing, and by whom', async () => {
  const open = { closedAt: null, closedBy: null, closeNote: null, release: null, without: null };
  const lacking = [
    { mark: 'い二', note: '端が見えない' },
    { mark: 'い三', note: '' },
  ];
  const said = [
    ...SAID,
    ROLE,
    word('covering.reopened', { covering: COVERING, reason: '早い' }),
    word('covering.ready', { covering: COVERING, note: '' }),
    word('covering.refused', { covering: COVERING, lacking, note: '撮り直し' }, KEI),
  ];
  const hold = { said: 'covering.refused', seq: said.length - 1 };
  const coverings = [{ ...TABLES['coverings']![0], ...open, hold }];
  const verdict = await verifyArchive(inMemory(someArchive(said, { ...TABLES, coverings })), hashing);
  expect(verdict.told[0]?.refusals).toMatchObject([
    { by: 'kei', role: 'inspector', lacking, note: '撮り直し' },
  ]);
  const lines = linesOf(verdict);
  const at = lines.indexOf(`Refused ${BY_KEI} ${said.length}`);
  expect(lines.slice(at + 1, at + 4)).toEqual([
    'Missing: い二: 端が見えない',
    'Missing: い三',
    'Note: 撮り直し',
  ]);
});
