import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import type { ClosingReportView } from '#domain/contract/report-views';
import type {
  CoveringView,
  DayView,
  HouseView,
  LedgerEntryView,
  MemberHistoryView,
  MemberView,
  PhotoDetailView,
  TagView,
  UploadOutcome,
} from '#domain/contract/views';
import type { ScheduleImportView, SchedulePreviewView } from '#domain/contract/schedule-views';
import type { Stage } from '#domain/frame/stage';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { makeSquares, takenAt } from '../support/pictures.ts';
import {
  HttpProblem,
  newHouse,
  startServer,
  type Client,
  type TestServer,
  codeOf,
} from '../support/server.ts';

const SCHEDULE = [
  '番付,種類,場所,材',
  'い一,柱,一階,檜',
  'い二,柱,一階,檜',
  'は通り貫,貫,一階,杉',
  'ろ五,柱,一階,檜',
  '',
].join('\r\n');
const CSV = { 'content-type': 'text/csv' };
const REGION = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };
const mark = (text: string) => encodeURIComponent(text);
let pictures = 100;

describeOverBothDatabases('the job of a carpenter, over HTTP', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let owner: Client;
  let house: HouseView;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    owner = server.owner;
  });
  beforeEach(async () => {
    house = await newHouse(owner, '谷の舟小屋');
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  const sendSchedule = async <T>(text: string, query = ''): Promise<T> => {
    const response = await owner.raw('POST', `/houses/${house.id}/schedule?fileName=frame.csv${query}`, {
      body: text,
      headers: CSV,
    });
    const value: unknown = await response.json();
    if (!response.ok) throw new HttpProblem(response.status, value as never);
    return value as T;
  };
  const importSchedule = () => sendSchedule<ScheduleImportView>(SCHEDULE);
  const addPhoto = async (wallTime: string | null, client = owner): Promise<string> => {
    const bytes = await makeSquares(pictures++, wallTime === null ? {} : takenAt(wallTime));
    const { results } = await client.upload<{ results: UploadOutcome[] }>(house.id, [
      { name: 'site.jpg', bytes },
    ]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error('refused');
    return outcome.photo.id;
  };
  const tag = (photo: string, m: string, stage: Stage, client = owner) =>
    client.post<TagView>(`/photos/${photo}/tags`, { id: randomUUID(), mark: m, stage, region: REGION });
  const plan = (facts: object) =>
    owner.post<CoveringView>(`/houses/${house.id}/coverings`, {
      id: randomUUID(),
      name: 'Rough coat',
      kind: 'plaster',
      ...facts,
    });
  const report = () => owner.get<ClosingReportView>(`/houses/${house.id}/closing-report`);
  it('shows a schedule before it is imported, and imports exactly what was shown', async () => {
    const preview = await sendSchedule<SchedulePreviewView>(SCHEDULE, '&preview=1');
    expect(preview.columns.map((column) => column.field)).toEqual(['mark', 'kind', 'place', null]);
    expect(preview.added.map((member) => member.mark)).toEqual(['い一', 'い二', 'は通り貫', 'ろ五']);
    expect((await owner.get<{ members: MemberView[] }>(`/houses/${house.id}/members`)).members).toEqual([]);

    expect(await sendSchedule(SCHEDULE, `&agree=${preview.digest}`)).toMatchObject({
      added: 4,
      changed: 0,
      retired: 0,
    });
    const { members } = await owner.get<{ members: MemberView[] }>(`/houses/${house.id}/members`);
    expect(members.map((member) => [member.mark, member.kind, member.other])).toContainEqual([
      'い一',
      '柱',
      { 材: '檜' },
    ]);
    // The same file again changes nothing and says nothing.
    expect(await sendSchedule(SCHEDULE)).toMatchObject({ added: 0, unchanged: 4, seq: null });
    expect(await codeOf(sendSchedule(SCHEDULE.replace('い二', 'い三'), `&agree=${preview.digest}`))).toBe(
      'schedule-changed-since-preview',
    );
  });

  it('names every bad row, imports none of the file unless told to skip them', async () => {
    const bad = `${SCHEDULE}い一,柱,,\r\n,貫,,\r\n`;
    const { problems } = await sendSchedule<SchedulePreviewView>(bad, '&preview=1');
    expect(problems.map(({ line, reason, firstLine }) => [line, reason, firstLine])).toEqual([
      [6, 'mark-repeated', 2],
      [7, 'mark-missing', null],
    ]);
    expect(await codeOf(sendSchedule(bad))).toBe('schedule-has-bad-rows');
    expect(await sendSchedule(bad, '&badRows=skip')).toMatchObject({ added: 4, badRows: 2 });
  });

  it('retires what a later schedule no longer names only when asked, keeps its history, and takes it back', async () => {
    await importSchedule();
    await tag(await addPhoto('2026-04-01T09:00:00'), 'い二', 'raised');
    const shorter = SCHEDULE.replace('い二,柱,一階,檜\r\n', '').replace('ろ五,柱,一階,檜\r\n', '');
    expect((await sendSchedule<SchedulePreviewView>(shorter, '&preview=1')).retired).toEqual([]);
    const preview = await sendSchedule<SchedulePreviewView>(shorter, '&preview=1&missing=retire');
    expect(preview.retired).toEqual([
      { mark: 'い二', tags: 1 },
      { mark: 'ろ五', tags: 0 },
    ]);
    await sendSchedule(shorter, '&missing=retire');
    const history = await owner.get<MemberHistoryView>(`/houses/${house.id}/members/${mark('い二')}`);
    expect([history.member.retired, history.sightings.length]).toEqual([true, 1]);
    expect(await sendSchedule(SCHEDULE)).toMatchObject({ changed: 2, added: 0 });
  });

  it('retires a member that is tagged and removes one that nothing names', async () => {
    await importSchedule();
    await tag(await addPhoto('2026-04-01T09:00:00'), 'い一', 'raised');
    expect(await owner.delete(`/houses/${house.id}/members/${mark('い一')}`)).toEqual({ outcome: 'retired' });
    expect(await owner.delete(`/houses/${house.id}/members/${mark('ろ五')}`)).toEqual({ outcome: 'removed' });
    expect(await codeOf(owner.get(`/houses/${house.id}/members/${mark('ろ五')}`))).toBe('not-found');
  });

  it('folds full-width marks into one and the same member', async () => {
    await importSchedule();
    const placed = await tag(await addPhoto('2026-04-01T09:00:00'), '　い一　', 'pegged');
    expect([placed.mark, placed.known]).toEqual(['い一', true]);
    expect((await tag(placed.photo, 'ﾇｷ１２', 'cut')).mark).toBe('ヌキ12');
  });

  it('reports what is on record, what is missing and how nearly, before and after the closing', async () => {
    await importSchedule();
    await tag(await addPhoto('2026-04-02T10:00:00'), 'い一', 'pegged');
    await tag(await addPhoto('2026-04-02T11:00:00'), 'い二', 'raised');
    await tag(await addPhoto(null), 'ろ五', 'pegged');
    const marks = ['い一', 'い二', 'は通り貫', 'ろ五'];
    const covering = await plan({
      plannedDay: '2026-04-20',
      hides: marks.map((m) => ({ mark: m, least: 'pegged' })),
    });

    const open = await report();
    expect(open.counts).toEqual({
      hidden: 4,
      onRecord: 1,
      firm: 1,
      gaps: 3,
      lost: 0,
      waived: 0,
      before: 0,
      retired: 0,
    });
    const misses = (r: ClosingReportView) =>
      Object.fromEntries(
        (r.days[0]?.coverings[0]?.lines ?? []).map((l) => [l.mark, l.nearestMiss?.reasons ?? l.state]),
      );
    expect(misses(open)).toEqual({
      い一: 'on-record',
      い二: ['before-stage'],
      は通り貫: ['no-photo'],
      ろ五: ['undated'],
    });

    // The rough coat went on at noon of 3 April; one photo is from the morning, one from the next day.
    await owner.post(`/coverings/${covering.id}/close`, {
      withoutRelease: 'Nobody inspects this house.',
      closedAt: '2026-04-03T03:00:00.000Z',
    });
    await tag(await addPhoto('2026-04-03T08:00:00'), 'い二', 'pegged');
    await tag(await addPhoto('2026-04-04T08:00:00'), 'は通り貫', 'pegged');
    const closed = await report();
    expect(closed.days[0]?.day).toBe('2026-04-03');
    expect(closed.counts).toEqual({
      hidden: 4,
      onRecord: 2,
      firm: 2,
      gaps: 0,
      lost: 2,
      waived: 0,
      before: 0,
      retired: 0,
    });
    expect(misses(closed)).toEqual({
      い一: 'on-record',
      い二: 'on-record',
      は通り貫: ['after-closing'],
      ろ五: ['undated'],
    });

    const csv = await owner.raw('GET', `/houses/${house.id}/closing-report?format=csv&lang=ja`);
    expect(csv.headers.get('content-type')).toContain('text/csv');
    expect(await csv.text()).toContain('は通り貫');
  });

  it('counts no photo whose date cannot be, says why, and counts it once the first day is put right', async () => {
    await importSchedule();
    await owner.patch(`/houses/${house.id}`, { firstDay: '2026-04-02' });
    await tag(await addPhoto('2026-04-01T10:00:00'), 'い一', 'pegged');
    await tag(await addPhoto('2079-04-01T10:00:00'), 'い二', 'pegged');
    const marks = ['い一', 'い二'];
    await plan({ hides: marks.map((m) => ({ mark: m, least: 'pegged' })) });
    const lines = async () => (await report()).days[0]?.coverings[0]?.lines ?? [];
    expect((await lines()).map((l) => [l.mark, l.state, l.nearestMiss?.reasons])).toEqual([
      ['い一', 'gap', ['before-first-day']],
      ['い二', 'gap', ['after-upload']],
    ]);
    const history = () => owner.get<MemberHistoryView>(`/houses/${house.id}/members/${mark('い一')}`);
    const early = await history();
    expect([early.member.stage, early.stages.map(({ by }) => by)]).toEqual([
      null,
      [null, null, null, null, null].slice(0, early.stages.length),
    ]);
    expect(early.sightings[0]?.capture).toMatchObject({ state: 'dated', flags: ['before-first-day'] });

    await owner.patch(`/houses/${house.id}`, { firstDay: '2026-04-01' });
    expect((await lines()).map((l) => [l.mark, l.state])).toEqual([
      ['い二', 'gap'],
      ['い一', 'on-record'],
    ]);
    expect((await history()).member.stage).toBe('pegged');
  });

  it('keeps in the history of a member what was replaced and withdrawn, and when it was closed over', async () => {
    await importSchedule();
    const photo = await addPhoto('2026-04-02T10:00:00');
    const first = await tag(photo, 'い一', 'pegged');
    const second = { id: randomUUID(), mark: 'い二', stage: 'raised', region: REGION };
    await owner.put(`/tags/${first.id}`, second);
    await owner.delete(`/tags/${second.id}?reason=${mark('wrong post')}`);
    const covering = await plan({ hides: [{ mark: 'い一', least: 'pegged' }] });
    await owner.post(`/coverings/${covering.id}/close`, {
      withoutRelease: 'Nobody inspects this house.',
      closedAt: null,
    });
    await owner.post(`/coverings/${covering.id}/reopen`, { reason: 'said too early' });
    const of = (m: string) => owner.get<MemberHistoryView>(`/houses/${house.id}/members/${mark(m)}`);
    const [one, two] = [await of('い一'), await of('い二')];
    expect(one.sightings.map(({ tag: seen }) => [seen.id, seen.state])).toEqual([[first.id, 'superseded']]);
    expect(two.sightings.map(({ tag: seen }) => [seen.state, seen.ended?.reason])).toEqual([
      ['withdrawn', 'wrong post'],
    ]);
    expect([...one.stages, ...two.stages].every(({ by, after }) => by === null && after === null)).toBe(true);
    expect(one.statements.map(({ kind }) => kind)).toEqual([
      'schedule.imported',
      'tag.placed',
      'tag.superseded',
      'covering.planned',
      'covering.closed',
      'covering.reopened',
    ]);
  });

  it('takes a withdrawn or superseded tag out of the count and keeps it on the photo', async () => {
    await importSchedule();
    await plan({ hides: [{ mark: 'い一', least: 'pegged' }] });
    const photo = await addPhoto('2026-04-02T10:00:00');
    const first = await tag(photo, 'い一', 'pegged');
    const second = await owner.put<TagView>(`/tags/${first.id}`, {
      id: randomUUID(),
      mark: 'い一',
      stage: 'raised',
      region: REGION,
    });
    expect((await report()).counts).toMatchObject({ onRecord: 0, gaps: 1 });
    // On a photo of its own: at two stages in one picture they would contradict each other.
    const later = await addPhoto('2026-04-02T11:00:00');
    const third = await tag(later, 'い一', 'pegged');
    expect((await report()).counts).toMatchObject({ onRecord: 1, gaps: 0 });
    await owner.delete(`/tags/${third.id}?reason=${mark('wrong post')}`);
    expect((await report()).counts).toMatchObject({ onRecord: 0, gaps: 1 });
    const tagsOf = async (id: string) => (await owner.get<PhotoDetailView>(`/photos/${id}`)).allTags;
    const allTags = [...(await tagsOf(photo)), ...(await tagsOf(later))];
    expect(allTags.map(({ id, state, supersedes }) => [id, state, supersedes])).toEqual([
      [first.id, 'superseded', null],
      [second.id, 'standing', first.id],
      [third.id, 'withdrawn', null],
    ]);
    expect(allTags[2]?.ended?.reason).toBe('wrong post');
    expect(await codeOf(owner.delete(`/tags/${first.id}`))).toBe('tag-superseded');
    expect(
      await codeOf(
        owner.put(`/tags/${third.id}`, { id: randomUUID(), mark: 'い一', stage: 'cut', region: REGION }),
      ),
    ).toBe('tag-withdrawn');
  });

  it('loses nothing of two people who work on one photo at once', async () => {
    const other = await server.join(house.id, `mate-${randomUUID()}@example.org`);
    const photo = await addPhoto('2026-04-02T10:00:00');
    const base = await tag(photo, 'い一', 'cut');
    const both = [owner, other].flatMap((client) =>
      Array.from({ length: 15 }, (_, i) => tag(photo, `い${i}`, 'raised', client)),
    );
    const changes = [owner, other].map((client) =>
      client.put<TagView>(`/tags/${base.id}`, {
        id: randomUUID(),
        mark: 'い一',
        stage: client === owner ? 'raised' : 'pegged',
        region: REGION,
      }),
    );
    await Promise.all([...both, ...changes]);
    const { allTags, tags } = await owner.get<PhotoDetailView>(`/photos/${photo}`);
    expect([allTags.length, tags]).toEqual([33, 32]);
    expect(
      allTags
        .filter((t) => t.supersedes === base.id)
        .map((t) => [t.state, t.stage])
        .sort(),
    ).toEqual([
      ['standing', 'pegged'],
      ['standing', 'raised'],
    ]);
    expect(new Set(allTags.map((t) => t.by?.name)).size).toBe(2);
  });

  it('repeats nothing when a client sends the same request again, and refuses an id with other content', async () => {
    await importSchedule();
    const photo = await addPhoto('2026-04-02T10:00:00');
    const body = { id: randomUUID(), mark: 'い一', stage: 'pegged', region: REGION };
    const answers = await Promise.all(
      Array.from({ length: 5 }, () => owner.post<TagView>(`/photos/${photo}/tags`, body)),
    );
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(await codeOf(owner.post(`/photos/${photo}/tags`, { ...body, stage: 'cut' }))).toBe(
      'id-used-for-something-else',
    );
    const covering = {
      id: randomUUID(),
      name: 'Floor',
      kind: 'floor',
      hides: [{ mark: 'い一', least: 'pegged' }],
    };
    await owner.post(`/houses/${house.id}/coverings`, covering);
    await owner.post(`/houses/${house.id}/coverings`, covering);
    await owner.post(`/coverings/${covering.id}/close`, { withoutRelease: 'Nobody inspects this house.' });
    await owner.post(`/coverings/${covering.id}/close`, { withoutRelease: 'Nobody inspects this house.' });
    const { entries } = await owner.get<{ entries: LedgerEntryView[] }>(`/houses/${house.id}/ledger`);
    const kinds = entries.map((entry) => entry.kind);
    for (const kind of ['tag.placed', 'covering.planned', 'covering.closed'])
      expect(
        kinds.filter((k) => k === kind),
        kind,
      ).toHaveLength(1);
    // Somebody else's tag cannot be had by its id through another house.
    const elsewhere = await newHouse(owner, 'Elsewhere');
    house = elsewhere;
    const foreign = await addPhoto('2026-04-02T10:00:00');
    expect(await codeOf(owner.post(`/photos/${foreign}/tags`, body))).toBe('id-used-for-something-else');
  });

  it('refuses a covering that cannot be: unknown marks, stages that its members never show, a future closing', async () => {
    await importSchedule();
    expect(await codeOf(plan({ hides: [{ mark: 'い九', least: 'cut' }] }))).toBe('unknown-marks');
    expect(await codeOf(plan({ hides: [{ mark: 'い一', least: 'plastered' }] }))).toBe('stage-outside-track');
    expect(
      await codeOf(
        plan({
          hides: [
            { mark: 'い一', least: 'cut' },
            { mark: 'い一', least: 'cut' },
          ],
        }),
      ),
    ).toBe('invalid-request');
    const covering = await plan({ hides: [{ mark: 'い一', least: 'raised' }] });
    expect(
      await codeOf(
        owner.post(`/coverings/${covering.id}/close`, {
          withoutRelease: 'Nobody inspects this house.',
          closedAt: '2099-01-01T00:00:00.000Z',
        }),
      ),
    ).toBe('closing-in-the-future');
    await owner.post(`/coverings/${covering.id}/close`, { withoutRelease: 'Nobody inspects this house.' });
    const change = { name: 'Other', kind: 'floor', hides: [] };
    expect(await codeOf(owner.put(`/coverings/${covering.id}`, change))).toBe('covering-closed');
    await owner.post(`/coverings/${covering.id}/reopen`, { reason: 'said of the wrong wall' });
    expect((await owner.put<CoveringView>(`/coverings/${covering.id}`, change)).name).toBe('Other');
    expect(await codeOf(owner.post(`/coverings/${covering.id}/reopen`, { reason: 'again' }))).toBe(
      'covering-not-closed',
    );
  });

  it('refuses a region that leaves the image', async () => {
    const photo = await addPhoto('2026-04-02T10:00:00');
    for (const region of [
      { shape: 'rectangle', x: 0.9, y: 0, w: 0.2, h: 0.1 },
      { shape: 'rectangle', x: -0.1, y: 0, w: 0.2, h: 0.1 },
      { shape: 'rectangle', x: 0.1, y: 0.1, w: 0, h: 0.1 },
      {
        shape: 'polygon',
        points: [
          [0, 0],
          [1, 1],
        ],
      },
      {
        shape: 'polygon',
        points: [
          [0, 0],
          [0.5, 0.5],
          [1, 1],
        ],
      },
      {
        shape: 'polygon',
        points: [
          [0, 0],
          [0.5, 1.2],
          [1, 0],
        ],
      },
    ])
      expect(
        await codeOf(
          owner.post(`/photos/${photo}/tags`, { id: randomUUID(), mark: 'い一', stage: 'cut', region }),
        ),
      ).toBe('invalid-request');
  });

  it('tells the history of a member: intervals, crops, coverings, who said what', async () => {
    await importSchedule();
    const early = await addPhoto('2026-04-01T09:00:00');
    const late = await addPhoto('2026-04-05T09:00:00');
    await tag(early, 'い一', 'raised');
    const { id } = await tag(late, 'い一', 'pegged');
    await plan({ name: 'North wall', hides: [{ mark: 'い一', least: 'pegged' }] });
    const history = await owner.get<MemberHistoryView>(`/houses/${house.id}/members/${mark('い一')}`);
    const pegged = history.stages.find((stage) => stage.stage === 'pegged');
    expect(pegged).toMatchObject({
      after: { instant: '2026-04-01T00:00:00.000Z', photo: early },
      by: { instant: '2026-04-05T00:00:00.000Z', photo: late, tag: id },
      contradicted: false,
    });
    expect(history.coverings.map((covering) => [covering.name, covering.least])).toEqual([
      ['North wall', 'pegged'],
    ]);
    expect(history.statements.map((statement) => statement.kind)).toEqual([
      'schedule.imported',
      'tag.placed',
      'tag.placed',
      'covering.planned',
    ]);
    const crop = await owner.raw('GET', (history.sightings[0]?.crop ?? '').replace('/api/v1', ''));
    expect([crop.status, crop.headers.get('content-type')]).toEqual([200, 'image/jpeg']);
  });

  it('keeps the journal of a day in the zone of the house', async () => {
    // 2 April 00:30 in Tokyo is still 1 April in UTC.
    const photo = await addPhoto('2026-04-02T00:30:00');
    await owner.put(`/houses/${house.id}/days/2026-04-02/note`, { text: '雨のち晴れ。' });
    await owner.put(`/houses/${house.id}/days/2026-04-02/note`, { text: '雨のち晴れ。貫を通した。' });
    const day = await owner.get<DayView>(`/houses/${house.id}/days/2026-04-02`);
    expect(day.photos.map((p) => p.id)).toEqual([photo]);
    expect(day.notes.map((note) => note.text)).toEqual(['雨のち晴れ。貫を通した。']);
    const { days } = await owner.get<{ days: { day: string; photos: number; notes: number }[] }>(
      `/houses/${house.id}/days`,
    );
    expect(days.find((d) => d.day === '2026-04-02')).toMatchObject({ photos: 1, notes: 1 });
    expect(days.some((d) => d.day === '2026-04-01')).toBe(false);
    expect(await codeOf(owner.get(`/houses/${house.id}/days/2026-02-30`))).toBe('not-found');
    const statements = await owner.get<{ entries: LedgerEntryView[] }>(`/houses/${house.id}/ledger?from=2`);
    expect(statements.entries.filter((entry) => entry.kind === 'note.written')).toHaveLength(2);
  });

  it('dates every photo again when the house declares another zone', async () => {
    const bytes = await makeSquares(pictures++, { DateTimeOriginal: '2026:04:02 00:30:00' });
    const { results } = await owner.upload<{ results: UploadOutcome[] }>(house.id, [
      { name: 'no-offset.jpg', bytes },
    ]);
    const photo = results[0]?.outcome === 'added' ? results[0].photo : undefined;
    expect(photo?.capture).toMatchObject({ source: 'house-zone', instant: '2026-04-01T15:30:00.000Z' });
    await owner.patch(`/houses/${house.id}`, { zone: 'Europe/Oslo' });
    const again = await owner.get<PhotoDetailView>(`/photos/${photo?.id}`);
    expect(again.capture).toMatchObject({
      source: 'house-zone',
      instant: '2026-04-01T22:30:00.000Z',
      day: '2026-04-02',
    });
    expect(await codeOf(owner.patch(`/houses/${house.id}`, { zone: 'Mars/Olympus' }))).toBe('unknown-zone');
    expect((await owner.get<HouseView>(`/houses/${house.id}`)).firstDay).toBeNull();
  });
});
