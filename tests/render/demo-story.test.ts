import { beforeAll, describe, expect, it } from 'vitest';
import { dayAfter } from '#domain/frame/invented/invented-house';
import type { Story } from '../../server/demo/story/act.ts';
import { momentOf, raisingFor, THIS_MORNING } from '../../server/demo/story/build-time.ts';
import type { StoryPhoto } from '../../server/demo/story/photo.ts';
import { PHOTOS } from '../../server/demo/story/photos.ts';
import { SITE } from '../../server/demo/story/site.ts';
import { storyOf } from '../../server/demo/story/story.ts';
import { truthOf } from '../support/demo-truth.ts';

const RAISING = '2026-04-01';
let photos: StoryPhoto[];
let story: Story;

beforeAll(async () => {
  photos = await Promise.all(PHOTOS.map(async (row) => ({ ...row, truth: await truthOf(row) })));
  story = storyOf(RAISING, SITE, photos);
});

describe('the story of the demo house', () => {
  it('is the same to the last byte for the same day', () => {
    expect(JSON.stringify(storyOf(RAISING, SITE, photos))).toBe(JSON.stringify(story));
  });

  it('begins on another day with another raising, and tells the same', () => {
    const later = storyOf(dayAfter(RAISING, 61), SITE, photos);
    expect(later.acts.map(({ by, does }) => [by, does])).toEqual(
      story.acts.map(({ by, does }) => [by, does]),
    );
    later.acts.forEach(({ at }, i) =>
      expect(Date.parse(at) - Date.parse(story.acts[i]?.at ?? '')).toBe(61 * 86_400_000),
    );
    expect(later.house).not.toBe(story.house);
  });

  it('goes on in order, and ends before the morning on which the demo opens, whatever the hour', () => {
    const times = story.acts.map(({ at }) => at);
    expect(times).toEqual(times.toSorted());
    expect(times.at(-1)).toBeDefined();
    expect(times.at(-1)! < momentOf(RAISING, THIS_MORNING, '00:00')).toBe(true);
  });

  it('says nothing of a photo before it is there', () => {
    const added = new Set<string>();
    for (const act of story.acts) {
      if (act.does === 'add-photo') added.add(act.photo);
      if (act.does === 'tag' || act.does === 'say-of-photo') expect(added).toContain(act.photo);
    }
    expect([...added].sort()).toEqual(PHOTOS.map(({ name }) => name).sort());
  });
});

it.each([
  // Midnight in Japan is 15:00 UTC of the day before.
  ['2026-04-29T14:59:59Z', '2026-03-31'],
  ['2026-04-29T15:00:00Z', '2026-04-01'],
  ['2028-03-01T00:00:00Z', '2028-02-01'],
])('opened at %s the frame was raised on %s', (now, raising) =>
  expect(raisingFor(new Date(now))).toBe(raising),
);
