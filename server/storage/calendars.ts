import { sql } from 'kysely';
import type { CalendarLang, CalendarLinkView } from '#domain/contract/calendar';
import type { CalendarEntry, Calendars } from '../services/calendars.ts';
import { hashSecret, newSecret } from './accounts/secrets.ts';
import type { Db } from './open-database.ts';
import { inBatches } from './projection/in-batches.ts';
import type { Row } from './tables.ts';

/** Programs ask every few minutes; the last reading is noted at most once an hour. */
const READING_NOTED_EVERY_MS = 60 * 60 * 1000;
const COVERING = 'covering:';

export function calendars(db: Db, now: () => Date): Calendars {
  return {
    makeLink: (house, person, lang) => makeLink(db, now(), { houseId: house, personId: person, lang }),
    link: (house, person) => readLink(db, house, person),
    endLink: async (house, person) => {
      await db
        .deleteFrom('calendarLink')
        .where('houseId', '=', house)
        .where('personId', '=', person)
        .execute();
    },
    findLink: (secret) => findLink(db, now(), secret),
    entries: (house) => readEntries(db, house),
    noteEntries: (house, entries) => noteEntries(db, house, entries),
    statementCounts: (house) => countStatements(db, house),
  };
}

async function makeLink(
  db: Db,
  now: Date,
  place: { houseId: string; personId: string; lang: CalendarLang },
): Promise<{ link: CalendarLinkView; secret: string }> {
  const secret = newSecret();
  const made = { lang: place.lang, secretHash: hashSecret(secret), createdAt: now, lastReadAt: null };
  const row = await db
    .insertInto('calendarLink')
    .values({ ...place, ...made })
    .onConflict((c) => c.columns(['houseId', 'personId']).doUpdateSet(made))
    .returningAll()
    .executeTakeFirstOrThrow();
  return { link: toView(row), secret };
}

async function readLink(db: Db, house: string, person: string): Promise<CalendarLinkView | null> {
  const row = await db
    .selectFrom('calendarLink')
    .selectAll()
    .where('houseId', '=', house)
    .where('personId', '=', person)
    .executeTakeFirst();
  return row ? toView(row) : null;
}

async function findLink(db: Db, now: Date, secret: string): ReturnType<Calendars['findLink']> {
  const row = await db
    .selectFrom('calendarLink')
    .selectAll()
    .where('secretHash', '=', hashSecret(secret))
    .executeTakeFirst();
  if (!row) return undefined;
  if (!row.lastReadAt || now.getTime() - row.lastReadAt.getTime() > READING_NOTED_EVERY_MS)
    await db
      .updateTable('calendarLink')
      .set({ lastReadAt: now })
      .where('secretHash', '=', row.secretHash)
      .execute();
  return { house: row.houseId, person: row.personId, lang: row.lang };
}

function toView({ lang, createdAt, lastReadAt }: Row<'calendarLink'>): CalendarLinkView {
  return { lang, createdAt: createdAt.toISOString(), lastReadAt: lastReadAt && lastReadAt.toISOString() };
}

async function readEntries(db: Db, house: string): Promise<CalendarEntry[]> {
  const rows = await db.selectFrom('calendarEntry').selectAll().where('houseId', '=', house).execute();
  return rows.map(({ coveringId, day, content, changedAt }) => ({
    covering: coveringId,
    day,
    content,
    changedAt: changedAt.toISOString(),
  }));
}

async function noteEntries(db: Db, house: string, entries: readonly CalendarEntry[]): Promise<void> {
  const rows = entries.map(({ covering, ...entry }) => ({ coveringId: covering, houseId: house, ...entry }));
  await inBatches(rows, 500, async (batch) => {
    await db
      .insertInto('calendarEntry')
      .values(batch)
      .onConflict((c) =>
        c.column('coveringId').doUpdateSet((eb) => ({
          day: eb.ref('excluded.day'),
          content: eb.ref('excluded.content'),
          changedAt: eb.ref('excluded.changedAt'),
        })),
      )
      .execute();
  });
}

async function countStatements(db: Db, house: string): Promise<Map<string, number>> {
  const rows = await db
    .selectFrom('statementSubject')
    .select(['subject', sql<number>`count(*)::int`.as('count')])
    .where('houseId', '=', house)
    .where('subject', 'like', `${COVERING}%`)
    .groupBy('subject')
    .execute();
  return new Map(rows.map(({ subject, count }) => [subject.slice(COVERING.length), count]));
}
