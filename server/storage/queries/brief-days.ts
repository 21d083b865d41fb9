import { sql } from 'kysely';
import { compareMarks } from '#domain/frame/mark-order';
import type { Mark } from '#domain/frame/mark';
import { holdPhase } from '#domain/record/hold-phase';
import type { INSPECTED } from '#domain/contract/journal-views';
import { groupBy } from '#domain/group-by';
import { STAGES } from '#domain/frame/stage';
import type { DayFacts } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import { readNotesOfDays } from './days.ts';
import { smallPhotos } from './small-photos.ts';

/** Of what was said of inspections on a day so many are named. */
const NAMED = 6;

export interface BriefLimits {
  readonly pictures: number;
  readonly marks: number;
}

/** What was photographed, shown, said, noted and closed on each of these days, in few queries for all of them. */
export async function readBriefDays(
  db: Db,
  house: string,
  zone: string,
  days: readonly string[],
  limits: BriefLimits,
): Promise<DayFacts[]> {
  if (days.length === 0) return [];
  const of = { db, house, zone, days };
  const counts = await countPhotos(of);
  const pictures = await smallPhotos(db, house, days, { each: limits.pictures, doubted: false });
  const shown = await readShown(of, limits.marks);
  const said = await countSaid(of);
  const tags = await countTags(of);
  const notes = await readNotesOfDays(of.db, of.house, of.days);
  const closed = await readClosed(of);
  const inspected = await readInspected(of);
  const people = await readPeople(of);
  return days.map((day) => {
    const here = <T extends { day: string | null }>(rows: readonly T[]) =>
      rows.filter((row) => row.day === day);
    const peopleWho = (what: 'added' | 'tagged') =>
      here(people)
        .filter(({ did }) => did === what)
        .map(({ name }) => name);
    return {
      day,
      photos: here(counts)[0]?.photos ?? 0,
      pictures: here(pictures).map(({ photo }) => photo),
      shown: STAGES.flatMap((stage) => {
        const rows = here(shown).filter((row) => row.stage === stage);
        const marks = rows.map(({ mark }) => mark as Mark).sort(compareMarks);
        return rows[0] ? [{ stage, members: rows[0].members, marks }] : [];
      }),
      tags: here(tags)[0]?.tags ?? 0,
      tagsElsewhere: here(tags)[0]?.elsewhere ?? 0,
      statements: here(said)[0]?.statements ?? 0,
      members: here(said)[0]?.members ?? 0,
      notes: here(notes),
      closed: here(closed).map(({ id, name, closedRelease, withdrawnAt }) => ({
        ...{ id, name },
        phase: holdPhase({
          hold: { state: 'planned' },
          closed: { release: closedRelease, takenBack: withdrawnAt },
        }),
      })),
      inspected: [...groupBy(here(inspected), ({ what }) => what)].map(([what, rows]) => ({
        what,
        names: rows.slice(0, NAMED).map(({ name }) => name),
        count: rows.length,
      })),
      addedBy: peopleWho('added'),
      taggedBy: peopleWho('tagged'),
    };
  });
}

interface Of {
  readonly db: Db;
  readonly house: string;
  readonly zone: string;
  readonly days: readonly string[];
}

const dayIn = (zone: string, column: string) =>
  sql<string>`(${sql.ref(column)} at time zone ${sql.lit(zone)})::date`;

function countPhotos({ db, house, days }: Of) {
  return db
    .selectFrom('photo')
    .where('houseId', '=', house)
    .where('captureDay', 'in', days)
    .where('doubt', 'is', null)
    .groupBy('captureDay')
    .select((eb) => ['captureDay as day', eb.fn.countAll<number>().as('photos')])
    .execute();
}

/** The first marks at each stage on the photos of a day, each row with how many there are. */
function readShown({ db, house, days }: Of, marks: number) {
  const once = db
    .selectFrom('tag')
    .innerJoin('photo', 'photo.id', 'tag.photoId')
    .where('tag.houseId', '=', house)
    .where('tag.state', '=', 'standing')
    .where('photo.captureDay', 'in', days)
    .where('photo.doubt', 'is', null)
    .select(['photo.captureDay as day', 'tag.stage', 'tag.mark'])
    .distinct();
  const numbered = db
    .selectFrom(once.as('once'))
    .selectAll('once')
    .select([
      sql<number>`count(*) over (partition by once.day, once.stage)`.as('members'),
      sql<number>`row_number() over (partition by once.day, once.stage order by once.mark)`.as('place'),
    ]);
  return db
    .selectFrom(numbered.as('numbered'))
    .selectAll('numbered')
    .where('numbered.place', '<=', marks)
    .execute();
}

