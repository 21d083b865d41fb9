import type { ProtectionFacts } from '#domain/contract/protection';
import type { Entry } from '#domain/ledger/statements';
import type { Tx } from '../tx.ts';
import { inBatches } from './in-batches.ts';
import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';
import { protectByZones } from './protection-hides.ts';

export const projectProtection: Projector<
  | 'protection.laid'
  | 'protection.changed'
  | 'protection.lifted'
  | 'protection.lifting-withdrawn'
  | 'protection.withdrawn'
> = {
  'protection.laid': async (tx, entry) => {
    const { protection } = entry.payload;
    await tx
      .insertInto('protection')
      .values({
        ...{ id: protection, houseId: entry.house, laidBy: jsonOrNull(entry.by) },
        ...columns(entry, entry.payload),
      })
      .execute();
    await lieOver(tx, entry, protection, entry.payload.hides);
  },

  'protection.changed': async (tx, entry) => {
    const { protection } = entry.payload;
    await tx
      .updateTable('protection')
      .set(columns(entry, entry.payload))
      .where('id', '=', protection)
      .execute();
    await tx.deleteFrom('protectionHides').where('protectionId', '=', protection).execute();
    await lieOver(tx, entry, protection, entry.payload.hides);
  },

  'protection.lifted': async (tx, { at, by, payload }) => {
    const { liftedAt, note: liftNote } = payload;
    const lifting = { liftedAt, liftedBy: jsonOrNull(by), liftNote, changedAt: at };
    await tx.updateTable('protection').set(lifting).where('id', '=', payload.protection).execute();
  },

  'protection.lifting-withdrawn': async (tx, { at, payload }) => {
    const lying = { liftedAt: null, liftedBy: null, liftNote: null, changedAt: at };
    await tx.updateTable('protection').set(lying).where('id', '=', payload.protection).execute();
  },

  'protection.withdrawn': async (tx, { at, by, payload }) => {
    const { reason: withdrawReason } = payload;
    const end = { withdrawnAt: at, withdrawnBy: jsonOrNull(by), withdrawReason, changedAt: at };
    await tx.updateTable('protection').set(end).where('id', '=', payload.protection).execute();
  },
};

function columns({ at }: Entry, facts: ProtectionFacts) {
  const { name, what, zone, except, laidAt, liftingDay, note } = facts;
  const space = { zone: jsonOrNull(zone), exceptMarks: JSON.stringify(except) };
  return { name, what, laidAt, liftingDay, note, ...space, changedAt: at };
}

async function lieOver(
  tx: Tx,
  { house }: Entry,
  protection: string,
  hides: ProtectionFacts['hides'],
): Promise<void> {
  const rows = hides.map((mark, position) => ({
    ...{ protectionId: protection, houseId: house, mark },
    ...{ stretch: null, byZone: false, position },
  }));
  await inBatches(rows, 1000, async (batch) => {
    await tx.insertInto('protectionHides').values(batch).execute();
  });
  await protectByZones(tx, house, { protection });
}
