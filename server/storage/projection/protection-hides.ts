import { groupBy } from '#domain/group-by';
import { lyingInZones, type Zoned } from '#domain/record/zone-hides';
import { readFrameGround } from '../queries/frame.ts';
import type { Tx } from '../tx.ts';
import { inBatches } from './in-batches.ts';
import { readInSpace } from './zone-hides.ts';

/** What was listed by hand stands before what lies in the zone. */
const BEHIND_THE_LIST = 1_000_000;

/** Computes anew what lies in the zones of temporary protection: of one, or of these members, or all. */
export async function protectByZones(
  tx: Tx,
  house: string,
  only: { readonly protection?: string; readonly marks?: readonly string[] },
): Promise<void> {
  const zoned = await readZoned(tx, house, only.protection);
  if (zoned.length === 0 || only.marks?.length === 0) return;
  await inBatches(only.marks ?? [null], 5000, async (marks) => {
    const named = marks.filter((mark) => mark !== null);
    await protect(tx, house, zoned, named.length === 0 ? null : named);
  });
}

async function protect(
  tx: Tx,
  house: string,
  zoned: readonly Zoned[],
  marks: readonly string[] | null,
): Promise<void> {
  const ids = zoned.map(({ id }) => id);
  let gone = tx.deleteFrom('protectionHides').where('byZone', '=', true).where('protectionId', 'in', ids);
  if (marks !== null) gone = gone.where('mark', 'in', marks);
  await gone.execute();
  const ground = await readFrameGround(tx, house);
  if (ground.reader === null) return;
  const members = await readInSpace(tx, house, ground, marks);
  const rows = [...lyingInZones(zoned, members, ground.reader)].flatMap(([protectionId, inside]) =>
    inside.map(({ member: { mark }, stretch }) => ({
      ...{ protectionId, houseId: house, mark },
      ...{ stretch: JSON.stringify(stretch), byZone: true, position: BEHIND_THE_LIST },
    })),
  );
  await inBatches(rows, 1000, async (batch) => {
    await tx.insertInto('protectionHides').values(batch).execute();
  });
}

async function readZoned(tx: Tx, house: string, only?: string): Promise<Zoned[]> {
  let query = tx
    .selectFrom('protection')
    .where('houseId', '=', house)
    .where('zone', 'is not', null)
    .select(['id', 'zone', 'exceptMarks'])
    .orderBy('id');
  if (only !== undefined) query = query.where('id', '=', only);
  const rows = await query.execute();
  if (rows.length === 0) return [];
  const listed = await tx
    .selectFrom('protectionHides')
    .select(['protectionId', 'mark'])
    .where('byZone', '=', false)
    .where(
      'protectionId',
      'in',
      rows.map(({ id }) => id),
    )
    .execute();
  const listedIn = groupBy(listed, ({ protectionId }) => protectionId);
  return rows.flatMap(({ id, zone, exceptMarks }) => {
    const byHand = (listedIn.get(id) ?? []).map(({ mark }) => mark);
    return zone === null ? [] : [{ id, zone, except: new Set<string>([...exceptMarks, ...byHand]) }];
  });
}
