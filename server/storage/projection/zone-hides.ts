import { groupBy } from '#domain/group-by';
import { findKind, trackOf } from '#domain/lexicon/track-of-kind';
import type { CoveringKind } from '#domain/contract/shapes';
import { hiddenByZones, type MemberInSpace, type ZonedCovering } from '#domain/record/zone-hides';
import { axisIn, readFrameGround, type FrameGround } from '../queries/frame.ts';
import type { Tx } from '../tx.ts';
import { inBatches } from './in-batches.ts';

/** What was listed by hand stands before what a zone hides. */
const BEHIND_THE_LIST = 1_000_000;

/**
 * Computes anew what zones hide: of one covering, or of these members, or all. Part of the projection of
 * whatever moves a zone or a member, so that the tables always follow from the ledger.
 */
export async function hideByZones(
  tx: Tx,
  house: string,
  only: { readonly covering?: string; readonly marks?: readonly string[] },
): Promise<void> {
  const coverings = await readZoned(tx, house, only.covering);
  if (coverings.length === 0 || only.marks?.length === 0) return;
  await inBatches(only.marks ?? [null], 5000, (marks) => hide(tx, house, coverings, marks));
}

async function hide(
  tx: Tx,
  house: string,
  coverings: readonly ZonedCovering[],
  marks: readonly (string | null)[],
): Promise<void> {
  const named = marks.filter((mark) => mark !== null);
  const all = named.length === 0;
  let gone = tx
    .deleteFrom('coveringHides')
    .where('byZone', '=', true)
    .where(
      'coveringId',
      'in',
      coverings.map(({ id }) => id),
    );
  if (!all) gone = gone.where('mark', 'in', named);
  await gone.execute();
  const ground = await readFrameGround(tx, house);
  if (ground.reader === null) return;
  const members = await readInSpace(tx, house, ground, all ? null : named);
  const hidden = hiddenByZones(coverings, members, ground.reader, ground.requirements);
  const rows = [...hidden].flatMap(([coveringId, found]) =>
    found.map(({ stretch, ...need }) => ({
      coveringId,
      houseId: house,
      ...need,
      stretch: JSON.stringify(stretch),
      position: BEHIND_THE_LIST,
      byZone: true,
    })),
  );
  await inBatches(rows, 1000, async (batch) => {
    await tx.insertInto('coveringHides').values(batch).execute();
  });
}

async function readZoned(tx: Tx, house: string, only?: string): Promise<ZonedCovering[]> {
  let query = tx
    .selectFrom('covering')
    .where('houseId', '=', house)
    .where('zone', 'is not', null)
    .select(['id', 'kind', 'zone', 'exceptMarks'])
    .orderBy('id');
  if (only !== undefined) query = query.where('id', '=', only);
  const rows = await query.execute();
  if (rows.length === 0) return [];
  const listed = await tx
    .selectFrom('coveringHides')
    .select(['coveringId', 'mark'])
    .where('byZone', '=', false)
    .where(
      'coveringId',
      'in',
      rows.map(({ id }) => id),
    )
    .execute();
  const listedIn = groupBy(listed, ({ coveringId }) => coveringId);
  return rows.flatMap(({ id, kind, zone, exceptMarks }) => {
    if (zone === null) return [];
    const byHand = (listedIn.get(id) ?? []).map(({ mark }) => mark);
    return [{ id, kind: kind as CoveringKind, zone, except: new Set<string>([...exceptMarks, ...byHand]) }];
  });
}

/** The members that have a place in space, by mark. */
export async function readInSpace(
  tx: Tx,
  house: string,
  ground: FrameGround,
  only: readonly string[] | null,
): Promise<MemberInSpace[]> {
  let query = tx
    .selectFrom('member')
    .where('houseId', '=', house)
    .where('setOut', 'is not', null)
    .select(['mark', 'kind', 'track', 'setOut'])
    .orderBy('mark');
  if (only !== null) query = query.where('mark', 'in', only);
  return (await query.execute()).flatMap(({ mark, kind: name, track, setOut }) => {
    const kind = findKind(name, ground.lexicon);
    const axis = axisIn(ground, setOut, name);
    return axis ? [{ mark, kind: kind ?? null, track: trackOf(track, name, ground.lexicon), axis }] : [];
  });
}
