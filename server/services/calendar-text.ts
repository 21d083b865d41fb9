import ical, { ICalEventStatus, ICalEventTransparency } from 'ical-generator';
import type { CalendarLang } from '#domain/contract/calendar';

/** What stands in the calendar of one covering. */
export interface CalendarEvent {
  readonly uid: string;
  /** A calendar day. */
  readonly day: string;
  readonly state: 'planned' | 'closed' | 'cancelled';
  readonly title: string;
  readonly text: string;
  readonly address: string;
  readonly category: string;
  readonly revision: number;
  readonly changedAt: string;
}

const STATUS = {
  planned: ICalEventStatus.TENTATIVE,
  closed: ICalEventStatus.CONFIRMED,
  cancelled: ICalEventStatus.CANCELLED,
} as const;
const DAY_MS = 24 * 60 * 60 * 1000;
const ASK_AGAIN_SECONDS = 60 * 60;

/**
 * A calendar of all-day events (RFC 5545, with NAME and REFRESH-INTERVAL of RFC 7986). Without a method, so DTSTAMP
 * is when the information was last revised, as LAST-MODIFIED (RFC 5545 §3.8.7.2).
 */
export function calendarText(name: string, lang: CalendarLang, events: readonly CalendarEvent[]): string {
  const calendar = ical({
    name,
    ttl: ASK_AGAIN_SECONDS,
    prodId: { company: 'Arakabe', product: 'Arakabe', language: lang.toUpperCase() },
  });
  for (const event of events) {
    // The library writes the UTC day of an all-day event; the day after it ends it (§3.6.1).
    const start = new Date(`${event.day}T00:00:00Z`);
    calendar.createEvent({
      id: event.uid,
      allDay: true,
      start,
      end: new Date(start.getTime() + DAY_MS),
      summary: event.title,
      description: { plain: event.text },
      categories: [{ name: event.category }],
      url: event.address,
      status: STATUS[event.state],
      // Nobody is busy all day because a wall is plastered.
      transparency: ICalEventTransparency.TRANSPARENT,
      sequence: event.revision,
      stamp: new Date(event.changedAt),
      lastModified: new Date(event.changedAt),
    });
  }
  // Each content line ends in CRLF (§3.1), also the last, which the library leaves open.
  return `${calendar.toString()}\r\n`;
}
