import { sql } from 'kysely';
import { gridReader, type GridReader } from '#domain/frame/grid-reader';
import type { Axis, SetOut } from '#domain/frame/set-out';
import { parseEntry, type Entry, type StatementKind, type StatementOf } from '#domain/ledger/statements';
import { memberSubject } from '#domain/ledger/subjects';
import type { ReleaseGround, ReleaseOf, RoleSince, TagDoubt } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import { axisIn } from './frame.ts';
import { readLexicon } from './terms.ts';

type Said<K extends StatementKind> = Entry<StatementOf<K>>;

/** What of the ledger before a release its sheet tells beside the release's own words. */
export async function readReleaseGround(db: Db, of: ReleaseOf): Promise<ReleaseGround> {
  const reader = of.marks.length === 0 ? null : await readGrid(db, of);
  return {
    reader,
    axes: reader === null ? new Map() : await readAxes(db, of, reader),
    doubts: of.tags.length === 0 ? [] : await readDoubts(db, of),
    roles: await readRoles(db, of.house),
  };
}

/** Of these kinds, in order. */
function entriesOf(db: Db, house: string, kinds: readonly StatementKind[]) {
  return db
    .selectFrom('ledgerEntry as entry')
    .select('entry.canonical')
    .where('entry.houseId', '=', house)
    .where('entry.kind', 'in', kinds)
    .orderBy('entry.seq');
}

function parsed<K extends StatementKind>(rows: readonly { canonical: string }[]): Said<K>[] {
  return rows.map(({ canonical }) => parseEntry(JSON.parse(canonical)) as Said<K>);
}

async function readGrid(db: Db, { house, seq }: ReleaseOf): Promise<GridReader | null> {
  const rows = await entriesOf(db, house, ['grid.stated']).where('entry.seq', '<', seq).execute();
  const stated = parsed<'grid.stated'>(rows.slice(-1))[0];
  return stated ? gridReader(stated.payload) : null;
}

/** By the latest word before it about each member; the crew's own names of kinds are those of today. */
async function readAxes(
  db: Db,
  { house, seq, marks }: ReleaseOf,
  reader: GridReader,
): Promise<Map<string, Axis | null>> {
  const subjects = marks.map(memberSubject);
  const rows = await entriesOf(db, house, ['schedule.imported', 'member.entered'])
    .where('entry.seq', 'in', (eb) =>
      eb
        .selectFrom('statementSubject as about')
        .where('about.houseId', '=', house)
        .where('about.subject', '=', sql<string>`any(${subjects}::text[])`)
        .where('about.seq', '<', seq)
        .select('about.seq'),
    )
    .execute();
  const lying = { reader, lexicon: await readLexicon(db, house) };
  const wanted = new Set(marks);
  const axes = new Map<string, Axis | null>();
  for (const { mark, setOut, kind } of parsed<'schedule.imported' | 'member.entered'>(rows).flatMap(
    membersIn,
  ))
    if (wanted.has(mark)) axes.set(mark, axisIn(lying, setOut, kind));
  return axes;
}

function membersIn({ kind, payload }: Said<'schedule.imported' | 'member.entered'>): readonly {
  mark: string;
  kind: string;
  setOut: SetOut | null;
}[] {
  return kind === 'member.entered' ? [payload] : [...payload.added, ...payload.changed];
}

async function readDoubts(db: Db, { house, seq, tags }: ReleaseOf): Promise<TagDoubt[]> {
  const subjects = [...new Set(tags.map(({ photo }) => `photo:${photo}`))];
  const rows = await entriesOf(db, house, ['tag.disputed', 'findings.accepted', 'finding.reopened'])
    .where('entry.seq', '<', seq)
    .where('entry.seq', 'in', (eb) =>
      eb
        .selectFrom('statementSubject as about')
        .where('about.houseId', '=', house)
        .where('about.subject', '=', sql<string>`any(${subjects}::text[])`)
        .select('about.seq'),
    )
    .execute();
  const byKey = new Map(tags.map(({ id }) => [`disputed:${id}`, id]));
  return parsed<'tag.disputed' | 'findings.accepted' | 'finding.reopened'>(rows).flatMap((said) => {
    const { at, by } = said;
    const { reason } = said.payload;
    return keysIn(said).flatMap((key) => {
      const tag = byKey.get(key);
      return tag === undefined ? [] : [{ tag, what: WHAT[said.kind], at, by, reason }];
    });
  });
}

const WHAT = {
  'tag.disputed': 'doubted',
  'findings.accepted': 'answered',
  'finding.reopened': 'reopened',
} as const;

function keysIn({
  kind,
  payload,
}: Said<'tag.disputed' | 'findings.accepted' | 'finding.reopened'>): readonly string[] {
  if (kind === 'tag.disputed') return [`disputed:${payload.tag}`];
  return kind === 'finding.reopened' ? [payload.key] : payload.findings.map(({ key }) => key);
}

async function readRoles(db: Db, house: string): Promise<RoleSince[]> {
  const rows = await entriesOf(db, house, ['role.granted', 'role.withdrawn']).execute();
  return parsed<'role.granted' | 'role.withdrawn'>(rows).map(({ kind, at, payload }) => ({
    person: payload.person,
    role: kind === 'role.granted' ? payload.role : null,
    since: at,
  }));
}
