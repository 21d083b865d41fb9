import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import type { ClosingReportView } from '#domain/contract/report-views';
import { reportClosings } from '#domain/record/closing-report';
import { reportCsv } from '../../server/services/report-csv.ts';
import { REPORT_WORDS } from '../../server/services/report-words.ts';
import { axisBetween, BAY, someReader } from '../support/some-grid.ts';

const member = (mark: string, kind = '貫', place = 'い通り') => ({ mark, kind, place, retired: false });
const closedAt = '2026-04-08T15:30:00.000Z';
const plain = {
  id: 'c1',
  name: 'West wall',
  kind: 'plaster' as const,
  plannedDay: '2026-04-07',
  closedAt,
  closedDay: '2026-04-09',
  held: {
    hold: { state: 'planned' as const },
    closed: { release: null, without: 'Rain was coming.', takenBack: null },
    released: null,
  },
  hides: [
    { mark: 'い三', least: 'pegged' as const },
    { mark: 'い二', least: 'pegged' as const },
  ],
};
const tags = [
  {
    id: 't1',
    photo: 'p1',
    mark: 'い二',
    stage: 'pegged' as const,
    instant: '2026-04-07T23:59:59.999Z',
    doubt: null,
    uncertaintyS: 0,
    datedBy: 'by-hand' as const,
    legibility: 'weak' as const,
    findings: [
      { kind: 'clock-disagrees' as const, accepted: null },
      { kind: 'off-site' as const, accepted: { by: 'Haru', reason: 'seen on site' } },
    ],
  },
  {
    id: 't2',
    photo: 'p2',
    mark: 'い三',
    stage: 'cut' as const,
    instant: closedAt,
    doubt: null,
    uncertaintyS: 60,
    datedBy: 'file' as const,
    legibility: null,
    findings: [],
  },
];
const house = (more: Partial<Parameters<typeof reportClosings>[0]> = {}): ClosingReportView =>
  reportClosings({
    members: [member('い二'), member('い三')],
    coverings: [plain],
    tags,
    asOf: '2026-04-10T00:00:00.000Z',
    today: '2026-04-10',
    ...more,
  });

