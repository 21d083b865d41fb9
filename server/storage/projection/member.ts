import type { MemberFacts } from '#domain/contract/shapes';
import type { Tx } from '../tx.ts';
import { inBatches } from './in-batches.ts';
import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';
import { lieAnew } from './lie-anew.ts';

export const projectMember: Projector<
  'schedule.imported' | 'member.entered' | 'member.retired' | 'member.removed'
> = {
  'schedule.imported': async (tx, { house, payload }) => {
    const entered = [...payload.added, ...payload.changed];
    await enter(tx, house, entered);
    await inBatches(payload.retired, 1000, (marks) => retire(tx, house, marks));
    await lieAnew(tx, house, { marks: entered.map(({ mark }) => mark) });
  },

  'member.entered': async (tx, { house, payload }) => {
    await enter(tx, house, [payload]);
    await lieAnew(tx, house, { marks: [payload.mark] });
  },

  'member.retired': async (tx, { house, payload }) => {
    await retire(tx, house, [payload.mark]);
  },

  'member.removed': async (tx, { house, payload }) => {
    await tx.deleteFrom('member').where('houseId', '=', house).where('mark', '=', payload.mark).execute();
    await lieAnew(tx, house, { marks: [payload.mark] });
  },
};

async function enter(tx: Tx, house: string, members: readonly MemberFacts[]): Promise<void> {
  await inBatches(members, 500, async (batch) => {
    await tx
      .insertInto('member')
      .values(
        batch.map(({ other, setOut, ...plain }) => ({
          houseId: house,
          ...plain,
          other: JSON.stringify(other),
          setOut: jsonOrNull(setOut),
          retired: false,
        })),
      )
      .onConflict((c) =>
        c.columns(['houseId', 'mark']).doUpdateSet((eb) => ({
          kind: eb.ref('excluded.kind'),
          name: eb.ref('excluded.name'),
          place: eb.ref('excluded.place'),
          track: eb.ref('excluded.track'),
          note: eb.ref('excluded.note'),
          other: eb.ref('excluded.other'),
          setOut: eb.ref('excluded.setOut'),
          retired: false,
        })),
      )
      .execute();
  });
}

async function retire(tx: Tx, house: string, marks: readonly string[]): Promise<void> {
  if (marks.length === 0) return;
  await tx
    .updateTable('member')
    .set({ retired: true })
    .where('houseId', '=', house)
    .where('mark', 'in', marks)
    .execute();
}
