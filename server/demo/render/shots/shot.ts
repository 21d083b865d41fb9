import type { View } from '../camera.ts';
import type { Faults } from '../develop/develop.ts';
import type { Moment } from './state-on-day.ts';

/** A photo that somebody might have taken. */
export interface Shot extends Moment {
  readonly name: string;
  /** By the clock on site, HH:MM:SS. */
  readonly time: string;
  readonly view: View;
  /** How the clouds lie, or that they hide the sun. */
  readonly clouds: number | 'overcast';
  readonly faults?: Faults;
}

/** Of the noise in a picture: that of the site is its own. */
export function seedOf({ name }: Shot): number {
  return [...name].reduce((sum, char) => (Math.imul(sum, 31) + char.charCodeAt(0)) | 0, 7);
}
