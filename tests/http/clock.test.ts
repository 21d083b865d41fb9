import { randomUUID } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import type { CameraView, ClockMarkView } from '#domain/contract/clock';
import type { ClosingReportView } from '#domain/contract/report-views';
import type {
  HouseView,
  LedgerEntryView,
  PhotoDetailView,
  PhotoView,
  UploadOutcome,
} from '#domain/contract/views';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { HAS_SAMPLES, sample } from '../support/samples.ts';
import { newHouse, startServer, type Client, type TestServer } from '../support/server.ts';

const REGION = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };
let seeds = 5000;

describeOverEitherDatabase('times put right, over HTTP', (make) => {
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

  const upload = async (bytes: Buffer, name = 'a.jpg'): Promise<PhotoView> => {
    const { results } = await owner.upload<{ results: UploadOutcome[] }>(house.id, [{ name, bytes }]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error(JSON.stringify(outcome));
    return outcome.photo;
  };
  const take = async (wallTime: string | null, serial: string | null = null): Promise<PhotoView> => {
    const exif = wallTime === null ? {} : takenAt(wallTime);
    return upload(await makeJpeg(seeds++, serial === null ? exif : { ...exif, BodySerialNumber: serial }));
  };
  const read = (photo: PhotoView) => owner.get<PhotoDetailView>(`/photos/${photo.id}`);
  const line = async () =>
    (await owner.get<ClosingReportView>(`/houses/${house.id}/closing-report`)).days[0]?.coverings[0]
      ?.lines[0];
  const kinds = async () =>
    (await owner.get<{ entries: LedgerEntryView[] }>(`/houses/${house.id}/ledger`)).entries.map(
      (e) => e.kind,
    );
  const cameras = async () =>
    (await owner.get<{ cameras: CameraView[] }>(`/houses/${house.id}/cameras`)).cameras;
  const close = async (photo: PhotoView, closedAt: string) => {
    await owner.raw('POST', `/houses/${house.id}/schedule?fileName=a.csv`, {
      body: '番付,部材\nい一,貫',
      headers: { 'content-type': 'text/csv' },
    });
    await owner.post(`/photos/${photo.id}/tags`, {
      id: randomUUID(),
      mark: 'い一',
      stage: 'pegged',
      region: REGION,
    });
    const covering = randomUUID();
    await owner.post(`/houses/${house.id}/coverings`, {
      id: covering,
      name: 'North wall',
      kind: 'plaster',
      plannedDay: '2026-04-03',
      hides: [{ mark: 'い一', least: 'pegged' }],
    });
    await owner.post(`/coverings/${covering}/close`, {
      withoutRelease: 'Nobody inspects this house.',
      closedAt,
    });
  };
  const problem = (doing: Promise<unknown>) =>
    doing.then(
      () => 'done',
      (error: unknown) => (error as { problem?: { code: string } }).problem?.code ?? String(error),
    );

  it('moves the photos of a camera 37 minutes fast, the report with them, and no others', async () => {
    // Closed at 12:00; taken at 11:50, which this camera wrote as 12:27.
    const photo = await take('2026-04-03T12:27:12', 'A');
    const other = await take('2026-04-03T12:27:12', 'B');
    await close(photo, '2026-04-03T03:00:00.000Z');
    expect((await line())?.nearestMiss?.reasons).toEqual(['after-closing']);

    const clock = await take('2026-04-03T17:37:12', 'A');
    const id = randomUUID();
    const body = { id, trueTime: '2026-04-03T08:00:00.000Z', withinS: 5, note: 'phone' };
    const mark = await owner.post<ClockMarkView>(`/photos/${clock.id}/clock-mark`, body);
    expect(mark).toMatchObject({
      id,
      photo: clock.id,
      seconds: -2232,
      by: { name: expect.any(String) as string },
    });
    // The same request again repeats nothing; the same id with another word is refused.
    await owner.post(`/photos/${clock.id}/clock-mark`, body);
    const otherTime = { ...body, trueTime: '2026-04-03T08:01:00.000Z' };
    expect(await problem(owner.post(`/photos/${clock.id}/clock-mark`, otherTime))).toBe(
      'id-used-for-something-else',
    );

    const moved = await read(photo);
    expect(moved.readings).toEqual(photo.readings);
    expect(moved.capture).toMatchObject({
      instant: '2026-04-03T02:50:00.000Z',
      flags: ['clock-corrected'],
      correction: { seconds: -2232, marks: [id], uncorrected: '2026-04-03T03:27:12.000Z' },
    });
    expect((await read(clock)).capture).toMatchObject({ instant: '2026-04-03T08:00:00.000Z' });
    expect((await read(other)).capture).toEqual(other.capture);
    expect((await line())?.records).toMatchObject([
      { photo: photo.id, datedBy: 'clock-mark', uncertaintyS: 6 },
    ]);
    const csv = await owner.raw('GET', `/houses/${house.id}/closing-report?format=csv&lang=en`);
    expect(await csv.text()).toContain('put right by clock marks');
    expect((await cameras()).find(({ serial }) => serial === 'A')).toMatchObject({
      photos: 2,
      corrected: 2,
      marks: [{ id, seconds: -2232 }],
      now: { seconds: -2232, basis: 'one-mark' },
    });
    expect((await kinds()).filter((kind) => kind === 'clock.marked')).toHaveLength(1);

    // A photo added later follows at once.
    expect((await take('2026-04-03T12:37:12', 'A')).capture).toMatchObject({
      instant: '2026-04-03T03:00:00.000Z',
    });

    const withdraw = (reason: string) =>
      owner.delete(`/clock-marks/${id}?reason=${encodeURIComponent(reason)}`);
    expect(await problem(withdraw(''))).toBe('invalid-request');
    await withdraw('the phone was wrong');
    await withdraw('the phone was wrong');
    expect((await kinds()).filter((kind) => kind === 'clock.withdrawn')).toHaveLength(1);
    expect((await read(photo)).capture).toEqual(photo.capture);
    expect((await line())?.nearestMiss?.reasons).toEqual(['after-closing']);
  });

  it('refuses a mark that can put nothing right, and one of somebody else’s house', async () => {
    const body = { id: randomUUID(), trueTime: '2026-04-03T08:00:00.000Z' };
    const send = (photo: PhotoView, more: object = {}) =>
      problem(owner.post(`/photos/${photo.id}/clock-mark`, { ...body, ...more }));
    expect(await send(await take(null))).toBe('clock-mark-without-time');
    const dated = await take('2026-04-03T12:00:00');
    expect(await send(dated, { trueTime: new Date(Date.now() + 600_000).toISOString() })).toBe(
      'time-in-the-future',
    );
    expect(await send(dated, { trueTime: 'noon' })).toBe('invalid-request');
    expect(await send(dated)).toBe('done');
    const stranger = await server.join((await newHouse(owner, 'other')).id, `x${seeds}@example.org`);
    const gone = stranger.delete(`/clock-marks/${body.id}?reason=none`);
    expect(await problem(gone)).toBe('not-found');
    expect(await problem(stranger.get(`/houses/${house.id}/cameras`))).toBe('not-found');
  });

  it('dates by hand what has no time, counts it where that is sure enough, and goes back', async () => {
    const photo = await take(null);
    expect(photo.capture.state).toBe('undated');
    await close(photo, '2026-04-03T12:00:00.000Z');
    expect((await line())?.nearestMiss?.reasons).toEqual(['undated']);
    const say = (taken: string, withinS: number, reason = 'site diary') =>
      owner.put<PhotoView>(`/photos/${photo.id}/date`, { taken, withinS, reason });

    // Some time that day, which may have been after closing.
    await say('2026-04-03T03:00:00.000Z', 43_200);
    expect((await line())?.nearestMiss?.reasons).toEqual(['perhaps-after-closing']);
    const dated = await say('2026-04-03T03:00:00.000Z', 3600);
    expect(dated.capture).toMatchObject({ source: 'by-hand', byHand: { reason: 'site diary' } });
    expect((await line())?.records).toMatchObject([{ datedBy: 'by-hand' }]);
    const csv = await owner.raw('GET', `/houses/${house.id}/closing-report?format=csv&lang=ja`);
    expect(await csv.text()).toContain('人が入力した日時');
    await say('2026-04-03T03:00:00.000Z', 3600);
    expect((await kinds()).filter((kind) => kind === 'photo.dated')).toHaveLength(2);

    expect(await problem(say('2026-04-03T03:00:00.000Z', 60, ' '))).toBe('invalid-request');
    expect(await problem(say(new Date(Date.now() + 600_000).toISOString(), 60))).toBe('time-in-the-future');
    const withdraw = () => owner.delete<PhotoView>(`/photos/${photo.id}/date?reason=wrong%20day`);
    expect((await withdraw()).capture).toEqual(photo.capture);
    expect(await problem(withdraw())).toBe('photo-not-dated-by-hand');
  });

  it('dates by hand an impossible time, and refuses to date one that is possible', async () => {
    const say = (photo: PhotoView) =>
      owner.put<PhotoView>(`/photos/${photo.id}/date`, {
        taken: '2026-04-03T03:00:00.000Z',
        withinS: 60,
        reason: 'delivery note',
      });
    expect(await problem(say(await take('2026-04-03T12:00:00')))).toBe('photo-has-a-time');
    const future = await take('2079-04-01T10:00:00');
    expect((await say(future)).capture).toMatchObject({
      flags: ['dated-by-hand'],
      rejected: [{ instant: '2079-04-01T01:00:00.000Z', why: 'dated-by-hand' }],
    });
  });

  it('moves corrected times with the zone of the house', async () => {
    // Without an offset of its own the clock is read in the zone of the house; the true time is an instant.
    const plain = async (wall: string) =>
      upload(await makeJpeg(seeds++, { DateTimeOriginal: wall.replaceAll('-', ':').replace('T', ' ') }));
    const clock = await plain('2026-04-03T12:37:12');
    const later = await plain('2026-04-03T13:37:12');
    await owner.post(`/photos/${clock.id}/clock-mark`, {
      id: randomUUID(),
      trueTime: '2026-04-03T03:00:00.000Z',
    });
    expect((await read(later)).capture).toMatchObject({ correction: { seconds: -2232 } });
    await owner.patch(`/houses/${house.id}`, { zone: 'Asia/Shanghai' });
    expect((await read(later)).capture).toMatchObject({
      instant: '2026-04-03T04:00:00.000Z',
      correction: { seconds: -2232 - 3600 },
    });
  });

  it.skipIf(!HAS_SAMPLES)('puts a real file of a real camera right', async () => {
    const photo = await upload(
      await readFile(sample('exif_real', 'iphone6s_offset+0100_heading_gps.jpg')),
      'clock.jpg',
    );
    const before = photo.capture;
    if (before.state !== 'dated') throw new Error('The sample has a time.');
    const trueTime = new Date(Date.parse(before.instant) + 3_600_500).toISOString();
    await owner.post(`/photos/${photo.id}/clock-mark`, { id: randomUUID(), trueTime, withinS: 1 });
    expect((await read(photo)).capture).toMatchObject({ instant: trueTime, uncertaintyS: 1 });
    expect((await read(photo)).readings).toEqual(photo.readings);
  });
});
