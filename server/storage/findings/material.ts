import { sql } from 'kysely';
import type { Capture } from '#domain/contract/capture';
import type { LayerMaterial, ReportMaterial } from '../../services/record-store.ts';
import { clockOf } from '#domain/record/certain-order';
import { reportClosings } from '#domain/record/closing-report';
import type { ReportLine } from '#domain/record/report-line';
import { groupBy } from '#domain/group-by';
import { trackOf } from '#domain/lexicon/track-of-kind';
import type { SeenTag } from '#domain/record/findings/finding';
import type { CoveringEvidence } from '#domain/record/findings/of-covering';
import type { MemberEvidence, MemberSighting } from '#domain/record/findings/of-member';
import type { PictureEvidence } from '#domain/record/findings/of-pictures';
import type { PhotoEvidence } from '#domain/record/findings/of-photo';
import { readLexicon } from '../queries/terms.ts';
import { readTakenBack } from '../queries/releases.ts';
import { readReportMaterial } from '../queries/tags.ts';
import type { Row } from '../tables.ts';
import type { Tx } from '../tx.ts';

/** Ids or marks; null: all of the house. */
export type Only = readonly string[] | null;

/** The tags that stand, with what their photos say of time and place. */
function standingTags(tx: Tx, house: string) {
  return tx
    .selectFrom('tag')
    .innerJoin('photo', 'photo.id', 'tag.photoId')
    .where('tag.houseId', '=', house)
    .where('tag.state', '=', 'standing')
    .select(['tag.id as tag', 'tag.photoId as photo', 'tag.mark', 'tag.stage'])
    .orderBy('tag.id');
}

export async function readPhotoEvidence(tx: Tx, house: string, only: Only): Promise<PhotoEvidence[]> {
  let photos = tx
    .selectFrom('photo')
    .where('houseId', '=', house)
    .select(['id', 'capture', 'readings', 'place'])
    .orderBy('id');
  let tags = standingTags(tx, house)
    .leftJoin('legibility', 'legibility.tagId', 'tag.id')
    .select(['legibility.verdict', 'legibility.reasons']);
  if (only !== null) {
    photos = photos.where('id', 'in', only);
    tags = tags.where('tag.photoId', 'in', only);
  }
  const tagsOf = groupBy(await tags.execute(), ({ photo }) => photo);
  return (await photos.execute()).map(({ id, capture, readings, place }) => ({
    photo: id,
    capture,
    rivals: readings.rivals,
    site: place.site && place.position && { ...place.site, errorM: place.position.errorM },
    tags: (tagsOf.get(id) ?? []).map(({ verdict, reasons, ...tag }) => ({
      ...tag,
      unreadable: verdict === 'unreadable' ? (reasons ?? []) : null,
    })),
  }));
}

export async function readMemberEvidence(tx: Tx, house: string, only: Only): Promise<MemberEvidence[]> {
  let members = tx.selectFrom('member').where('houseId', '=', house).select(['mark', 'kind', 'track']);
  let tags = standingTags(tx, house).select([
    'photo.capturedAt',
    'photo.capture',
    'photo.doubt',
    'photo.camera',
    'tag.disputedAt',
    'tag.disputedBy',
    'tag.disputeReason',
    POSITION.as('position'),
  ]);
  if (only !== null) {
    members = members.where('mark', 'in', only);
    tags = tags.where('tag.mark', 'in', only);
  }
  const lexicon = await readLexicon(tx, house);
  const known = new Map((await members.execute()).map((member) => [member.mark, member]));
  const seen = groupBy(await tags.execute(), ({ mark }) => mark);
  return [...seen].map(([mark, rows]) => {
    const member = known.get(mark);
    return {
      mark,
      known: member !== undefined,
      track: trackOf(member?.track ?? null, member?.kind ?? '', lexicon),
      sightings: rows.map((row) => toSighting(row)),
    };
  });
}

const POSITION = sql<MemberSighting['position']>`photo.place -> 'position'`;

