import { expect, test } from 'vitest';
import { keepReview, parseReview, readReview } from '../../../client/screens/review/kept-review.ts';
import { NOTHING_SAID, type ReviewDraft } from '../../../client/screens/review/review-draft.ts';
import { memoryStorage } from '../memory-storage.ts';

const draft: ReviewDraft = {
  said: {
    い一: { basis: 'a', answer: { is: 'seen' } },
    い二: { basis: 'b', answer: { is: 'waived', reason: 'seen on site' } },
    い三: { basis: 'c', answer: { is: 'missing', note: '' } },
  },
  reasons: ['seen on site'],
  note: 'See い三.',
  doubts: { い三: { tag: 't', reason: 'This is い二.' } },
  takenUpAfter: '2026-11-27T13:20:00.000Z',
};

test('a review comes back for its covering and its account alone, until it is said', () => {
  const storage = memoryStorage();
  keepReview(storage, 'sato', 'north', draft);
  expect(readReview(storage, 'sato', 'north')).toEqual(draft);
  expect(readReview(storage, 'mio', 'north')).toEqual(NOTHING_SAID);
  expect(readReview(storage, 'sato', 'south')).toEqual(NOTHING_SAID);
  keepReview(storage, 'sato', 'north', null);
  expect(readReview(storage, 'sato', 'north')).toEqual(NOTHING_SAID);
});

test.each([
  ['nothing', null],
  ['another shape', { said: 7, reasons: [], note: '' }],
  ['an answer that there is not', { ...draft, said: { い一: { basis: 'a', answer: { is: 'perhaps' } } } }],
  ['an answer without what it was about', { ...draft, said: { い一: { answer: { is: 'seen' } } } }],
  ['reasons that are no text', { ...draft, reasons: [7] }],
])('what was kept as %s is not read', (_, value) => {
  expect(parseReview(value)).toBeNull();
});

test('a storage that is forbidden does not stop a review', () => {
  expect(() => keepReview(null, 'sato', 'north', draft)).not.toThrow();
  expect(readReview(null, 'sato', 'north')).toEqual(NOTHING_SAID);
});

test('what was kept before anything was refused is taken up as it is', () => {
  const { takenUpAfter: _, doubts: __, ...older } = draft;
  expect(parseReview(older)).toEqual({ ...draft, doubts: {}, takenUpAfter: null });
});
