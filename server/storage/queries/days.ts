import { sql } from 'kysely';
import type { DaySummaryView, DayView } from '#domain/contract/views';
import type { Db } from '../open-database.ts';

/** Every day on which a photo was taken or something was said, newest first. */
export async function readDays(db: Db, house: string, zone: string): Promise<DaySummaryView[]> {
  const said = sql<string>`(${sql.ref('at')} at time zone ${zone})::date`;
  const photos = await db
    .selectFrom('photo')
    .where('houseId', '=', house)
    .where('captureDay', 'is not', null)
    .groupBy('captureDay')
    .select((eb) => ['captureDay as day', eb.fn.countAll<number>().as('photos')])
    .execute();
  const statements = await db
    .selectFrom('ledgerEntry')
    .where('houseId', '=', house)
    .groupBy(sql`1`)
    .select((eb) => [
      said.as('day'),
      eb.fn.countAll<number>().as('statements'),
      eb.fn.countAll<number>().filterWhere('kind', 'in', ['tag.placed', 'tag.superseded']).as('tags'),
    ])
    .execute();
  const notes = await db
    .selectFrom('dayNote')
    .where('houseId', '=', house)
    .where('text', '!=', '')
    .groupBy('day')
    .select((eb) => ['day', eb.fn.countAll<number>().as('notes')])
    .execute();
  return mergeByDay([...photos, ...statements, ...notes]);
}

function mergeByDay(
  parts: (Partial<Omit<DaySummaryView, 'day'>> & { day: string | null })[],
): DaySummaryView[] {
  const days = new Map<string, DaySummaryView>();
  for (const { day, ...counts } of parts) {
    if (day === null) continue;
    const before = days.get(day) ?? { day, photos: 0, tags: 0, statements: 0, notes: 0 };
    days.set(day, { ...before, ...counts });
  }
  return [...days.values()].sort((a, b) => (a.day < b.day ? 1 : -1));
}

export async function readNotes(db: Db, house: string, day: string): Promise<DayView['notes']> {
  const notes = await readNotesOfDays(db, house, [day]);
  return notes.map(({ by, at, text }) => ({ by, at, text }));
}

/** The notes that stand, in the order in which they were last written. */
export async function readNotesOfDays(db: Db, house: string, days: readonly string[]) {
  const rows = await db
    .selectFrom('dayNote')
    .selectAll()
    .where('houseId', '=', house)
    .where('day', 'in', days)
    .where('text', '!=', '')
    .orderBy('saidAt')
    .execute();
  return rows.map((row) => ({ day: row.day, by: row.saidBy, at: row.saidAt.toISOString(), text: row.text }));
}
