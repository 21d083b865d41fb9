import { describe, expect, test } from 'vitest';
import type { PhotoView } from '#domain/contract/views';
import { groupByDay } from '../../../client/screens/photos/photo-days.ts';
import { filterAddress, isFiltered, readFilter } from '../../../client/screens/photos/photo-filter.ts';
import { offsetText } from '../../../client/screens/photos/capture-sentence.ts';

const photo = (id: string, day: string | null) =>
  ({ id, capture: day === null ? { state: 'undated' } : { state: 'dated', day } }) as PhotoView;

test('photos are grouped by day in their order, without those that have none', () => {
  const photos = [
    photo('a', '2026-04-05'),
    photo('b', '2026-04-03'),
    photo('c', '2026-04-03'),
    photo('d', null),
  ];
  expect(groupByDay(photos).map(({ day, photos: p }) => [day, p.map(({ id }) => id)])).toEqual([
    ['2026-04-05', ['a']],
    ['2026-04-03', ['b', 'c']],
  ]);
  expect(groupByDay([])).toEqual([]);
});

describe('the filter in the address', () => {
  test('survives the way there and back', () => {
    const filter = { day: '2026-04-03', mark: 'い三 &', untagged: '1' } as const;
    expect(readFilter(new URLSearchParams(filterAddress(filter)))).toEqual(filter);
  });
  test('leaves out what was not asked and what is no day', () => {
    const filter = readFilter(new URLSearchParams('?day=yesterday&mark=&untagged=0&tag=x'));
    expect(filter).toEqual({});
    expect(isFiltered(filter)).toBe(false);
    expect(filterAddress(filter)).toBe('');
  });
});

// ISO 8601-1, 5.3.4.1: hours and minutes ahead of or behind UTC.
test.each([
  [540, '+09:00'],
  [-210, '−03:30'],
  [0, '+00:00'],
  [345, '+05:45'],
])('%i minutes read %s', (minutes, text) => expect(offsetText(minutes)).toBe(text));
