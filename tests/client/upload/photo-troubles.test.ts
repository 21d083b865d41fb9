import { describe, expect, test } from 'vitest';
import type { PhotoView } from '#domain/contract/views';
import { troublesOf } from '../../../client/upload/photo-troubles.ts';
import { isDoubtful, isSettled } from '../../../client/upload/upload-queue.ts';
import { LANGUAGES, wordsOf } from '../words.ts';

const photo = (capture: object, verdict: string | null = null) =>
  ({ capture, place: { site: verdict && { verdict } } }) as unknown as PhotoView;
const dated = (...flags: string[]) => ({ state: 'dated', flags });

describe('what speaks against a photo that was added', () => {
  test.each([
    ['nothing', photo(dated()), []],
    ['an odd clock that can be', photo(dated('gps-stale'), 'on-site'), []],
    ['a place that cannot be told', photo(dated(), 'cannot-tell'), []],
    ['no date', photo({ state: 'undated' }), ['undated']],
    ['a date to come', photo(dated('gps-stale', 'after-upload')), ['after-upload']],
    ['a date too early', photo(dated('before-first-day'), 'on-site'), ['before-first-day']],
    ['another place', photo(dated(), 'off-site'), ['off-site']],
    ['both', photo({ state: 'undated' }, 'off-site'), ['undated', 'off-site']],
  ] as const)('%s', (_, view, expected) => expect(troublesOf(view)).toEqual(expected));

  test('is to be looked at, although the photo has arrived', () => {
    const added = { is: 'added', photo: 'p', position: 'file' } as const;
    const of = (against: ReturnType<typeof troublesOf>) => ({ state: { ...added, against } });
    expect([isDoubtful(of(['off-site'])), isSettled(of(['off-site']))]).toEqual([true, true]);
    expect(isDoubtful(of([]))).toBe(false);
    expect(isDoubtful({ state: { is: 'waiting' } })).toBe(false);
  });
});

test.each(LANGUAGES)('each has words in %s', async (lang) => {
  const t = await wordsOf(lang);
  for (const trouble of ['undated', 'after-upload', 'before-first-day', 'off-site'] as const)
    expect(t(`photos.outcome.against.${trouble}`, { first: '1 Apr' })).toMatch(/^(?!photos\.).{8,}/);
});
