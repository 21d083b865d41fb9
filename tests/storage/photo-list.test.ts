import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Person } from '#domain/contract/shapes';
import { STAGES } from '#domain/frame/stage';
import type { PhotoFilter, PhotoOrder } from '../../server/services/record-store.ts';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { fillPhotos, namedIds, type FilledPhoto, type FilledTag } from '../support/fill-photos.ts';
import { openRecord, type TestRecord } from '../support/record.ts';

const PEOPLE: Person[] = [
  { id: 'haru', name: 'Haru' },
  { id: 'mio', name: 'Mio' },
];
const MARKS = ['い一', 'い二', 'ろ又三'];
const DAYS = ['2026-04-01', '2026-04-02', '2026-04-30', '1999-12-31'];

const randomTag = fc.record<FilledTag>({
  mark: fc.constantFrom(...MARKS),
  stage: fc.constantFrom(...STAGES.slice(0, 3)),
  state: fc.constantFrom('standing', 'standing', 'superseded', 'withdrawn'),
});
/** Few days and few minutes, so that many photos are of one day and some of one moment. */
const randomPhoto = fc.record({
  day: fc.option(fc.constantFrom(...DAYS)),
  minute: fc.integer({ min: 0, max: 5 }),
  by: fc.option(fc.constantFrom(...PEOPLE)),
  tags: fc.array(randomTag, { maxLength: 3 }),
});
const randomFilter = fc.record<PhotoFilter>(
  {
    dated: fc.boolean(),
    day: fc.constantFrom(...DAYS, '2026-05-01'),
    mark: fc.constantFrom(...MARKS),
    stage: fc.constantFrom(...STAGES.slice(0, 3)),
    by: fc.constantFrom('haru', 'mio', 'nobody'),
    untagged: fc.boolean(),
  },
  { requiredKeys: [] },
);

type Drawn = Partial<Pick<FilledPhoto, 'day' | 'by' | 'tags'>> & { minute: number };

function photoOf(house: string, i: number, { day = null, by = null, tags = [], minute }: Drawn): FilledPhoto {
  const instant = day && `${day}T0${minute}:00:00.000Z`;
  return { ...namedIds(`${house} ${i}`), day, instant, by, tags };
}

/** What fits, by going through everything. */
function expected(photos: readonly FilledPhoto[], filter: PhotoFilter, order: PhotoOrder): string[] {
  const key = ({ day, instant, id }: FilledPhoto) => [
    // '~' is behind every digit; days count backwards where the newest comes first.
    order === 'newest-day' ? (day === null ? '~' : String(99_999_999 - Number(day.replaceAll('-', '')))) : '',
    instant ?? '~',
    id,
  ];
  return photos
    .filter((photo) => fits(photo, filter))
    .map((photo) => ({ id: photo.id, key: key(photo).join(' ') }))
    .sort((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ id }) => id);
}

function fits({ day, by, tags }: FilledPhoto, filter: PhotoFilter): boolean {
  const standing = tags.filter(({ state }) => state === 'standing');
  const { mark, stage } = filter;
  return (
    (filter.dated === undefined || filter.dated === (day !== null)) &&
    (filter.day === undefined || filter.day === day) &&
    (filter.by === undefined || filter.by === by?.id) &&
    (!filter.untagged || standing.length === 0) &&
    ((mark === undefined && stage === undefined) ||
      standing.some((tag) => (mark ?? tag.mark) === tag.mark && (stage ?? tag.stage) === tag.stage))
  );
}

