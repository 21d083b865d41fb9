import fc from 'fast-check';
import { stringify } from 'csv-stringify/sync';
import { describe, expect, it } from 'vitest';
import { SHEET_REFUSALS, sheetRefusalText, type SheetRefusal } from '#domain/frame/sheet-refusal';
import { readSheet } from '../../server/services/read-sheet.ts';

const utf8 = (text: string) => new TextEncoder().encode(text);
const rowsOf = async (bytes: Uint8Array | string, type = 'text/csv') => {
  const read = await readSheet(typeof bytes === 'string' ? utf8(bytes) : bytes, type);
  return read.ok ? read.rows : read.params;
};
const encodingOf = async (bytes: Uint8Array, type = 'text/csv') => {
  const read = await readSheet(bytes, type);
  return read.ok ? read.encoding : read.params.reason;
};

describe('text in rows', () => {
  it.each([
    [
      'commas',
      'a,b\r\n1,2\r\n',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'semicolons beside decimal commas',
      'a;b\n1,5;2\n3;4,5\n',
      [
        ['a', 'b'],
        ['1,5', '2'],
        ['3', '4,5'],
      ],
    ],
    [
      'tabs',
      'a\tb\n1, 2\t3',
      [
        ['a', 'b'],
        ['1, 2', '3'],
      ],
    ],
    ['one column', 'a\nb\n', [['a'], ['b']]],
    [
      'old Macintosh line ends',
      'a,b\r1,2\r',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    ['the separator stated as Excel states it', 'sep=;\r\na,b;c\r\n', [['a,b', 'c']]],
    ['ragged rows', 'a,b\n1\n1,2,3\n', [['a', 'b'], ['1'], ['1', '2', '3']]],
    ['blank lines, which count', 'a\n\n\nb\n', [['a'], [''], [''], ['b']]],
    [
      'quotes, breaks and separators in cells',
      'a,"b ""c"", d\r\ne"\n1,2\n',
      [
        ['a', 'b "c", d\ne'],
        ['1', '2'],
      ],
    ],
    [
      'separators only in quotes',
      '"a;b;c",d\n"e;f;g",h\n',
      [
        ['a;b;c', 'd'],
        ['e;f;g', 'h'],
      ],
    ],
    [
      'inch marks',
      'mark,size\nA,2" x 4"\nB,4"\n',
      [
        ['mark', 'size'],
        ['A', '2" x 4"'],
        ['B', '4"'],
      ],
    ],
  ])('%s', async (_, text, rows) => expect(await rowsOf(text)).toEqual(rows));

  // RFC 4180 as csv-stringify writes it, a writer independent of the reader's settings.
  it('bring back whatever was written', async () => {
    const cell = fc.string({ unit: fc.constantFrom('a', '貫', '"', ',', ';', '\t', '\n', ' ', '1') });
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(cell, cell, cell), { minLength: 1 }), async (rows) => {
        const text = stringify([['mark', 'kind', 'note'], ...rows], { quoted: true });
        expect(await rowsOf(text)).toEqual([['mark', 'kind', 'note'], ...rows]);
      }),
      { numRuns: 500 },
    );
  });

  it('with a quotation mark left open name the row where it is', async () => {
    expect(await rowsOf('a,b\n"c\nd",e\n\nf,"g\nh,i\n')).toEqual({ reason: 'open-quote', line: 4 });
  });
  it('have at most 50,000 rows, 200 columns, 32,767 characters a cell', async () => {
    expect(await rowsOf('a\n'.repeat(50_000))).toHaveLength(50_000);
    expect(await rowsOf(`${'a,'.repeat(100)}\n`.repeat(7000))).toEqual({
      reason: 'too-many-cells',
      limit: 600_000,
    });
    expect(await rowsOf('a\n'.repeat(50_001))).toEqual({ reason: 'too-many-rows', limit: 50_000 });
    expect(await rowsOf(`a\n${','.repeat(199)}`)).toHaveLength(2);
    expect(await rowsOf(`a\n${','.repeat(200)}`)).toEqual({
      reason: 'too-many-columns',
      line: 2,
      limit: 200,
    });
    expect(await rowsOf('x'.repeat(32_768))).toEqual({ reason: 'cell-too-long', line: 1, limit: 32_767 });
  });
});

// 番付 = 94D4 9574, 貫 = 8AD1, 柱 = 928C, 三 = 8E4F, い = 82A2, half-width ﾇｷ = C7 B7: JIS X 0208 (kuten 40-54,
// 41-53, 20-51, 35-76, 27-16, 4-4) and JIS X 0201 in the Shift_JIS scheme, WHATWG Encoding index jis0208; ① = 8740 is of windows-31j.
const SHIFT_JIS = new Uint8Array(
  [0x94d4, 0x9574, 0x2c8a, 0xd10a, 0x82a2, 0x8e4f, 0x2c92, 0x8c0a, 0x8740, 0x2cc7, 0xb70a].flatMap((n) => [
    n >> 8,
    n & 255,
  ]),
);
const WORDS = [
  ['番付', '貫'],
  ['い三', '柱'],
  ['①', 'ﾇｷ'],
];
const utf16 = (text: string, little: boolean, mark = true) =>
  new Uint8Array(
    [...(mark ? '\ufeff' : ''), ...text].flatMap((sign) => {
      const code = sign.charCodeAt(0);
      return little ? [code & 255, code >> 8] : [code >> 8, code & 255];
    }),
  );
