import { describe, expect, test } from 'vitest';
import { MemberFacts } from '#domain/contract/shapes';
import type { SchedulePreviewView } from '#domain/contract/schedule-views';
import {
  FIRST_CHOICES,
  contentTypeOf,
  importQuery,
  mapColumn,
} from '../../../client/screens/schedule/chosen-table.ts';
import {
  countBadRows,
  differences,
  firstValues,
  whyNothing,
} from '../../../client/screens/schedule/preview-words.ts';

const columns = [
  { index: 0, header: '番付', field: 'mark' as const },
  { index: 1, header: '樹種', field: null },
];

describe('mapping by hand', () => {
  test('a column takes a field over from the one that had it', () => {
    expect(mapColumn(columns, {}, 1, 'mark')).toEqual({ 0: '', 1: 'mark' });
  });
  test('a column can be kept under its own name', () => {
    expect(mapColumn(columns, { 1: 'note' }, 0, '')).toEqual({ 0: '', 1: 'note' });
  });
});

describe('what is sent', () => {
  const table = { key: 'k', fileName: '部材表.csv', contentType: 'text/csv', bytes: new ArrayBuffer(1) };
  test('retires nobody and says nothing of a mapping unless somebody asks for it', () => {
    expect(importQuery(table, FIRST_CHOICES, { preview: '1' })).toEqual({
      fileName: '部材表.csv',
      missing: 'keep',
      badRows: 'refuse',
      preview: '1',
    });
  });
  test('agrees to what was shown, under the same choices', () => {
    const choices = { mapping: { 0: '' as const }, missing: 'keep' as const, badRows: 'skip' as const };
    expect(importQuery(table, choices, { agree: 'd' })).toEqual({
      fileName: '部材表.csv',
      missing: 'keep',
      badRows: 'skip',
      mapping: '{"0":""}',
      agree: 'd',
    });
  });
  // IANA media types: RFC 7111 (text/csv) and the registration of ECMA-376 spreadsheets.
  test('is announced by the name of the file', () => {
    expect(contentTypeOf('a.XLSX')).toMatch(/spreadsheetml\.sheet$/);
    expect(contentTypeOf('xlsx.csv')).toBe('text/csv');
  });
});

describe('what is shown', () => {
  test('a change is told field by field, own columns too', () => {
    const before = MemberFacts.parse({ mark: 'い三', kind: '柱', other: { 樹種: '杉', a: '1' } });
    const after = MemberFacts.parse({
      mark: 'い三',
      kind: '貫',
      track: 'wall',
      other: { 樹種: '檜', a: '1' },
    });
    expect(differences(before, after)).toEqual([
      { field: 'kind', before: '柱', after: '貫' },
      { field: 'track', before: '', after: 'wall' },
      { field: { own: '樹種' }, before: '杉', after: '檜' },
    ]);
  });
  test('values of a column are those below its heading', () => {
    const sample = [
      ['軸組', ''],
      ['番付', '樹種'],
      ['い一', ''],
      ['い二', '杉'],
      ['い三', '檜'],
    ];
    const preview = { columns, sample } as unknown as SchedulePreviewView;
    expect(firstValues(preview, 0, 2)).toEqual(['い一', 'い二']);
    expect(firstValues(preview, 1)).toEqual(['杉', '檜']);
  });
});

describe('why there is nothing to import', () => {
  const bad = (line: number) => ({ line }) as SchedulePreviewView['problems'][number];
  const member = MemberFacts.parse({ mark: 'い三', kind: '柱' });
  const preview = { columns, rows: 2, problems: [], added: [], changed: [], retired: [], unchanged: 0 };
  test.each([
    ['noRows', { rows: 0 }],
    ['noMark', { columns: columns.slice(1) }],
    ['allBad', { problems: [bad(2), bad(3), bad(3)] }],
    ['restKnown', { problems: [bad(2)], unchanged: 1 }],
    ['allKnown', { unchanged: 2 }],
    [null, { added: [member], problems: [bad(3)] }],
    [null, { retired: [{ mark: member.mark, tags: 0 }], unchanged: 2 }],
  ])('%s', (why, part) => expect(whyNothing({ ...preview, ...part })).toBe(why));
  test('a row with two things wrong is one row', () => {
    expect(countBadRows({ problems: [bad(2), bad(3), bad(3)] })).toBe(2);
  });
});
