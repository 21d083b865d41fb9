import { describe, expect, it } from 'vitest';
import { MemberFacts } from '#domain/contract/shapes';
import { NOWHERE } from '#domain/frame/schedule-row';
import { readSchedule } from '#domain/frame/schedule';

const member = (mark: string, facts: Partial<MemberFacts> = {}) => MemberFacts.parse({ mark, ...facts });
const fieldsOf = (...headers: string[]) => readSchedule([headers]).columns.map((column) => column.field);

describe('columns by name', () => {
  it.each([
    [
      ['Mark', 'Kind', 'Name', 'Location', 'Track', 'Remarks'],
      ['mark', 'kind', 'name', 'place', 'track', 'note'],
    ],
    [
      ['番付', '種類', '名称', '場所', '工程', '備考'],
      ['mark', 'kind', 'name', 'place', 'track', 'note'],
    ],
    [
      ['符号', '部材名', '階', 'メモ'],
      ['mark', 'kind', 'place', 'note'],
    ],
    [
      [' ＭＡＲＫ： ', 'type ', 'Level'],
      ['mark', 'kind', 'place'],
    ],
    [
      ['番付（組合せ）', '部材'],
      ['mark', 'kind'],
    ],
    [
      ['No.', '種類'],
      ['mark', 'kind'],
    ],
    [
      ['#', 'Kind'],
      ['mark', 'kind'],
    ],
  ])('%j', (headers, fields) => expect(fieldsOf(...headers)).toEqual(fields));

  it('takes No. for a running number where a mark stands beside it', () =>
    expect(fieldsOf('No.', '番付', '部材名', '断面')).toEqual([null, 'mark', 'kind', 'section']));
  it('takes 部材名 and 名称 for the name where the kind stands elsewhere', () => {
    expect(fieldsOf('番付', '種類', '部材名')).toEqual(['mark', 'kind', 'name']);
    expect(fieldsOf('番付', '部材名', '名称')).toEqual(['mark', 'kind', 'name']);
    expect(fieldsOf('番付', '名称')).toEqual(['mark', 'kind']);
  });
  it('takes Member for the mark alone, for the kind beside a mark', () => {
    expect(fieldsOf('Member', 'Kind')).toEqual(['mark', 'kind']);
    expect(fieldsOf('Mark', 'Member')).toEqual(['mark', 'kind']);
  });
  it('fills a field from the leftmost of two equal columns', () =>
    expect(fieldsOf('Mark', 'Location', 'Position')).toEqual(['mark', 'place', null]));
});

describe('mapping by hand', () => {
  const rows = [
    ['Ref', 'What', 'Mark'],
    ['A', 'post', 'x'],
  ];
  it('goes before names', () => {
    const read = readSchedule(rows, { 0: 'mark', 1: 'kind', 2: '' });
    expect(read.members).toEqual([member('A', { kind: 'post', other: { Mark: 'x' } })]);
  });
  it('leaves a field that was given away to no other column', () => {
    const read = readSchedule(rows, { 0: 'mark' });
    expect(read.columns.map((c) => c.field)).toEqual(['mark', null, null]);
  });
  it('gives a field to one column only', () =>
    expect(readSchedule(rows, { 0: 'kind', 1: 'kind' }).columns.map((c) => c.field)).toEqual([
      'kind',
      null,
      'mark',
    ]));
  it('says when no column holds the mark', () => {
    const read = readSchedule([
      ['Ref', 'What'],
      ['A', 'post'],
    ]);
    expect(read).toMatchObject({ hasMarkColumn: false, rows: 1, members: [], problems: [] });
    expect(readSchedule([])).toMatchObject({ hasMarkColumn: false, rows: 0, headingLine: 0, columns: [] });
  });
});

describe('the heading', () => {
  it('may stand below titles', () => {
    const read = readSchedule([['部材表'], [''], ['工事名', '町家'], ['番付', '種類'], ['い一', '柱']]);
    expect(read.headingLine).toBe(4);
    expect(read.members).toEqual([member('い一', { kind: '柱' })]);
  });
  it('is not a row that happens to hold one such word', () =>
    expect(
      readSchedule([
        ['Ref', 'Where'],
        ['A', 'loft'],
        ['B', 'floor'],
      ]).headingLine,
    ).toBe(1));
  it('is not looked for below line 20', () => {
    const titles = Array.from({ length: 20 }, (_, i) => [`title ${String(i)}`]);
    expect(readSchedule([...titles, ['番付', '種類'], ['い一', '柱']]).headingLine).toBe(1);
    expect(readSchedule([...titles.slice(1), ['番付', '種類'], ['い一', '柱']]).headingLine).toBe(20);
  });
  it('may be repeated on each printed page', () =>
    expect(
      readSchedule([
        ['Mark', 'Kind'],
        ['A', ''],
        ['Mark', 'Kind'],
        ['B', ''],
      ]).members,
    ).toHaveLength(2));
});