describe('reportCsv', () => {
  // RFC 4180: CRLF after every record. The byte order mark is what Excel goes by (common practice).
  it('is this text', () =>
    expect(reportCsv(house(), 'en', 'Asia/Tokyo')).toBe(
      [
        '\ufeffClosing day,Covering,Kind of covering,Planned day,Closed at,Days left,Inspection,Reason,Mark,Kind,Place,Least stage,State,Nearest miss,Stage seen,Photographed at,Photo,Records,Time known by,Legibility,Findings,Photos needed,Hidden part,"Hidden, m",Missing parts,"Missing, m"',
        '2026-04-09,West wall,plaster coat,2026-04-07,2026-04-09 00:30:00,,closed without release,Rain was coming.,い三,貫,い通り,pegged,lost,"photographed, but before the stage that is needed; photographed after closing",cut,2026-04-09 00:30:00,p2,0,the photo file,,,1,,,,',
        '2026-04-09,West wall,plaster coat,2026-04-07,2026-04-09 00:30:00,,closed without release,Rain was coming.,い二,貫,い通り,pegged,on record,,pegged,2026-04-08 08:59:59,p1,1,dated by hand,weak,clock in doubt; taken off site (accepted by Haru: seen on site),1,,,,',
        '',
      ].join('\r\n'),
    ));

  it('speaks Japanese', () => {
    const [, first] = parse(reportCsv(house(), 'ja', 'Asia/Tokyo'), { bom: true });
    expect(first?.slice(11, 15)).toEqual([
      '緊結',
      '記録なしで隠蔽',
      '写真はあるが、必要な段階より前、ふさいだ後の写真',
      '刻み',
    ]);
    expect(first?.[20]).toBe('');
    expect(REPORT_WORDS.ja.headings).toHaveLength(REPORT_WORDS.en.headings.length);
  });

  // Chatham Islands: UTC+12:45 outside daylight saving, which ended on 2026-04-05 (IANA tzdata).
  it('names what must be lifted before a gap can be photographed', () => {
    const open = { ...plain, closedAt: null, closedDay: null };
    const sheets = { id: 'p', name: 'Sheets', mark: 'い三', stretch: null, liftedAt: null };
    const laid = { ...sheets, laidAt: '2026-04-09T00:00:00.000Z' };
    const report = house({ coverings: [open], protection: [laid] });
    const [, en] = parse(reportCsv(report, 'en', 'Asia/Tokyo'), { bom: true });
    expect(en?.[13]).toMatch(/; lies under protection since 2026-04-09 09:00:00 \(Sheets\)$/);
    const [, ja] = parse(reportCsv(report, 'ja', 'Asia/Tokyo'), { bom: true });
    expect(ja?.[13]).toMatch(/、2026-04-09 09:00:00から養生の下（Sheets）$/);
  });

  it('names the doubts of every record of a member, not of the best alone', () => {
    const doubted = (by: string) => ({
      kind: 'disputed' as const,
      accepted: { by: 'Aki', reason: 'I drove it in.' },
      doubt: { by, reason: 'No wedge to be seen.' },
    });
    const [, one] = tags;
    if (!one) throw new Error('no tag');
    const both = ['Sato', 'Mori'].map((by, i) => ({
      ...one,
      id: `d${i}`,
      mark: 'い二',
      findings: [doubted(by)],
    }));
    const report = house({
      tags: both.map((tag) => ({ ...tag, instant: '2026-04-07T00:00:00.000Z', stage: 'pegged' as const })),
    });
    const row = parse(reportCsv(report, 'en', 'Asia/Tokyo'), { bom: true }).find((cells) =>
      cells.includes('い二'),
    );
    for (const by of ['Sato', 'Mori'])
      expect(row?.[20]).toContain(`doubted by ${by}: No wedge to be seen.; answered by Aki: I drove it in.`);
  });

  it('tells time in the zone of the house', () =>
    expect(reportCsv(house(), 'en', 'Pacific/Chatham')).toContain(',2026-04-09 04:15:00,'));
  it('knows no made-up zone', () =>
    expect(() => reportCsv(house(), 'en', 'Nowhere/Else')).toThrow(RangeError));

  // OWASP, CSV Injection: cells that begin with = + - @ tab or carriage return.
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '＝1', '＠x'])('makes %j harmless', (text) => {
    const csv = reportCsv(
      house({ members: [member('い二', text), member('い三')], coverings: [{ ...plain, name: text }] }),
      'en',
      'Asia/Tokyo',
    );
    const rows = parse(csv, { bom: true }).slice(1);
    expect(rows.map((row) => row[1])).toEqual([`'${text}`, `'${text}`]);
    expect(rows[1]?.[9]).toBe(`'${text}`);
  });

  it('leaves days left a number when overdue', () => {
    const open = { ...plain, closedAt: null, closedDay: null };
    const [, first] = parse(reportCsv(house({ coverings: [open] }), 'en', 'Asia/Tokyo'), { bom: true });
    expect(first?.slice(4, 6)).toEqual(['', '-3']);
  });

  it('brings names with quotes, commas and breaks back', () => {
    const name = 'a "b", c\nd';
    const [, first] = parse(reportCsv(house({ coverings: [{ ...plain, name }] }), 'en', 'Asia/Tokyo'), {
      bom: true,
    });
    expect(first?.[1]).toBe(name);
  });

  // A bay of 1820 mm is six shaku of 303.03 mm, rounded as builders' tables do: common practice.
  it('says which parts are hidden and which are missing, and how long they are', () => {
    const axis = axisBetween([0, 0, 1800], [0, 3 * BAY, 1800]);
    const rail = { mark: 'い貫', least: 'pegged' as const, views: 2, stretch: { from: 0, to: 2 * BAY } };
    const open = { ...plain, closedAt: null, closedDay: null, hides: [rail] };
    const seen = (photo: string, to: number) => ({
      ...{
        id: `t${photo}`,
        photo,
        mark: 'い貫',
        stage: 'pegged' as const,
        instant: '2026-04-01T00:00:00.000Z',
      },
      ...{ doubt: null, uncertaintyS: 0, datedBy: 'file' as const, legibility: null, findings: [] },
      stretch: { from: 0, to },
    });
    const rowOf = (of: readonly ReturnType<typeof seen>[], lang: 'en' | 'ja', reader = someReader) => {
      const report = house({
        ...{ members: [{ ...member('い貫'), axis }], coverings: [open], tags: of, reader },
      });
      return parse(reportCsv(report, lang, 'Asia/Tokyo'), { bom: true })[1]?.slice(-5);
    };
    const some = [seen('a', 3 * BAY), seen('b', BAY)];
    expect(rowOf(some, 'en')).toEqual(['2', '一 to 三', '3.64', '二 to 三', '1.82']);
    expect(rowOf(some, 'ja')).toEqual(['2', '一〜三', '3.64', '二〜三', '1.82']);
    expect(rowOf([], 'en')).toEqual(['2', '一 to 三', '3.64', '', '3.64']);
    expect(rowOf([...some, seen('c', 3 * BAY)], 'en')).toEqual(['2', '一 to 三', '3.64', '', '']);
    const nameless = { ...open, hides: [{ ...rail, stretch: { from: 0, to: 400 } }] };
    const short = house({
      members: [{ ...member('い貫'), axis }],
      coverings: [nameless],
      tags: [],
      reader: null,
    });
    const [, row] = parse(reportCsv(short, 'en', 'Asia/Tokyo'), { bom: true });
    expect(row?.slice(-5)).toEqual(['2', '0.00 to 0.40 m', '0.40', '', '0.40']);
  });

  it('has a row for a covering that hides nothing yet, and a heading at least', () => {
    const rows = parse(reportCsv(house({ coverings: [{ ...plain, hides: [] }] }), 'en', 'UTC'), {
      bom: true,
    });
    expect(rows[1]).toEqual([
      '2026-04-09',
      'West wall',
      'plaster coat',
      '2026-04-07',
      '2026-04-08 15:30:00',
      ...['', 'closed without release', 'Rain was coming.'],
      ...REPORT_WORDS.en.headings.slice(8).map(() => ''),
    ]);
    expect(parse(reportCsv(house({ coverings: [] }), 'en', 'UTC'), { bom: true })).toHaveLength(1);
  });
});
