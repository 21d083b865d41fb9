import type { AccountView, DayView } from '#domain/contract/views';
import { holdPhase } from '#domain/record/hold-phase';
import { dayOf, spanOfDay } from '#domain/record/zoned-day';
import { speaker, type Context } from './context.ts';
import type { RecordReader } from './record-store.ts';

const ALL = 100_000;

/** The journal of one day in the house's zone: what was photographed, what was said, what closed or should have. */
export async function readDay(context: Context, house: string, day: string): Promise<DayView> {
  const { read } = context.store;
  const zone = await read.zone(house);
  const { from, to } = spanOfDay(day, zone);
  const { photos } = await read.photos(house, { day }, { limit: ALL });
  return {
    day,
    photos,
    changes: await read.entriesBetween(house, new Date(from), new Date(to)),
    notes: await read.notes(house, day),
    closings: await closingsOf(read, house, day, zone),
  };
}

/** One note a person and day; writing it again replaces it on the page, not in the ledger. */
export async function writeNote(
  context: Context,
  account: AccountView,
  house: string,
  day: string,
  text: string,
): Promise<void> {
  await context.store.write(house, speaker(account), async (writing) => {
    const mine = (await writing.notes(house, day)).find(({ by }) => by?.id === account.id);
    if ((mine?.text ?? '') !== text)
      await writing.say({ kind: 'note.written', version: 1, payload: { day, text } });
  });
}

async function closingsOf(
  read: RecordReader,
  house: string,
  day: string,
  zone: string,
): Promise<DayView['closings']> {
  return (await read.coverings(house))
    .filter(({ closed, plannedDay }) => (closed ? dayOf(closed.at, zone) : plannedDay) === day)
    .map((covering) => {
      const { id, name, closed } = covering;
      return { id, name, closed: closed !== null, phase: holdPhase(covering) };
    });
}