describe('rows', () => {
  it('fill the fields and keep other columns', () =>
    expect(
      readSchedule([
        ['番付', '種類', '断面', '', '工程', '備考', ''],
        ['い　三', ' 貫 ', '15×105', 'x', '壁', 'line 1\r\nline 2', ''],
        ['ろ３', '大引', '', '', '', '', ''],
      ]).members,
    ).toEqual([
      member('い 三', {
        kind: '貫',
        track: 'wall',
        note: 'line 1\nline 2',
        other: { 断面: '15×105', D: 'x' },
        setOut: { ...NOWHERE, width: 15, depth: 105 },
      }),
      member('ろ3', { kind: '大引' }),
    ]));

  it('read tracks in English and Japanese', () =>
    expect(
      readSchedule([
        ['mark', 'track'],
        ...['Wall', '床', '小舞', '軸組', 'ＬＡＴＨ', ''].map((word, i) => [String(i), word]),
      ]).members.map((m) => m.track),
    ).toEqual(['wall', 'floor', 'lath', 'timber', 'lath', null]));

  it('are counted as a spreadsheet counts, blank ones too', () => {
    const read = readSchedule([['title'], ['Mark', 'Track'], [''], ['', 'wall'], [' ', ''], ['A', 'roof']]);
    expect(read.rows).toBe(2);
    expect(read.problems).toEqual([
      { line: 4, column: 'Mark', value: '', reason: 'mark-missing', firstLine: null },
      { line: 6, column: 'Track', value: 'roof', reason: 'unknown-track', firstLine: null },
    ]);
  });

  it('say everything that is wrong, and are then no members', () => {
    const long = 'x'.repeat(101);
    const read = readSchedule([
      ['Mark', 'Kind', 'Track', 'Section'],
      ['m'.repeat(61), long, 'x', 'y'.repeat(1001)],
      ['a\u200bb', '', '', ''],
      ['ok', 'x'.repeat(100), '', 'y'.repeat(1000)],
    ]);
    expect(read.problems.map((p) => [p.line, p.column, p.reason])).toEqual([
      [2, 'Mark', 'mark-too-long'],
      [2, 'Kind', 'value-too-long'],
      [2, 'Track', 'unknown-track'],
      [2, 'Section', 'value-too-long'],
      [3, 'Mark', 'mark-control-character'],
    ]);
    expect(read.members.map((m) => m.mark)).toEqual(['ok']);
    expect(() => read.members.map((m) => MemberFacts.parse(m))).not.toThrow();
  });

  it('of a repeated mark the first stands, even a bad one, in whatever width it is written', () => {
    const read = readSchedule([
      ['Mark', 'Track'],
      ['い3', ''],
      ['い３', ''],
      ['B', 'x'],
      ['B', ''],
      ['い3', ''],
    ]);
    expect(read.members.map((m) => m.mark)).toEqual(['い3']);
    expect(read.problems.map((p) => [p.line, p.reason, p.firstLine])).toEqual([
      [3, 'mark-repeated', 2],
      [4, 'unknown-track', null],
      [5, 'mark-repeated', 4],
      [6, 'mark-repeated', 2],
    ]);
    expect([...read.mentioned]).toEqual([
      ['い3', 2],
      ['B', 4],
    ]);
  });

  it('say where a member lies, in the unit of the house', () => {
    const rows = [
      ['番付', '種類', '始点', '終点', '階', '下端', '厚さ', '幅', '断面'],
      ['ほ通り貫', '貫', 'ほ一', 'ほ四', '1F', '+9尺', '15mm', '105mm', '15×105'],
      ['い三', '柱', 'い三', '', '', '', '', '', '4寸角'],
      ['ろ三', '柱', 'ろ三', '', '', '高い', '', '', '杉'],
    ];
    const read = readSchedule(rows, {}, 'shaku');
    expect(read.members.map(({ setOut }) => setOut)).toEqual([
      { from: 'ほ一', to: 'ほ四', level: '1F', base: 2727.273, top: null, width: 15, depth: 105 },
      { from: 'い三', to: '', level: '', base: null, top: null, width: 121.212, depth: 121.212 },
    ]);
    expect(read.problems).toMatchObject([{ line: 4, column: '下端', value: '高い', reason: 'not-a-length' }]);
  });
  it('take a storey for the place where no marks say where a member lies', () => {
    const [read] = readSchedule([
      ['番付', '種類', '階'],
      ['い三', '柱', '2F'],
    ]).members;
    expect(read).toMatchObject({ place: '2F', setOut: null });
  });

  it('may be ragged', () =>
    expect(readSchedule([['Mark', 'Kind'], ['A'], ['B', 'post', 'oak']]).members).toEqual([
      member('A'),
      member('B', { kind: 'post', other: { C: 'oak' } }),
    ]));

  it('keep columns of one name, of a very long one, and of a treacherous one apart', () => {
    const long = 'h'.repeat(150);
    const [read] = readSchedule([
      ['Mark', 'Size', 'Size', '__proto__', long, `${long}!`, 'constructor'],
      ['A', '1', '2', '3', '4', '5', '6'],
    ]).members;
    expect(Object.values(MemberFacts.parse(read).other)).toEqual(['1', '2', '3', '4', '5', '6']);
  });

  it('carry no broken characters into the record', () => {
    const [read] = readSchedule([
      ['Mark', 'Kind', 'Note'],
      ['A', 'a\u0000\tb\ud800', 'n\u0000\udc00'],
    ]).members;
    expect(read).toMatchObject({ kind: 'a b\ufffd', note: 'n\ufffd' });
    expect(() => MemberFacts.parse(read)).not.toThrow();
  });
});
