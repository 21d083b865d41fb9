/** Why a file cannot be read as a sheet. `line`, where given, counts as a spreadsheet counts. */
export const SHEET_REFUSALS = {
  empty: {
    en: 'The file is empty. Save the schedule again and choose it once more.',
    ja: 'ファイルが空です。部材表を保存し直して、もう一度選んでください。',
  },
  'too-large': {
    en: 'The file is larger than {limit} MB. Remove pictures and other sheets, or save it as CSV.',
    ja: 'ファイルが{limit} MBを超えています。画像や他のシートを除くか、CSVで保存してください。',
  },
  'old-excel': {
    en: 'This is an old Excel file (.xls). Open it and save it as XLSX or CSV.',
    ja: '古い形式のExcelファイル(.xls)です。開いてXLSXまたはCSVで保存してください。',
  },
  'binary-excel': {
    en: 'This is a binary Excel file (.xlsb). Open it and save it as XLSX or CSV.',
    ja: 'バイナリ形式のExcelファイル(.xlsb)です。開いてXLSXまたはCSVで保存してください。',
  },
  locked: {
    en: 'The file is locked with a password. Save it as XLSX or CSV without one.',
    ja: 'ファイルにパスワードがかかっています。パスワードなしのXLSXまたはCSVで保存してください。',
  },
  'open-document': {
    en: 'This is an OpenDocument file (.ods). Open it and save it as XLSX or CSV.',
    ja: 'OpenDocument形式(.ods)のファイルです。開いてXLSXまたはCSVで保存してください。',
  },
  pdf: {
    en: 'This is a PDF. Take the list it was made from and save that as XLSX or CSV.',
    ja: 'PDFファイルです。元の表をXLSXまたはCSVで保存してください。',
  },
  'web-page': {
    en: 'This is a web page or XML, not a sheet. Open it in a spreadsheet and save it as XLSX or CSV.',
    ja: 'ウェブページまたはXMLです。表計算ソフトで開き、XLSXまたはCSVで保存してください。',
  },
  json: {
    en: 'This is JSON, data for programs. Export the schedule from there as XLSX or CSV.',
    ja: 'JSON(プログラム用のデータ)です。元のソフトからXLSXまたはCSVで書き出してください。',
  },
  'text-document': {
    en: 'This is a text document (RTF). Copy the list into a spreadsheet and save it as XLSX or CSV.',
    ja: '文書ファイル(RTF)です。表を表計算ソフトに写し、XLSXまたはCSVで保存してください。',
  },
  'running-text': {
    en: 'This is running text, not a table. Put one member in each row of a spreadsheet and save it as XLSX or CSV.',
    ja: '文章のファイルで、表ではありません。表計算ソフトで一行に一つの部材を書き、XLSXまたはCSVで保存してください。',
  },
  'not-a-sheet': {
    en: 'This is not a table. Save the schedule as XLSX or CSV.',
    ja: '表のファイルではありません。部材表をXLSXまたはCSVで保存してください。',
  },
  'unknown-encoding': {
    en: 'The characters cannot be read. Save it as XLSX, or as CSV in UTF-8.',
    ja: '文字コードを判別できません。XLSX、またはUTF-8のCSVで保存してください。',
  },
  damaged: {
    en: 'The file is damaged or incomplete. Open it, save it again as XLSX or CSV, and try once more.',
    ja: 'ファイルが壊れているか途中で切れています。開いてXLSXまたはCSVで保存し直してください。',
  },
  'open-quote': {
    en: 'A quotation mark opened in line {line} is never closed. Correct it there, or save as XLSX.',
    ja: '{line}行目の引用符「"」が閉じていません。修正するか、XLSXで保存してください。',
  },
  'too-many-rows': {
    en: 'The sheet has more than {limit} rows. Delete what is not part of the schedule.',
    ja: '行数が{limit}行を超えています。部材表以外の行を削除してください。',
  },
  'too-many-columns': {
    en: 'Line {line} has more than {limit} columns. Delete what is not part of the schedule.',
    ja: '{line}行目の列数が{limit}列を超えています。部材表以外の列を削除してください。',
  },
  'too-many-cells': {
    en: 'From its first to its last cell the sheet has more than {limit} cells. Delete what is not part of the schedule, also far to the right and far below.',
    ja: '最初のセルから最後のセルまでが{limit}セルを超えています。部材表以外の内容を、離れた行や列のものも含めて削除してください。',
  },
  'too-much': {
    en: 'The file takes too long to read. Copy the schedule alone into a new sheet and save it as CSV.',
    ja: '読み取りに時間がかかりすぎます。部材表だけを新しいシートに写し、CSVで保存してください。',
  },
  'cell-too-long': {
    en: 'A cell in line {line} has more than {limit} characters. Shorten it.',
    ja: '{line}行目に{limit}文字を超えるセルがあります。短くしてください。',
  },
} as const satisfies Record<string, Record<'en' | 'ja', string>>;

export type SheetRefusal = keyof typeof SHEET_REFUSALS;

export function isSheetRefusal(reason: unknown): reason is SheetRefusal {
  return typeof reason === 'string' && Object.hasOwn(SHEET_REFUSALS, reason);
}

/** The sentence for a refusal, with what to do. */
export function sheetRefusalText(
  params: { readonly reason: SheetRefusal } & Readonly<Record<string, string | number>>,
  lang: 'en' | 'ja',
): string {
  return SHEET_REFUSALS[params.reason][lang].replace(/\{(\w+)\}/gu, (_, name: string) =>
    String(params[name] ?? ''),
  );
}
