import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import type { FrameView } from '#domain/contract/frame-views';
import type { FindingsView } from '#domain/contract/findings';
import type { ProtectionView } from '#domain/contract/protection';
import type { ClosingReportView } from '#domain/contract/report-views';
import type { HouseView, LedgerEntryView, MemberHistoryView, UploadOutcome } from '#domain/contract/views';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { makeSquares, takenAt } from '../support/pictures.ts';
import { HttpProblem, newHouse, startServer, type Client, type TestServer } from '../support/server.ts';

const GRID = {
  first: { lines: ['い', 'ろ'].map((label, i) => ({ label, at: i * 1820 })), runs: 'leftward' },
  second: { lines: ['一', '二', '三'].map((label, i) => ({ label, at: i * 1820 })), runs: 'downward' },
  levels: [{ label: '1F', height: 450 }],
  unit: 'mm',
};
/** A sill of two bays with a post on it, and a piece without a place. */
const SCHEDULE = [
  '番付,種類,始点,終点,階,下端,上端,断面',
  'い通り土台,土台,い一,い三,1F,-60,,120角',
  'い一,柱,い一,,1F,,3250,120角',
  '火打,火打,,,,,,',
].join('\n');
const REGION = { shape: 'rectangle', x: 0.05, y: 0.1, w: 0.4, h: 0.6 };
/** Over the sill of the first bay: none of its posts are higher than the sheets. */
const SHEETS = { shape: 'wall', family: 'first', line: 'い', from: '一', to: '二', bottom: 300, top: 600 };
const ZONE = { ...SHEETS, face: 'both', over: 'over-posts' };
const JAPAN = (text: string) => new Date(`${text}+09:00`).toISOString();
let pictures = 9000;

