import { z } from 'zod';
import { CameraView, ClockMarkFacts, ClockMarkView, DatingFacts } from '../clock.ts';
import { Id, line } from '../shapes.ts';
import { PhotoView } from '../views.ts';
import { route, type Route } from './route.ts';

const reason = z.object({ reason: line(1000) });

/** Clocks of cameras, and photos dated by hand. */
export const CLOCK_ROUTES = {
  markClock: route({
    method: 'POST',
    path: '/photos/{photo}/clock-mark',
    summary: 'Say what the true time was when this photo was taken; all photos of its camera follow.',
    access: 'record',
    body: ClockMarkFacts.extend({ id: Id }),
    status: 201,
    answer: ClockMarkView,
  }),
  withdrawClockMark: route({
    method: 'DELETE',
    path: '/clock-marks/{clockMark}',
    summary: 'Withdraw a clock mark, with the reason; the photos go back to what they said without it.',
    access: 'record',
    query: reason,
    status: 204,
  }),
  listCameras: route({
    method: 'GET',
    path: '/houses/{house}/cameras',
    summary: 'The cameras that photos name, with their clock marks.',
    access: 'read',
    status: 200,
    answer: z.object({
      cameras: z.array(CameraView),
      unnamed: z.int().meta({ description: 'Photos that name no camera.' }),
    }),
  }),
  datePhoto: route({
    method: 'PUT',
    path: '/photos/{photo}/date',
    summary: 'Date a photo by hand whose file gives no time that can be used; a later word replaces it.',
    access: 'record',
    body: DatingFacts,
    status: 200,
    answer: PhotoView,
  }),
  withdrawDate: route({
    method: 'DELETE',
    path: '/photos/{photo}/date',
    summary: 'Withdraw the date said by hand, with the reason.',
    access: 'record',
    query: reason,
    status: 200,
    answer: PhotoView,
  }),
} as const satisfies Record<string, Route>;
