import type { HoldState } from '#domain/record/hold-phase';
import type { Entry } from '#domain/ledger/statements';
import type { Tx } from '../tx.ts';
import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';

export const projectHold: Projector<
  | 'covering.ready'
  | 'covering.ready-withdrawn'
  | 'covering.refused'
  | 'covering.released'
  | 'release.withdrawn'
> = {
  'covering.ready': (tx, entry) => hold(tx, entry, 'ready', { note: entry.payload.note }),

  'covering.ready-withdrawn': async (tx, { at, payload }) => {
    const none = { holdAt: null, holdBy: null, holdNote: null, holdLacking: '[]', releaseId: null };
    await tx
      .updateTable('covering')
      .set({ holdState: 'planned', ...none, changedAt: at })
      .where('id', '=', payload.covering)
      .execute();
  },

  'covering.refused': (tx, entry) => hold(tx, entry, 'refused', entry.payload),

  'covering.released': async (tx, entry) => {
    const { house, seq, at, by, payload } = entry;
    await tx
      .insertInto('release')
      .values({
        id: payload.release,
        houseId: house,
        coveringId: payload.covering,
        seq,
        saidAt: at,
        saidBy: jsonOrNull(by),
        facts: JSON.stringify(payload),
        withdrawnAt: null,
        withdrawnBy: null,
        withdrawReason: null,
      })
      .execute();
    await hold(tx, entry, 'released', { note: payload.note, release: payload.release });
  },

  // Whoever takes a release back says that the covering may not close.
  'release.withdrawn': async (tx, entry) => {
    const { at, by, payload } = entry;
    const { reason } = payload;
    await tx
      .updateTable('release')
      .set({ withdrawnAt: at, withdrawnBy: jsonOrNull(by), withdrawReason: reason })
      .where('id', '=', payload.release)
      .execute();
    const { releaseId } = await tx
      .selectFrom('covering')
      .select('releaseId')
      .where('id', '=', payload.covering)
      .executeTakeFirstOrThrow();
    if (releaseId === payload.release) await hold(tx, entry, 'refused', { note: reason });
  },
};

async function hold(
  tx: Tx,
  { at, by, payload }: Entry & { payload: { covering: string } },
  holdState: HoldState,
  { note, lacking = [], release = null }: { note: string; lacking?: object[]; release?: string | null },
): Promise<void> {
  const said = { holdAt: at, holdBy: jsonOrNull(by), holdNote: note, holdLacking: JSON.stringify(lacking) };
  await tx
    .updateTable('covering')
    .set({ holdState, ...said, releaseId: release, changedAt: at })
    .where('id', '=', payload.covering)
    .execute();
}
