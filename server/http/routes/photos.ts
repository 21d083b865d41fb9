import type { Response } from 'express';
import type { Logger } from 'pino';
import type { Query } from '#domain/contract/routes';
import { parseMark } from '#domain/frame/mark';
import type { MediaType } from '#domain/contract/shapes';
import type { Context } from '../../services/context.ts';
import { addDevicePosition } from '../../services/device-position.ts';
import { copyPhoto, wholePicture } from '../../services/copy-photo.ts';
import { cropPhoto, cropTag } from '../../services/crop-photo.ts';
import { Failure } from '../../services/failure.ts';
import { makePicturesAgain } from '../../services/make-pictures.ts';
import { regionLegibility } from '../../services/region-legibility.ts';
import type { PhotoFilter } from '../../services/record-store.ts';
import { placeTag, supersedeTag, withdrawTag } from '../../services/tags.ts';
import type { Handlers } from '../implement.ts';
import { receivePhotos } from '../upload.ts';

/** A photo's files never change under their address. */
const FOREVER = 'private, max-age=31536000, immutable';

export function photoHandlers(context: Context, log: Logger, wakeJobs: () => void): Handlers {
  const { read } = context.store;
  const thenWake = async <T>(said: Promise<T>): Promise<T> => {
    const answer = await said;
    wakeJobs();
    return answer;
  };
  return {
    findPhoto: async ({ house, query }) => ({
      photo: (await read.photoByContent(house, query.sha256)) ?? null,
    }),
    addPhotos: async ({ account, house, req, res }) => {
      const defect = (err: unknown, fileName: string) =>
        log.error({ err, fileName }, 'photo could not be taken');
      const results = await receivePhotos(context, account, house, { req, res, defect });
      wakeJobs();
      return { results };
    },
    listPhotos: ({ house, query }) => read.photos(house, filterOf(query), query),
    countPhotos: ({ house, query }) => read.photoCounts(house, filterOf(query), query.place),
    orderPhotos: async ({ house, query }) => ({ photos: await read.photoOrder(house, filterOf(query)) }),
    listAdders: async ({ house }) => ({ people: await read.adders(house) }),
    listPlaces: ({ house, query }) => read.photoPlaces(house, query.day),
    addDevicePosition: ({ account, house, params, body }) =>
      addDevicePosition(context, account, { house, photo: params.photo }, body),
    readPhoto: async ({ params }) => ({
      ...(await required(read.photo(params.photo))),
      allTags: await read.tagsOn(params.photo),
    }),

    photoOriginal: async ({ params, res }) => {
      const { sha256, mediaType, fileName } = await required(read.photoFile(params.photo));
      res.setHeader('content-disposition', `inline; filename*=UTF-8''${encodeURIComponent(fileName)}`);
      return sendFile(res, context.files.original(sha256), mediaType);
    },
    photoWhole: async ({ params, res }) =>
      sendFile(res, await wholePicture(context, params.photo), 'image/jpeg'),
    photoCopy: async ({ params, query, res }) => {
      const wish = { position: query.position === '1', serial: query.serial === '1' };
      const { name, jpeg } = await copyPhoto(context, params.photo, wish);
      // Its capture time may be decided anew.
      res.setHeader('cache-control', 'private, no-store');
      // Express writes the header as RFC 6266 says, with a plain name for old programs.
      res.attachment(name).type('image/jpeg').send(Buffer.from(jpeg));
      return undefined;
    },
    photoPreview: ({ params, res }) => sendPicture(context, wakeJobs, res, params.photo, 'preview'),
    photoThumb: ({ params, res }) => sendPicture(context, wakeJobs, res, params.photo, 'thumb'),
    photoCrop: async ({ params, query, res }) => {
      const jpeg = await cropPhoto(context, params.photo, query.xywh, query.width);
      res.setHeader('cache-control', FOREVER);
      res.type('image/jpeg').send(Buffer.from(jpeg));
      return undefined;
    },
    tagCrop: async ({ params, query, res }) => {
      const jpeg = await cropTag(context, params.tag, query.width);
      res.setHeader('cache-control', FOREVER);
      res.type('image/jpeg').send(Buffer.from(jpeg));
      return undefined;
    },

    photoLegibility: ({ params, query }) => regionLegibility(context, params.photo, query.region),
    alikePhotos: ({ params }) => read.alike(params.photo),

    placeTag: ({ account, house, params, body: { id, ...facts } }) =>
      thenWake(placeTag(context, account, { house, photo: params.photo, tag: id }, facts)),
    supersedeTag: ({ account, house, params, body: { id, ...facts } }) =>
      thenWake(supersedeTag(context, account, { house, supersedes: params.tag, tag: id }, facts)),
    withdrawTag: ({ account, house, params, query }) =>
      withdrawTag(context, account, { house, tag: params.tag }, query.reason),
  };
}

async function sendPicture(
  context: Context,
  wakeJobs: () => void,
  res: Response,
  photo: string,
  size: 'thumb' | 'preview',
): Promise<undefined> {
  const view = await required(context.store.read.photo(photo));
  if (view.pictures === 'pending' || view.pictures === 'unreadable') throw new Failure('picture-not-ready');
  try {
    return await sendFile(res, context.files.picture(view.sha256, size), 'image/jpeg');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    await makePicturesAgain(context, photo);
    wakeJobs();
    throw new Failure('picture-not-ready');
  }
}

function sendFile(res: Response, path: string, type: MediaType): Promise<undefined> {
  return new Promise((resolve, reject) => {
    const headers = { 'content-type': type, 'cache-control': FOREVER };
    res.sendFile(
      path,
      { headers, cacheControl: false, dotfiles: 'allow' },
      (error?: Error & { code?: string }) => {
        if (!error || error.code === 'ECONNABORTED' || res.headersSent) resolve(undefined);
        else reject(error);
      },
    );
  });
}

async function required<T>(reading: Promise<T | undefined>): Promise<T> {
  const value = await reading;
  if (value === undefined) throw new Failure('not-found', { what: 'photo' });
  return value;
}

/** The filter as the query says it. */
function filterOf(query: Query<'orderPhotos'>): PhotoFilter {
  const { day, mark, stage, by, dated, untagged } = query;
  return {
    day,
    stage,
    by,
    mark: mark === undefined ? undefined : normalMark(mark),
    untagged: untagged === '1',
    dated: dated === undefined ? undefined : dated === '1',
  };
}

function normalMark(text: string): string {
  const parsed = parseMark(text);
  return parsed.ok ? parsed.mark : text;
}
