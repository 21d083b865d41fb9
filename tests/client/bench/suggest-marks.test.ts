import { describe, expect, test } from 'vitest';
import { BUILT_IN } from '#domain/lexicon/lexicon';
import type { MemberView } from '#domain/contract/views';
import type { Mark } from '#domain/frame/mark';
import { indexMembers } from '../../../client/finding/member-index.ts';
import { leadingMark, suggestMarks, type Surroundings } from '../../../client/screens/bench/suggest-marks.ts';

const member = (mark: string, kind = '柱', retired = false) =>
  ({ mark: mark as Mark, kind, name: '', place: '', retired }) as MemberView;
const index = indexMembers(
  [
    ...['い一', 'い二', 'い三', 'ろ一', 'ろ二'].map((mark) => member(mark)),
    member('い四', '柱', true),
    member('い二地貫', '地貫'),
    member('い二梁', '梁'),
    member('棟木', '棟木'),
  ],
  BUILT_IN,
);
const NOWHERE: Surroundings = { last: null, here: [], before: [], after: [], seen: [] };
const suggested = (around: Partial<Surroundings>) => suggestMarks({ ...NOWHERE, ...around }, index);
const marks = (around: Partial<Surroundings>) => suggested(around).map(({ mark }) => mark);
const leads = (around: Partial<Surroundings>) => leadingMark(suggested(around));

describe('the marks that are likely next', () => {
  test('without a tag before, and without neighbours, there is none', () => expect(marks({})).toEqual([]));

  test('count on from the last, passing over what this photo has already', () => {
    expect(marks({ last: 'い一', here: ['い一'] })[0]).toBe('い二');
    expect(marks({ last: 'い一', here: ['い一', 'い二'] })[0]).toBe('い三');
    expect(leads({ last: 'い一', here: ['い一', 'い二'] })).toBe('い三');
  });

  test('hold what meets at the crossing of the last', () => {
    const near = suggested({ last: 'い二', here: ['い二'] }).filter(({ why }) => why === 'near');
    expect(near.map(({ mark }) => mark)).toEqual(['い二地貫', 'い二梁']);
  });

  test('go on to the next of its kind in the schedule where the row ends', () => {
    expect(suggested({ last: 'い三', here: ['い三'] })[0]).toEqual({ mark: 'ろ一', why: 'schedule' });
    // To be chosen, not to be placed unread.
    expect(leads({ last: 'い三', here: ['い三'] })).toBe('');
  });

  test('follow the row of the photo before', () => {
    const around = { last: 'い三', before: ['い三', '棟木', 'ろ二'], here: ['い三'] };
    expect(marks(around).slice(0, 2)).toEqual(['棟木', 'ろ二']);
    expect(leads(around)).toBe('棟木');
  });

  test('hold what the photos around show and this one does not, and the last one again', () => {
    expect(suggested({ before: ['ろ一', '棟木'], after: ['棟木', 'ろ二'], here: ['ろ一'] })).toEqual([
      { mark: '棟木', why: 'before' },
      { mark: 'ろ二', why: 'after' },
    ]);
    expect(suggested({ last: '棟木', here: ['棟木'] }).at(-1)).toEqual({ mark: '棟木', why: 'same' });
  });

  test('begin with what the photo itself says, before what the photos around show', () => {
    const around = { seen: ['棟木', 'ろ二', 'い二梁'], here: ['い一'], before: ['い三'] };
    expect(suggested(around)).toEqual([
      { mark: '棟木', why: 'seen' },
      { mark: 'ろ二', why: 'seen' },
      { mark: 'い二梁', why: 'seen' },
      { mark: 'い三', why: 'before' },
    ]);
  });

  test('are counted on first only where the photo does not speak against it', () => {
    const around = { last: 'い一', here: ['い一'] };
    expect(marks({ ...around, seen: ['棟木', 'い二'] }).slice(0, 2)).toEqual(['い二', '棟木']);
    const against = marks({ ...around, seen: ['棟木', 'ろ一', 'ろ二', 'い二梁'] });
    expect(against.slice(0, 5)).toEqual(['棟木', 'ろ一', 'ろ二', 'い二梁', 'い二']);
    expect(leads({ ...around, seen: ['棟木', 'ろ一', 'ろ二', 'い二梁'] })).toBe('');
  });

  test('are never retired or unknown to the schedule, and none comes twice', () => {
    const all = marks({ last: 'い三', before: ['い四', 'ゑ九', 'ろ一'], after: ['ろ一'], here: [] });
    expect(all).not.toContain('い四');
    expect(all).not.toContain('ゑ九');
    expect(new Set(all).size).toBe(all.length);
  });
});
