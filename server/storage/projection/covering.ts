import type { CoveringFacts } from '#domain/contract/shapes';
import type { Entry } from '#domain/ledger/statements';
import type { Tx } from '../tx.ts';
import { inBatches } from './in-batches.ts';
import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';
import { hideByZones } from './zone-hides.ts';

export const projectCovering: Projector<
  'covering.planned' | 'covering.changed' | 'covering.closed' | 'covering.reopened'
> = {
  'covering.planned': async (tx, entry) => {
    const { covering } = entry.payload;
    await tx
      .insertInto('covering')
      .values({ id: covering, houseId: entry.house, ...columns(entry, entry.payload) })
      .execute();
    await insertHidden(tx, entry, covering, entry.payload.hides);
    await hideByZones(tx, entry.house, { covering });
  },

  'covering.changed': async (tx, entry) => {
    const { covering } = entry.payload;
    await tx.updateTable('covering').set(columns(entry, entry.payload)).where('id', '=', covering).execute();
    await tx.deleteFrom('coveringHides').where('coveringId', '=', covering).execute();
    await insertHidden(tx, entry, covering, entry.payload.hides);
    await hideByZones(tx, entry.house, { covering });
  },

  'covering.closed': async (tx, { at, by, payload }) => {
    const { closedAt, note: closeNote, release: closedRelease, without: closedWithout } = payload;
    const said = { closedBy: jsonOrNull(by), closeNote, closedRelease, closedWithout };
    const closing = { closedAt, ...said, changedAt: at };
    await tx.updateTable('covering').set(closing).where('id', '=', payload.covering).execute();
  },

  'covering.reopened': async (tx, { at, payload }) => {
    const said = { closedBy: null, closeNote: null, closedRelease: null, closedWithout: null };
    const opened = { closedAt: null, ...said, changedAt: at };
    await tx.updateTable('covering').set(opened).where('id', '=', payload.covering).execute();
  },
};

function columns({ at }: Entry, { name, kind, plannedDay, note, zone, except }: CoveringFacts) {
  const space = { zone: jsonOrNull(zone), exceptMarks: JSON.stringify(except) };
  return { name, kind, plannedDay, note, ...space, changedAt: at };
}

async function insertHidden(
  tx: Tx,
  { house }: Entry,
  covering: string,
  hides: CoveringFacts['hides'],
): Promise<void> {
  const rows = hides.map((hidden, position) => ({
    coveringId: covering,
    houseId: house,
    ...hidden,
    position,
    byZone: false,
    views: 1,
  }));
  await inBatches(rows, 1000, async (batch) => {
    await tx.insertInto('coveringHides').values(batch).execute();
  });
}
