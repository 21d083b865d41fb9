import type { CoveringKind } from '#domain/contract/shapes';
import { groupBy } from '#domain/group-by';
import type { LayerMaterial, ReportPart } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import { isOfPhoto } from './marks-on.ts';

/**
 * Coverings beside a part of them that have closed over the same members: they decide with it from when a
 * member is out of sight. Of what they hide only these members.
 */
export async function readLayersBeside(db: Db, house: string, part: ReportPart): Promise<LayerMaterial[]> {
  // A part by photo has every covering of its members already.
  if (part === 'all' || isOfPhoto(part)) return [];
  let within = db.selectFrom('covering').where('houseId', '=', house).select('id');
  if (part === 'open') within = within.where('closedAt', 'is', null);
  else within = within.where('id', 'in', part.coverings);
  const rows = await db
    .selectFrom('coveringHides')
    .innerJoin('covering', 'covering.id', 'coveringHides.coveringId')
    .where('covering.houseId', '=', house)
    .where('covering.closedAt', 'is not', null)
    .where('covering.zone', 'is not', null)
    .where('covering.id', 'not in', within)
    .where('coveringHides.mark', 'in', (eb) =>
      eb.selectFrom('coveringHides').where('coveringId', 'in', within).select('mark'),
    )
    .select(['id', 'name', 'kind', 'zone', 'plannedDay', 'closedAt', 'mark', 'stretch'])
    .execute();
  return [...groupBy(rows, ({ id }) => id).values()].flatMap((own) => {
    const [first] = own;
    if (!first) return [];
    const { id, name, kind, zone, plannedDay, closedAt } = first;
    const closed = closedAt && { at: closedAt.toISOString() };
    const hides = own.map(({ mark, stretch }) => ({ mark, stretch }));
    return [{ ...{ id, name, kind: kind as CoveringKind, zone, plannedDay }, closed, hides }];
  });
}
