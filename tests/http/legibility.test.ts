import pino from 'pino';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { AlikePhotoView } from '#domain/contract/alike-views';
import type { LegibilityView } from '#domain/contract/legibility-views';
import type { ClosingReportView } from '#domain/contract/report-views';
import type { HouseView, PhotoDetailView, PhotoView, UploadOutcome } from '#domain/contract/views';
import { serve } from '../../server/serve.ts';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { takenAt } from '../support/pictures.ts';
import { configFor, newHouse, startServer, type TestServer } from '../support/server.ts';

/** A board of squares on the left, blurred away on the right; seeds give other scenes. */
async function boards(seed: number, wallTime: string, blur = 0): Promise<Buffer> {
  const [width, height] = [640, 480];
  const raw = Buffer.alloc(width * height);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1)
      raw[y * width + x] =
        80 + 20 * ((Math.floor(x / 40) * (seed + 2) + Math.floor(y / 30) * (seed + 5)) % 7);
  const sharpOne = sharp(raw, { raw: { width, height, channels: 1 } });
  const left = await (blur > 0 ? sharpOne.blur(blur) : sharpOne).png().toBuffer();
  const right = await sharp(left)
    .extract({ left: 320, top: 0, width: 320, height: 480 })
    .blur(60)
    .png()
    .toBuffer();
  return sharp(left)
    .composite([{ input: right, left: 320, top: 0 }])
    .jpeg({ quality: 92 })
    .withExif({ IFD0: { Make: 'Test', Model: 'Bars' }, IFD2: takenAt(wallTime) })
    .toBuffer();
}
const CLEAR = { shape: 'rectangle', x: 0.05, y: 0.1, w: 0.4, h: 0.6 };
const BLURRED = { shape: 'rectangle', x: 0.6, y: 0.1, w: 0.35, h: 0.6 };
const SMALL = { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.4, h: 0.01 };

