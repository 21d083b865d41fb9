/**
 * What the closing report of the demo house has to say, by a way of its own: from which members its tags name, when
 * the photos were taken, and which lines of the grid lie between the ends of a member. It shares nothing with the
 * program; that plaster between posts hides rails, roof boards what lies under them, and a floor what bears it, and
 * that each is to be seen pegged before, is common practice.
 */

const FIRST = [...'いろはにほ'];
const SECOND = [...'一二三四五'];
const SLIP = 'に';

export interface OracleTag {
  readonly id: string;
  readonly photo: string;
  readonly mark: string;
  readonly stage: string;
  /** Between which lines it shows the member; null: all of it. */
  readonly stretch: { readonly from: string; readonly to: string } | null;
  /** When its photo was taken; null: nobody knows. */
  readonly taken: string | null;
  /** What else keeps it from being a record. */
  readonly against: readonly string[];
}

export interface OracleLine {
  readonly covering: string;
  readonly mark: string;
  readonly state: string;
  readonly missing: readonly (readonly [from: string, to: string])[];
  readonly records: readonly string[];
  readonly completeAt: string | null;
  readonly miss: readonly string[] | null;
}

interface Covered {
  readonly name: string;
  readonly marks: readonly string[];
  readonly closedAt: string | null;
  /** Who released it accepted what had no record. */
  readonly isReleased: boolean;
}

const across = (lines: readonly string[], names: (line: string) => readonly string[]) => lines.flatMap(names);
const withHalves = (lines: readonly string[]) =>
  lines.flatMap((line, i) => (i < lines.length - 1 ? [line, `又${line}`] : [line]));
const halvesOf = (lines: readonly string[]) => withHalves(lines).filter((line) => line.startsWith('又'));
const rails = (line: string) => ['地貫', '腰貫', '内法貫'].map((kind) => `${line}通り${kind}`);
const loftRails = (line: string) => ['地貫', '腰貫'].map((kind) => `二階 ${line}通り${kind}`);
const rafters = (eaves: string) => withHalves(FIRST).map((line) => `${line}${eaves}垂木`);
const gable = (line: string) => [
  ...SECOND.map((s) => `二階 ${line}${s}`),
  ...loftRails(line),
  ...halvesOf(SECOND).map((s) => `二階 ${line}${s}間柱`),
  ...['一', '五'].map((s) => `二階 ${line}${s}筋かい`),
];
const inner = FIRST.slice(0, FIRST.indexOf(SLIP) + 1);
const groundFloor = [
  ...across([...inner, ...SECOND], (line) => [`${line}通り足固め`]),
  ...halvesOf(SECOND).map((s) => `${s}大引`),
  ...across(['ろ', 'は'], (f) => halvesOf(SECOND).map((s) => `${f}${s}床束`)),
  ...withHalves(inner).map((f) => `${f}根太`),
];

/** What each covering hides, by its name in the schedule of works. */
const HIDES: Readonly<Record<string, readonly string[]>> = {
  '湖側の屋根 野地板': [...rafters('一'), '又一母屋', '二母屋', '又二母屋', '棟木', '一広小舞'],
  '山側の屋根 野地板': [...rafters('五'), '又三母屋', '四母屋', '又四母屋', '棟木', '五広小舞'],
  '西の壁 荒壁': rails('い'),
  '舟入りの壁 荒壁': rails(SLIP),
  '東の壁 荒壁': rails('ほ'),
  '湖側の壁 荒壁': rails('一'),
  '山側の壁 荒壁': rails('五'),
  '二階 湖側の腰壁 荒壁': loftRails('一'),
  '二階 山側の腰壁 荒壁': loftRails('五'),
  '西の妻壁 板張り': gable('い'),
  '東の妻壁 板張り': gable('ほ'),
  '一階 荒床': groundFloor,
  '二階 床板': [...FIRST.map((f) => `${f}通り床梁`), ...withHalves(SECOND).map((s) => `二階 ${s}根太`)],
  '一階 床板': groundFloor,
};

/** The lines that a member crosses from end to end; of what stands or spans no line, two ends without a name. */
export function linesOf(mark: string): readonly string[] {
  const where = mark.replace(/^二階 /, '');
  if (/^棟木$|母屋$|広小舞$/.test(where)) return FIRST;
  if (where.endsWith('大引')) return inner;
  if (where.endsWith('垂木')) return where.includes('一') ? SECOND.slice(0, 3) : SECOND.slice(2).toReversed();
  if (where.endsWith('根太')) return SECOND.some((s) => where.includes(s)) ? FIRST : SECOND;
  const [, line] = /^(.)通り/.exec(where) ?? [];
  if (line === undefined) return ['', ''];
  if (FIRST.includes(line)) return SECOND;
  return mark === where && (line === '一' || where.endsWith('足固め')) ? inner : FIRST;
}

