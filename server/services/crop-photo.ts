import type { UnitBox } from '#domain/photo/region';
import { cropOf } from '#domain/photo/crop-box';
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

/** What a tag shows; of what is long and thin with its surroundings, and then outlined. */
export async function cropTag(context: Context, tag: string, width: number): Promise<Uint8Array> {
  const said = await context.store.read.tag(tag);
  if (!said) throw new Failure('not-found', { what: 'tag' });
  const view = await decodablePhoto(context, said.photo);
  const { box, outline } = cropOf(said.region, view);
  const original = context.files.original(view.sha256);
  return madeOf(view, () => context.imaging.crop(original, view.mediaType, box, width, outline));
}
