import type { PhotoView } from '#domain/contract/views';
import { wallTextOf } from '#domain/photo/wall-text';
import type { Context } from './context.ts';
import { decodablePhoto, madeOf } from './decodable-photo.ts';
import type { CopyFacts } from './ports.ts';
import { safeFileName, withoutReserved } from './safe-file-name.ts';

export interface CopyWish {
  readonly position: boolean;
  readonly serial: boolean;
}

/** The whole picture to be handed on. Position and serial number are in it only where they were asked for. */
export async function copyPhoto(context: Context, photo: string, wish: CopyWish): Promise<PhotoCopy> {
  const view = await decodablePhoto(context, photo);
  const original = context.files.original(view.sha256);
  const facts = copyFacts(view, wish);
  const jpeg = await madeOf(view, () => context.imaging.copy(original, view.mediaType, facts));
  return { name: copyName(view.fileName), jpeg };
}

export interface PhotoCopy {
  readonly name: string;
  readonly jpeg: Uint8Array;
}

/** Where the whole picture lies that the bench shows: made when it is first asked for. */
export async function wholePicture(context: Context, photo: string): Promise<string> {
  const view = await decodablePhoto(context, photo);
  const { files, imaging } = context;
  const whole = files.picture(view.sha256, 'whole');
  await madeOf(view, () => imaging.makeWhole(files.original(view.sha256), view.mediaType, whole));
  return whole;
}

export function copyFacts(
  { readings, capture }: Pick<PhotoView, 'readings' | 'capture'>,
  wish: CopyWish,
): CopyFacts {
  const { make, model, lens, focalLengthMm, focalLength35Mm } = readings;
  const isDated = capture.state === 'dated';
  return {
    ...{ make, model, lens, focalLengthMm, focalLength35Mm },
    wallTime: isDated ? wallTextOf(capture.instant, capture.offsetMinutes) : null,
    offsetMinutes: isDated ? capture.offsetMinutes : null,
    position: wish.position ? readings.position : null,
    heading: wish.position ? readings.heading : null,
    serial: wish.serial ? readings.serial : null,
  };
}

/** Of a copy: the name of the original, as JPEG. */
export function copyName(fileName: string): string {
  const stem = withoutReserved(fileName).replace(/\.[A-Za-z0-9]{1,5}$/u, '');
  return safeFileName(stem, 'jpg', 'photo');
}
