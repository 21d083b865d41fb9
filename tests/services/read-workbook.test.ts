import { crc32 } from 'node:zlib';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readSheet } from '../../server/services/read-sheet.ts';
import { unzipCapped } from '../../server/services/sheet/unzip-capped.ts';
import { inlineCell, workbook, workbookParts } from './workbook.ts';

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
const rowsOf = async (sheet: string, more: Omit<Parameters<typeof workbook>[0], 'sheet'> = {}) => {
  const read = await readSheet(workbook({ sheet, ...more }), XLSX);
  return read.ok ? read.rows : read.params;
};
const reasonOf = async (bytes: Uint8Array) => {
  const read = await readSheet(bytes, XLSX);
  return read.ok ? 'read' : read.params.reason;
};

describe('cells of a workbook', () => {
  it('are read from shared and inline strings, without the reading that Japanese Excel adds', async () => {
    const strings =
      '<si><t>番付</t></si><si><t>貫</t><rPh sb="0" eb="1"><t>ヌキ</t></rPh><phoneticPr fontId="1"/></si>' +
      '<si><r><t>通し</t></r><r><rPr><b/></rPr><t>柱 &amp; 梁</t></r></si>';
    expect(
      await rowsOf(
        '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c></row>' +
          `<row r="2">${inlineCell('A2', 'い &lt;三&gt;')}<c r="B2" t="s"><v>2</v></c></row>`,
        { strings },
      ),
    ).toEqual([
      ['番付', '貫'],
      ['い <三>', '通し柱 & 梁'],
    ]);
  });

  // Excel keeps 15 digits and writes 17 (IEEE 754); 46115 is 2026-04-03 in the 1900 date system, ECMA-376 Part 1, 18.17.4.1.
  it('are numbers, truth values, days and times as a person sees them', async () => {
    const styles = '<cellXfs count="3"><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="22"/></cellXfs>';
    expect(
      await rowsOf(
        '<row r="1"><c r="A1"><v>3</v></c><c r="B1"><v>0.30000000000000004</v></c><c r="C1"><v>1818.1818181818182</v></c>' +
          '<c r="D1" t="b"><v>1</v></c><c r="E1" s="1"><v>46115</v></c><c r="F1" s="2"><v>46115.604166666664</v></c>' +
          '<c r="G1" s="2"><v>0.5</v></c><c r="H1"><v>-0.5</v></c><c r="I1"><v>3.0</v></c></row>',
        { styles },
      ),
    ).toEqual([
      ['3', '0.3', '1818.18181818182', 'TRUE', '2026-04-03', '2026-04-03 14:30:00', '12:00:00', '-0.5', '3'],
    ]);
  });

  it('are formulas by the value they were saved with', async () =>
    expect(
      await rowsOf(
        '<row r="1"><c r="A1" t="str"><f>"い"&amp;1</f><v>い1</v></c><c r="B1"><f>1+1</f><v>2</v></c>' +
          '<c r="C1" t="e"><f>1/0</f><v>#DIV/0!</v></c><c r="D1"><v>9</v></c></row>',
      ),
    ).toEqual([['い1', '2', '', '9']]));

  it('keep their rows and columns where others are empty', async () =>
    expect(
      await rowsOf(`<row r="3">${inlineCell('B3', 'x')}</row><row r="5">${inlineCell('A5', 'y')}</row>`),
    ).toEqual([
      ['', ''],
      ['', ''],
      ['', 'x'],
      ['', ''],
      ['y', ''],
    ]));

  it('are all there in a sheet that is read in many pieces', async () => {
    const lines = Array.from({ length: 20_000 }, (_, i) => i + 1);
    const sheet = lines
      .map(
        (n) =>
          `<row r="${String(n)}">${inlineCell(`A${String(n)}`, `い${String(n)}`)}<c r="B${String(n)}"><v>${String(n)}</v></c></row>`,
      )
      .join('');
    expect(await rowsOf(sheet)).toEqual(lines.map((n) => [`い${String(n)}`, String(n)]));
  });

  it('are those of the first sheet, however large the others are', async () =>
    expect(
      await rowsOf(`<row r="1">${inlineCell('A1', 'first')}</row>`, {
        moreSheets: { plan: `<row r="60000">${inlineCell('XFD60000', 'far')}</row>` },
      }),
    ).toEqual([['first']]));

  it('may be formatted far beyond what they hold', async () =>
    expect(
      await rowsOf(
        `<row r="1">${inlineCell('A1', 'x')}<c r="XFD1" s="0"/></row><row r="70000" s="0"><c r="A70000" s="0"></c></row>`,
      ),
    ).toEqual([['x']]));
});

