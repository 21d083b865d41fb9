import { z } from 'zod';
import { DevicePosition } from '../place.ts';
import { Day, Id, PersonShape, Sha256, StageShape, TagFacts } from '../shapes.ts';
import { AlikePhotoView } from '../alike-views.ts';
import { LegibilityView } from '../legibility-views.ts';
import { PhotoDetailView, PhotoPlaceView, PhotoView, TagView, UploadOutcome } from '../views.ts';
import { route, type Route } from './route.ts';

const CROP_WIDTH = z.coerce.number().int().min(16).max(2000).default(480);

/** Which photos of a house; whatever is given must hold. */
const FILTER = {
  dated: z
    .enum(['0', '1'])
    .optional()
    .meta({ description: 'Only photos with (1) or without (0) a capture time.' }),
  day: Day.optional(),
  mark: z
    .string()
    .max(400)
    .optional()
    .meta({ description: 'With a standing tag of this mark; together with stage, one tag of both.' }),
  stage: StageShape.optional().meta({ description: 'With a standing tag at this stage.' }),
  by: z.string().max(200).optional().meta({ description: 'Added by the person with this id.' }),
  untagged: z.enum(['0', '1']).default('0').meta({ description: '1: without a standing tag.' }),
};

/** Photos and the tags on them. */
export const PHOTO_ROUTES = {
  findPhoto: route({
    method: 'GET',
    path: '/houses/{house}/photos/known',
    summary: 'The photo with this content, or null: whether a file need be sent at all.',
    access: 'read',
    query: z.object({ sha256: Sha256 }),
    status: 200,
    answer: z.object({ photo: PhotoView.nullable() }),
  }),
  addPhotos: route({
    method: 'POST',
    path: '/houses/{house}/photos',
    summary: 'Add photos (multipart, field photos).',
    access: 'contribute',
    consumes: ['multipart/form-data'],
    status: 201,
    answer: z.object({ results: z.array(UploadOutcome) }),
  }),
  listPhotos: route({
    method: 'GET',
    path: '/houses/{house}/photos',
    summary: 'Photos in order of capture or the newest day first; undated ones last.',
    access: 'read',
    query: z.object({
      order: z.enum(['capture', 'newest-day']).default('capture').meta({
        description: 'newest-day: the last day first, each day in order of capture.',
      }),
      ...FILTER,
      after: Id.optional().meta({ description: 'The last photo of the page before.' }),
      offset: z.coerce.number().int().min(0).default(0).meta({
        description: 'How many to pass over. Within a day it names the same photos while other days grow.',
      }),
      limit: z.coerce.number().int().min(1).max(1000).default(200),
    }),
    status: 200,
    answer: z.object({ photos: z.array(PhotoView), total: z.int(), next: Id.nullable() }),
  }),
  countPhotos: route({
    method: 'GET',
    path: '/houses/{house}/photo-days',
    summary: 'How many photos each day has, the newest first: the shape of the list without the list.',
    access: 'read',
    query: z.object({
      ...FILTER,
      place: Id.optional().meta({ description: 'A photo whose place in the list is wanted.' }),
    }),
    status: 200,
    answer: z.object({
      days: z.array(z.object({ day: Day, photos: z.int() })),
      undated: z.int(),
      place: z
        .object({ day: Day.nullable(), position: z.int().meta({ description: 'Within its day, from 0.' }) })
        .nullable()
        .meta({ description: 'null: not asked for, or not in the list.' }),
    }),
  }),
  orderPhotos: route({
    method: 'GET',
    path: '/houses/{house}/photo-order',
    summary: 'The ids of all photos in order of capture, undated ones last.',
    access: 'read',
    query: z.object(FILTER),
    status: 200,
    answer: z.object({ photos: z.array(Id) }),
  }),
  listAdders: route({
    method: 'GET',
    path: '/houses/{house}/photo-people',
    summary: 'Who has added photos, also those who have left the house since.',
    access: 'read',
    status: 200,
    answer: z.object({ people: z.array(PersonShape.extend({ photos: z.int() })) }),
  }),
  listPlaces: route({
    method: 'GET',
    path: '/houses/{house}/photo-places',
    summary: 'Where photos were taken, in order of capture: those with a position of file or device.',
    access: 'read',
    query: z.object({ day: Day.optional() }),
    status: 200,
    answer: z.object({
      photos: z.array(PhotoPlaceView),
      without: z.int().meta({ description: 'How many have no position at all.' }),
    }),
  }),
  addDevicePosition: route({
    method: 'PUT',
    path: '/photos/{photo}/device-position',
    summary: 'Where the device was that added this photo. Never mixed with the position in the file.',
    access: 'contribute',
    body: DevicePosition,
    status: 200,
    answer: PhotoView,
  }),
  readPhoto: route({
    method: 'GET',
    path: '/photos/{photo}',
    summary: 'One photo with all its tags.',
    access: 'read',
    status: 200,
    answer: PhotoDetailView,
  }),
  photoOriginal: route({
    method: 'GET',
    path: '/photos/{photo}/original',
    summary: 'The file as it was uploaded.',
    access: 'read',
    status: 200,
    produces: ['image/*'],
  }),
  photoWhole: route({
    method: 'GET',
    path: '/photos/{photo}/whole',
    summary: 'Upright, at full size, with nothing written in it.',
    access: 'read',
    status: 200,
    produces: ['image/jpeg'],
  }),
  photoCopy: route({
    method: 'GET',
    path: '/photos/{photo}/copy',
    summary: 'The whole picture to hand on: without position and serial number unless asked for.',
    access: 'read',
    query: z.object({
      position: z.enum(['0', '1']).default('0'),
      serial: z.enum(['0', '1']).default('0'),
    }),
    status: 200,
    produces: ['image/jpeg'],
  }),
  photoPreview: route({
    method: 'GET',
    path: '/photos/{photo}/preview',
    summary: 'Upright, 1600 px.',
    access: 'read',
    status: 200,
    produces: ['image/jpeg'],
  }),
  photoThumb: route({
    method: 'GET',
    path: '/photos/{photo}/thumb',
    summary: 'Upright, 320 px.',
    access: 'read',
    status: 200,
    produces: ['image/jpeg'],
  }),
  photoCrop: route({
    method: 'GET',
    path: '/photos/{photo}/crop',
    summary: 'A part of the original, upright. xywh=percent:x,y,w,h (Media Fragments).',
    access: 'read',
    query: z.object({ xywh: z.string().max(100), width: CROP_WIDTH }),
    status: 200,
    produces: ['image/jpeg'],
  }),
  tagCrop: route({
    method: 'GET',
    path: '/tags/{tag}/crop',
    summary:
      'What a tag shows, out of the original, upright. What is long and thin comes with its surroundings, and outlined.',
    access: 'read',
    query: z.object({ width: CROP_WIDTH }),
    status: 200,
    produces: ['image/jpeg'],
  }),

  photoLegibility: route({
    method: 'GET',
    path: '/photos/{photo}/legibility',
    summary: 'Whether a stranger could read a member in a region of the original.',
    access: 'read',
    query: z.object({
      region: z.string().max(12_000).meta({
        description:
          'A region as in a tag, in JSON, or xywh=percent:x,y,w,h (Media Fragments) without the name.',
      }),
    }),
    status: 200,
    answer: LegibilityView,
  }),
  alikePhotos: route({
    method: 'GET',
    path: '/photos/{photo}/alike',
    summary: 'Photos nearly the same as this one, and the sharpest of those that are not much smaller.',
    access: 'read',
    status: 200,
    answer: z.object({ photos: z.array(AlikePhotoView), sharpest: Id.nullable() }),
  }),

  placeTag: route({
    method: 'POST',
    path: '/photos/{photo}/tags',
    summary: 'State what a region shows.',
    access: 'record',
    body: TagFacts.extend({ id: Id }),
    status: 201,
    answer: TagView,
  }),
  supersedeTag: route({
    method: 'PUT',
    path: '/tags/{tag}',
    summary: 'Replace a tag; the old one stays on record.',
    access: 'record',
    body: TagFacts.extend({ id: Id }),
    status: 200,
    answer: TagView,
  }),
  withdrawTag: route({
    method: 'DELETE',
    path: '/tags/{tag}',
    summary: 'Withdraw a tag; it stays on record as withdrawn.',
    access: 'record',
    query: z.object({ reason: z.string().max(1000).default('') }),
    status: 200,
    answer: TagView,
  }),
} as const satisfies Record<string, Route>;
