import type { Camera } from '#domain/contract/clock';
import type { SaidMark } from '#domain/photo/clock-reading';
import type { DatingGrounds } from '#domain/photo/date-photo';
import type { CameraFacts, KeptMark } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import type { Row } from '../tables.ts';
import { readDating } from './houses.ts';

/** Marks that stand, in the order of saying; of one camera where it is named. */
export async function readSaidMarks(
  db: Db,
  house: string,
  camera?: string,
): Promise<(SaidMark & { camera: string })[]> {
  const rows = await standing(db, house, camera).execute();
  return rows.map((row) => ({ ...saidMark(row), camera: row.camera }));
}

/** All by which one photo's time is decided. */
export async function readGrounds(db: Db, photo: string): Promise<DatingGrounds | undefined> {
  const row = await db
    .selectFrom('photo')
    .select(['houseId', 'addedAt', 'camera', 'byHand'])
    .where('id', '=', photo)
    .executeTakeFirst();
  if (!row) return undefined;
  const marks = row.camera === null ? [] : await readSaidMarks(db, row.houseId, row.camera);
  const dating = await readDating(db, row.houseId);
  return { ...dating, addedAt: row.addedAt.toISOString(), marks, byHand: row.byHand };
}

export async function readClockMark(
  db: Db,
  mark: string,
): Promise<(KeptMark & { stands: boolean }) | undefined> {
  const row = await db.selectFrom('clockMark').selectAll().where('id', '=', mark).executeTakeFirst();
  return row && { ...keptMark(row), stands: row.withdrawnAt === null };
}

/** The most used camera first. */
export async function readCameras(
  db: Db,
  house: string,
): Promise<{ cameras: CameraFacts[]; unnamed: number }> {
  const rows = await db
    .selectFrom('photo')
    .where('houseId', '=', house)
    .groupBy('camera')
    .select((eb) => [
      'camera',
      eb.fn.countAll<number>().as('photos'),
      eb.fn.min('captureDay').as('firstDay'),
      eb.fn.max('captureDay').as('lastDay'),
      eb.fn.countAll<number>().filterWhere('datedBy', '=', 'clock-mark').as('corrected'),
    ])
    .orderBy('photos', 'desc')
    .orderBy('camera')
    .execute();
  const marks = await standing(db, house).execute();
  const cameras = rows.flatMap(({ camera, ...facts }) => {
    if (camera === null) return [];
    const own = marks.filter((mark) => mark.camera === camera);
    return [{ ...cameraOf(camera), ...facts, marks: own.map(keptMark) }];
  });
  return { cameras, unnamed: rows.find(({ camera }) => camera === null)?.photos ?? 0 };
}

function standing(db: Db, house: string, camera?: string) {
  let query = db
    .selectFrom('clockMark')
    .selectAll()
    .where('houseId', '=', house)
    .where('withdrawnAt', 'is', null)
    .orderBy('seq');
  if (camera !== undefined) query = query.where('camera', '=', camera);
  return query;
}

function keptMark(row: Row<'clockMark'>): KeptMark {
  return {
    ...saidMark(row),
    photo: row.photoId,
    camera: cameraOf(row.camera),
    note: row.note,
    by: row.saidBy,
    at: row.saidAt.toISOString(),
  };
}

function saidMark(row: Row<'clockMark'>): SaidMark & Pick<KeptMark, 'shown'> {
  return {
    id: row.id,
    shown: { wallTime: row.shownWall, offsetMinutes: row.shownOffset },
    trueTime: row.trueTime.toISOString(),
    withinS: row.withinS,
  };
}

/** As cameraKey wrote it. */
function cameraOf(key: string): Camera {
  const [make, model, serial] = JSON.parse(key) as [string | null, string | null, string | null];
  return { make, model, serial };
}
