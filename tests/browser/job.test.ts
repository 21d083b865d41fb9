import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { wordsOf } from '../client/words.ts';
import { describeInBrowserOverEitherDatabase, inOneGo, startApp } from './app.ts';
import type { Job } from './job/job.ts';
import { opening } from './job/opening.ts';
import { reporting } from './job/reporting.ts';
import { returning } from './job/returning.ts';
import { tagging } from './job/tagging.ts';
import { sitePhotos } from './site-photos.ts';

/**
 * The times are those of the files, read by hand: the cranes 11:18:07 on 11 July 2001 and the house
 * 13:43:45 on 24 February 2002, both without an offset and so by the clock of the site; the box 18:44:06
 * four hours behind UTC on 4 May 2020, which is 07:44 of the next day in Tokyo (+9); the deck undated.
 */
describeInBrowserOverEitherDatabase('the job, from the first link to the lost members', (make, kind) => {
  // Filled before the first step; each step takes out of it what it needs.
  const job = {} as Job;
  beforeAll(async () => {
    const [t, photos, app] = await Promise.all([wordsOf('en'), sitePhotos(), startApp(make)]);
    const keepsPictures = kind === 'embedded';
    Object.assign(job, { app, t, photos, keepsPictures, house: '', page: await app.open() } satisfies Job);
  });
  inOneGo();
  afterEach(() => expect(job.app.complaints()).toEqual([]));
  afterAll(() => job.app.close());

  opening(job);
  tagging(job);
  reporting(job);
  returning(job);
});
