import type { CalendarLang, CalendarLinkView } from '#domain/contract/calendar';

/** What the use cases of the calendar need beside the record; server/storage implements it. */
export interface Calendars {
  /** Ends the one that this person had before; the secret cannot be read again. */
  makeLink(
    house: string,
    person: string,
    lang: CalendarLang,
  ): Promise<{ link: CalendarLinkView; secret: string }>;
  link(house: string, person: string): Promise<CalendarLinkView | null>;
  endLink(house: string, person: string): Promise<void>;
  /** Whose link it is; undefined where there is none. Notes that it was read. */
  findLink(secret: string): Promise<{ house: string; person: string; lang: CalendarLang } | undefined>;

  /** What was last said of each covering of the house. */
  entries(house: string): Promise<readonly CalendarEntry[]>;
  /** Notes what is said now; of two who note at the same time, the later stands. */
  noteEntries(house: string, entries: readonly CalendarEntry[]): Promise<void>;
  /** How many statements there are about each covering of the house. */
  statementCounts(house: string): Promise<ReadonlyMap<string, number>>;
}

export interface CalendarEntry {
  readonly covering: string;
  readonly day: string;
  /** A hash of all that is said of it, whatever the language. */
  readonly content: string;
  readonly changedAt: string;
}