function countSaid({ db, house, zone, days }: Of) {
  const day = dayIn(zone, 'at');
  const imported = sql<number>`coalesce(sum(case when kind = 'schedule.imported' then
    jsonb_array_length(canonical::jsonb #> '{payload,added}')
    + jsonb_array_length(canonical::jsonb #> '{payload,changed}') end), 0)`;
  return db
    .selectFrom('ledgerEntry')
    .where('houseId', '=', house)
    .where(day, 'in', days)
    .groupBy(day)
    .select((eb) => [day.as('day'), eb.fn.countAll<number>().as('statements'), imported.as('members')])
    .execute();
}

function countTags({ db, house, zone, days }: Of) {
  const day = dayIn(zone, 'tag.said_at');
  const elsewhere = sql<number>`count(*) filter (where photo.capture_day is distinct from ${day}
    or photo.doubt is not null)`;
  return (
    db
      .selectFrom('tag')
      .innerJoin('photo', 'photo.id', 'tag.photoId')
      .where('tag.houseId', '=', house)
      // Undone or said anew, it would count twice.
      .where('tag.state', '=', 'standing')
      .where(day, 'in', days)
      .groupBy(day)
      .select((eb) => [day.as('day'), eb.fn.countAll<number>().as('tags'), elsewhere.as('elsewhere')])
      .execute()
  );
}

function readClosed({ db, house, zone, days }: Of) {
  const day = dayIn(zone, 'closed_at');
  return db
    .selectFrom('covering')
    .leftJoin('release', 'release.id', 'covering.closedRelease')
    .where('covering.houseId', '=', house)
    .where(day, 'in', days)
    .select([day.as('day'), 'covering.id', 'name', 'closedRelease', 'withdrawnAt'])
    .orderBy('closedAt')
    .orderBy('covering.id')
    .execute();
}

/**
 * Coverings of which something was said of an inspection, and members of which a tag was doubted or such a doubt
 * answered, each once a day, by when it was first said.
 */
async function readInspected({ db, house, zone, days }: Of) {
  const day = dayIn(zone, 'entry.at');
  const { rows } = await sql<{ day: string; what: (typeof INSPECTED)[number]; name: string }>`
    select ${day} as day, kinds.what,
      coalesce(covering.name, finding #>> '{marks,0}', entry.canonical::jsonb #>> '{payload,mark}') as name
    from ledger_entry as entry
    join (values ('covering.ready', 'ready'), ('covering.refused', 'refused'), ('covering.released', 'released'),
      ('release.withdrawn', 'takenBack'), ('tag.disputed', 'doubted'), ('findings.accepted', 'answered'))
      as kinds (kind, what) on kinds.kind = entry.kind
    left join covering on covering.id::text = entry.canonical::jsonb #>> '{payload,covering}'
    left join lateral jsonb_array_elements(entry.canonical::jsonb #> '{payload,findings}') as finding
      on entry.kind = 'findings.accepted'
    where entry.house_id = ${house} and ${day} in (${sql.join([...days])})
      and (entry.kind <> 'findings.accepted' or finding ->> 'kind' = 'disputed')
    group by 1, 2, 3
    order by min(entry.seq), 3`.execute(db);
  return rows;
}

/** Those who added the photos of a day, and those who said its tags: what its photos show, and what was said on it. */
async function readPeople({ db, house, zone, days }: Of) {
  const saidDay = dayIn(zone, 'tag.said_at');
  const theseDays = sql.join([...days]);
  const { rows } = await sql<{ day: string; did: 'added' | 'tagged'; name: string }>`
    select capture_day as day, 'added' as did, added_by ->> 'name' as name
    from photo where house_id = ${house} and doubt is null and capture_day in (${theseDays})
    union
    select photo.capture_day, 'tagged', tag.said_by ->> 'name'
    from tag join photo on photo.id = tag.photo_id
    where tag.house_id = ${house} and tag.state = 'standing'
      and photo.doubt is null and photo.capture_day in (${theseDays})
    union
    select ${saidDay}, 'tagged', tag.said_by ->> 'name'
    from tag where tag.house_id = ${house} and tag.state = 'standing' and ${saidDay} in (${theseDays})
    order by 1, 2, 3`.execute(db);
  return rows.filter(({ name }) => name !== null);
}
