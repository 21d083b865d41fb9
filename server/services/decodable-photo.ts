import type { PhotoView } from '#domain/contract/views';
import type { Context } from './context.ts';
import { Failure } from './failure.ts';

/** The photo if a picture can be made of it, as far as that is known yet. */
export async function decodablePhoto({ store }: Context, photo: string): Promise<PhotoView> {
  const view = await store.read.photo(photo);
  if (!view) throw new Failure('not-found', { what: 'photo' });
  if (view.pictures === 'unreadable') throw damaged(view);
  return view;
}

/** What `make` makes of it. While its pictures are still to be made, this may be the first that fails. */
export async function madeOf<T>(view: PhotoView, make: () => Promise<T>): Promise<T> {
  try {
    return await make();
  } catch (error) {
    throw view.pictures === 'pending' ? damaged(view) : error;
  }
}

function damaged({ fileName }: PhotoView): Failure {
  return new Failure('photo-damaged', { file: fileName });
}
