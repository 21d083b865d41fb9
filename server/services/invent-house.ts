import type { AccountView } from '#domain/contract/views';
import { CoveringFacts } from '#domain/contract/shapes';
import type { InventedHouse } from '#domain/frame/invented/invented-house';
import { scheduleText } from '#domain/frame/invented/schedule-text';
import type { Context } from './context.ts';
import { planCovering } from './coverings.ts';
import { writeNote } from './days.ts';
import { stateGrid } from './frame.ts';
import { createHouse } from './houses.ts';
import { importSchedule } from './import-schedule.ts';

/** Enters an invented house as its crew would: house, grid, schedule, coverings, notes. */
export async function inventHouse(
  context: Context,
  account: AccountView,
  { house, newId }: { house: string; newId: () => string },
  invented: InventedHouse,
): Promise<void> {
  const { name, firstDay, grid, coverings, days } = invented;
  await createHouse(context, account, house, { name, zone: 'Asia/Tokyo', firstDay, site: null });
  await stateGrid(context, account, house, grid);
  const bytes = new TextEncoder().encode(scheduleText(invented.members));
  const file = { bytes, contentType: 'text/csv', fileName: 'invented.csv' };
  await importSchedule(context, account, house, file, { mapping: {}, missing: 'keep', badRows: 'refuse' });
  for (const covering of coverings) {
    const facts = CoveringFacts.parse({ ...covering, hides: [] });
    await planCovering(context, account, { house, covering: newId() }, facts);
  }
  for (const { day, text } of days) await writeNote(context, account, house, day, text);
}
