import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';
import { inBatches } from './in-batches.ts';

export const projectFinding: Projector<'findings.accepted' | 'finding.reopened'> = {
  'findings.accepted': async (tx, { house, at, by, payload: { findings, reason } }) => {
    const said = { reason, saidBy: jsonOrNull(by), saidAt: at };
    const rows = findings.map(({ key, kind, basis }) => ({ houseId: house, key, kind, basis, ...said }));
    await inBatches(rows, 500, async (batch) => {
      await tx
        .insertInto('findingAnswer')
        .values(batch)
        .onConflict((c) =>
          c.columns(['houseId', 'key']).doUpdateSet((eb) => ({ ...said, basis: eb.ref('excluded.basis') })),
        )
        .execute();
    });
  },

  'finding.reopened': async (tx, { house, payload: { key } }) => {
    await tx.deleteFrom('findingAnswer').where('houseId', '=', house).where('key', '=', key).execute();
  },
};
