import { expect, test } from 'vitest';
import { touchedBy } from '../../../client/live/touched-parts.ts';

const photoOf = (part: string, kind: string) =>
  touchedBy({ type: 'statement', seq: 0, kind, photo: 'p' }).find((touched) => touched.part === part)?.photo;

test.each(['tag.placed', 'tag.superseded', 'tag.withdrawn'])(
  '%s changes the members on its photo',
  (kind) => {
    expect([photoOf('report', kind), photoOf('photo', kind), photoOf('members', kind)]).toEqual([
      'p',
      'p',
      null,
    ]);
  },
);

// Of two almost identical pictures with different times each speaks against the other.
test.each(['photo.dated', 'photo.dating-withdrawn'])('%s changes members on other photos, too', (kind) => {
  expect([photoOf('report', kind), photoOf('photo', kind)]).toEqual([null, 'p']);
});

test('what is not named can change anything', () => {
  expect(photoOf('report', 'covering.changed')).toBeNull();
  expect(photoOf('photo', 'covering.changed')).toBeNull();
});
