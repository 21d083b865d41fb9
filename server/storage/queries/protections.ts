import type { ProtectionView } from '#domain/contract/protection';
import type { Mark } from '#domain/frame/mark';
import { groupBy } from '#domain/group-by';
import type { Protection } from '#domain/record/protection';
import type { Db } from '../open-database.ts';
import type { Row } from '../tables.ts';

export async function readProtection(db: Db, protection: string): Promise<ProtectionView | undefined> {
  const row = await db.selectFrom('protection').selectAll().where('id', '=', protection).executeTakeFirst();
  if (!row) return undefined;
  return toProtectionView(row, await readOver(db, [protection]));
}

/** The latest laid first, without those that were withdrawn. */
export async function readProtections(db: Db, house: string, mark?: string): Promise<ProtectionView[]> {
  let query = db
    .selectFrom('protection')
    .selectAll()
    .where('houseId', '=', house)
    .where('withdrawnAt', 'is', null)
    .orderBy('laidAt', 'desc')
    .orderBy('id');
  if (mark !== undefined)
    query = query.where('id', 'in', (eb) =>
      eb
        .selectFrom('protectionHides')
        .select('protectionId')
        .where('houseId', '=', house)
        .where('mark', '=', mark),
    );
  const rows = await query.execute();
  const over = groupBy(
    await readOver(
      db,
      rows.map(({ id }) => id),
    ),
    ({ protectionId }) => protectionId,
  );
  return rows.map((row) => toProtectionView(row, over.get(row.id) ?? []));
}

/** By member, as photos are judged by it. */
export async function readLaid(db: Db, house: string): Promise<Protection[]> {
  const rows = await db
    .selectFrom('protectionHides')
    .innerJoin('protection', 'protection.id', 'protectionHides.protectionId')
    .where('protection.houseId', '=', house)
    .where('protection.withdrawnAt', 'is', null)
    .select(['protection.id', 'protection.name', 'protection.laidAt', 'protection.liftedAt'])
    .select(['protectionHides.mark', 'protectionHides.stretch'])
    .orderBy('protection.laidAt')
    .orderBy('protection.id')
    .execute();
  return rows.map(({ laidAt, liftedAt, ...row }) => ({
    ...row,
    laidAt: laidAt.toISOString(),
    liftedAt: liftedAt && liftedAt.toISOString(),
  }));
}

async function readOver(db: Db, protections: readonly string[]): Promise<Row<'protectionHides'>[]> {
  if (protections.length === 0) return [];
  return db
    .selectFrom('protectionHides')
    .selectAll()
    .where('protectionId', 'in', protections)
    .orderBy('position')
    .orderBy('mark')
    .execute();
}

function toProtectionView(row: Row<'protection'>, over: readonly Row<'protectionHides'>[]): ProtectionView {
  const { id, name, what, zone, liftingDay, note, laidBy } = row;
  const said = (at: Date, by: typeof row.laidBy) => ({ at: at.toISOString(), by });
  return {
    ...{ id, name, what, zone, liftingDay, note, laidBy },
    except: row.exceptMarks,
    laidAt: row.laidAt.toISOString(),
    hides: over.map(({ mark, stretch, byZone }) => ({ mark: mark as Mark, stretch, byZone })),
    changedAt: row.changedAt.toISOString(),
    lifted: row.liftedAt && { ...said(row.liftedAt, row.liftedBy), note: row.liftNote ?? '' },
    withdrawn: row.withdrawnAt && {
      ...said(row.withdrawnAt, row.withdrawnBy),
      reason: row.withdrawReason ?? '',
    },
  };
}