/** Bays of a member, by the number of the line before each, that a tag shows. */
function baysOf({ mark, stretch }: Pick<OracleTag, 'mark' | 'stretch'>): number[] {
  const lines = linesOf(mark);
  const ends = stretch ? [lines.indexOf(stretch.from), lines.indexOf(stretch.to)] : [0, lines.length - 1];
  const [from, to] = [Math.min(...ends), Math.max(...ends)];
  return Array.from({ length: to - from }, (_, i) => from + i);
}

function missingOf(mark: string, tags: readonly OracleTag[]): number[] {
  const shown = new Set(tags.flatMap(baysOf));
  return baysOf({ mark, stretch: null }).filter((bay) => !shown.has(bay));
}

/** Bays that lie beside each other as one part, by the lines at its ends. */
function namedParts(mark: string, bays: readonly number[]): (readonly [string, string])[] {
  const lines = linesOf(mark);
  const starts = bays.filter((bay) => !bays.includes(bay - 1));
  return starts.map((start) => {
    let end = start;
    while (bays.includes(end)) end += 1;
    return [lines[start] ?? '', lines[end] ?? ''] as const;
  });
}

const STAGES = ['cut', 'raised', 'pegged', 'lath-on', 'plastered'];

function reasonsAgainst(tag: OracleTag, closedAt: string | null): string[] {
  const reasons = STAGES.indexOf(tag.stage) < STAGES.indexOf('pegged') ? ['before-stage'] : [];
  if (tag.taken === null) reasons.push('undated');
  else if (closedAt !== null && tag.taken >= closedAt) reasons.push('after-closing');
  return [...reasons, ...tag.against];
}

/** When the last photo was taken that was still needed, were they taken one after the other. */
function completeAt(mark: string, records: readonly OracleTag[]): string | null {
  const times = records.map(({ taken }) => taken ?? '').sort();
  const isComplete = (until: string) =>
    missingOf(
      mark,
      records.filter(({ taken }) => (taken ?? '') <= until),
    ).length === 0;
  return times.find(isComplete) ?? null;
}

function lineOf(
  { name, closedAt, isReleased }: Covered,
  mark: string,
  tags: readonly OracleTag[],
): OracleLine {
  const judged = tags
    .filter((tag) => tag.mark === mark)
    .map((tag) => ({ tag, why: reasonsAgainst(tag, closedAt) }));
  const records = judged.filter(({ why }) => why.length === 0).map(({ tag }) => tag);
  const bays = missingOf(mark, records);
  const isWhole = bays.length === linesOf(mark).length - 1;
  const state = bays.length === 0 ? 'on-record' : isReleased ? 'waived' : closedAt === null ? 'gap' : 'lost';
  return {
    ...{ covering: name, mark, state },
    missing: isWhole ? [] : namedParts(mark, bays),
    records: records.map(({ id }) => id).sort(),
    completeAt: completeAt(mark, records),
    miss: state === 'on-record' ? null : records.length > 0 ? ['part-only'] : nearest(judged),
  };
}

/** Of the tags that do not count the one with the least against it, then at the furthest stage, then the latest. */
function nearest(judged: readonly { tag: OracleTag; why: readonly string[] }[]): readonly string[] {
  const [best] = judged.toSorted(
    (a, b) =>
      a.why.length - b.why.length ||
      STAGES.indexOf(b.tag.stage) - STAGES.indexOf(a.tag.stage) ||
      ((a.tag.taken ?? '') < (b.tag.taken ?? '') ? 1 : -1),
  );
  return best?.why ?? ['no-photo'];
}

/** Line by line; `closed`: what has closed, by its name, when and whether under a release. */
export function expectedReport(
  tags: readonly OracleTag[],
  closed: Readonly<Record<string, { at: string; isReleased: boolean }>>,
): OracleLine[] {
  return Object.entries(HIDES).flatMap(([name, marks]) => {
    const { at: closedAt = null, isReleased = false } = closed[name] ?? {};
    return marks.map((mark) => lineOf({ name, marks, closedAt, isReleased }, mark, tags));
  });
}
