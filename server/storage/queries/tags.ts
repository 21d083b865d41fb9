import { sql } from 'kysely';
import type { ShownStretch } from '#domain/contract/frame-shapes';
import type { GridReader } from '#domain/frame/grid-reader';
import { stretchBetween } from '#domain/frame/name-stretch';
import type { Axis } from '#domain/frame/set-out';
import type { Stretch } from '#domain/record/stretches';
import type { TagView } from '#domain/contract/views';
import type { ReportMaterial, ReportPart, Sighting } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import { readTagFindings } from './findings.ts';
import { readCoverings } from './coverings.ts';
import { groupBy } from '#domain/group-by';
import { sheetedAt, type Protection, type Sheeted } from '#domain/record/protection';
import { axisIn, readFrameGround } from './frame.ts';
import { readLayersBeside } from './layers.ts';
import { toLegibilityView } from './legibility.ts';
import { isOfPhoto, marksOn } from './marks-on.ts';
import { readLaid } from './protections.ts';
import { acceptingRelease } from '#domain/record/waived';
import { readReleasedExtent, readWaived } from './releases.ts';
import { toTagView } from './views.ts';

function tagsWithSchedule(db: Db) {
  return db
    .selectFrom('tag')
    .leftJoin('member', (join) =>
      join.onRef('member.houseId', '=', 'tag.houseId').onRef('member.mark', '=', 'tag.mark'),
    )
    .leftJoin('legibility', 'legibility.tagId', 'tag.id')
    .selectAll('tag')
    .select(['legibility.measures', 'legibility.verdict', 'legibility.reasons'])
    .select((eb) => eb('member.mark', 'is not', null).as('known'));
}

type TagRow = Awaited<ReturnType<ReturnType<typeof tagsWithSchedule>['execute']>>[number];
const view = (row: TagRow): TagView =>
  toTagView({ ...row, known: Boolean(row.known), legibility: toLegibilityView(row) });

export async function readTag(db: Db, tag: string): Promise<TagView | undefined> {
  const row = await tagsWithSchedule(db).where('tag.id', '=', tag).executeTakeFirst();
  return row && view(row);
}

export async function readTagsOn(db: Db, photo: string): Promise<TagView[]> {
  const query = tagsWithSchedule(db).where('tag.photoId', '=', photo);
  return (await query.orderBy('tag.saidAt').orderBy('tag.id').execute()).map(view);
}

/** All tags of a member, ended ones too, with their photos, in order of capture, undated last. */
export async function readSightings(db: Db, house: string, mark: string): Promise<Sighting[]> {
  const rows = await tagsWithPhotos(db)
    .where('tag.houseId', '=', house)
    .where('tag.mark', '=', mark)
    .execute();
  return rows.map(toSighting);
}

export async function readSightingsOf(db: Db, tags: readonly string[]): Promise<Sighting[]> {
  if (tags.length === 0) return [];
  const rows = await tagsWithPhotos(db)
    .where('tag.id', '=', sql<string>`any(${[...tags]}::uuid[])`)
    .execute();
  return rows.map(toSighting);
}

function tagsWithPhotos(db: Db) {
  return tagsWithSchedule(db)
    .innerJoin('photo', 'photo.id', 'tag.photoId')
    .select(['photo.fileName', 'photo.capture', 'photo.camera'])
    .orderBy('photo.capturedAt', (order) => order.asc().nullsLast())
    .orderBy('tag.id');
}

type SightingRow = Awaited<ReturnType<ReturnType<typeof tagsWithPhotos>['execute']>>[number];
function toSighting(row: SightingRow): Sighting {
  const { fileName, capture, camera } = row;
  return { tag: view(row), fileName, capture, camera };
}

