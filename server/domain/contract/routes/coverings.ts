import { z } from 'zod';
import { CoveringFacts, Id, Instant, line, paragraph } from '../shapes.ts';
import { ClosingReportView, ReportOfPhotoView } from '../report-views.ts';
import { CoveringView, LedgerEntryView } from '../views.ts';
import { route, type Route } from './route.ts';

/** Coverings and the closing report. */
export const COVERING_ROUTES = {
  planCovering: route({
    method: 'POST',
    path: '/houses/{house}/coverings',
    summary: 'Plan a covering.',
    access: 'record',
    body: CoveringFacts.extend({ id: Id }),
    status: 201,
    answer: CoveringView,
  }),
  listCoverings: route({
    method: 'GET',
    path: '/houses/{house}/coverings',
    summary: 'All coverings.',
    access: 'read',
    status: 200,
    answer: z.object({ coverings: z.array(CoveringView) }),
  }),
  changeCovering: route({
    method: 'PUT',
    path: '/coverings/{covering}',
    summary: 'Change a covering that is not closed.',
    access: 'record',
    body: CoveringFacts,
    status: 200,
    answer: CoveringView,
  }),
  closeCovering: route({
    method: 'POST',
    path: '/coverings/{covering}/close',
    summary: 'Say that a covering has closed.',
    access: 'record',
    body: z.strictObject({
      closedAt: Instant.nullable().default(null).meta({ description: 'null: now.' }),
      note: paragraph(2000).default(''),
      withoutRelease: line(1000).nullable().default(null).meta({
        description: 'Why it closes although no release stands for what it hides.',
      }),
    }),
    status: 200,
    answer: CoveringView,
  }),
  reopenCovering: route({
    method: 'POST',
    path: '/coverings/{covering}/reopen',
    summary: 'Take back a closing that was said by mistake, or after the covering was opened up.',
    access: 'record',
    body: z.strictObject({ reason: line(1000) }),
    status: 200,
    answer: CoveringView,
  }),
  readCoveringLedger: route({
    method: 'GET',
    path: '/coverings/{covering}/ledger',
    summary: 'All that was said of a covering, in order.',
    access: 'read',
    status: 200,
    answer: z.object({ entries: z.array(LedgerEntryView) }),
  }),

  closingReport: route({
    method: 'GET',
    path: '/houses/{house}/closing-report',
    summary: 'What is hidden, what is on record, what is missing.',
    access: 'read',
    query: z.object({ format: z.enum(['json', 'csv']).optional(), lang: z.enum(['en', 'ja']).default('en') }),
    status: 200,
    answer: ClosingReportView,
    produces: ['text/csv'],
  }),
  reportOfPhoto: route({
    method: 'GET',
    path: '/photos/{photo}/closing-report',
    summary: 'What of the closing report can be otherwise after a tag on this photo.',
    access: 'read',
    status: 200,
    answer: ReportOfPhotoView,
  }),
} as const satisfies Record<string, Route>;