describeOverBothDatabases('the list of photos', (make, kind) => {
  let place: PlaceForDatabase;
  let record: TestRecord;
  beforeAll(async () => {
    place = await make();
    record = await openRecord(place.config);
  });
  afterAll(async () => {
    await record.close();
    await place.remove();
  });

  const RUNS = { numRuns: kind === 'server' ? 60 : 20 };
  let houses = 0;
  const filled = async (drawn: readonly Drawn[]) => {
    const { id: house } = namedIds(`house ${houses++}`);
    const photos = drawn.map((photo, i) => photoOf(house, i, photo));
    await fillPhotos(record.database.pool, house, photos);
    return { house, photos };
  };
  const randomCase = fc.tuple(
    fc.array(randomPhoto, { maxLength: 25 }),
    fc.array(randomFilter, { minLength: 2, maxLength: 4 }),
    fc.integer({ min: 1, max: 9 }),
  );

  it('reaches every photo of any filter exactly once, in its order, by every way of paging', async () => {
    const { read } = record.context.store;
    await fc.assert(
      fc.asyncProperty(randomCase, async ([drawn, filters, limit]) => {
        const { house, photos } = await filled(drawn);
        for (const filter of filters)
          for (const order of ['capture', 'newest-day'] as const) {
            const whole = expected(photos, filter, order);
            const byAfter: string[] = [];
            for (let after: string | undefined; ;) {
              const page = await read.photos(house, filter, { order, limit, after });
              expect(page.total).toBe(whole.length);
              byAfter.push(...page.photos.map(({ id }) => id));
              if (page.next === null) break;
              after = page.next;
            }
            expect(byAfter).toEqual(whole);
            const byOffset: string[] = [];
            for (let offset = 0; offset < whole.length; offset += limit)
              byOffset.push(
                ...(await read.photos(house, filter, { order, limit, offset })).photos.map(({ id }) => id),
              );
            expect(byOffset).toEqual(whole);
          }
      }),
      RUNS,
    );
  });

  it('gives the shape of any list by day, pages of days that make up the list, and the place of each photo', async () => {
    const { read } = record.context.store;
    await fc.assert(
      fc.asyncProperty(randomCase, async ([drawn, filters, limit]) => {
        const { house, photos } = await filled(drawn);
        for (const filter of filters) {
          const whole = expected(photos, filter, 'newest-day');
          const { days, undated } = await read.photoCounts(house, filter);
          const parts: { filter: PhotoFilter; photos: number; day: string | null }[] = [
            ...days.map(({ day, photos: n }) => ({ filter: { ...filter, day }, photos: n, day })),
            { filter: { ...filter, dated: false }, photos: undated, day: null },
          ];
          const walked: string[] = [];
          for (const part of parts)
            for (let offset = 0; offset < part.photos; offset += limit) {
              const page = await read.photos(house, part.filter, { order: 'newest-day', limit, offset });
              // One of them by its place, another each time.
              const i = walked.length % page.photos.length;
              const { place } = await read.photoCounts(house, filter, page.photos[i]?.id);
              expect(place).toEqual({ day: part.day, position: offset + i });
              walked.push(...page.photos.map(({ id }) => id));
            }
          expect(walked).toEqual(whole);
          expect(await read.photoOrder(house, filter)).toEqual(expected(photos, filter, 'capture'));
        }
      }),
      RUNS,
    );
  });

  describe('who has added photos', () => {
    it('is each person once, under the latest name, whoever added most first', async () => {
      const by = (id: string, name: string) => ({ day: null, minute: 0, tags: [], by: { id, name } });
      const { house } = await filled([by('haru', 'Haru'), by('mio', 'Mio'), by('mio', 'Mio'), { minute: 0 }]);
      expect(await record.context.store.read.adders(house)).toEqual([
        { id: 'mio', name: 'Mio', photos: 2 },
        { id: 'haru', name: 'Haru', photos: 1 },
      ]);
      await record.database.pool.query(
        `update photo set added_by = '{"id": "haru", "name": "Haru I."}', added_at = now() + interval '1 h'
         where house_id = $1 and added_by ->> 'id' = 'haru'`,
        [house],
      );
      expect((await record.context.store.read.adders(house))[1]).toMatchObject({ name: 'Haru I.' });
    });
  });
});
