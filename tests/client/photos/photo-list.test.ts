import { describe, expect, test } from 'vitest';
import {
  filterAddress,
  isFiltered,
  readFilter,
  without,
} from '../../../client/screens/photos/photo-filter.ts';
import { offsetText } from '../../../client/screens/photos/capture-sentence.ts';

describe('the filter in the address', () => {
  test('survives the way there and back', () => {
    const filter = {
      day: '2026-04-03',
      mark: 'い三 &',
      stage: 'lath-on',
      by: 'mio',
      untagged: '1',
    } as const;
    expect(readFilter(new URLSearchParams(filterAddress(filter)))).toEqual(filter);
  });
  test('names a photo to come back to, which is no part of the filter', () => {
    expect(filterAddress({ mark: 'い三' }, 'p')).toMatch(/^\?mark=.*&at=p$/);
    expect(readFilter(new URLSearchParams(filterAddress({ stage: 'cut' }, 'p')))).toEqual({ stage: 'cut' });
  });
  test('gives up one word and keeps the rest', () =>
    expect(without({ mark: 'い三', stage: 'cut' }, 'mark')).toEqual({ stage: 'cut' }));
  test('leaves out what was not asked and what is no day', () => {
    const filter = readFilter(new URLSearchParams('?day=yesterday&mark=&stage=painted&by=&untagged=0&tag=x'));
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
