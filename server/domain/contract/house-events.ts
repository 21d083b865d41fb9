import { z } from 'zod';
import { DERIVATIVE_STATES } from './small-photo.ts';
import { Id } from './shapes.ts';

/** How much has been said of a house, and made for it by the machine: what is on screen is as old as this. */
export const HouseStateView = z.object({
  size: z.int(),
  made: z.int().meta({ description: 'Photos whose pictures were finished or whose tags were measured.' }),
});
export type HouseStateView = z.infer<typeof HouseStateView>;

export const StatementEvent = z.object({
  type: z.literal('statement'),
  seq: z.int(),
  kind: z.string(),
  photo: Id.nullable(),
});
export type StatementEvent = z.infer<typeof StatementEvent>;

/** What travels over the event stream of a house; 'here' first, and again every few seconds. */
export const HouseEvent = z
  .discriminatedUnion('type', [
    HouseStateView.extend({ type: z.literal('here') }),
    StatementEvent,
    z.object({
      type: z.literal('pictures'),
      photo: Id,
      pictures: z.enum(DERIVATIVE_STATES),
      made: z.int().meta({ description: 'How many have been finished in this house.' }),
    }),
    z.object({
      type: z.literal('legibility'),
      photo: Id,
      made: z.int().meta({ description: 'Counted together with the pictures.' }),
    }),
  ])
  .meta({ id: 'HouseEvent' });
export type HouseEvent = z.infer<typeof HouseEvent>;
