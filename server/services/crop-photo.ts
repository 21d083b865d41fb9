import type { UnitBox } from '#domain/photo/region';
import { parseMediaFragment } from '#domain/photo/media-fragment';
import type { Context } from './context.ts';
import { Failure } from './failure.ts';

/** A part of the original by a Media Fragments `xywh`, in percent or in pixels of the upright image. */
export async function cropPhoto(
  context: Context,
  photo: string,
  xywh: string,
  width: number,
): Promise<Uint8Array> {
  const view = await context.store.read.photo(photo);
  if (!view) throw new Failure('not-found', { what: 'photo' });
  const box: UnitBox | null = parseMediaFragment(xywh, view);
  if (!box) throw new Failure('crop-outside-image', { xywh });
  if (view.pictures === 'unreadable') throw new Failure('photo-damaged', { file: view.fileName });
  return context.imaging.crop(context.files.original(view.sha256), view.mediaType, box, width);
}
