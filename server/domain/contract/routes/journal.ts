import { z } from 'zod';
import { EarlierDaysView, JournalView } from '../journal-views.ts';
import { Day, Sha256, paragraph } from '../shapes.ts';
import { DaySummaryView, DayView, LedgerEntryView } from '../views.ts';
import { route, type Route } from './route.ts';

/** Days and the ledger. */
export const JOURNAL_ROUTES = {
  readJournal: route({
    method: 'GET',
    path: '/houses/{house}/journal',
    summary: 'The house this morning: what closes next and what is missing for it, today, the last days.',
    access: 'read',
    status: 200,
    answer: JournalView,
  }),
  listEarlierDays: route({
    method: 'GET',
    path: '/houses/{house}/journal/days',
    summary: 'Days on which anything was photographed or said, in brief, backwards from a day.',
    access: 'read',
    query: z.object({ before: Day, limit: z.coerce.number().int().min(1).max(50).default(14) }),
    status: 200,
    answer: EarlierDaysView,
  }),
  listDays: route({
    method: 'GET',
    path: '/houses/{house}/days',
    summary: 'The days on which anything was photographed or said.',
    access: 'read',
    status: 200,
    answer: z.object({ days: z.array(DaySummaryView) }),
  }),
  readDay: route({
    method: 'GET',
    path: '/houses/{house}/days/{date}',
    summary: 'One day.',
    access: 'read',
    status: 200,
    answer: DayView,
  }),
  writeNote: route({
    method: 'PUT',
    path: '/houses/{house}/days/{date}/note',
    summary: 'Write your note of a day; what it said before stays in the ledger.',
    access: 'contribute',
    body: z.strictObject({ text: paragraph(20_000) }),
    status: 200,
    answer: DayView,
  }),
  readLedger: route({
    method: 'GET',
    path: '/houses/{house}/ledger',
    summary: 'All that was said, in order, with hashes.',
    access: 'read',
    query: z.object({
      from: z.coerce.number().int().min(0).default(0),
      limit: z.coerce.number().int().min(1).max(1000).default(200),
    }),
    status: 200,
    answer: z.object({ entries: z.array(LedgerEntryView), size: z.int(), head: Sha256 }),
  }),
} as const satisfies Record<string, Route>;
