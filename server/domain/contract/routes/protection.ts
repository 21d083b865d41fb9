import { z } from 'zod';
import { ProtectionFacts, ProtectionView } from '../protection.ts';
import { Id, Instant, line, paragraph } from '../shapes.ts';
import { route, type Route } from './route.ts';

const reason = z.object({ reason: line(1000) });
const now = Instant.nullable().default(null).meta({ description: 'null: now.' });

/** Temporary protection: it hides without closing. */
export const PROTECTION_ROUTES = {
  layProtection: route({
    method: 'POST',
    path: '/houses/{house}/protections',
    summary: 'Say that temporary protection was laid; photos taken under it are no record of what it hides.',
    access: 'record',
    body: ProtectionFacts.extend({ id: Id, laidAt: now }),
    status: 201,
    answer: ProtectionView,
  }),
  listProtections: route({
    method: 'GET',
    path: '/houses/{house}/protections',
    summary: 'What lies there and what was lifted, the latest laid first; not what was withdrawn.',
    access: 'read',
    status: 200,
    answer: z.object({ protections: z.array(ProtectionView) }),
  }),
  changeProtection: route({
    method: 'PUT',
    path: '/protections/{protection}',
    summary: 'Correct what was said of temporary protection, whether it still lies or not.',
    access: 'record',
    body: ProtectionFacts,
    status: 200,
    answer: ProtectionView,
  }),
  withdrawProtection: route({
    method: 'DELETE',
    path: '/protections/{protection}',
    summary: 'Withdraw protection that was said by mistake and never lay there, with the reason.',
    access: 'record',
    query: reason,
    status: 200,
    answer: ProtectionView,
  }),
  liftProtection: route({
    method: 'POST',
    path: '/protections/{protection}/lift',
    summary: 'Say that it was lifted.',
    access: 'record',
    body: z.strictObject({ liftedAt: now, note: paragraph(2000).default('') }),
    status: 200,
    answer: ProtectionView,
  }),
  withdrawLifting: route({
    method: 'DELETE',
    path: '/protections/{protection}/lift',
    summary: 'Take back a lifting that was said by mistake, with the reason: it lies there still.',
    access: 'record',
    query: reason,
    status: 200,
    answer: ProtectionView,
  }),
} as const satisfies Record<string, Route>;
