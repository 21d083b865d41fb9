import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import type { FindingsView } from '#domain/contract/findings';
import type { FrameView } from '#domain/contract/frame-views';
import type { JournalView } from '#domain/contract/journal-views';
import type { ClosingReportView } from '#domain/contract/report-views';
import type { SchedulePreviewView } from '#domain/contract/schedule-views';
import type { CoveringView, HouseView, MemberHistoryView, UploadOutcome } from '#domain/contract/views';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { HttpProblem, newHouse, startServer, type Client, type TestServer } from '../support/server.ts';

const grid = (bay = 1820) => ({
  first: { lines: ['い', 'ろ'].map((label, i) => ({ label, at: i * bay })), runs: 'leftward' },
  second: { lines: ['一', '二', '三', '四'].map((label, i) => ({ label, at: i * bay })), runs: 'downward' },
  levels: [
    { label: '1F', height: 450 },
    { label: '軒', height: 3250 },
  ],
  unit: 'mm',
});

/** A wall of three bays: posts, a rail through all of them, sill and plate, and a rail that crosses. */
const SCHEDULE = [
  '番付,種類,始点,終点,階,下端,上端,断面',
  'い一,柱,い一,,1F,,,120角',
  'い二,柱,い二,,1F,,,120角',
  'い三,柱,い三,,1F,,,120角',
  'い四,柱,い四,,1F,,,120角',
  'い通り貫,貫,い-1,い-4,1F,1350,,15×105',
  'い通り土台,土台,い一,い四,1F,-60,,120角',
  'い通り桁,桁,い一,い四,1F,2800,,120×180',
  '一通り貫,貫,い一,ろ一,1F,1350,,15×105',
  '西の小舞,小舞,,,,,,',
  '迷い柱,柱,い九,,1F,,,',
  '逆さ柱,柱,い二,,1F,900,300,',
].join('\n');
const REGION = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };
const WALL = { shape: 'wall', family: 'first', line: 'い', bottom: 450, top: 3250, face: 'both' };
let pictures = 4000;

