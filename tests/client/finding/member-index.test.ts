import { describe, expect, test } from 'vitest';
import { BUILT_IN } from '#domain/lexicon/lexicon';
import type { MemberView } from '#domain/contract/views';
import type { Mark } from '#domain/frame/mark';
import {
  findMember,
  indexMembers,
  meantMember,
  searchMembers,
} from '../../../client/finding/member-index.ts';

const member = (mark: string, kind = '', name = '', place = ''): MemberView => ({
  mark: mark as Mark,
  kind,
  name,
  place,
  track: 'wall',
  statedTrack: null,
  note: '',
  other: {},
  setOut: null,
  retired: false,
  stage: null,
  tags: 0,
  photos: 0,
});

const index = indexMembers(
  [
    member('ろ十', '柱', '', '北'),
    member('い十', '柱', '', '南'),
    member('い三', '貫', '内法', '北 壁'),
    member('い一', '大黒柱', '', '南'),
    member('P12', 'post', 'corner', 'east wall'),
    member('P1', 'post', 'corner', 'west wall'),
  ],
  BUILT_IN,
);
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

describe('marks as people type them', () => {
  const frame = indexMembers(
    [
      member('い三'),
      member('い三十'),
      member('ろ又四'),
      member('ち五'),
      member('を二'),
      member('お二'),
      member('い二', '柱'),
      member('イ2', '束'),
    ],
    BUILT_IN,
  );
  const meant = (text: string) => meantMember(frame, text)?.mark;

  // Romaji of the kana: ISO 3602 (ti) and Hepburn (chi), both as Japanese keyboards take them.
  test.each([
    ['i3', 'い三'],
    ['いの三', 'い三'],
    ['イ-３', 'い三'],
    ['i30', 'い三十'],
    ['romata4', 'ろ又四'],
    ['ろ又4', 'ろ又四'],
    ['ti5', 'ち五'],
    ['chi5', 'ち五'],
    ['wo2', 'を二'],
    ['o2', 'お二'],
  ])('%s means %s', (typed, mark) => expect(meant(typed)).toBe(mark));

  test('nobody is meant by what two marks are read as, or by half a number', () => {
    expect(meant('i2')).toBeUndefined();
    expect(meant('い二')).toBe('い二');
    expect(meant('i')).toBeUndefined();
    expect(meant('chi')).toBeUndefined();
  });

  test('a number finds what stands at it', () => {
    expect(searchMembers(frame, '3').map(({ mark }) => mark)).toEqual(['い三']);
    expect(searchMembers(frame, '4').map(({ mark }) => mark)).toEqual(['ろ又四']);
    expect(searchMembers(frame, '0')).toEqual([]);
  });

  test('part of a mark as it is read goes with other words', () =>
    expect(searchMembers(frame, 'i2 hashira').map(({ mark }) => mark)).toEqual(['い二']));

  test('what is read as typed comes before what only begins so', () => {
    expect(searchMembers(frame, 'i3').map(({ mark }) => mark)).toEqual(['い三']);
    expect(searchMembers(frame, 'i').map(({ mark }) => mark)).toEqual(['い二', 'イ2', 'い三', 'い三十']);
  });
});

describe('a line typed beside a kind', () => {
  const LINES = [...'いろはにほへと', ...'一二三四五六七'];
  const KINDS = ['足固め', '腰貫', '内法貫'];
  const rails = indexMembers(
    LINES.flatMap((line) => KINDS.map((kind) => member(`${line}通り${kind}`, kind))),
    BUILT_IN,
  );
  const first = (text: string) => searchMembers(rails, text)[0]?.mark;

  // The first seven of the iroha in romaji (ISO 3602), which the first row of numbers does not begin with.
  test.each([
    ['i', 'い'],
    ['ro', 'ろ'],
    ['ha', 'は'],
    ['ni', 'に'],
    ['ho', 'ほ'],
    ['he', 'へ'],
    ['to', 'と'],
    ['い', 'い'],
    ['1', '一'],
    ['２', '二'],
    ['7', '七'],
    ['三', '三'],
  ])('%s is the line %s', (typed, line) => {
    expect(first(`${typed} uchinori`)).toBe(`${line}通り内法貫`);
    expect(first(`uchinori ${typed}`)).toBe(`${line}通り内法貫`);
    expect(first(`${typed} koshinuki`)).toBe(`${line}通り腰貫`);
    expect(first(`${typed} 内法`)).toBe(`${line}通り内法貫`);
  });

  test('what has the letters elsewhere is offered all the same, behind it', () => {
    const found = searchMembers(rails, 'i uchinori').map(({ mark }) => mark);
    expect(found[0]).toBe('い通り内法貫');
    expect(found).toContain('一通り内法貫');
  });
});
