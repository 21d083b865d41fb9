import { sql } from 'kysely';
import type { Mark } from '#domain/frame/mark';
import type { GuestShows } from '#domain/contract/guests';
import type { Guest } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';

export async function readGuest(db: Db, guest: string): Promise<Guest | undefined> {
  const row = await selectGuests(db).where('guest.id', '=', guest).executeTakeFirst();
  return row && toGuest(row);
}

export async function readGuests(db: Db, house: string, now: Date): Promise<Guest[]> {
  const rows = await selectGuests(db)
    .where('guest.houseId', '=', house)
    .where('guest.endedAt', 'is', null)
    .where('guest.until', '>', now)
    .orderBy('guest.until')
    .orderBy('guest.id')
    .execute();
  return rows.map(toGuest).filter(({ isVouchedFor }) => isVouchedFor);
}

function selectGuests(db: Db) {
  return db
    .selectFrom('guest')
    .leftJoin('covering', 'covering.id', 'guest.coveringId')
    .leftJoin('houseRole', (join) =>
      join
        .onRef('houseRole.houseId', '=', 'guest.houseId')
        .on('houseRole.personId', '=', sql<string>`guest.admitted_by ->> 'id'`),
    )
    .selectAll('guest')
    .select(['covering.name as coveringName', 'houseRole.role as makersRole']);
}

type GuestRow = Awaited<ReturnType<ReturnType<typeof selectGuests>['executeTakeFirstOrThrow']>>;

function toGuest(row: GuestRow): Guest {
  return {
    id: row.id,
    house: row.houseId,
    shows: showsOf(row),
    name: row.coveringName ?? row.mark ?? '',
    label: row.label,
    until: row.until.toISOString(),
    admittedAt: row.admittedAt.toISOString(),
    by: row.admittedBy,
    ended: row.endedAt !== null,
    isVouchedFor: row.makersRole === 'owner',
  };
}

/** The table holds one of the two. */
function showsOf({ coveringId, mark }: GuestRow): GuestShows {
  return coveringId === null ? { mark: mark as Mark } : { covering: coveringId };
}
