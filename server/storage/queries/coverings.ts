import type { CoveringView } from '#domain/contract/views';
import type { ReportPart } from '../../services/record-store.ts';
import type { Mark } from '#domain/frame/mark';
import type { Db } from '../open-database.ts';
import { isOfPhoto, marksOn } from './marks-on.ts';
import type { Row } from '../tables.ts';
import { readTakenBack } from './releases.ts';
import { toCoveringView } from './views.ts';

export async function readCovering(db: Db, covering: string): Promise<CoveringView | undefined> {
  const row = await db.selectFrom('covering').selectAll().where('id', '=', covering).executeTakeFirst();
  if (!row) return undefined;
  const hides = await db
    .selectFrom('coveringHides')
    .selectAll()
    .where('coveringId', '=', covering)
    .orderBy('position')
    .orderBy('mark')
    .execute();
  const takenBack = await readTakenBack(db, row.closedRelease === null ? [] : [covering]);
  return toCoveringView(row, hides.map(toHidden), takenBack.get(covering) ?? null);
}

/** By planned day, those without a day last; of a photo, those that hide a member on it. */
export async function readCoverings(
  db: Db,
  house: string,
  part: ReportPart = 'all',
): Promise<CoveringView[]> {
  let wanted = db.selectFrom('covering').where('houseId', '=', house);
  let hidden = db.selectFrom('coveringHides');
  if (part === 'open') wanted = wanted.where('closedAt', 'is', null);
  else if (isOfPhoto(part)) {
    hidden = hidden.where('houseId', '=', house).where('mark', 'in', marksOn(db, part.photo));
    wanted = wanted.where('id', 'in', hidden.select('coveringId'));
  } else if (part !== 'all') wanted = wanted.where('id', 'in', part.coverings);
  const rows = await wanted
    .selectAll()
    .orderBy('plannedDay', (order) => order.asc().nullsLast())
    .orderBy('name')
    .orderBy('id')
    .execute();
  const hides = await hidden
    .selectAll()
    .where('coveringId', 'in', wanted.select('id'))
    .orderBy('position')
    .orderBy('mark')
    .execute();
  const byCovering = new Map<string, CoveringView['hides']>(rows.map((row) => [row.id, []]));
  for (const row of hides) byCovering.get(row.coveringId)?.push(toHidden(row));
  const under = rows.filter(({ closedRelease }) => closedRelease !== null).map(({ id }) => id);
  const takenBack = await readTakenBack(db, under);
  return rows.map((row) => toCoveringView(row, byCovering.get(row.id) ?? [], takenBack.get(row.id) ?? null));
}

function toHidden({
  mark,
  least,
  views,
  stretch,
  byZone,
}: Row<'coveringHides'>): CoveringView['hides'][number] {
  return { mark: mark as Mark, least, views, stretch, byZone };
}
