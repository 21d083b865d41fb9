import type { DatingFacts } from '#domain/contract/clock';
import type { AccountView, PhotoView } from '#domain/contract/views';
import { doubtOf } from '#domain/photo/capture-doubt';
import { datePhoto as decide } from '#domain/photo/date-photo';
import { assertPast } from './assert-past.ts';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import type { HouseWriting } from './record-store.ts';
import { sameContent } from './same-content.ts';

/** Only where the file gives no time or an impossible one: a wrong clock is put right by clock marks. */
export async function datePhoto(
  context: Context,
  account: AccountView,
  place: { house: string; photo: string },
  facts: DatingFacts,
): Promise<PhotoView> {
  assertPast(context, facts.taken);
  return context.store.write(place.house, speaker(account), async (writing) => {
    const { photo, grounds } = await read(writing, place.photo);
    if (grounds.byHand && isRepeated(grounds.byHand, account, facts)) return photo;
    const file = decide(photo.readings, { ...grounds, byHand: null });
    if (file.state === 'dated' && doubtOf(file) === null)
      throw new Failure('photo-has-a-time', { file: photo.fileName });
    await writing.say({ kind: 'photo.dated', version: 1, payload: { ...facts, photo: place.photo } });
    return (await read(writing, place.photo)).photo;
  });
}

export async function withdrawDate(
  context: Context,
  account: AccountView,
  place: { house: string; photo: string },
  reason: string,
): Promise<PhotoView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const { photo, grounds } = await read(writing, place.photo);
    if (!grounds.byHand) throw new Failure('photo-not-dated-by-hand', { file: photo.fileName });
    const payload = { photo: place.photo, reason };
    await writing.say({ kind: 'photo.dating-withdrawn', version: 1, payload });
    return (await read(writing, place.photo)).photo;
  });
}

function isRepeated(
  before: DatingFacts & { by: { id: string } | null },
  account: AccountView,
  now: DatingFacts,
) {
  const { taken, withinS, reason } = before;
  return before.by?.id === account.id && sameContent({ taken, withinS, reason }, now);
}

async function read(writing: HouseWriting, id: string) {
  const [photo, grounds] = [await writing.photo(id), await writing.grounds(id)];
  if (!photo || !grounds) throw new Failure('not-found', { what: 'photo' });
  return { photo, grounds };
}