const TEXT = '番付,貫\nい三,柱\n①,ﾇｷ\n';

describe('characters', () => {
  it.each([
    ['UTF-8', utf8(TEXT), 'utf-8'],
    ['UTF-8 with a mark', utf8('\ufeff' + TEXT), 'utf-8'],
    ['UTF-16, little end first', utf16(TEXT, true), 'utf-16le'],
    ['UTF-16, big end first', utf16(TEXT, false), 'utf-16be'],
    ['Shift_JIS', SHIFT_JIS, 'shift_jis'],
  ])('in %s', async (_, bytes, encoding) => {
    expect(await rowsOf(bytes)).toEqual(WORDS);
    expect(await encodingOf(bytes)).toBe(encoding);
  });

  it('as announced where the bytes leave it open (RFC 7111), never against them', async () => {
    expect(await encodingOf(utf16(TEXT, true, false), 'text/csv; charset="UTF-16LE"')).toBe('utf-16le');
    expect(await encodingOf(utf8(TEXT), 'text/csv; charset=UTF-8')).toBe('utf-8');
    expect(await encodingOf(utf8('\ufeff' + TEXT), 'text/csv; charset=Shift_JIS')).toBe('utf-8');
    expect(await encodingOf(SHIFT_JIS, 'text/csv; charset=utf-8')).toBe('shift_jis');
  });
});

const ascii = (text: string) => [...text].map((sign) => sign.charCodeAt(0));
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const wide = (text: string) => ascii(text).flatMap((code) => [code, 0]);

describe('what only looks like something else', () => {
  it.each([
    ['a bracketed mark', '[A1],post', [['[A1]', 'post']]],
    ['a mark that begins with a sign', 'mark\n%A\n{B}\n', [['mark'], ['%A'], ['{B}']]],
    [
      'a long note in a list of one column',
      `note\nA1\n${'x'.repeat(80)}\n`,
      [['note'], ['A1'], ['x'.repeat(80)]],
    ],
  ])('%s is read', async (_, text, rows) => expect(await rowsOf(text)).toEqual(rows));
});

describe('what is no sheet', () => {
  it.each([
    ['nothing', [], 'empty'],
    ['blank lines', ascii('\n \r\n'), 'empty'],
    ['an old Excel file', [...COMPOUND, ...Array<number>(500).fill(0), ...wide('Workbook')], 'old-excel'],
    [
      'a locked workbook',
      [...COMPOUND, ...Array<number>(500).fill(0), ...wide('EncryptedPackage')],
      'locked',
    ],
    ['a PDF', ascii('%PDF-1.7\n'), 'pdf'],
    ['a web page named .xls', ascii('<html><table><tr><td>a</td></tr></table></html>'), 'web-page'],
    ['a PDF with something before its header', ascii('\n junk\n%PDF-1.4\n1 0 obj'), 'pdf'],
    ['a piece of a web page', ascii('<!-- list --><div>A1, post</div>'), 'web-page'],
    ['a web archive', ascii('MIME-Version: 1.0\nContent-Type: text/html\n\n<p>a</p>'), 'web-page'],
    ['JSON', ascii(' [{"mark": "A1"},\n {"mark": "A2"}]'), 'json'],
    ['an RTF document', ascii('{\\rtf1\\ansi A1, post}'), 'text-document'],
    [
      'paragraphs',
      ascii(
        `${'The posts of the north wall stand on stones. '.repeat(3)}\n\n${'Rails follow. '.repeat(9)}\nEnd\n`,
      ),
      'running-text',
    ],
    ['a picture', [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13], 'not-a-sheet'],
    ['text with NUL', ascii('a,b\n\0,c'), 'not-a-sheet'],
    ['bytes of no encoding', [0x61, 0xff, 0xfe, 0x80, 0x0a], 'unknown-encoding'],
  ])('%s', async (_, bytes, reason) => {
    for (const type of ['text/csv', 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'])
      expect(await rowsOf(new Uint8Array(bytes), type)).toEqual({ reason });
  });

  it('a file of more than 20 MB', async () =>
    expect(await rowsOf(new Uint8Array(20_000_001))).toEqual({ reason: 'too-large', limit: 20 }));

  it('random bytes, never with a throw', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.uint8Array({ maxLength: 200 }),
        fc.constantFrom([], [0x50, 0x4b, 3, 4], COMPOUND),
        async (tail, head) => {
          const read = await readSheet(new Uint8Array([...head, ...tail]), 'text/csv');
          expect(read.ok || read.code === 'schedule-unreadable').toBe(true);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('gets a sentence in both languages, with its numbers in it', () => {
    for (const reason of Object.keys(SHEET_REFUSALS) as SheetRefusal[])
      for (const lang of ['en', 'ja'] as const) {
        const text = sheetRefusalText({ reason, line: 12, limit: 34 }, lang);
        expect(text).toMatch(/[.。]$/u);
        expect(text).not.toMatch(/[{}]/u);
      }
    expect(sheetRefusalText({ reason: 'open-quote', line: 12 }, 'en')).toContain('line 12');
  });
});
