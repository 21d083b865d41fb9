import type { UnitBox } from '#domain/photo/region';
import { parseMediaFragment } from '#domain/photo/media-fragment';
import type { Context } from './context.ts';
import { decodablePhoto, madeOf } from './decodable-photo.ts';
import { Failure } from './failure.ts';

/** A part of the original by a Media Fragments `xywh`, in percent or in pixels of the upright image. */
export async function cropPhoto(
  context: Context,
  photo: string,
  xywh: string,
  width: number,
): Promise<Uint8Array> {
  const view = await decodablePhoto(context, photo);
  const box: UnitBox | null = parseMediaFragment(xywh, view);
  if (!box) throw new Failure('crop-outside-image', { xywh });
  const original = context.files.original(view.sha256);
  return madeOf(view, () => context.imaging.crop(original, view.mediaType, box, width));
}
