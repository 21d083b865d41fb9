import { z } from 'zod';
import { MemberFacts, Sha256 } from '../shapes.ts';
import { MemberHistoryView, MemberView } from '../views.ts';
import { ScheduleImportView, SchedulePreviewView } from '../schedule-views.ts';
import { route, type Route } from './route.ts';

const flag = z.enum(['0', '1']).default('0');

/** The member schedule. */
export const MEMBER_ROUTES = {
  importSchedule: route({
    method: 'POST',
    path: '/houses/{house}/schedule',
    summary: 'Preview (preview=1) or import a member schedule.',
    access: 'record',
    query: z.object({
      preview: flag,
      fileName: z.string().max(255).default('schedule'),
      mapping: z
        .string()
        .max(4000)
        .optional()
        .meta({ description: 'JSON: column index → field or "" (keep under its own name).' }),
      missing: z.enum(['retire', 'keep']).default('keep').meta({
        description: 'What becomes of members that the table does not name; retire only by a whole schedule.',
      }),
      badRows: z.enum(['refuse', 'skip']).default('refuse'),
      agree: Sha256.optional(),
    }),
    consumes: ['text/csv', 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'],
    status: 200,
    answer: z.union([SchedulePreviewView, ScheduleImportView]),
  }),
  listMembers: route({
    method: 'GET',
    path: '/houses/{house}/members',
    summary: 'All members of the schedule.',
    access: 'read',
    status: 200,
    answer: z.object({ members: z.array(MemberView) }),
  }),
  readMember: route({
    method: 'GET',
    path: '/houses/{house}/members/{mark}',
    summary: 'History of a member.',
    access: 'read',
    status: 200,
    answer: MemberHistoryView,
  }),
  putMember: route({
    method: 'PUT',
    path: '/houses/{house}/members/{mark}',
    summary: 'Enter or change a member by hand.',
    access: 'record',
    body: MemberFacts.omit({ mark: true }),
    status: 200,
    answer: MemberView,
  }),
  deleteMember: route({
    method: 'DELETE',
    path: '/houses/{house}/members/{mark}',
    summary: 'Retire a member; one that nothing refers to is removed.',
    access: 'record',
    status: 200,
    answer: z.object({ outcome: z.enum(['retired', 'removed']) }),
  }),
} as const satisfies Record<string, Route>;