describeOverEitherDatabase('the frame in space, over HTTP', (make) => {
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
  const sendSchedule = async <T>(query = '', body = SCHEDULE): Promise<T> => {
    const response = await owner.raw('POST', `/houses/${house.id}/schedule?fileName=frame.csv${query}`, {
      body,
      headers: { 'content-type': 'text/csv' },
    });
    return (await response.json()) as T;
  };
  beforeEach(async () => {
    house = await newHouse(owner, '谷の舟小屋');
    await owner.put(`/houses/${house.id}/grid`, grid());
    await sendSchedule();
  });

  const plan = (name: string, zone: object | null, more: object = {}) =>
    owner.post<CoveringView>(`/houses/${house.id}/coverings`, {
      ...{ id: randomUUID(), name, kind: 'plaster', zone, hides: [], plannedDay: '2026-05-01', ...more },
    });
  const west = () => plan('West', { ...WALL, from: '一', to: '三', over: 'between-posts' });
  const south = () => plan('South', { ...WALL, from: '三', to: '四', over: 'over-posts' });
  const show = async (mark: string, day: string, stretch: [string, string] | null) => {
    const bytes = await makeJpeg(pictures++, takenAt(`${day}T09:30:00`));
    const { results } = await owner.upload<{ results: UploadOutcome[] }>(house.id, [
      { name: 'a.jpg', bytes },
    ]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error('refused');
    await owner.post(`/photos/${outcome.photo.id}/tags`, {
      ...{ id: randomUUID(), mark, stage: 'pegged', region: REGION },
      stretch: stretch && { from: stretch[0], to: stretch[1] },
    });
  };
  const lines = async (name: string) => {
    const report = await owner.get<ClosingReportView>(`/houses/${house.id}/closing-report`);
    const covering = report.days.flatMap(({ coverings }) => coverings).find((one) => one.name === name);
    return new Map(covering?.lines.map((line) => [line.mark.toString(), line]));
  };
  const hidden = ({ hides }: CoveringView) =>
    hides.map(({ mark, stretch }) => [mark, stretch && [stretch.from, stretch.to]]);

  it('imports members with their places, and says which cannot be, row by row', async () => {
    const preview = await sendSchedule<SchedulePreviewView>('&preview=1');
    expect(preview).toMatchObject({ problems: [], unchanged: 11, lacksGrid: false });
    const frame = await owner.get<FrameView>(`/houses/${house.id}/frame`);
    const member = (mark: string) => frame.members.find((one) => one.mark === mark);
    expect(member('い通り貫')?.axis).toMatchObject({
      start: { x: 0, y: 0, z: 1800 },
      end: { x: 0, y: 5460, z: 1800 },
      ...{ length: 5460, width: 15, depth: 105, runs: 'level' },
    });
    // From its level to the next: common practice.
    expect(member('い二')?.axis).toMatchObject({ start: { z: 450 }, end: { z: 3250 }, runs: 'upright' });
    expect(member('迷い柱')).toMatchObject({
      axis: null,
      problem: { reason: 'unknown-mark', field: 'from' },
    });
    expect(member('逆さ柱')).toMatchObject({ axis: null, problem: { reason: 'base-above-top' } });
    expect(member('西の小舞')).toMatchObject({ axis: null, problem: null });
    const other = await newHouse(owner, '別の家');
    await owner.put(`/houses/${other.id}/grid`, grid());
    house = other;
    const first = await sendSchedule<SchedulePreviewView>('&preview=1');
    expect(first.outOfFrame).toMatchObject([
      { line: 11, mark: '迷い柱', reason: 'unknown-mark', field: 'from', value: 'い九' },
      { line: 12, mark: '逆さ柱', reason: 'base-above-top', field: 'base', value: '900' },
    ]);
    house = await newHouse(owner, '通り芯のない家');
    expect(await sendSchedule<SchedulePreviewView>('&preview=1')).toMatchObject({
      ...{ outOfFrame: [], lacksGrid: true },
    });
  });

  it('says of which level members underside and top are no faces, and lays them level', async () => {
    const rows = [
      '番付,種類,始点,終点,階,下端,上端,断面',
      'ろ通り梁,梁,ろ一,ろ四,1F,2500,2800,120×300',
      '東の梁,梁,い一,い四,1F,0,1820,120×300',
      '東の貫,貫,い一,い四,1F,0,1820,',
      'ろ三,柱,ろ三,,1F,0,2500,120角',
    ].join('\n');
    const { doubtfulHeights, outOfFrame } = await sendSchedule<SchedulePreviewView>('&preview=1', rows);
    expect(outOfFrame).toEqual([]);
    expect(doubtfulHeights).toEqual([
      { line: 3, mark: '東の梁', underside: 0, top: 1820, depth: 300 },
      { line: 4, mark: '東の貫', underside: 0, top: 1820, depth: null },
    ]);
    await sendSchedule('', rows);
    const { members } = await owner.get<FrameView>(`/houses/${house.id}/frame`);
    const heights = ['ろ通り梁', '東の貫', 'ろ三'].map((mark) => {
      const axis = members.find((one) => one.mark === mark)?.axis;
      return [axis?.start.z, axis?.end.z];
    });
    expect(heights).toEqual([
      [3100, 3100],
      [1360, 1360],
      [450, 2950],
    ]);
  });

  it('works out what a zone hides, bay by bay, by kind and form', async () => {
    // 真壁 leaves posts and plates in sight, 大壁 hides them; what crosses the wall is not in it. Common practice.
    expect(hidden(await west())).toEqual([['い通り貫', [0, 3640]]]);
    const covered = await south();
    expect(hidden(covered)).toEqual([
      ['い三', [0, 2800]],
      ['い四', [0, 2800]],
      ['い通り桁', [3640, 5460]],
      ['い通り貫', [3640, 5460]],
    ]);
    const { id, hold: _, closed: __, changedAt: ___, ...facts } = covered;
    const changed = await owner.put<CoveringView>(`/coverings/${id}`, {
      ...{ ...facts, hides: [{ mark: '西の小舞', least: 'lath-on' }], except: ['い三'] },
    });
    expect(hidden(changed).map(([mark]) => mark)).toEqual(['西の小舞', 'い四', 'い通り桁', 'い通り貫']);
  });

  it('wants each hidden stretch on record, and names what is missing', async () => {
    await west();
    await south();
    await show('い通り貫', '2026-04-03', ['一', '二']);
    expect((await lines('West')).get('い通り貫')).toMatchObject({
      state: 'gap',
      lengthMm: 3640,
      missing: [{ from: 1820, to: 3640, fromMark: '二', toMark: '三' }],
      nearestMiss: { reasons: ['part-only'] },
    });
    expect((await lines('South')).get('い通り貫')).toMatchObject({
      ...{ state: 'gap', missing: [], nearestMiss: { reasons: ['other-stretch'] } },
    });
    await show('い通り貫', '2026-04-05', ['い二', 'い三']);
    expect((await lines('West')).get('い通り貫')).toMatchObject({ state: 'on-record', missing: [] });
    const frame = await owner.get<FrameView>(`/houses/${house.id}/frame`);
    expect(frame.coverings.find(({ name }) => name === 'West')?.hides).toMatchObject([
      ...[{ mark: 'い通り貫', missing: [], state: 'on-record', onRecordSince: '2026-04-05' }],
    ]);
    expect(frame.members.find(({ mark }) => mark === 'い通り貫')?.seen).toEqual([
      ...[{ day: '2026-04-03', stage: 'pegged' }],
    ]);
    // A tag without a stretch shows all that is visible.
    await show('い三', '2026-04-05', null);
    expect((await lines('South')).get('い三')).toMatchObject({ state: 'on-record' });
  });

  it('follows grid, members and requirements, and leaves the past readable', async () => {
    const { id } = await west();
    await show('い通り貫', '2026-04-03', null);
    await owner.put(`/houses/${house.id}/requirements`, {
      rows: [
        { form: 'plaster-between-posts', kind: 'nuki', hides: true, least: 'raised', views: 2 },
        { form: 'plaster-between-posts', kind: 'hashira', hides: true, least: null, views: 1 },
      ],
    });
    expect((await lines('West')).get('い通り貫')).toMatchObject({
      ...{ state: 'gap', views: 2, least: 'raised', nearestMiss: { reasons: ['too-few-views'] } },
    });
    const read = async () => {
      const { coverings } = await owner.get<{ coverings: CoveringView[] }>(`/houses/${house.id}/coverings`);
      return hidden(coverings.find((one) => one.id === id) as CoveringView);
    };
    expect((await read()).map(([mark]) => mark)).toEqual(['い一', 'い三', 'い二', 'い通り貫']);
    await owner.put(`/houses/${house.id}/grid`, grid(910));
    expect((await read()).at(-1)).toEqual(['い通り貫', [0, 1820]]);
    const moved = { kind: '貫', setOut: { from: 'い二', to: 'い四', level: '1F', base: 1350, top: null } };
    await owner.put(`/houses/${house.id}/members/${encodeURIComponent('い通り貫')}`, {
      ...{ ...moved, setOut: { ...moved.setOut, width: null, depth: null } },
    });
    expect((await read()).at(-1)).toEqual(['い通り貫', [0, 910]]);
  });

  it('asks of what is listed whole that each part is shown, and believes no part that is gone', async () => {
    const hides = [{ mark: 'い通り貫', least: 'pegged' }];
    await plan('Listed', null, { hides });
    await show('い通り貫', '2026-04-03', ['一', '三']);
    expect((await lines('Listed')).get('い通り貫')).toMatchObject({
      ...{ state: 'gap', missing: [{ from: 3640, to: 5460, fromMark: '三', toMark: '四' }] },
    });
    await show('い通り貫', '2026-04-04', ['三', '四']);
    expect((await lines('Listed')).get('い通り貫')).toMatchObject({ state: 'on-record' });
    const second = ['甲', '乙', '丙', '丁'].map((label, i) => ({ label, at: i * 1820 }));
    await owner.put(`/houses/${house.id}/grid`, { ...grid(), second: { lines: second, runs: 'downward' } });
    const setOut = { from: 'い甲', to: 'い丁', level: '1F', base: 1350, top: null, width: null, depth: null };
    const address = `/houses/${house.id}/members/${encodeURIComponent('い通り貫')}`;
    await owner.put(address, { kind: '貫', setOut });
    expect((await lines('Listed')).get('い通り貫')).toMatchObject({
      ...{ state: 'gap', nearestMiss: { reasons: ['other-stretch'] } },
    });
  });

  it('lets a member go that only lies in a zone to come, and keeps one that was closed over', async () => {
    const { id } = await west();
    const away = () =>
      owner.delete<{ outcome: string }>(`/houses/${house.id}/members/${encodeURIComponent('い通り貫')}`);
    expect((await away()).outcome).toBe('removed');
    await sendSchedule();
    await owner.post(`/coverings/${id}/close`, { withoutRelease: 'Nobody inspects this house.' });
    expect((await away()).outcome).toBe('retired');
    expect((await lines('West')).get('い通り貫')).toMatchObject({ state: 'retired' });
  });

  it('keeps a wall open for photos until both of its faces are covered, and says so everywhere', async () => {
    const coat = (name: string, face: string, plannedDay: string) =>
      plan(name, { ...WALL, from: '一', to: '三', over: 'between-posts', face }, { plannedDay });
    const close = (id: string, day: string) =>
      owner.post(`/coverings/${id}/close`, {
        withoutRelease: 'Nobody inspects this house.',
        closedAt: `${day}T03:00:00.000Z`,
      });
    const rail = async (name: string) => (await lines(name)).get('い通り貫');
    const found = async () => {
      const { findings } = await owner.get<FindingsView>(`/houses/${house.id}/findings`);
      const others = findings.filter(({ kind }) => kind !== 'closed-without-release');
      return others.map(({ kind, covering }) => [kind, covering]).sort();
    };
    const inFrame = async (name: string) => {
      const frame = await owner.get<FrameView>(`/houses/${house.id}/frame`);
      return frame.coverings.find((one) => one.name === name)?.hides[0];
    };
    const rough = await coat('Rough coat', 'lower', '2026-04-10');
    const back = await coat('Back coat', 'higher', '2026-05-12');
    const top = await coat('Top coat', 'both', '2026-06-01');
    expect(await rail('Rough coat')).toMatchObject({ state: 'gap', otherFace: { closedAt: null } });

    await close(rough.id, '2026-04-10');
    expect(await rail('Rough coat')).toMatchObject({
      ...{
        state: 'gap',
        hiddenAt: null,
        otherFace: { towards: 'ろ', closedAt: null, plannedDay: '2026-05-12' },
      },
    });
    expect(await inFrame('Rough coat')).toMatchObject({ state: 'gap', hiddenDay: null });
    expect(await found()).toEqual([]);
    // From behind, after the rough coat: a record, and nothing to be looked at.
    await show('い通り貫', '2026-04-15', ['一', '二']);
    expect(await rail('Rough coat')).toMatchObject({
      ...{ state: 'gap', missing: [{ from: 1820, to: 3640 }], nearestMiss: { reasons: ['part-only'] } },
    });
    expect(await found()).toEqual([]);
    const history = async () =>
      (await owner.get<MemberHistoryView>(`/houses/${house.id}/members/${encodeURIComponent('い通り貫')}`))
        .coverings;
    expect((await history()).map(({ name, hiddenAt }) => [name, hiddenAt])).toEqual([
      ...[
        ['Rough coat', null],
        ['Back coat', null],
        ['Top coat', null],
      ],
    ]);

    await close(back.id, '2026-04-20');
    for (const name of ['Rough coat', 'Back coat'])
      expect(await rail(name)).toMatchObject({ state: 'lost', hiddenAt: '2026-04-20T03:00:00.000Z' });
    expect(await inFrame('Rough coat')).toMatchObject({ state: 'lost', hiddenDay: '2026-04-20' });
    expect(await found()).toEqual(
      [
        ['closed-with-gaps', rough.id],
        ['closed-with-gaps', back.id],
      ].sort(),
    );
    // Nobody is sent to photograph for the top coat what the back coat has hidden.
    expect(await rail('Top coat')).toMatchObject({
      ...{ state: 'hidden-before', before: { covering: back.id, name: 'Back coat' }, nearestMiss: null },
    });
    const { days } = await owner.get<ClosingReportView>(`/houses/${house.id}/closing-report`);
    const report = days.flatMap(({ coverings }) => coverings).find(({ name }) => name === 'Top coat');
    expect(report).toMatchObject({
      ...{ counts: { hidden: 0, gaps: 0, lost: 0, before: 1 }, layers: [rough.id, back.id] },
    });
    const { next } = await owner.get<JournalView>(`/houses/${house.id}/journal`);
    expect([next.gaps, next.hidesNothing.coverings]).toEqual([[], []]);
    expect(next.complete.coverings.map(({ name }) => name)).toEqual(['Top coat']);
    expect((await history()).map(({ hiddenAt }) => hiddenAt?.slice(0, 10))).toEqual([
      ...['2026-04-20', '2026-04-20', '2026-04-20'],
    ]);

    // A photo from between the two closings that turns up later completes the record of all three.
    await show('い通り貫', '2026-04-18', ['二', '三']);
    for (const name of ['Rough coat', 'Back coat', 'Top coat'])
      expect(await rail(name)).toMatchObject({ state: 'on-record' });
    expect(await found()).toEqual([]);
    await show('い通り貫', '2026-04-25', ['一', '三']);
    expect((await found()).map(([kind]) => kind)).toEqual(['shown-after-closing', 'shown-after-closing']);

    await owner.post(`/coverings/${back.id}/reopen`, { reason: 'opened up again' });
    expect(await found()).toEqual([]);
    expect(await rail('Top coat')).toMatchObject({ state: 'on-record', before: null, hiddenAt: null });
    expect(top.closed).toBeNull();
  });

  it('refuses what is no grid and no zone with a sentence', async () => {
    const problem = async (request: Promise<unknown>) =>
      request.then(
        () => null,
        (error: unknown) => (error instanceof HttpProblem ? error.problem.code : error),
      );
    const twice = {
      ...grid(),
      levels: [
        { label: '1F', height: 450 },
        { label: '１Ｆ', height: 900 },
      ],
    };
    expect(await problem(owner.put(`/houses/${house.id}/grid`, twice))).toBe('grid-impossible');
    const zone = { ...WALL, from: '一', to: '九', over: 'over-posts' };
    expect(await problem(plan('Nowhere', zone))).toBe('zone-impossible');
    expect(await problem(plan('Flat', { ...zone, to: '二', top: 450 }))).toBe('zone-impossible');
    expect(
      await problem(
        owner.put(`/houses/${house.id}/requirements`, {
          rows: [{ form: 'floor', kind: 'no-such', hides: true, least: null, views: 1 }],
        }),
      ),
    ).toBe('unknown-kinds');
    house = await newHouse(owner, '通り芯のない家');
    expect(await problem(plan('Nowhere', { ...zone, to: '二' }))).toBe('zone-without-grid');
  });
});
