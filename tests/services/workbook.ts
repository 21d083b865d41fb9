import { strToU8, zipSync } from 'fflate';

/** Writes the smallest workbook that ECMA-376 allows, part by part, so that tests can put anything into it. */
export interface Workbook {
  /** What stands inside <sheetData> of the first sheet. */
  readonly sheet: string;
  readonly strings?: string;
  readonly styles?: string;
  /** Further parts by path. */
  readonly parts?: Record<string, Uint8Array>;
  readonly moreSheets?: Record<string, string>;
}

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

const xml = (text: string) => strToU8(HEAD + text);
const relation = (id: string, type: string, target: string) =>
  `<Relationship Id="${id}" Type="${OFFICE}/${type}" Target="${target}"/>`;

export const worksheet = (data: string) =>
  `<worksheet xmlns="${MAIN}"><sheetData>${data}</sheetData></worksheet>`;

export function workbookParts(book: Workbook): Record<string, Uint8Array> {
  const more = Object.keys(book.moreSheets ?? {});
  return {
    '[Content_Types].xml': xml(
      '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
    ),
    '_rels/.rels': xml(
      `<Relationships xmlns="${PACKAGE}">${relation('r1', 'officeDocument', 'xl/workbook.xml')}</Relationships>`,
    ),
    'xl/workbook.xml': xml(
      `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets><sheet name="部材表" sheetId="7" r:id="rId3"/>` +
        more
          .map((name, i) => `<sheet name="${name}" sheetId="${String(20 + i)}" r:id="more${String(i)}"/>`)
          .join('') +
        '</sheets></workbook>',
    ),
    'xl/_rels/workbook.xml.rels': xml(
      `<Relationships xmlns="${PACKAGE}">` +
        more.map((name, i) => relation(`more${String(i)}`, 'worksheet', `worksheets/${name}.xml`)).join('') +
        relation('rId3', 'worksheet', 'worksheets/sheet1.xml') +
        relation('rId4', 'styles', 'styles.xml') +
        relation('rId5', 'sharedStrings', 'sharedStrings.xml') +
        '</Relationships>',
    ),
    'xl/worksheets/sheet1.xml': xml(worksheet(book.sheet)),
    'xl/sharedStrings.xml': xml(`<sst xmlns="${MAIN}">${book.strings ?? ''}</sst>`),
    'xl/styles.xml': xml(
      `<styleSheet xmlns="${MAIN}">${book.styles ?? '<cellXfs count="1"><xf numFmtId="0"/></cellXfs>'}</styleSheet>`,
    ),
    ...Object.fromEntries(
      Object.entries(book.moreSheets ?? {}).map(([name, data]) => [
        `xl/worksheets/${name}.xml`,
        xml(worksheet(data)),
      ]),
    ),
    ...book.parts,
  };
}

export function workbook(book: Workbook): Uint8Array {
  return zipSync(workbookParts(book));
}

export const inlineCell = (reference: string, text: string) =>
  `<c r="${reference}" t="inlineStr"><is><t>${text}</t></is></c>`;