function toSighting(
  row: SeenTag & {
    capturedAt: Date | null;
    capture: Capture;
    doubt: string | null;
    camera: string | null;
    position: MemberSighting['position'];
  } & Pick<Row<'tag'>, 'disputedAt' | 'disputedBy' | 'disputeReason'>,
): MemberSighting {
  const { tag, photo, mark, stage, capturedAt, capture, doubt, camera, position } = row;
  const { disputedAt, disputedBy, disputeReason } = row;
  return {
    ...{ tag, photo, mark, stage },
    takenMs: doubt === null && capturedAt ? capturedAt.getTime() : null,
    uncertaintyMs: capture.state === 'dated' ? capture.uncertaintyS * 1000 : 0,
    clock: clockOf(camera, capture),
    disputed: disputedAt && {
      at: disputedAt.toISOString(),
      by: disputedBy?.name ?? '',
      reason: disputeReason ?? '',
    },
    position,
  };
}

/** These photos as pictures, with the tags that stand on them. */
export async function readPictureEvidence(
  tx: Tx,
  house: string,
  photos: readonly string[],
): Promise<Map<string, PictureEvidence>> {
  if (photos.length === 0) return new Map();
  const tags = groupBy(
    await standingTags(tx, house).where('tag.photoId', 'in', photos).execute(),
    ({ photo }) => photo,
  );
  const rows = await tx
    .selectFrom('photo')
    .select(['id', 'capturedAt', 'uncertaintyS'])
    .where('id', 'in', photos)
    .execute();
  return new Map(
    rows.map(({ id, capturedAt, uncertaintyS }) => [
      id,
      {
        photo: id,
        takenMs: capturedAt && capturedAt.getTime(),
        uncertaintyMs: (uncertaintyS ?? 0) * 1000,
        tags: tags.get(id) ?? [],
      },
    ]),
  );
}

/** Coverings that have closed, with what was lost under them and what has been seen of it since. */
export async function readCoveringEvidence(tx: Tx, house: string, only: Only): Promise<CoveringEvidence[]> {
  let closed = tx
    .selectFrom('covering')
    .where('houseId', '=', house)
    .where('closedAt', 'is not', null)
    .select('id');
  if (only !== null) closed = closed.where('id', 'in', only);
  const ids = (await closed.execute()).map(({ id }) => id);
  if (ids.length === 0) return [];
  const material = await readReportMaterial(tx, house, { coverings: ids });
  const reports = reportsOf(material);
  const takenBack = await readTakenBack(tx, ids);
  const seen = groupBy(await hiddenSightings(tx, house, ids), ({ covering }) => covering);
  return material.coverings.map(({ id, name, kind, closed: closing }) => {
    const lines = reports.get(id) ?? [];
    const hiddenAt = new Map(lines.map((line) => [line.mark as string, line.hiddenAt]));
    return {
      covering: id,
      name,
      kind: kind,
      closedMs: closing && Date.parse(closing.at),
      released: closing !== null && closing.release !== null,
      without: closing?.without ?? null,
      takenBack: takenBack.get(id) ?? null,
      lost: lines.filter(({ state }) => state === 'lost').map(({ mark }) => mark),
      sightings: (seen.get(id) ?? []).map((sighting) => {
        const at = hiddenAt.get(sighting.mark) ?? null;
        return { ...sighting, hiddenMs: at === null ? null : Date.parse(at) };
      }),
    };
  });
}

function reportsOf({ members, coverings, beside, tags, reader }: ReportMaterial): Map<string, ReportLine[]> {
  const inTime = <T extends LayerMaterial>({ closed, ...covering }: T) => ({
    ...covering,
    closedAt: closed && closed.at,
    closedDay: null,
  });
  const { days } = reportClosings({
    members,
    tags,
    coverings: coverings.map(inTime),
    beside: beside.map(inTime),
    asOf: '',
    today: '',
    reader,
  });
  return new Map(days.flatMap((day) => day.coverings).map(({ id, lines }) => [id, lines]));
}

async function hiddenSightings(tx: Tx, house: string, coverings: readonly string[]) {
  const rows = await standingTags(tx, house)
    .innerJoin('coveringHides', (join) =>
      join.onRef('coveringHides.mark', '=', 'tag.mark').onRef('coveringHides.houseId', '=', 'tag.houseId'),
    )
    .where('coveringHides.coveringId', 'in', coverings)
    .where('photo.doubt', 'is', null)
    .where('photo.capturedAt', 'is not', null)
    .select(['coveringHides.coveringId as covering', 'photo.capturedAt', 'photo.capture'])
    .execute();
  return rows.map(({ capturedAt, capture, ...seen }) => ({
    ...seen,
    takenMs: capturedAt?.getTime() ?? NaN,
    uncertaintyMs: capture.state === 'dated' ? capture.uncertaintyS * 1000 : 0,
  }));
}
