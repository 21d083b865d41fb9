import { sql } from 'kysely';
import { measureLine } from '#domain/place/geodesic';
import { canonicalJson } from '#domain/ledger/canonical-json';
import { basisOf, type Finding } from '#domain/record/findings/finding';
import { findingsOfCovering } from '#domain/record/findings/of-covering';
import { findingsOfMember, type Distance } from '#domain/record/findings/of-member';
import { findingOfPair } from '#domain/record/findings/of-pictures';
import { findingsOfPhoto } from '#domain/record/findings/of-photo';
import { inBatches } from '../projection/in-batches.ts';
import { lockLedger } from '../ledger-store.ts';
import type { Db } from '../open-database.ts';
import { nearlySamePairs } from '../queries/alike.ts';
import { sha256 } from '../sha256.ts';
import type { Tx } from '../tx.ts';
import {
  readCoveringEvidence,
  readMemberEvidence,
  readPhotoEvidence,
  readPictureEvidence,
  type Only,
} from './material.ts';
import { nothingTouched, type Touched } from './touched.ts';

const metresBetween: Distance = (a, b) => measureLine(a, b).distanceM;

type Room = 'photo' | 'member' | 'pair' | 'covering';

/**
 * Makes again the findings that rest on what was touched, and only those: a photo's on the photo and its
 * tags, a member's on its tags and their photos, a covering's on the records of what it hides.
 */
export async function refreshFindings(tx: Tx, house: string, touched: Touched): Promise<void> {
  const { all } = touched;
  const photos = all
    ? null
    : [...new Set([...touched.photos, ...(await photosOf(tx, house, touched.cameras))])];
  const marks = photos && [...new Set([...touched.marks, ...(await marksOn(tx, house, photos))])];
  const changed = new Set(marks ?? []);
  await renew(tx, house, 'photo', photos, changed, async (only) =>
    (await readPhotoEvidence(tx, house, only)).flatMap((photo) =>
      findingsOfPhoto(photo).map((finding) => ({ finding, scope: photo.photo })),
    ),
  );
  await renew(tx, house, 'member', marks, changed, async (only) =>
    (await readMemberEvidence(tx, house, only)).flatMap((member) =>
      findingsOfMember(member, metresBetween).map((finding) => ({ finding, scope: member.mark })),
    ),
  );
  await renewPairs(tx, house, photos && [...new Set([...photos, ...touched.pictures])], changed);
  const coverings =
    all || touched.allCoverings
      ? null
      : [
          ...new Set([
            ...touched.coverings,
            ...(await closedBeside(tx, house, [...touched.coverings])),
            ...(await closedOver(tx, house, changed)),
          ]),
        ];
  await renew(tx, house, 'covering', coverings, changed, async (only) =>
    (await readCoveringEvidence(tx, house, only)).flatMap((covering) =>
      findingsOfCovering(covering).map((finding) => ({ finding, scope: covering.covering })),
    ),
  );
}

export function refreshAllFindings(tx: Tx, house: string): Promise<void> {
  return refreshFindings(tx, house, { ...nothingTouched(), all: true });
}

/** A pair rests on both its photos, and so has no scope of its own by which it could be found. */
async function renewPairs(tx: Tx, house: string, photos: Only, changed: Set<string>): Promise<void> {
  if (photos?.length === 0) return;
  let gone = tx.deleteFrom('finding').where('houseId', '=', house).where('scope', '=', 'pair:');
  if (photos !== null)
    gone = gone.where('key', 'in', (eb) =>
      eb
        .selectFrom('findingThing')
        .select('key')
        .where('houseId', '=', house)
        .where(
          'thing',
          'in',
          photos.map((photo) => `photo:${photo}`),
        ),
    );
  const removed = await gone.returning('content').execute();
  const pairs = await nearlySamePairs(tx, house, photos);
  const evidence = await readPictureEvidence(tx, house, [...new Set(pairs.flatMap(({ a, b }) => [a, b]))]);
  const found = pairs.flatMap(({ a, b, distance }) => {
    const [one, other] = [evidence.get(a), evidence.get(b)];
    const finding = one && other && findingOfPair(one, other, distance);
    return finding ? [{ finding, scope: '' }] : [];
  });
  await insert(tx, house, 'pair', found);
  for (const { marks } of [...removed.map(({ content }) => content), ...found.map(({ finding }) => finding)])
    for (const mark of marks) changed.add(mark);
}

/** What the machine has found out about a photo, beside all that is said: once measured, once its picture is made. */
export async function refreshFindingsOf(
  db: Db,
  house: string,
  what: { photos?: readonly string[]; pictures?: readonly string[] },
): Promise<void> {
  await db.transaction().execute(async (tx) => {
    if (!(await lockLedger(tx, house))) return;
    const touched = nothingTouched();
    for (const photo of what.photos ?? []) touched.photos.add(photo);
    for (const photo of what.pictures ?? []) touched.pictures.add(photo);
    await refreshFindings(tx, house, touched);
  });
}

