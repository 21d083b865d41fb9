import type { Camera } from '../contract/clock.ts';

/**
 * One text for one camera: its make, model and serial number as its files write them. Null where a file
 * names neither make nor model. Without a serial number all cameras of a make and model are one.
 */
export function cameraKey({ make, model, serial }: Camera): string | null {
  return make === null && model === null ? null : JSON.stringify([make, model, serial]);
}
