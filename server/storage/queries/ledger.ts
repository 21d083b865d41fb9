import { sql } from 'kysely';
import { EntryFrame, parseEntry, type Entry, type StatementKind } from '#domain/ledger/statements';
import type { LedgerEntryView } from '#domain/contract/views';
import { memberSubject } from '#domain/ledger/subjects';
import type { Db } from '../open-database.ts';
import type { Row } from '../tables.ts';

type StoredEntry = Pick<Row<'ledgerEntry'>, 'canonical' | 'leaf' | 'head'>;

export async function readEntries(
  db: Db,
  house: string,
  from: number,
  limit: number,
): Promise<LedgerEntryView[]> {
  const rows = await db
    .selectFrom('ledgerEntry')
    .select(['canonical', 'leaf', 'head'])
    .where('houseId', '=', house)
    .where('seq', '>=', from)
    .orderBy('seq')
    .limit(limit)
    .execute();
  return rows.map(toView);
}

export async function readEntriesAbout(db: Db, house: string, subject: string): Promise<LedgerEntryView[]> {
  const rows = await db
    .selectFrom('ledgerEntry')
    .innerJoin('statementSubject as about', (join) =>
      join.onRef('about.houseId', '=', 'ledgerEntry.houseId').onRef('about.seq', '=', 'ledgerEntry.seq'),
    )
    .select(['canonical', 'leaf', 'head'])
    .where('about.houseId', '=', house)
    .where('about.subject', '=', subject)
    .orderBy('ledgerEntry.seq')
    .execute();
  return rows.map(toView);
}

/** Doubts of tags of these members, and the answers to them. */
export async function readDoubtsAbout(
  db: Db,
  house: string,
  marks: readonly string[],
): Promise<LedgerEntryView[]> {
  if (marks.length === 0) return [];
  const rows = await aboutIn(db, house, ['tag.disputed', 'findings.accepted', 'finding.reopened'])
    .where('about.subject', '=', sql<string>`any(${marks.map(memberSubject)}::text[])`)
    // Canonical JSON has it in this form only.
    .where((eb) =>
      eb.or([eb('entry.kind', '=', 'tag.disputed'), eb('entry.canonical', 'like', '%"kind":"disputed"%')]),
    )
    .select(['entry.seq', 'canonical', 'leaf', 'head'])
    .distinctOn('entry.seq')
    .orderBy('entry.seq')
    .execute();
  return rows.map(toView);
}

/** The latest statement of these kinds about a subject. */
export async function readLastAbout(
  db: Db,
  house: string,
  subject: string,
  kinds: readonly StatementKind[],
): Promise<Entry | undefined> {
  const row = await aboutIn(db, house, kinds)
    .where('about.subject', '=', subject)
    .select('canonical')
    .orderBy('about.seq', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row && parseEntry(JSON.parse(row.canonical));
}

/** Of these subjects those about which a statement of these kinds came after the entry `after`. */
export async function readSubjectsAfter(
  db: Db,
  house: string,
  subjects: readonly string[],
  { kinds, after }: { kinds: readonly StatementKind[]; after: number },
): Promise<string[]> {
  if (subjects.length === 0) return [];
  const rows = await aboutIn(db, house, kinds)
    .where('about.subject', '=', sql<string>`any(${[...subjects]}::text[])`)
    .where('about.seq', '>', after)
    .select('about.subject')
    .distinct()
    .execute();
  return rows.map(({ subject }) => subject);
}

function aboutIn(db: Db, house: string, kinds: readonly StatementKind[]) {
  return db
    .selectFrom('statementSubject as about')
    .innerJoin('ledgerEntry as entry', (join) =>
      join.onRef('entry.houseId', '=', 'about.houseId').onRef('entry.seq', '=', 'about.seq'),
    )
    .where('about.houseId', '=', house)
    .where('entry.kind', 'in', kinds);
}

/** What was said from `from` until before `to`. */
export async function readEntriesBetween(
  db: Db,
  house: string,
  from: Date,
  to: Date,
): Promise<LedgerEntryView[]> {
  const rows = await db
    .selectFrom('ledgerEntry')
    .select(['canonical', 'leaf', 'head'])
    .where('houseId', '=', house)
    .where('at', '>=', from)
    .where('at', '<', to)
    .orderBy('seq')
    .execute();
  return rows.map(toView);
}

export async function hasLedger(db: Db, house: string): Promise<boolean> {
  const rows = await db.selectFrom('ledger').select('size').where('houseId', '=', house).execute();
  return rows.length > 0;
}

export async function readLedgerState(db: Db, house: string): Promise<{ size: number; head: string }> {
  const row = await db
    .selectFrom('ledger')
    .select(['size', 'head'])
    .where('houseId', '=', house)
    .executeTakeFirstOrThrow();
  return { size: row.size, head: row.head.toString('hex') };
}

function toView({ canonical, leaf, head }: StoredEntry): LedgerEntryView {
  const { house: _, ...entry } = EntryFrame.parse(JSON.parse(canonical));
  return { ...entry, leaf: leaf.toString('hex'), head: head.toString('hex') };
}
