import type { Page } from 'playwright-core';
import type { Words } from '../../../client/i18n/words.ts';
import type { App } from '../app.ts';
import type { PhotoName, SitePhoto } from '../site-photos.ts';

/** What the steps of the job hand on to each other. */
export interface Job {
  readonly app: App;
  readonly t: Words;
  readonly page: Page;
  readonly photos: Record<PhotoName, SitePhoto>;
  /** Once is enough: the pictures for people to look at are taken on one database only. */
  readonly keepsPictures: boolean;
  /** Path of the house, once it is open. */
  house: string;
}

export const ZONE = 'Asia/Tokyo';
export const EMAIL = 'mio@example.org';
export const COVERING = 'North wall, first coat';
export const NOTE = 'Cold and clear. Pegs of the third post driven before noon.';

export const nameOf = (job: Job, photo: PhotoName) => job.photos[photo].name;
