import { sql } from 'kysely';
import type { Role } from '#domain/contract/shapes';
import type { HouseView, PersonInHouseView } from '#domain/contract/views';
import type { OwnedThing } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import type { Row } from '../tables.ts';

export async function readAccess(
  db: Db,
  thing: OwnedThing,
  id: string,
  person: string,
): Promise<{ house: string; role: Role } | undefined> {
  if (thing === 'house') {
    const role = await roleIn(db, id, person);
    return role && { house: id, role };
  }
  return db
    .selectFrom('houseRole')
    .where('houseId', '=', db.selectFrom(thing).select('houseId').where('id', '=', id))
    .where('personId', '=', person)
    .select(['houseId as house', 'role'])
    .executeTakeFirst();
}

export async function roleIn(db: Db, house: string, person: string): Promise<Role | undefined> {
  const row = await db
    .selectFrom('houseRole')
    .select('role')
    .where('houseId', '=', house)
    .where('personId', '=', person)
    .executeTakeFirst();
  return row?.role;
}

export async function readHouses(db: Db, person: string, house?: string): Promise<HouseView[]> {
  let query = db
    .selectFrom('house')
    .innerJoin('houseRole', 'houseRole.houseId', 'house.id')
    .where('houseRole.personId', '=', person)
    .selectAll('house')
    .select('houseRole.role')
    .select((eb) => {
      const n = eb.fn.countAll<number>().as('n');
      const ofHouse = sql.ref<string>('house.id');
      return [
        eb
          .selectFrom('member')
          .select(n)
          .where('member.houseId', '=', ofHouse)
          .where('retired', '=', false)
          .as('members'),
        eb.selectFrom('photo').select(n).where('photo.houseId', '=', ofHouse).as('photos'),
        eb
          .selectFrom('tag')
          .select(n)
          .where('tag.houseId', '=', ofHouse)
          .where('state', '=', 'standing')
          .as('tags'),
        eb.selectFrom('covering').select(n).where('covering.houseId', '=', ofHouse).as('coverings'),
      ];
    })
    .orderBy('house.createdAt', 'desc')
    .orderBy('house.id');
  if (house !== undefined) query = query.where('house.id', '=', house);
  const rows = await query.execute();
  return rows.map((row) => ({
    id: row.id,
    name: row.name,
    zone: row.zone,
    firstDay: row.firstDay,
    site: row.site,
    createdAt: row.createdAt.toISOString(),
    role: row.role,
    fourEyes: row.fourEyes,
    unit: row.grid?.unit ?? 'mm',
    counts: {
      members: row.members ?? 0,
      photos: row.photos ?? 0,
      tags: row.tags ?? 0,
      coverings: row.coverings ?? 0,
    },
  }));
}

/** What of a house decides when and where its photos were taken. */
export type Dating = Pick<Row<'house'>, 'zone' | 'firstDay' | 'site'>;

export function readDating(db: Db, house: string): Promise<Dating> {
  return db
    .selectFrom('house')
    .select(['zone', 'firstDay', 'site'])
    .where('id', '=', house)
    .executeTakeFirstOrThrow();
}

export async function readZone(db: Db, house: string): Promise<string> {
  return (await db.selectFrom('house').select('zone').where('id', '=', house).executeTakeFirstOrThrow()).zone;
}

export function readHouseName(db: Db, house: string): Promise<Pick<Row<'house'>, 'name' | 'zone'>> {
  return db.selectFrom('house').select(['name', 'zone']).where('id', '=', house).executeTakeFirstOrThrow();
}

export async function readPeople(db: Db, house: string): Promise<PersonInHouseView[]> {
  const rows = await db
    .selectFrom('houseRole')
    .leftJoin('person', 'person.id', 'houseRole.personId')
    .where('houseId', '=', house)
    .select(['houseRole.personId', 'houseRole.name', 'houseRole.role', 'person.email'])
    .orderBy('houseRole.name')
    .orderBy('houseRole.personId')
    .execute();
  return rows.map((row) => ({ id: row.personId, name: row.name, role: row.role, email: row.email }));
}

export async function readHousesWithoutOwner(db: Db): Promise<string[]> {
  const owned = db
    .selectFrom('houseRole')
    .innerJoin('person', 'person.id', 'houseRole.personId')
    .where('houseRole.role', '=', 'owner')
    .select('houseRole.houseId');
  const rows = await db.selectFrom('house').select('id').where('id', 'not in', owned).orderBy('id').execute();
  return rows.map((row) => row.id);
}
