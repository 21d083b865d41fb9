import { describe, expect, test } from 'vitest';
import { BUILT_IN } from '#domain/lexicon/lexicon';
import { parseMark } from '#domain/frame/mark';
import type { MemberView } from '#domain/contract/views';
import {
  EMPTY_MEMBER,
  isChanged,
  memberBody,
  memberDraft,
  readNewMark,
  wrongLengths,
} from '../../../client/screens/members/member-draft.ts';
import { indexMembers, searchMembers } from '../../../client/finding/member-index.ts';
import { belongs, listAddress, readListPlace } from '../../../client/screens/members/list-address.ts';
import { stageIntervalWords } from '../../../client/screens/members/stage-interval-words.ts';
import { wordsOf } from '../words.ts';

const member = (mark: string, more: Partial<MemberView> = {}): MemberView => {
  const parsed = parseMark(mark);
  if (!parsed.ok) throw new Error(mark);
  return {
    mark: parsed.mark,
    kind: '柱',
    name: '',
    place: '',
    track: 'wall',
    statedTrack: null,
    note: '',
    other: {},
    setOut: null,
    retired: false,
    stage: null,
    tags: 0,
    photos: 0,
    ...more,
  };
};

describe('finding members', () => {
  const all = indexMembers(
    [
      member('い十'),
      member('い三', { kind: '貫', place: 'い通り', stage: 'pegged' }),
      member('は一', { name: 'だいこく', retired: true }),
    ],
    BUILT_IN,
  );
  const marks = (words: string, filter: 'standing' | 'bare' | 'retired') =>
    searchMembers(all, words)
      .filter((found) => belongs(found, filter))
      .map(({ mark }) => mark as string);
  test('in the order of the marks, not of their signs', () =>
    expect(marks('', 'standing')).toEqual(['い三', 'い十']));
  test('by any name of the kind', () => expect(marks('tie rail', 'standing')).toEqual(['い三']));
  test('by words of different fields, kana of either kind', () =>
    expect(marks('nuki イ通リ', 'standing')).toEqual(['い三']));
  test('without a record', () => expect(marks('', 'bare')).toEqual(['い十']));
  test('retired', () => expect(marks('ダイコク', 'retired')).toEqual(['は一']));
  test('nothing', () => expect(marks('梁', 'standing')).toEqual([]));
});

describe('the address of the list of members', () => {
  const read = (address: string) => readListPlace(new URLSearchParams(address));
  test('says what was typed, what is shown and from which member one comes back', () => {
    const place = { words: 'い 貫 &', filter: 'bare', at: 'い三' } as const;
    expect(read(listAddress(place))).toEqual(place);
  });
  test('says nothing where nothing was asked, and believes nothing that it does not know', () => {
    expect(listAddress({ words: ' ', filter: 'standing' })).toBe('');
    expect(read('?show=painted')).toEqual({ words: '', filter: 'standing', at: null });
  });
});

describe('the form of a member', () => {
  test('keeps the columns that it does not show', () => {
    const other = { 材種: '杉' };
    const body = memberBody(
      memberDraft(member('い三', { statedTrack: 'lath', note: ' n ' }), 'mm'),
      other,
      'mm',
    );
    const texts = { kind: '柱', name: '', place: '', note: ' n ' };
    expect(body).toEqual({ ...texts, track: 'lath', other, setOut: null });
    expect(memberBody(EMPTY_MEMBER, {}, 'mm').track).toBeNull();
  });
  test('gives back where it lies in any unit, and says what is no length', () => {
    const setOut = {
      from: 'い二',
      to: 'い五',
      level: '1F',
      base: 2727.273,
      top: null,
      width: 15,
      depth: 105,
    };
    for (const unit of ['mm', 'shaku', 'inch'] as const) {
      const draft = memberDraft(member('い通り貫', { setOut }), unit);
      const back = memberBody(draft, {}, unit).setOut;
      expect(back).toMatchObject({ from: 'い二', to: 'い五', level: '1F', top: null });
      expect(back?.base).toBeCloseTo(2727.273, 1);
      expect(wrongLengths(draft, unit)).toEqual([]);
      expect(wrongLengths({ ...draft, setOut: { ...draft.setOut, top: '9 hands' } }, unit)).toEqual(['top']);
    }
    expect(memberDraft(member('い通り貫', { setOut }), 'shaku').setOut.base).toBe('9');
  });
  test('brings a mark into its normal form and refuses one that stands already', () => {
    expect(readNewMark(' い　３ ', new Set())).toEqual({ mark: 'い 3' });
    expect(readNewMark('い　３', new Set(['い 3']))).toEqual({ wrong: 'taken', mark: 'い 3' });
    expect(readNewMark(' ', new Set())).toEqual({ wrong: 'empty' });
  });
});

test('a stage is told as an interval, never as a date', async () => {
  const t = await wordsOf('en');
  const bound = (instant: string, stage = 'cut') => ({ instant, tag: 't', photo: 'p', stage });
  const tell = (after: string | null, by: string | null, shown = 'raised') => {
    const bounds = { after: after && bound(after), by: by && bound(by, shown) };
    return stageIntervalWords(t, { stage: 'raised', ...bounds } as never, (i) => i);
  };
  expect(tell('A', 'B')).toBe('after A, and by B');
  expect(tell(null, 'B')).toMatch(/^by B/);
  expect(tell('A', null)).toMatch(/^not yet on A/);
  expect(tell(null, null)).toBe('not on record');
  // A later stage was seen: this one is inferred, and no photo shows it.
  expect(tell(null, 'B', 'pegged')).toMatch(/^pegged by B, so raised before that/);
  expect(tell('A', 'B', 'pegged')).toMatch(/^after A; pegged by B, so raised before that/);
});

test('the form of a member is changed when any of its fields is', () => {
  const start = memberDraft(member('い三'), 'mm');
  expect(isChanged({ ...start }, start)).toBe(false);
  for (const field of ['kind', 'name', 'place', 'note'] as const)
    expect(isChanged({ ...start, [field]: 'x' }, start), field).toBe(true);
  expect(isChanged({ ...start, track: 'lath' }, start)).toBe(true);
});
