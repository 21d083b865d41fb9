import type { ScheduleField } from '../contract/schedule-views.ts';

export interface ScheduleColumn {
  readonly index: number;
  readonly header: string;
  /** null: kept under its own name. */
  readonly field: ScheduleField | null;
}

/** Column index → field, or '' to keep the column under its own name. */
export type ColumnMapping = Readonly<Record<number, ScheduleField | ''>>;

/**
 * Names of columns, the surest first: a rail's 厚さ and 幅 are its thickness and height, a beam's 幅 and 成
 * its width and height; 'No.' is the mark only where no 番付 stands beside it, since it is
 * often a running number; 部材名 is the kind unless a column 種類 says the kind. Common practice of
 * timber lists.
 */
const NAMES: Readonly<Record<ScheduleField, readonly (readonly string[])[]>> = {
  mark: [
    ['mark', 'member mark', 'grid mark', '番付', '番付け', '符号', '部材符号'],
    [
      'mark no',
      'member no',
      'member id',
      'member number',
      'piece mark',
      'tag no',
      '記号',
      '部材記号',
      '部材番号',
    ],
    ['id', 'member', 'piece', 'code', '番号'],
    ['no', 'nr', 'number', '#', '№', 'ナンバー'],
  ],
  kind: [
    ['kind', 'type', 'member type', 'member kind', '種類', '種別', '部材種別', '部材種類'],
    ['element', 'component', '部材', '部材名', '部材名称'],
    ['member', '名称', '品名'],
  ],
  name: [
    ['name', 'member name', '名前', '呼び名', '通称'],
    [],
    [],
    ['名称', '部材名', '部材名称', 'description'],
  ],
  place: [
    ['place', 'location', 'position', '場所', '位置', '使用箇所', '箇所', '取付位置'],
    ['level', 'floor', 'storey', 'story', 'room', '階', '通り', '部屋', '室名'],
    ['area', 'zone', 'wall'],
  ],
  from: [
    ['from', 'from mark', 'start', '始点', '起点', '始端', 'から'],
    ['grid from', 'foot', '通り芯から'],
  ],
  to: [
    ['to', 'to mark', 'end', '終点', '終端', 'まで'],
    ['grid to', 'head', '通り芯まで'],
  ],
  level: [['レベル', '基準高'], [], ['level', 'floor', 'storey', 'story', '階']],
  base: [['base', 'bottom', 'base height', '下端', '下端高', '下端高さ'], ['height from']],
  top: [['top', 'top height', '上端', '上端高', '上端高さ'], ['height to']],
  width: [
    ['width', 'thickness', '厚', '厚さ', '厚み'],
    ['幅', '巾'],
  ],
  depth: [
    ['depth', '成', 'せい', '丈', '背'],
    ['d', 'h', 'height'],
    ['幅', '巾'],
  ],
  section: [
    ['section', 'cross section', '断面', '断面寸法', '寸法'],
    ['size', 'サイズ'],
  ],
  track: [['track', 'stages', '工程', '工程区分', '段階']],
  note: [
    ['note', 'notes', 'remark', 'remarks', '備考', 'メモ'],
    ['comment', 'comments', 'memo', '摘要', '注記', '特記'],
  ],
};

const FIELDS = Object.keys(NAMES) as ScheduleField[];

interface Meaning {
  readonly field: ScheduleField;
  readonly doubt: number;
}
const isFrom = ({ field, doubt }: Meaning) => field === 'from' && doubt === 0;

/** Folded header → the fields it may stand for, each with how sure that is (0 surest). */
const meanings: ReadonlyMap<string, readonly Meaning[]> = collectMeanings();

function collectMeanings(): Map<string, Meaning[]> {
  const all = new Map<string, Meaning[]>();
  for (const field of FIELDS)
    NAMES[field].forEach((names, doubt) => {
      for (const name of names.map(foldHeader)) all.set(name, [...(all.get(name) ?? []), { field, doubt }]);
    });
  return all;
}

/** NFKC, lower case, without blanks and full stops; '番付(い三)' and '番付：' are 番付. */
function foldHeader(header: string): string {
  const folded = header
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s.:_*]+/gu, '');
  return folded.replace(/(?!^)[([【].*$/u, '');
}

/** Which field each column fills, by name: the surest pair first, then from the left; each field once. */
function recogniseColumns(
  headers: readonly string[],
  spokenFor: ReadonlySet<ScheduleField> = new Set(),
): Map<number, ScheduleField> {
  const found = new Map<number, ScheduleField>();
  const taken = new Set(spokenFor);
  const places = headers.some((header) => meanings.get(foldHeader(header))?.some(isFrom));
  // Where a table says between which marks a member lies, its floor is the level that heights count from.
  const doubtOf = ({ doubt, field }: Meaning) => (places && field === 'level' ? -1 : doubt);
  const guesses = headers
    .flatMap((header, index) =>
      (meanings.get(foldHeader(header)) ?? []).map((meaning) => ({ ...meaning, index })),
    )
    .sort((a, b) => doubtOf(a) - doubtOf(b) || a.index - b.index);
  for (const { index, field } of guesses) {
    if (found.has(index) || taken.has(field)) continue;
    found.set(index, field);
    taken.add(field);
  }
  return found;
}

/** What was mapped by hand stands; the other columns are recognised among the fields left over. */
export function assignColumns(headers: readonly string[], mapping: ColumnMapping): ScheduleColumn[] {
  const byHand = new Map<number, ScheduleField | ''>();
  const taken = new Set<ScheduleField>();
  headers.forEach((_, index) => {
    const field = mapping[index];
    if (field === undefined || (field !== '' && taken.has(field))) return;
    byHand.set(index, field);
    if (field !== '') taken.add(field);
  });
  const unmapped = headers.map((header, index) => (byHand.has(index) ? '' : header));
  const byName = recogniseColumns(unmapped, taken);
  return headers.map((header, index) => {
    const field = byHand.get(index) ?? byName.get(index) ?? '';
    return { index, header, field: field === '' ? null : field };
  });
}

export const HEADING_SEARCHED_ROWS = 20;

/**
 * The row with the column names: of the first 20 the one that names most fields, if it names the mark
 * or two others; else the first row that is not blank. Titles above it are no members.
 */
export function findHeadingRow(rows: readonly (readonly string[])[]): number {
  let best = rows.findIndex((row) => row.some((cell) => cell.trim() !== ''));
  let most = 0;
  rows.slice(0, HEADING_SEARCHED_ROWS).forEach((row, index) => {
    const fields = [...recogniseColumns(row).values()];
    if (fields.length <= most || (fields.length < 2 && !fields.includes('mark'))) return;
    best = index;
    most = fields.length;
  });
  return best;
}
