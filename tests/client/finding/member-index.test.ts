import { describe, expect, test } from 'vitest';
import type { MemberView } from '#domain/contract/views';
import type { Mark } from '#domain/frame/mark';
import { findMember, indexMembers, searchMembers } from '../../../client/finding/member-index.ts';

const member = (mark: string, kind = '', name = '', place = ''): MemberView => ({
  mark: mark as Mark,
  kind,
  name,
  place,
  track: 'wall',
  statedTrack: null,
  note: '',
  other: {},
  retired: false,
  stage: null,
  tags: 0,
  photos: 0,
});

const index = indexMembers([
  member('ろ十', '柱', '', '北'),
  member('い十', '柱', '', '南'),
  member('い三', '貫', '内法', '北 壁'),
  member('い一', '大黒柱', '', '南'),
  member('P12', 'post', 'corner', 'east wall'),
  member('P1', 'post', 'corner', 'west wall'),
]);
const marks = (text: string) => searchMembers(index, text).map(({ mark }) => mark);

describe('searching members', () => {
  test('nothing typed lists all in the order of marks', () =>
    expect(marks('')).toEqual(['い一', 'い三', 'い十', 'ろ十', 'P1', 'P12']));
  test('by part of the mark, in its order', () => expect(marks('い')).toEqual(['い一', 'い三', 'い十']));
  test('the exact mark comes first', () => expect(marks('p1')).toEqual(['P1', 'P12']));
  test('full width and capitals do not matter (NFKC, UAX #15)', () =>
    expect(marks('Ｐ１２')).toEqual(['P12']));
  test('by kind in kanji, kana, romaji or English', () => {
    expect(marks('貫')).toEqual(['い三']);
    expect(marks('ぬき')).toEqual(['い三']);
    expect(marks('ヌキ')).toEqual(['い三']);
    expect(marks('nuki')).toEqual(['い三']);
    expect(marks('tie rail')).toEqual(['い三']);
  });
  test('several words must all fit', () => {
    expect(marks('post east')).toEqual(['P12']);
    expect(marks('柱 南')).toEqual(['い一', 'い十']);
  });
  test('what does not fit is not offered', () => expect(marks('zzz')).toEqual([]));
});

describe('finding the member that is meant', () => {
  test('by its mark in any width', () => expect(findMember(index, ' Ｐ１ ')?.mark).toBe('P1'));
  test('never by part of a mark', () => expect(findMember(index, 'い')).toBeUndefined());
});
