import type { DevicePosition } from '#domain/contract/place';
import type { AccountView, PhotoView } from '#domain/contract/views';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import { sameContent } from './same-content.ts';

/** Where the device was that added a photo; saying the same again says nothing. */
export async function addDevicePosition(
  context: Context,
  account: AccountView,
  { house, photo }: { readonly house: string; readonly photo: string },
  position: DevicePosition,
): Promise<PhotoView> {
  return context.store.write(house, speaker(account), async (writing) => {
    const before = await writing.photo(photo);
    if (!before) throw new Failure('not-found', { what: 'photo' });
    const { by, ...known } = before.place.device ?? { by: null };
    if (by?.id === account.id && sameContent(known, position)) return before;
    await writing.say({ kind: 'photo.position-added', version: 1, payload: { photo, ...position } });
    return (await writing.photo(photo)) ?? before;
  });
}
