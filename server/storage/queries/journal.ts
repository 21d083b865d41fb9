import { sql } from 'kysely';
import type { JournalView } from '#domain/contract/journal-views';
import type { DayNote } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import { readFindingCounts } from './findings.ts';
import { taggedPhotos } from './photos.ts';
import { smallPhotos } from './small-photos.ts';

/** Days before `before` on which a photo was taken, anything was said, noted or closed; newest first. */
export async function readDaysBefore(
  db: Db,
  house: string,
  zone: string,
  before: string,
  limit: number,
): Promise<string[]> {
  const { rows } = await sql<{ day: string }>`
    select day from (
      select capture_day as day from photo where house_id = ${house} and doubt is null and capture_day is not null
      union
      select (at at time zone ${zone})::date from ledger_entry where house_id = ${house}
      union
      select day from day_note where house_id = ${house} and text <> ''
      union
      select (closed_at at time zone ${zone})::date from covering where house_id = ${house} and closed_at is not null
    ) as days
    where day < ${before}::date
    order by day desc
    limit ${limit}`.execute(db);
  return rows.map(({ day }) => day);
}

/** Notes of the next days after `day` that have any; earliest first. */
export async function readNotesAfter(db: Db, house: string, day: string, limit: number): Promise<DayNote[]> {
  const noted = db
    .selectFrom('dayNote')
    .selectAll()
    .where('houseId', '=', house)
    .where('text', '!=', '')
    .where('day', '>', day);
  const rows = await noted.orderBy('day').orderBy('saidAt').limit(limit).execute();
  return rows.map((row) => ({ day: row.day, by: row.saidBy, at: row.saidAt.toISOString(), text: row.text }));
}

/** What of the photos waits for somebody: `days` and `pictures` bound what is told of impossible dates. */
export async function readWaiting(
  db: Db,
  house: string,
  { days, pictures }: { days: number; pictures: number },
): Promise<JournalView['waiting']> {
  const photos = db.selectFrom('photo').where('photo.houseId', '=', house);
  const counts = await photos
    .select((eb) => [
      eb.fn.countAll<number>().filterWhere('captureDay', 'is', null).as('undated'),
      eb.fn.countAll<number>().filterWhere('doubt', 'is not', null).as('impossible'),
    ])
    .executeTakeFirstOrThrow();
  const { untagged } = await photos
    .where('photo.id', 'not in', taggedPhotos(db, house))
    .select((eb) => eb.fn.countAll<number>().as('untagged'))
    .executeTakeFirstOrThrow();
  const findings = await readFindingCounts(db, house);
  return {
    findings: findings.reduce((sum, { open }) => sum + open, 0),
    undated: counts.undated,
    untagged,
    impossible: { photos: counts.impossible, days: await readImpossible(db, house, days, pictures) },
  };
}

async function readImpossible(
  db: Db,
  house: string,
  limit: number,
  pictures: number,
): Promise<JournalView['waiting']['impossible']['days']> {
  const doubted = await db
    .selectFrom('photo')
    .where('houseId', '=', house)
    .where('doubt', 'is not', null)
    .groupBy(['captureDay', 'doubt'])
    .select((eb) => ['captureDay', 'doubt', eb.fn.countAll<number>().as('photos')])
    .orderBy('captureDay', 'desc')
    .orderBy('doubt')
    .limit(limit)
    .execute();
  const days = doubted.flatMap(({ captureDay, doubt, photos }) =>
    captureDay === null || doubt === null ? [] : [{ day: captureDay, doubt, photos }],
  );
  const shown = await smallPhotos(
    db,
    house,
    days.map(({ day }) => day),
    { each: pictures, doubted: true },
  );
  const drawn = (day: string, doubt: string) => shown.filter((p) => p.day === day && p.doubt === doubt);
  return days.map((day) => ({ ...day, pictures: drawn(day.day, day.doubt).map(({ photo }) => photo) }));
}
