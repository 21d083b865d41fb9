import { createHash } from 'node:crypto';
import type { CalendarLang, CalendarLinkView } from '#domain/contract/calendar';
import type { AccountView } from '#domain/contract/views';
import { canonicalJson } from '#domain/ledger/canonical-json';
import { calendarText, type CalendarEvent } from './calendar-text.ts';
import {
  calendarName,
  coveringKindName,
  entryText,
  entryTitle,
  type CalendarCovering,
} from './calendar-words.ts';
import type { CalendarEntry } from './calendars.ts';
import type { Context } from './context.ts';
import { Failure } from './failure.ts';
import { reportOf } from './report.ts';

/** Makes this person's address of the calendar; the one before ends. */
export function makeCalendarLink(
  { calendars }: Context,
  { id }: AccountView,
  house: string,
  lang: CalendarLang,
): Promise<{ link: CalendarLinkView; secret: string }> {
  return calendars.makeLink(house, id, lang);
}

/**
 * The closings of a house as iCalendar, with addresses below `origin`: what has closed and what has a planned
 * day, and, cancelled, what was told before and has no day any more. Throws 'not-found' where the secret opens
 * nothing, also once whoever made it has no role in the house.
 */
export async function readCalendar(context: Context, secret: string, origin: string): Promise<string> {
  const link = await context.calendars.findLink(secret);
  const house = link && (await context.store.read.house(link.house, link.person));
  if (!link || !house) throw new Failure('not-found', { what: 'calendar' });
  const told = await tell(context, house.id);
  const revisions = await context.calendars.statementCounts(house.id);
  const events = told.map(({ covering, entry, isPlanned }): CalendarEvent => {
    const address = `${origin}/houses/${house.id}/coverings/${covering.id}`;
    return {
      uid: covering.id,
      day: entry.day,
      state: stateOf(covering, isPlanned),
      title: entryTitle(covering, isPlanned ? entry.day : null, link.lang),
      text: entryText(covering, address, link.lang),
      address,
      category: coveringKindName(covering.kind, link.lang),
      revision: Math.max(0, (revisions.get(covering.id) ?? 0) - 1),
      changedAt: entry.changedAt,
    };
  });
  return calendarText(calendarName(house.name, link.lang), link.lang, events);
}

interface Told {
  readonly covering: CalendarCovering;
  readonly entry: CalendarEntry;
  /** Or has closed. */
  readonly isPlanned: boolean;
}

/**
 * A gap can come and go without a word in the ledger (a corrected clock, a region measured anew), so what was said
 * last is kept, and an entry is revised when it says anything else than that.
 */
async function tell(context: Context, house: string): Promise<Told[]> {
  const { calendars, now } = context;
  const { read } = context.store;
  const material = await read.reportMaterial(house);
  const report = reportOf(context, material, await read.zone(house));
  const before = new Map((await calendars.entries(house)).map((entry) => [entry.covering, entry]));
  const told = report.days.flatMap(({ day, coverings }) =>
    coverings.flatMap((covering): Told[] => {
      const last = before.get(covering.id);
      const lastDay = day ?? last?.day;
      if (lastDay === undefined) return [];
      const content = contentOf(covering, day);
      const changedAt = last?.content === content ? last.changedAt : now().toISOString();
      return [
        {
          covering,
          entry: { covering: covering.id, day: lastDay, content, changedAt },
          isPlanned: day !== null,
        },
      ];
    }),
  );
  const changed = told.filter(({ entry }) => before.get(entry.covering)?.content !== entry.content);
  await calendars.noteEntries(
    house,
    changed.map(({ entry }) => entry),
  );
  return told;
}

function contentOf(
  { name, kind, closedAt, counts, lines, standing }: CalendarCovering,
  day: string | null,
): string {
  const missed = lines.filter(({ state }) => state === 'gap' || state === 'lost').map(({ mark }) => mark);
  const said = { name, kind, closedAt, counts, missed, day, phase: standing.phase };
  return createHash('sha256').update(canonicalJson(said)).digest('hex');
}

function stateOf({ closedAt }: CalendarCovering, isPlanned: boolean): CalendarEvent['state'] {
  if (closedAt !== null) return 'closed';
  return isPlanned ? 'planned' : 'cancelled';
}
