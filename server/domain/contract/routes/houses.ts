import { z } from 'zod';
import { HouseChanges, HouseFacts, Id, Instant, RoleShape } from '../shapes.ts';
import { LINK_DAYS } from '../link-days.ts';
import { HouseStateView, StatementEvent } from '../house-events.ts';
import { HouseView, InvitedView, PersonInHouseView } from '../views.ts';
import { route, type Route } from './route.ts';

const email = z.email().max(200);

/** Houses and the people of each. */
export const HOUSE_ROUTES = {
  createHouse: route({
    method: 'POST',
    path: '/houses',
    summary: 'Open the record of a house.',
    access: 'account',
    body: HouseFacts.extend({ id: Id }),
    status: 201,
    answer: HouseView,
  }),
  listHouses: route({
    method: 'GET',
    path: '/houses',
    summary: 'The houses you work on.',
    access: 'account',
    status: 200,
    answer: z.object({ houses: z.array(HouseView) }),
  }),
  readHouse: route({
    method: 'GET',
    path: '/houses/{house}',
    summary: 'One house.',
    access: 'read',
    status: 200,
    answer: HouseView,
  }),
  changeHouse: route({
    method: 'PATCH',
    path: '/houses/{house}',
    summary: 'Change name, zone, first day or site.',
    access: 'rule',
    body: HouseChanges,
    status: 200,
    answer: HouseView,
  }),
  houseEvents: route({
    method: 'GET',
    path: '/houses/{house}/events',
    summary: 'Server-sent events: statements and finished pictures.',
    access: 'read',
    status: 200,
    produces: ['text/event-stream'],
  }),
  houseChanges: route({
    method: 'GET',
    path: '/houses/{house}/changes',
    summary: 'What the event stream tells, for whoever cannot hear it.',
    access: 'read',
    query: z.object({
      after: z.coerce.number().int().min(0).optional().meta({ description: 'The size that one knows.' }),
    }),
    status: 200,
    answer: HouseStateView.extend({
      statements: z
        .array(StatementEvent)
        .nullable()
        .meta({ description: 'Those since; null without `after`, or when there are too many to name.' }),
    }),
  }),
  listPeople: route({
    method: 'GET',
    path: '/houses/{house}/people',
    summary: 'Who works on the house, and who was asked to but has no account yet.',
    access: 'read',
    status: 200,
    answer: z.object({ people: z.array(PersonInHouseView), invited: z.array(InvitedView) }),
  }),
  addPerson: route({
    method: 'POST',
    path: '/houses/{house}/people',
    summary: 'Give a person a role; without an account yet, a one-time link is returned to hand on.',
    access: 'rule',
    body: z.strictObject({
      email,
      role: RoleShape,
      days: z.number().int().min(1).max(LINK_DAYS.most).default(LINK_DAYS.usual).meta({
        description: 'How long the link can be used.',
      }),
    }),
    status: 201,
    answer: z.object({ person: PersonInHouseView.nullable(), link: z.string().nullable() }),
  }),
  removePerson: route({
    method: 'DELETE',
    path: '/houses/{house}/people/{person}',
    summary: 'Take a role back.',
    access: 'rule',
    status: 204,
  }),
  endInvitation: route({
    method: 'DELETE',
    path: '/houses/{house}/invitations/{invitation}',
    summary: 'End the one-time link of somebody who has not joined yet.',
    access: 'rule',
    status: 204,
  }),
  makePasswordLink: route({
    method: 'POST',
    path: '/houses/{house}/people/{person}/password-link',
    summary:
      'Make a one-time link by which a person who has lost the password sets a new one. ' +
      'Only for somebody all of whose houses you keep; the ledger of each says so.',
    access: 'rule',
    status: 201,
    answer: z.object({ link: z.string(), until: Instant }),
  }),
} as const satisfies Record<string, Route>;