/** Takes away the findings of these scopes and puts what is found now; notes whose marks come or go. */
async function renew(
  tx: Tx,
  house: string,
  room: Room,
  only: Only,
  changed: Set<string>,
  find: (only: Only) => Promise<{ finding: Finding; scope: string }[]>,
): Promise<void> {
  const parts: Only[] = only === null ? [null] : [];
  if (only !== null) await inBatches(only, 1000, async (part) => void parts.push(part));
  for (const part of parts) {
    const removed = await remove(tx, house, room, part);
    const found = await find(part);
    await insert(tx, house, room, found);
    for (const { marks } of [...removed, ...found.map(({ finding }) => finding)])
      for (const mark of marks) changed.add(mark);
  }
}

async function remove(tx: Tx, house: string, room: Room, only: Only): Promise<{ marks: string[] }[]> {
  let gone = tx.deleteFrom('finding').where('houseId', '=', house);
  gone =
    only === null
      ? gone.where('scope', 'like', `${room}:%`)
      : gone.where(
          'scope',
          'in',
          only.map((scope) => `${room}:${scope}`),
        );
  const rows = await gone.returning('content').execute();
  return rows.map(({ content }) => content);
}

async function insert(
  tx: Tx,
  house: string,
  room: Room,
  found: readonly { finding: Finding; scope: string }[],
): Promise<void> {
  await inBatches(found, 500, async (batch) => {
    const rows = batch.map(({ finding, scope }) => {
      const content = canonicalJson(finding);
      const basis = Buffer.from(sha256(new TextEncoder().encode(canonicalJson(basisOf(finding))))).toString(
        'hex',
      );
      return {
        houseId: house,
        key: finding.key,
        kind: finding.kind,
        scope: `${room}:${scope}`,
        basis,
        content,
      };
    });
    await tx.insertInto('finding').values(rows).execute();
    await datesOf(
      tx,
      house,
      rows.map(({ key }) => key),
    );
  });
  const things = found.flatMap(({ finding }) =>
    thingsOf(finding).map((thing) => ({ houseId: house, key: finding.key, thing })),
  );
  await inBatches(things, 5000, async (batch) => {
    await tx.insertInto('findingThing').values(batch).execute();
  });
}

/** The latest photo of each, by which they are listed. */
async function datesOf(tx: Tx, house: string, keys: readonly string[]): Promise<void> {
  await sql`update finding set at = (
      select max(photo.captured_at) from photo where photo.id in (
        select (jsonb_array_elements_text(finding.content -> 'photos'))::uuid))
    where house_id = ${house} and key in (${sql.join([...keys])})`.execute(tx);
}

function thingsOf({ photos, tags }: Finding): string[] {
  return [...photos.map((photo) => `photo:${photo}`), ...new Set(tags.map(({ tag }) => `tag:${tag}`))];
}

async function photosOf(tx: Tx, house: string, cameras: ReadonlySet<string>): Promise<string[]> {
  if (cameras.size === 0) return [];
  const rows = await tx
    .selectFrom('photo')
    .select('id')
    .where('houseId', '=', house)
    .where('camera', 'in', [...cameras])
    .execute();
  return rows.map(({ id }) => id);
}

async function marksOn(tx: Tx, house: string, photos: readonly string[]): Promise<string[]> {
  const marks = new Set<string>();
  await inBatches(photos, 1000, async (batch) => {
    const rows = await tx
      .selectFrom('tag')
      .where('houseId', '=', house)
      .where('photoId', 'in', batch)
      .where('state', '=', 'standing')
      .select('mark')
      .distinct()
      .execute();
    for (const { mark } of rows) marks.add(mark);
  });
  return [...marks];
}

/** Closed coverings over the same members: with a layer that closes or is opened up, they hide them or do not. */
async function closedBeside(tx: Tx, house: string, coverings: readonly string[]): Promise<string[]> {
  if (coverings.length === 0) return [];
  const rows = await tx
    .selectFrom('coveringHides')
    .innerJoin('covering', 'covering.id', 'coveringHides.coveringId')
    .where('coveringHides.houseId', '=', house)
    .where('coveringHides.mark', 'in', (eb) =>
      eb.selectFrom('coveringHides').where('coveringId', 'in', coverings).select('mark'),
    )
    .where('covering.closedAt', 'is not', null)
    .where('covering.zone', 'is not', null)
    .select('covering.id')
    .distinct()
    .execute();
  return rows.map(({ id }) => id);
}

/** Closed coverings that hide any of these members. */
async function closedOver(tx: Tx, house: string, marks: ReadonlySet<string>): Promise<string[]> {
  const found = new Set<string>();
  await inBatches([...marks], 1000, async (batch) => {
    const rows = await tx
      .selectFrom('coveringHides')
      .innerJoin('covering', 'covering.id', 'coveringHides.coveringId')
      .where('coveringHides.houseId', '=', house)
      .where('coveringHides.mark', 'in', batch)
      .where('covering.closedAt', 'is not', null)
      .select('covering.id')
      .distinct()
      .execute();
    for (const { id } of rows) found.add(id);
  });
  return [...found];
}
