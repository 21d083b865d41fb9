import { z } from 'zod';
import { ShotListView } from '../shot-views.ts';
import { WallFiguresView } from '../wall-views.ts';
import { route, type Route } from './route.ts';

/** What somebody on site asks of the frame: where to stand, and how a wall compares. */
export const SITE_ROUTES = {
  shotList: route({
    method: 'GET',
    path: '/houses/{house}/shot-list',
    summary: 'Where to stand for what is missing, in the order of one walk.',
    access: 'read',
    query: z.object({
      days: z
        .union([z.literal('all'), z.coerce.number().int().min(0).max(3650)])
        .default(7)
        .meta({
          description:
            'What closes within so many days, or should have closed; all: without a day or later too.',
        }),
    }),
    status: 200,
    answer: ShotListView,
  }),
  wallFigures: route({
    method: 'GET',
    path: '/coverings/{covering}/wall-figures',
    summary: 'What the schedule says of an earthen wall beside published figures. Never an approval.',
    access: 'read',
    status: 200,
    answer: WallFiguresView,
  }),
} as const satisfies Record<string, Route>;