describe('workbooks that are refused', () => {
  it.each([
    [
      'a row beyond the limit',
      `<row r="50001">${inlineCell('A50001', 'x')}</row>`,
      { reason: 'too-many-rows', limit: 50_000 },
    ],
    [
      'a column beyond the limit',
      `<row r="2">${inlineCell('GS2', 'x')}</row>`,
      { reason: 'too-many-columns', line: 2, limit: 200 },
    ],
    ['a cell beyond any column', `<row r="1">${inlineCell('ZZZZZZ1', 'x')}</row>`, { reason: 'damaged' }],
    ['a row beyond any row', '<row r="99999999999"></row>', { reason: 'damaged' }],
    [
      'a cell that hides its place',
      `<row r="1"><c r="A1" x:r="XFD1"><v>1</v></c></row>`,
      { reason: 'damaged' },
    ],
    ['a comment', `<!-- <c " --><row r="1">${inlineCell('XFD1', 'x')}</row>`, { reason: 'damaged' }],
    ['a value that is no number', '<row r="1"><c r="A1"><v>x</v></c></row>', { reason: 'damaged' }],
    [
      'a very long cell',
      `<row r="1">${inlineCell('A1', 'x'.repeat(32_768))}</row>`,
      { reason: 'cell-too-long', line: 1, limit: 32_767 },
    ],
  ])('for %s', async (_, sheet, params) => expect(await rowsOf(sheet)).toEqual(params));

  it('reads exactly up to the limits', async () => {
    const size = async (reference: string) => {
      const rows = await rowsOf(
        `<row r="${reference.replace(/[A-Z]+/, '')}">${inlineCell(reference, 'x'.repeat(32_767))}</row>`,
      );
      return Array.isArray(rows) ? [rows.length, rows.at(-1)?.length] : rows;
    };
    expect(await size('L50000')).toEqual([50_000, 12]);
    expect(await size('GR3000')).toEqual([3000, 200]);
    expect(await size('GR3001')).toEqual({ reason: 'too-many-cells', limit: 600_000 });
  });

  it('for rows and columns that are few by themselves and many together', async () => {
    const sheet = `<row r="1">${inlineCell('GR1', 'x')}</row><row r="50000">${inlineCell('A50000', 'x')}</row>`;
    expect(await rowsOf(sheet)).toEqual({ reason: 'too-many-cells', limit: 600_000 });
  });

  it('for a text so long that the reader would take minutes over it', async () => {
    const started = performance.now();
    const sheet = `<row r="1">${inlineCell('A1', 'x'.repeat(20_000_000))}</row>`;
    expect(await rowsOf(sheet)).toEqual({ reason: 'damaged' });
    expect(performance.now() - started).toBeLessThan(5000);
  });

  it('for what inflates beyond 100 MB, before it does', async () => {
    const bomb = zipSync({
      ...workbookParts({ sheet: '' }),
      'xl/worksheets/sheet1.xml': new Uint8Array(101_000_000),
    });
    expect(bomb.length).toBeLessThan(200_000);
    const before = process.memoryUsage().rss;
    expect(await readSheet(bomb, XLSX)).toMatchObject({ params: { reason: 'too-large', limit: 100 } });
    expect(process.memoryUsage().rss - before).toBeLessThan(400_000_000);
  });

  it('for a bomb that writes a small size into the archive', async () => {
    const bomb = zipSync({
      ...workbookParts({ sheet: '' }),
      'xl/worksheets/sheet1.xml': new Uint8Array(101_000_000),
    });
    const view = new DataView(bomb.buffer, bomb.byteOffset, bomb.length);
    for (let at = 0; at < bomb.length - 46; at += 1) {
      // Uncompressed size: 24 bytes into a directory entry, 22 into a local one (APPNOTE 4.3.7, 4.3.12).
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 100, true);
      if (view.getUint32(at, true) === 0x04034b50) view.setUint32(at + 22, 100, true);
    }
    expect(await reasonOf(bomb)).toBe('too-large');
  });

  it.each([
    ['another archive', zipSync({ 'a.txt': strToU8('a') }), 'not-a-sheet'],
    ['a text document', zipSync({ 'word/document.xml': strToU8('<a/>') }), 'not-a-sheet'],
    [
      'an OpenDocument sheet',
      zipSync({
        mimetype: [strToU8('application/vnd.oasis.opendocument.spreadsheet'), { level: 0 }],
        'content.xml': strToU8('<a/>'),
      }),
      'open-document',
    ],
    ['a binary workbook', zipSync({ 'xl/workbook.bin': strToU8('x') }), 'binary-excel'],
    [
      'a workbook without its list of parts',
      zipSync({
        'xl/workbook.xml': strToU8(
          '<workbook><sheets><sheet name="a" sheetId="1" r:id="x"/></sheets></workbook>',
        ),
      }),
      'damaged',
    ],
    ['an archive cut off', workbook({ sheet: '' }).slice(0, 900), 'damaged'],
    ['four bytes of an archive', new Uint8Array([0x50, 0x4b, 3, 4]), 'damaged'],
  ])('for %s', async (_, bytes, reason) => expect(await reasonOf(bytes)).toBe(reason));

  it('for damage anywhere: never a throw, never a cell that was not written', async () => {
    const whole = workbook({ sheet: `<row r="1">${inlineCell('A1', 'x')}</row>` });
    for (let at = 0; at < whole.length; at += 3) {
      const hurt = whole.slice();
      hurt[at] = (hurt[at] ?? 0) ^ 0x55;
      const read = await readSheet(hurt, XLSX);
      expect(read.ok ? read.rows : read.code).toEqual(read.ok ? [['x']] : 'schedule-unreadable');
    }
    for (let length = 0; length < whole.length; length += 7)
      expect((await readSheet(whole.slice(0, length), XLSX)).ok).toBe(false);
  });

  it('for a part that reaches beyond the file into other memory', () => {
    const archive = zipSync({ a: strToU8('own bytes') }, { level: 0 });
    const [localLength, beyond] = [30, 50];
    const fileLength = archive.length + localLength;
    const room = new Uint8Array(fileLength + beyond).fill(7);
    room.set(archive);
    const view = new DataView(room.buffer);
    const entry = room.findIndex((_, at) => at < archive.length && view.getUint32(at, true) === 0x02014b50);
    // A second local header as the archive's comment, at the very end: what it holds would lie behind the file.
    view.setUint16(archive.length - 2, localLength, true);
    room.fill(0, archive.length, fileLength);
    view.setUint32(archive.length, 0x04034b50, true);
    view.setUint32(entry + 16, crc32(room.subarray(fileLength)), true);
    view.setUint32(entry + 20, beyond, true);
    view.setUint32(entry + 42, archive.length, true);
    expect(() => unzipCapped(room.subarray(0, fileLength), () => true, 1000)).toThrow('damaged');
  });

  it('in a view on a larger buffer reads nothing beside it', async () => {
    const whole = workbook({ sheet: `<row r="1">${inlineCell('A1', 'x')}</row>` });
    const room = new Uint8Array(whole.length * 3);
    room.set(whole, whole.length);
    expect(await reasonOf(room.subarray(whole.length, whole.length * 2))).toBe('read');
    expect(await reasonOf(room.subarray(whole.length, whole.length * 2 - 30))).toBe('damaged');
  });
});
