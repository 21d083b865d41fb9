import type { BriefDayView, EarlierDaysView, JournalView } from '#domain/contract/journal-views';
import type { ClosingReport } from '#domain/record/closing-report';
import { nextClosings } from '#domain/record/next-closings';
import { dayOf } from '#domain/record/zoned-day';
import type { Context } from './context.ts';
import type { DayFacts, DayNote } from './record-store.ts';
import { readClosingReport } from './report.ts';

/** How much the front page of a house holds, however large the house is. */
const NEXT = { coverings: 4, days: 21, missing: 36, named: 6 };
const NEAR = { pictures: 12, marks: 24 };
const EARLIER = { pictures: 4, marks: 4 };
const EARLIER_DAYS = 14;
const IMPOSSIBLE = { days: 6, pictures: 4 };
const AHEAD = 5;
const HOLDS = 6;
/** Of a note whose day has a page of its own; in characters. */
const NOTE = { near: 1200, earlier: 240 };

/** The house this morning: what closes next and what is missing for it, today, and the days before. */
export async function readJournal(context: Context, house: string): Promise<JournalView> {
  const { read } = context.store;
  const zone = await read.zone(house);
  const today = dayOf(context.now().toISOString(), zone);
  const report = await readClosingReport(context, house, 'open');
  const [last] = await read.daysBefore(house, zone, today, 1);
  const near = await read.briefDays(house, zone, last === undefined ? [today] : [today, last], NEAR);
  return {
    next: nextClosings(report, NEXT),
    holds: [...outrun(report), ...(await read.holds(house, HOLDS))].slice(0, HOLDS),
    openCoverings: report.days.reduce((sum, { coverings }) => sum + coverings.length, 0),
    // Whole, since it can be written on the page.
    today: brief(required(near[0]), Infinity),
    lastDay: near[1] ? brief(near[1], NOTE.near) : null,
    earlier: await readEarlierDays(context, house, last ?? today, EARLIER_DAYS),
    ahead: byDay(await read.notesAfter(house, today, AHEAD)),
    waiting: await read.waiting(house, IMPOSSIBLE),
  };
}

export async function readEarlierDays(
  context: Context,
  house: string,
  before: string,
  limit: number,
): Promise<EarlierDaysView> {
  const { read } = context.store;
  const zone = await read.zone(house);
  const found = await read.daysBefore(house, zone, before, limit + 1);
  const days = found.slice(0, limit);
  const facts = await read.briefDays(house, zone, days, EARLIER);
  return {
    days: facts.map((day) => brief(day, NOTE.earlier)),
    next: found.length > limit ? (days.at(-1) ?? null) : null,
  };
}

/** A release that does not cover what is hidden now is no word that it may close; nobody may notice else. */
function outrun({ days }: ClosingReport): JournalView['holds'] {
  return days
    .flatMap(({ coverings }) => coverings)
    .filter(({ standing }) => standing.phase === 'outrun')
    .map(({ id, name }) => ({ id, name, state: 'outrun' }));
}

function brief({ notes, ...facts }: DayFacts, length: number): BriefDayView {
  return { ...facts, notes: notes.map((note) => cutNote(note, length)) };
}

/** Cut between code points. */
function cutNote({ by, at, text }: DayNote, length: number): BriefDayView['notes'][number] {
  if (text.length <= length) return { by, at, text, cut: false };
  return {
    by,
    at,
    text: Array.from(text.slice(0, length + 1))
      .slice(0, -1)
      .join(''),
    cut: true,
  };
}

function byDay(notes: readonly DayNote[]): JournalView['ahead'] {
  const days = [...new Set(notes.map(({ day }) => day))];
  return days.map((day) => ({
    day,
    notes: notes.filter((note) => note.day === day).map((note) => cutNote(note, NOTE.earlier)),
  }));
}

function required<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('A day that was asked for is missing.');
  return value;
}