describeOverEitherDatabase('temporary protection, over HTTP', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let owner: Client;
  let house: HouseView;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    owner = server.owner;
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });
  beforeEach(async () => {
    house = await newHouse(owner, '谷の舟小屋');
    await owner.put(`/houses/${house.id}/grid`, GRID);
    await owner.raw('POST', `/houses/${house.id}/schedule?fileName=frame.csv`, {
      body: SCHEDULE,
      headers: { 'content-type': 'text/csv' },
    });
    await owner.post(`/houses/${house.id}/coverings`, {
      ...{ id: randomUUID(), name: 'Floor', kind: 'floor', zone: null, plannedDay: '2026-05-01' },
      hides: ['い通り土台', '火打'].map((mark) => ({ mark, least: 'raised' })),
    });
  });

  const lay = (more: object = {}, id: string = randomUUID()) =>
    owner.post<ProtectionView>(`/houses/${house.id}/protections`, {
      ...{ id, name: 'North sill', what: 'sheet, boards', hides: ['い通り土台'] },
      ...{ laidAt: JAPAN('2026-04-04T08:00:00'), ...more },
    });
  const lift = (id: string, time: string | null, note = '') =>
    owner.post<ProtectionView>(`/protections/${id}/lift`, { liftedAt: time && JAPAN(time), note });
  const takeBack = (address: string) =>
    owner.delete<ProtectionView>(`${address}?reason=${encodeURIComponent('the other side')}`);
  const show = async (mark: string, time: string, stretch: [string, string] | null = null) => {
    const bytes = await makeSquares(pictures++, takenAt(time));
    const { results } = await owner.upload<{ results: UploadOutcome[] }>(house.id, [
      { name: 'a.jpg', bytes },
    ]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error('refused');
    await owner.post(`/photos/${outcome.photo.id}/tags`, {
      ...{ id: randomUUID(), mark, stage: 'raised', region: REGION },
      stretch: stretch && { from: stretch[0], to: stretch[1] },
    });
  };
  const line = async (mark: string) => {
    const report = await owner.get<ClosingReportView>(`/houses/${house.id}/closing-report`);
    const lines = report.days.flatMap(({ coverings }) => coverings.flatMap((one) => one.lines));
    return lines.find((one) => one.mark === mark);
  };
  const refusal = async (work: Promise<unknown>) => {
    const error = await work.then(
      () => undefined,
      (thrown: unknown) => thrown,
    );
    if (!(error instanceof HttpProblem)) throw new Error('not refused');
    return `${error.status} ${error.problem.code}`;
  };

  it('a photo taken under the sheets is no record, one taken once they are lifted is', async () => {
    const { id } = await lay();
    await show('い通り土台', '2026-04-05T09:30:00');
    expect(await line('い通り土台')).toMatchObject({
      ...{ state: 'gap', nearestMiss: { reasons: ['under-protection'] } },
      liesUnder: { id, name: 'North sill', since: '2026-04-03T23:00:00.000Z' },
    });
    await lift(id, '2026-04-06T17:00:00');
    expect(await line('い通り土台')).toMatchObject({
      ...{ state: 'gap', nearestMiss: { reasons: ['under-protection'] }, liesUnder: null },
    });
    await show('い通り土台', '2026-04-07T09:30:00');
    expect(await line('い通り土台')).toMatchObject({ state: 'on-record', nearestMiss: null });
    const csv = await owner.raw('GET', `/houses/${house.id}/closing-report?format=csv`);
    expect(await csv.text()).not.toContain('lies under protection');
    // A region in which sheets are seen is no contradiction.
    const { findings } = await owner.get<FindingsView>(`/houses/${house.id}/findings`);
    expect(findings).toEqual([]);
  });

  it('of what lies bare beside it, a photo is a record', async () => {
    const sheets = await lay({ zone: ZONE, hides: [] });
    // Whatever the kind: the foot of the post lies under it too.
    expect(sheets.hides).toEqual([
      { mark: 'い一', stretch: { from: 0, to: 150 }, byZone: true },
      { mark: 'い通り土台', stretch: { from: 0, to: 1820 }, byZone: true },
    ]);
    await show('い通り土台', '2026-04-05T09:30:00');
    const part = { from: 0, to: 1820, fromMark: '一', toMark: '二' };
    expect(await line('い通り土台')).toMatchObject({
      ...{ state: 'gap', missing: [part], nearestMiss: { reasons: ['part-only'] } },
      liesUnder: { id: sheets.id },
    });
    await show('い通り土台', '2026-04-05T10:30:00', ['一', '二']);
    expect((await line('い通り土台'))?.missing).toEqual([part]);
    await show('い通り土台', '2026-04-03T10:30:00', ['一', '二']);
    expect(await line('い通り土台')).toMatchObject({ state: 'on-record', missing: [] });
  });

  it('follows the grid, and the schedule', async () => {
    const { id } = await lay({ zone: ZONE, hides: [], except: ['い一'] });
    const over = async () => {
      const list = await owner.get<{ protections: ProtectionView[] }>(`/houses/${house.id}/protections`);
      return list.protections.find((one) => one.id === id)?.hides.map(({ mark, stretch }) => [mark, stretch]);
    };
    expect(await over()).toEqual([['い通り土台', { from: 0, to: 1820 }]]);
    const lines = ['一', '二', '三'].map((label, i) => ({ label, at: i * 910 }));
    await owner.put(`/houses/${house.id}/grid`, { ...GRID, second: { ...GRID.second, lines } });
    expect(await over()).toEqual([['い通り土台', { from: 0, to: 910 }]]);
    const moved = { from: 'い二', to: 'い三', level: '1F', base: -60, top: null, width: 120, depth: 120 };
    await owner.put(`/houses/${house.id}/members/${encodeURIComponent('い通り土台')}`, {
      ...{ kind: '土台', setOut: moved },
    });
    expect(await over()).toEqual([]);
  });

  it('keeps a member over which it lies: it is retired, not removed', async () => {
    await lay({ hides: ['い一'] });
    await owner.delete(`/houses/${house.id}/members/${encodeURIComponent('い一')}`);
    const { member } = await owner.get<MemberHistoryView>(
      `/houses/${house.id}/members/${encodeURIComponent('い一')}`,
    );
    expect(member.retired).toBe(true);
  });

  it('a lifting is taken back, and what never lay there is withdrawn; both stay in the ledger', async () => {
    const { id } = await lay({ zone: ZONE, hides: [] });
    await show('い通り土台', '2026-04-05T09:30:00');
    await lift(id, '2026-04-04T12:00:00', 'rain is over');
    expect((await line('い通り土台'))?.state).toBe('on-record');
    const lying = await takeBack(`/protections/${id}/lift`);
    expect(lying.lifted).toBeNull();
    expect((await line('い通り土台'))?.state).toBe('gap');
    const gone = await takeBack(`/protections/${id}`);
    expect(gone.withdrawn?.reason).toBe('the other side');
    expect((await line('い通り土台'))?.state).toBe('on-record');
    const list = await owner.get<{ protections: ProtectionView[] }>(`/houses/${house.id}/protections`);
    expect(list.protections).toEqual([]);
    const history = await owner.get<MemberHistoryView>(
      `/houses/${house.id}/members/${encodeURIComponent('い通り土台')}`,
    );
    expect(history.protections).toEqual([]);
    const kinds = history.statements.map(({ kind }) => kind).filter((kind) => kind.startsWith('protection'));
    const said = ['laid', 'lifted', 'lifting-withdrawn', 'withdrawn'].map((word) => `protection.${word}`);
    expect([...kinds].sort()).toEqual(said.sort());
  });

  it('says the same twice as once, and refuses what cannot be', async () => {
    const id = randomUUID();
    const first = await lay({ laidAt: null }, id);
    expect(await lay({ laidAt: null }, id)).toEqual(first);
    expect(await refusal(lay({ laidAt: null, name: 'South sill' }, id))).toBe(
      '409 id-used-for-something-else',
    );
    expect(await refusal(lay({ hides: ['い九'] }))).toBe('422 unknown-marks');
    expect(await refusal(lay({ hides: ['い一', 'い一'] }))).toBe('400 invalid-request');
    expect(await refusal(lay({ zone: { ...ZONE, line: 'と' } }))).toBe('422 zone-impossible');
    expect(await refusal(lay({ liftingDay: '2026-04-01' }))).toBe('422 protection-time-impossible');
    expect(await refusal(lay({ laidAt: '2126-04-04T00:00:00.000Z' }))).toBe('422 protection-time-impossible');
    const { id: sheets } = await lay();
    expect(await refusal(takeBack(`/protections/${sheets}/lift`))).toBe('409 protection-not-lifted');
    expect(await refusal(lift(sheets, '2026-04-03T12:00:00'))).toBe('422 protection-time-impossible');
    const lifted = await lift(sheets, '2026-04-06T12:00:00');
    expect(await lift(sheets, '2026-04-06T12:00:00')).toEqual(lifted);
    expect(await refusal(lift(sheets, '2026-04-07T12:00:00'))).toBe('409 protection-lifted');
    const { name, what, zone, except, liftingDay, note } = lifted;
    const facts = { name, what, zone, except, liftingDay, note, hides: ['い通り土台'] };
    const change = (laidAt: string, more: object = {}) =>
      owner.put<ProtectionView>(`/protections/${sheets}`, { ...facts, laidAt: JAPAN(laidAt), ...more });
    expect(await refusal(change('2026-04-06T12:00:01'))).toBe('422 protection-time-impossible');
    expect(await change('2026-04-05T12:00:00', { what: 'felt' })).toMatchObject({
      ...{ what: 'felt', laidAt: JAPAN('2026-04-05T12:00:00'), lifted: { at: JAPAN('2026-04-06T12:00:00') } },
    });
    await takeBack(`/protections/${sheets}`);
    expect(await refusal(change('2026-04-05T12:00:00'))).toBe('409 protection-withdrawn');
    const { entries } = await owner.get<{ entries: LedgerEntryView[] }>(`/houses/${house.id}/ledger`);
    expect(entries.filter(({ kind }) => kind.startsWith('protection.'))).toHaveLength(5);
  });

  it('stands in the history and on the frame by its days, and is nobody’s elsewhere', async () => {
    const { id } = await lay({ laidAt: JAPAN('2026-04-04T23:30:00') });
    await lift(id, '2026-04-06T17:00:00');
    const history = await owner.get<MemberHistoryView>(
      `/houses/${house.id}/members/${encodeURIComponent('い通り土台')}`,
    );
    expect(history.protections).toMatchObject([{ id, what: 'sheet, boards', stretch: null }]);
    const frame = await owner.get<FrameView>(`/houses/${house.id}/frame`);
    expect(frame.protections).toEqual([
      {
        ...{ id, name: 'North sill', laidDay: '2026-04-04', liftedDay: '2026-04-06' },
        hides: [{ mark: 'い通り土台', stretch: null }],
      },
    ]);
    const other = await newHouse(owner, '別の家');
    const stranger = await server.join(other.id, `stranger-${randomUUID()}@example.org`);
    for (const [method, address] of [
      ['GET', `/houses/${house.id}/protections`],
      ['POST', `/protections/${id}/lift`],
      ['DELETE', `/protections/${id}?reason=no`],
    ] as const)
      expect((await stranger.raw(method, address)).status).toBe(404);
  });
});
