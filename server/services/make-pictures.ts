import type { MadePictures, PictureState } from './ports.ts';
import type { Context } from './context.ts';

/** Two photos at once keep two cores busy; more only take memory. */
const AT_ONCE = 2;

export interface PictureLog {
  /** What was made of a photo; without traits where an older program made it. */
  find(photo: string): Promise<{ state: PictureState; hasTraits: boolean } | undefined>;
  /** Notes the state and tells whoever looks at the house. */
  made(house: string, photo: string, made: MadePictures): Promise<void>;
}

/** Makes thumbnail and preview of each photo that has none; one that fails does not stop the others. */
export async function makePictures(
  context: Context,
  log: PictureLog,
  photos: readonly string[],
): Promise<void> {
  const waiting = [...photos];
  const failures: unknown[] = [];
  const hand = async () => {
    for (let photo = waiting.shift(); photo !== undefined; photo = waiting.shift())
      await makeOne(context, log, photo).catch((error: unknown) => failures.push(error));
  };
  await Promise.all(Array.from({ length: AT_ONCE }, hand));
  if (failures.length > 0) throw new AggregateError(failures, `${failures.length} photos got no pictures.`);
}

/** For a photo whose picture files are gone, as after their folder was deleted. */
export async function makePicturesAgain({ store }: Context, photo: string): Promise<void> {
  const file = await store.read.photoFile(photo);
  if (file) await store.write(file.house, null, (writing) => writing.requestPictures(photo));
}

async function makeOne(context: Context, log: PictureLog, photo: string): Promise<void> {
  const before = await log.find(photo);
  if (before && (before.hasTraits || before.state === 'unreadable')) return;
  const file = await context.store.read.photoFile(photo);
  if (!file) return;
  const { files, imaging } = context;
  const preview = files.picture(file.sha256, 'preview');
  const traits = before && (await imaging.traits(preview).catch(() => null));
  if (before && traits) return log.made(file.house, photo, { state: before.state, traits });
  await files.prepareForPictures(file.sha256);
  const to = { thumb: files.picture(file.sha256, 'thumb'), preview };
  await log.made(
    file.house,
    photo,
    await imaging.makePictures(files.original(file.sha256), file.mediaType, to),
  );
}
