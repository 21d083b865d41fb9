import { sql } from 'kysely';
import type { CoveringKind } from '#domain/contract/shapes';
import {
  STORY_KINDS,
  type ArchiveMaterial,
  type ArchivedCovering,
  type ArchivedMember,
  type ArchivedPhoto,
  type ArchivedTag,
  type HiddenMember,
  type StoryEntry,
} from '../../services/archive/archive-material.ts';
import { groupBy } from '#domain/group-by';
import { parseEntry } from '#domain/ledger/statements';
import type { Db } from '../open-database.ts';
import { readHolds, type Holds } from './archive-holds.ts';
import { readLedgerExtent } from './ledger-text.ts';
import { readLexicon } from './terms.ts';

/** Reads in several queries: consistent only within a snapshot. */
export async function readArchiveMaterial(db: Db, house: string): Promise<ArchiveMaterial> {
  const holds = await readHolds(db, house);
  const captures = await db
    .selectFrom('photo')
    .select(['id', 'capture'])
    .where('houseId', '=', house)
    .execute();
  return {
    house: await db
      .selectFrom('house')
      .select(['name', 'zone', 'firstDay'])
      .where('id', '=', house)
      .executeTakeFirstOrThrow(),
    ledger: await readLedgerExtent(db, house),
    tables: {
      members: await readMembers(db, house),
      photos: await readPhotos(db, house),
      tags: await readTags(db, house),
      coverings: await readCoverings(db, house, holds),
      releases: holds.releases,
    },
    captures: new Map(captures.map(({ id, capture }) => [id, capture])),
    story: await readStory(db, house),
    lexicon: await readLexicon(db, house),
  };
}

export async function readOriginals(db: Db, house: string): Promise<{ count: number; bytes: number }> {
  const { count, bytes } = await db
    .selectFrom('photo')
    .select((eb) => [
      eb.fn.countAll<number>().as('count'),
      sql<number>`coalesce(sum(bytes), 0)::bigint`.as('bytes'),
    ])
    .where('houseId', '=', house)
    .executeTakeFirstOrThrow();
  return { count, bytes };
}

async function readStory(db: Db, house: string): Promise<StoryEntry[]> {
  const rows = await db
    .selectFrom('ledgerEntry')
    .select('canonical')
    .where('houseId', '=', house)
    .where('kind', 'in', STORY_KINDS)
    .orderBy('seq')
    .execute();
  return rows.map(({ canonical }) => parseEntry(JSON.parse(canonical)) as StoryEntry);
}

/** The database's own order depends on its collation. */
const byKey = <T, K extends keyof T>(rows: T[], key: K): T[] =>
  rows.sort((one, other) => (one[key] < other[key] ? -1 : 1));

async function readMembers(db: Db, house: string): Promise<ArchivedMember[]> {
  const columns = ['mark', 'kind', 'name', 'place', 'track', 'note', 'other', 'setOut', 'retired'] as const;
  return byKey(await db.selectFrom('member').select(columns).where('houseId', '=', house).execute(), 'mark');
}

async function readPhotos(db: Db, house: string): Promise<ArchivedPhoto[]> {
  const rows = await db.selectFrom('photo').selectAll().where('houseId', '=', house).execute();
  return byKey(
    rows.map(({ id, sha256, bytes, mediaType, fileName, width, height, addedAt, addedBy, byHand }) => ({
      ...{ photo: id, sha256, bytes, mediaType, fileName, width, height, addedBy, byHand },
      addedAt: addedAt.toISOString(),
    })),
    'photo',
  );
}

async function readTags(db: Db, house: string): Promise<ArchivedTag[]> {
  const rows = await db
    .selectFrom('tag')
    .selectAll()
    .where('houseId', '=', house)
    .where('state', '=', 'standing')
    .execute();
  return byKey(
    rows.map(({ id, photoId, mark, stage, region, stretch, note, supersedes, saidAt, saidBy }) => ({
      ...{ tag: id, photo: photoId, mark, stage, region, stretch, note, supersedes, saidBy },
      saidAt: saidAt.toISOString(),
    })),
    'tag',
  );
}

async function readCoverings(db: Db, house: string, { holds, closings }: Holds): Promise<ArchivedCovering[]> {
  const listed = await readListed(db, house);
  const rows = await db.selectFrom('covering').selectAll().where('houseId', '=', house).execute();
  return byKey(
    rows.map(({ id, name, kind, plannedDay, note, zone, exceptMarks, closedAt, closedBy, closeNote }) => ({
      ...{ covering: id, name, kind: kind as CoveringKind, plannedDay, note, zone },
      ...{ except: exceptMarks, hides: listed.get(id) ?? [], hold: holds.get(id) ?? null },
      ...{ closedAt: closedAt?.toISOString() ?? null, closedBy, closeNote },
      ...(closings.get(id) ?? { release: null, without: null }),
    })),
    'covering',
  );
}

async function readListed(db: Db, house: string): Promise<Map<string, HiddenMember[]>> {
  const rows = await db
    .selectFrom('coveringHides')
    .select(['coveringId', 'mark', 'least'])
    .where('houseId', '=', house)
    .where('byZone', '=', false)
    .orderBy('position')
    .orderBy('mark')
    .execute();
  const groups = groupBy(rows, ({ coveringId }) => coveringId);
  return new Map([...groups].map(([id, group]) => [id, group.map(({ mark, least }) => ({ mark, least }))]));
}
