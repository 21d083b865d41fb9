import { sql } from 'kysely';
import type { StatedGrid } from '#domain/contract/frame-shapes';
import type { FrameMemberView } from '#domain/contract/frame-views';
import { axisOf } from '#domain/frame/axis-of';
import { gridReader, type GridReader } from '#domain/frame/grid-reader';
import type { Mark } from '#domain/frame/mark';
import type { Axis, AxisProblem, SetOut } from '#domain/frame/set-out';
import { STAGES } from '#domain/frame/stage';
import { groupBy } from '#domain/group-by';
import { trackOf } from '#domain/lexicon/track-of-kind';
import { usualLie } from '#domain/lexicon/usual-lie';
import type { Lexicon } from '#domain/lexicon/lexicon';
import type { StatedRequirement } from '#domain/record/requirements-of';
import type { FramePart } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import { marksOn } from './marks-on.ts';
import { readLexicon } from './terms.ts';
import { rankOf } from './views.ts';

/** What of a house puts its members into space and says what coverings need. */
export interface FrameGround {
  readonly stated: StatedGrid | null;
  readonly reader: GridReader | null;
  readonly requirements: readonly StatedRequirement[];
  readonly lexicon: Lexicon;
}

export async function readFrameGround(db: Db, house: string): Promise<FrameGround> {
  const row = await db
    .selectFrom('house')
    .select(['grid', 'requirements'])
    .where('id', '=', house)
    .executeTakeFirst();
  const stated = row?.grid ?? null;
  return {
    stated,
    reader: stated && gridReader(stated),
    requirements: row?.requirements ?? [],
    lexicon: await readLexicon(db, house),
  };
}

/** The axis of a member, where grid and schedule give one. */
export function axisIn(ground: Lying, setOut: SetOut | null, kind: string): Axis | null {
  return lieIn(ground, setOut, kind).axis;
}

type Lying = Pick<FrameGround, 'reader' | 'lexicon'>;

function lieIn(
  { reader, lexicon }: Lying,
  setOut: SetOut | null,
  kind: string,
): { axis: Axis | null; problem: AxisProblem | null } {
  if (reader === null || setOut === null) return { axis: null, problem: null };
  const read = axisOf(setOut, usualLie(kind, lexicon), reader);
  return read.ok ? { axis: read.axis, problem: null } : { axis: null, problem: read.problem };
}

export async function readFrameMembers(
  db: Db,
  house: string,
  zone: string,
  part: FramePart = 'all',
): Promise<FrameMemberView[]> {
  const ground = await readFrameGround(db, house);
  let members = db
    .selectFrom('member')
    .select(['mark', 'kind', 'name', 'place', 'retired', 'track', 'setOut'])
    .where('houseId', '=', house)
    .orderBy('mark');
  if (part !== 'all') members = members.where('mark', 'in', marksOn(db, part.photo));
  const seen = groupBy(await readSeen(db, house, zone, part), ({ mark }) => mark);
  return (await members.execute()).map(({ setOut, mark, track, ...facts }) => ({
    mark: mark as Mark,
    ...facts,
    track: trackOf(track, facts.kind, ground.lexicon),
    ...lieIn(ground, setOut, facts.kind),
    seen: furthest(seen.get(mark) ?? []),
  }));
}

/** The furthest stage of each member on each day of its photos whose date nothing contradicts. */
function readSeen(db: Db, house: string, zone: string, part: FramePart) {
  let tags = db.selectFrom('tag');
  if (part !== 'all') tags = tags.where('tag.mark', 'in', marksOn(db, part.photo));
  return tags
    .innerJoin('photo', 'photo.id', 'tag.photoId')
    .where('tag.houseId', '=', house)
    .where('tag.state', '=', 'standing')
    .where('photo.capturedAt', 'is not', null)
    .where('photo.doubt', 'is', null)
    .select((eb) => [
      'tag.mark',
      sql<string>`(photo.captured_at at time zone ${zone})::date`.as('day'),
      eb.fn.max(rankOf(eb)).as('rank'),
    ])
    .groupBy(['tag.mark', 'day'])
    .orderBy('day')
    .execute();
}

function furthest(days: readonly { day: string; rank: number }[]): FrameMemberView['seen'] {
  let best = -1;
  return days.flatMap(({ day, rank }) => {
    const stage = STAGES[rank];
    if (rank <= best || !stage) return [];
    best = rank;
    return [{ day, stage }];
  });
}