/** `part`: all coverings with all members of the house, or some coverings with what they hide, or a part of that. */
export async function readReportMaterial(
  db: Db,
  house: string,
  part: ReportPart = 'all',
): Promise<ReportMaterial> {
  let hidden = db
    .selectFrom('coveringHides')
    .innerJoin('covering', 'covering.id', 'coveringHides.coveringId')
    .where('covering.houseId', '=', house)
    .select('coveringHides.mark');
  let members = db
    .selectFrom('member')
    .select(['mark', 'kind', 'place', 'retired', 'setOut'])
    .where('houseId', '=', house);
  if (part === 'open') hidden = hidden.where('covering.closedAt', 'is', null);
  else if (isOfPhoto(part)) hidden = hidden.where('coveringHides.mark', 'in', marksOn(db, part.photo));
  else if (part !== 'all') hidden = hidden.where('covering.id', 'in', part.coverings);
  if (part !== 'all') members = members.where('mark', 'in', hidden);
  const tags = await db
    .selectFrom('tag')
    .innerJoin('photo', 'photo.id', 'tag.photoId')
    .leftJoin('legibility', 'legibility.tagId', 'tag.id')
    .where('tag.houseId', '=', house)
    .where('tag.state', '=', 'standing')
    .where('tag.mark', 'in', hidden)
    .select('legibility.verdict')
    .select(['tag.id', 'tag.photoId', 'tag.mark', 'tag.stage', 'tag.stretch', 'photo.capturedAt'])
    .select('photo.doubt')
    .select(['photo.uncertaintyS', 'photo.datedBy'])
    .execute();
  const coverings = await readCoverings(db, house, part);
  const waived = await readWaived(db, coverings.flatMap(acceptingRelease));
  const open = coverings.filter(({ closed }) => closed === null);
  const extents = await readReleasedExtent(
    db,
    open.flatMap(({ hold }) => hold.release ?? []),
  );
  const findings = await readTagFindings(db, house, isOfPhoto(part) ? tags.map(({ id }) => id) : 'all');
  const ground = await readFrameGround(db, house);
  const { reader } = ground;
  const inSpace = (await members.execute()).map(({ setOut, ...member }) => ({
    ...member,
    axis: axisIn(ground, setOut, member.kind),
  }));
  const axes = new Map(inSpace.map(({ mark, axis }) => [mark, axis]));
  const protection = await readLaid(db, house);
  const laidOver = groupBy(protection, ({ mark }) => mark);
  return {
    members: inSpace,
    coverings: coverings.map((covering) => ({
      ...covering,
      waived: waived.get(covering.id) ?? [],
      released: extents.get(covering.id) ?? null,
    })),
    beside: await readLayersBeside(db, house, part),
    reader,
    protection,
    tags: tags.map((row) => ({
      id: row.id,
      photo: row.photoId,
      mark: row.mark,
      stage: row.stage,
      stretch: shownStretch(row.stretch, axes.get(row.mark) ?? null, reader),
      sheeted: sheetedOn(row, laidOver.get(row.mark)),
      instant: row.capturedAt && row.capturedAt.toISOString(),
      uncertaintyS: row.uncertaintyS ?? 0,
      datedBy: row.datedBy,
      doubt: row.doubt,
      legibility: row.verdict,
      findings: findings.get(row.id) ?? [],
    })),
  };
}

function sheetedOn(
  { capturedAt, uncertaintyS }: { capturedAt: Date | null; uncertaintyS: number | null },
  laid: readonly Protection[] = [],
): readonly Sheeted[] {
  return capturedAt ? sheetedAt(capturedAt.toISOString(), uncertaintyS ?? 0, laid) : [];
}

/** A tag whose marks no longer lie on its member shows no part of it that anybody could name. */
const NO_PART: Stretch = { from: 0, to: 0 };

/** What a tag shows of a member; null: all of it. */
function shownStretch(
  shown: ShownStretch | null,
  axis: Axis | null,
  reader: GridReader | null,
): Stretch | null {
  if (!shown || !axis || !reader) return null;
  return stretchBetween(shown, axis, reader) ?? NO_PART;
}