describeOverEitherDatabase('what can be read in a photo', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let house: HouseView;
  let photos: string[];
  const add = async (seed: number, wallTime: string, blur = 0) =>
    upload(`${seed} ${wallTime} ${blur}.jpg`, await boards(seed, wallTime, blur));
  const upload = async (name: string, bytes: Buffer) => {
    const { results } = await server.owner.upload<{ results: UploadOutcome[] }>(house.id, [{ name, bytes }]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error(JSON.stringify(outcome));
    return outcome.photo.id;
  };
  /** On the one photo that no other resembles: what is said of nearly the same pictures counts for nothing. */
  const tag = (mark: string, region: object) =>
    server.owner.post(`/photos/${photos[3]}/tags`, {
      id: crypto.randomUUID(),
      mark,
      stage: 'pegged',
      region,
    });
  const read = (id: string) => server.owner.get<PhotoDetailView>(`/photos/${id}`);
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    house = await newHouse(server.owner);
    await server.owner.raw('POST', `/houses/${house.id}/schedule?fileName=a.csv`, {
      body: '番付,部材\nい一,柱\nい二,柱\nい三,柱',
      headers: { 'content-type': 'text/csv' },
    });
    await server.owner.post(`/houses/${house.id}/coverings`, {
      id: crypto.randomUUID(),
      name: 'wall',
      kind: 'plaster',
      plannedDay: '2026-04-20',
      hides: ['い一', 'い二', 'い三'].map((mark) => ({ mark, least: 'pegged' })),
    });
    photos = [
      await add(1, '2026-04-01T09:30:00'),
      await add(1, '2026-04-01T09:30:04', 1.5),
      await add(1, '2026-04-02T11:00:00', 1),
      await add(3, '2026-04-01T09:30:06'),
    ];
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  it('is said of every tag soon after it is placed, and counts in the closing report', async () => {
    await tag('い一', CLEAR);
    await tag('い二', BLURRED);
    await tag('い三', SMALL);
    const verdicts = async () =>
      (await read(photos[3] ?? '')).allTags
        .sort((a, b) => (a.mark < b.mark ? -1 : 1))
        .map(({ legibility }) => [legibility.verdict, legibility.reasons[0]]);
    await expect.poll(verdicts, { timeout: 20_000 }).toEqual([
      ['clear', undefined],
      ['unreadable', 'too-small'],
      ['unreadable', 'blurred'],
    ]);
    const report = await server.owner.get<ClosingReportView>(`/houses/${house.id}/closing-report`);
    const lines = report.days.flatMap(({ coverings }) => coverings.flatMap((covering) => covering.lines));
    expect(
      lines.map(({ mark, state, records, nearestMiss }) => [
        mark,
        state,
        records[0]?.legibility,
        nearestMiss?.reasons,
      ]),
    ).toEqual(
      [
        ['い二', 'gap', undefined, ['unreadable']],
        ['い三', 'gap', undefined, ['unreadable']],
        ['い一', 'on-record', 'clear', undefined],
      ].sort((a, b) => lines.findIndex((l) => l.mark === a[0]) - lines.findIndex((l) => l.mark === b[0])),
    );
  });

  it('is told for a drawing, in JSON and as a media fragment', async () => {
    const ask = (region: string) =>
      server.owner.get<LegibilityView>(
        `/photos/${photos[0]}/legibility?region=${encodeURIComponent(region)}`,
      );
    expect(await ask(JSON.stringify(CLEAR))).toMatchObject({ verdict: 'clear', acrossPx: 256 });
    expect(await ask('percent:60,10,35,60')).toMatchObject({ verdict: 'unreadable', reasons: ['blurred'] });
    const slanting = {
      shape: 'polygon',
      points: [
        [0.1, 0.1],
        [0.4, 0.5],
        [0.39, 0.5],
        [0.09, 0.1],
      ],
    };
    const told = await ask(JSON.stringify(slanting));
    expect(told).toMatchObject({ verdict: 'unreadable' });
    expect(told.acrossPx).toBeLessThan(6);
    for (const nonsense of [
      '',
      '{',
      '{"shape":"polygon","points":[]}',
      '{"shape":"rectangle","x":2,"y":0,"w":1,"h":1}',
      'percent:0,0,200,1',
    ])
      await expect(ask(nonsense), nonsense).rejects.toMatchObject({
        status: expect.toSatisfy((s: number) => s === 400 || s === 422) as number,
      });
  });

  it('finds those of a burst, those almost identical, and the sharpest of them', async () => {
    await expect.poll(async () => (await read(photos[3] ?? '')).pictures, { timeout: 20_000 }).toBe('ready');
    const { photos: list } = await server.owner.get<{ photos: PhotoView[] }>(`/houses/${house.id}/photos`);
    const burst = list.find(({ id }) => id === photos[1])?.alike.burst;
    expect(burst).toEqual({ photos: [photos[0], photos[1]], sharpest: photos[0] });
    expect(list.find(({ id }) => id === photos[3])?.alike.burst).toBeNull();
    const alike = await server.owner.get<{ photos: AlikePhotoView[]; sharpest: string }>(
      `/photos/${photos[1]}/alike`,
    );
    expect(alike.photos.map(({ id }) => id)).toEqual([photos[0], photos[2]]);
    expect(alike.photos.every(({ distance }) => distance <= 5)).toBe(true);
    expect(alike.sharpest).toBe(photos[0]);
    expect(await server.owner.get(`/photos/${photos[3]}/alike`)).toEqual({ photos: [], sharpest: null });
  });

  it('proposes an original before its reduced copy, which is the crisper at the size that is looked at', async () => {
    // The grain of the large one is lost at that size; the copy was sharpened, as programs do that reduce.
    const large = await sharp(await boards(6, '2026-04-05T10:00:00'))
      .resize(2048, 1536, { kernel: 'cubic' })
      .blur(1.2)
      .jpeg({ quality: 92 })
      .withExif({ IFD0: { Make: 'Test', Model: 'Bars' }, IFD2: takenAt('2026-04-05T10:00:00') })
      .toBuffer();
    const small = (wallTime: string) =>
      sharp(large)
        .resize(640, 480)
        .sharpen()
        .jpeg({ quality: 92 })
        .withExif({ IFD0: { Make: 'Test', Model: 'Bars' }, IFD2: takenAt(wallTime) })
        .toBuffer();
    const original = await upload('original.jpg', large);
    const atOnce = await upload('at once.jpg', await small('2026-04-05T10:00:00'));
    const dayLater = await upload('day later.jpg', await small('2026-04-06T10:00:00'));
    for (const id of [original, atOnce, dayLater])
      await expect.poll(async () => (await read(id)).pictures, { timeout: 20_000 }).toBe('ready');
    const { rows } = await server.running.core.database.pool.query<{ photo_id: string; sharpness: number }>(
      'select photo_id, sharpness from picture where photo_id = any($1)',
      [[original, atOnce]],
    );
    const sharpness = new Map(rows.map((row) => [row.photo_id, row.sharpness]));
    expect(sharpness.get(atOnce)).toBeGreaterThan(sharpness.get(original) ?? Infinity);
    const { photos: list } = await server.owner.get<{ photos: PhotoView[] }>(`/houses/${house.id}/photos`);
    const burst = list.find(({ id }) => id === atOnce)?.alike.burst;
    expect([...(burst?.photos ?? [])].sort()).toEqual([original, atOnce].sort());
    expect(burst?.sharpest).toBe(original);
    for (const id of [original, atOnce, dayLater]) {
      const alike = await server.owner.get<{ photos: AlikePhotoView[]; sharpest: string }>(
        `/photos/${id}/alike`,
      );
      expect(alike.photos).toHaveLength(2);
      expect(alike.sharpest).toBe(original);
    }
  });

  it('is made up for at the next start, for tags and pictures of an older program', async () => {
    const { database, jobs } = server.running.core;
    await jobs.rested('legibility');
    await database.pool.query('delete from legibility');
    await database.pool.query('update picture set hash = null, sharpness = null');
    await server.running.stop();
    const log = pino({ level: 'silent' });
    const again = await serve(configFor(place.config, server.dataFolder), { log });
    const missing = async () => {
      const { rows } = await again.core.database.pool.query<{ n: number }>(
        `select (select count(*) from tag where id not in (select tag_id from legibility))::int
           + (select count(*) from picture where hash is null)::int as n`,
      );
      return rows[0]?.n;
    };
    await expect.poll(missing, { timeout: 20_000 }).toBe(0);
    await again.stop();
  });
});
