import { z } from 'zod';
import { FINDING_STATES, FindingKey, FindingKindShape, FindingsView, FindingView } from '../findings.ts';
import { Id, Sha256, line } from '../shapes.ts';
import { route, type Route } from './route.ts';

/** What must be looked at, and the answers to it. */
export const FINDING_ROUTES = {
  listFindings: route({
    method: 'GET',
    path: '/houses/{house}/findings',
    summary: 'Contradictions and doubts that a person must look at, with what was answered.',
    access: 'read',
    query: z.object({
      kind: FindingKindShape.optional(),
      state: z.enum(FINDING_STATES).optional(),
      photo: Id.optional().meta({ description: 'Only those about this photo.' }),
      mark: z.string().max(400).optional().meta({ description: 'Only those about this member.' }),
      covering: Id.optional().meta({ description: 'Only those about this covering.' }),
      offset: z.coerce.number().int().min(0).default(0),
      limit: z.coerce.number().int().min(1).max(500).default(50),
    }),
    status: 200,
    answer: FindingsView,
  }),
  acceptFindings: route({
    method: 'POST',
    path: '/houses/{house}/findings/accept',
    summary: 'Accept findings by your name with a reason; each with the basis that you have seen.',
    access: 'contribute',
    body: z.strictObject({
      findings: z
        .array(z.strictObject({ key: FindingKey, basis: Sha256 }))
        .min(1)
        .max(500),
      reason: line(1000),
    }),
    status: 200,
    answer: z.object({ findings: z.array(FindingView) }),
  }),
  reopenFinding: route({
    method: 'POST',
    path: '/houses/{house}/findings/reopen',
    summary: 'Take back that a finding was accepted.',
    access: 'contribute',
    body: z.strictObject({ key: FindingKey, reason: line(1000) }),
    status: 200,
    answer: FindingView,
  }),
} as const satisfies Record<string, Route>;
