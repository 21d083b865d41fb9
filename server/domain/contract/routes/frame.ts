import { z } from 'zod';
import { StatedGrid } from '../frame-shapes.ts';
import { FrameOfPhotoView, FrameView } from '../frame-views.ts';
import { RequirementsView } from '../requirements.ts';
import { route, type Route } from './route.ts';

/** The frame in space: the grid, what coverings need, and the whole frame as it is drawn. */
export const FRAME_ROUTES = {
  readGrid: route({
    method: 'GET',
    path: '/houses/{house}/grid',
    summary: 'Lines and levels of the house.',
    access: 'read',
    status: 200,
    answer: z.object({ grid: StatedGrid.nullable() }),
  }),
  stateGrid: route({
    method: 'PUT',
    path: '/houses/{house}/grid',
    summary: 'State where lines and levels lie.',
    access: 'record',
    body: StatedGrid,
    status: 200,
    answer: z.object({ grid: StatedGrid.nullable() }),
  }),
  readRequirements: route({
    method: 'GET',
    path: '/houses/{house}/requirements',
    summary: 'What coverings need on record, where the house asks otherwise than is common.',
    access: 'read',
    status: 200,
    answer: RequirementsView,
  }),
  stateRequirements: route({
    method: 'PUT',
    path: '/houses/{house}/requirements',
    summary: 'State what coverings need on record.',
    access: 'record',
    body: RequirementsView,
    status: 200,
    answer: RequirementsView,
  }),
  readFrame: route({
    method: 'GET',
    path: '/houses/{house}/frame',
    summary: 'The whole frame, as it stands and stood on record.',
    access: 'read',
    status: 200,
    answer: FrameView,
  }),
  readFrameOfPhoto: route({
    method: 'GET',
    path: '/photos/{photo}/frame',
    summary: 'What of the frame can be otherwise after a tag on this photo.',
    access: 'read',
    status: 200,
    answer: FrameOfPhotoView,
  }),
} as const satisfies Record<string, Route>;
