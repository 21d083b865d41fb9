import type { StatedGrid } from '#domain/contract/frame-shapes';
import { gridProblem, type GridProblem } from '#domain/frame/grid-problem';
import { lengthText, parseLength, type LengthUnit, type Mm } from '#domain/frame/length';
import { IROHA } from '#domain/frame/mark-order';

/** A family of lines as it is typed: labels one after the other, and the bays between them. */
export interface FamilyDraft<Runs extends string> {
  readonly labels: string;
  /** One bay for all, or one for each. */
  readonly bays: string;
  readonly runs: Runs;
}

export interface GridDraft {
  readonly unit: LengthUnit;
  readonly first: FamilyDraft<StatedGrid['first']['runs']>;
  readonly second: FamilyDraft<StatedGrid['second']['runs']>;
  /** One a line: its name and its height. */
  readonly levels: string;
}

/** Common practice: いの一 in the upper right. */
export const EMPTY_GRID: GridDraft = {
  unit: 'mm',
  first: { labels: '', bays: '', runs: 'leftward' },
  second: { labels: '', bays: '', runs: 'downward' },
  levels: '',
};

export type GridWrong =
  | GridProblem
  | {
      readonly reason: 'not-a-length';
      readonly family: 'first' | 'second' | 'levels';
      readonly label: string;
    }
  | {
      readonly reason: 'count' | 'bay-too-short';
      readonly family: 'first' | 'second';
      readonly label: string;
    };

const OF_BAYS: readonly GridWrong['reason'][] = ['not-a-length', 'count', 'bay-too-short', 'not-ascending'];

/** Which field of a family is to be typed anew. */
export const fieldOf = ({ reason }: GridWrong): 'bays' | 'labels' =>
  OF_BAYS.includes(reason) ? 'bays' : 'labels';

export function gridDraft(grid: StatedGrid): GridDraft {
  const { unit, first, second, levels } = grid;
  const length = (mm: number) => lengthText(mm, unit);
  const family = (lines: StatedGrid['first']['lines']) => {
    const bays = lines.slice(1).map(({ at }, i) => length(at - (lines[i]?.at ?? 0)));
    const same = new Set(bays).size === 1 ? bays.slice(0, 1) : bays;
    return { labels: lines.map(({ label }) => label).join(' '), bays: same.join(' ') };
  };
  return {
    unit,
    first: { ...family(first.lines), runs: first.runs },
    second: { ...family(second.lines), runs: second.runs },
    levels: levels.map(({ label, height }) => `${label} ${length(height)}`).join('\n'),
  };
}

export function readGrid(draft: GridDraft): { grid: StatedGrid } | { wrong: GridWrong } {
  const first = readFamily(draft.first, 'first', draft.unit);
  const second = readFamily(draft.second, 'second', draft.unit);
  const levels = readLevels(draft.levels, draft.unit);
  for (const part of [first, second, levels]) if ('reason' in part) return { wrong: part };
  const grid = {
    unit: draft.unit,
    first: { lines: first as Lines, runs: draft.first.runs },
    second: { lines: second as Lines, runs: draft.second.runs },
    levels: (levels as Lines).map(({ label, at }) => ({ label, height: at })),
  };
  const problem = gridProblem(grid);
  return problem ? { wrong: problem } : { grid };
}

type Lines = { label: string; at: Mm }[];

const words = (text: string) => text.split(/[\s,、，;；]+/u).filter((word) => word !== '');

function readFamily(
  { labels, bays }: FamilyDraft<string>,
  family: 'first' | 'second',
  unit: LengthUnit,
): Lines | GridWrong {
  const names = words(labels);
  const typed = words(bays);
  const lengths = typed.map((bay) => parseLength(bay, unit));
  const bad = typed.find((_, i) => lengths[i] === null);
  if (bad !== undefined) return { reason: 'not-a-length', family, label: bad };
  const short = typed.find((_, i) => !((lengths[i] ?? 0) > 0));
  if (short !== undefined) return { reason: 'bay-too-short', family, label: short };
  const missing = names.length > 1 && lengths.length !== 1 && lengths.length !== names.length - 1;
  if (missing) return { reason: 'count', family, label: String(names.length - 1) };
  let at = 0;
  return names.map((label, i) => {
    if (i > 0) at += (lengths.length === 1 ? lengths[0] : lengths[i - 1]) ?? 0;
    return { label, at: (Math.round(at * 1000) / 1000) as Mm };
  });
}

function readLevels(text: string, unit: LengthUnit): Lines | GridWrong {
  const lines: Lines = [];
  for (const row of text.split('\n').filter((one) => one.trim() !== '')) {
    const [, label = '', height = ''] = /^\s*([^\s,、=:：]+)[\s,、=:：]+(.+)$/u.exec(row) ?? [];
    const at = parseLength(height, unit);
    if (at === null) return { reason: 'not-a-length', family: 'levels', label: row.trim() };
    lines.push({ label, at });
  }
  return lines;
}

export const SERIES = ['iroha', 'kanji', 'digits', 'letters'] as const;
export type Series = (typeof SERIES)[number];

const KANJI = '一二三四五六七八九';

/** The first `count` labels of a usual series. */
export function labelsOf(series: Series, count: number): string {
  const label = (i: number) => {
    if (series === 'iroha') return [...IROHA][i] ?? '';
    if (series === 'digits') return String(i + 1);
    if (series === 'letters') return String.fromCharCode(65 + (i % 26)).repeat(1 + Math.floor(i / 26));
    return kanjiNumber(i + 1);
  };
  return Array.from({ length: count }, (_, i) => label(i)).join(' ');
}

function kanjiNumber(n: number): string {
  const [tens, ones] = [Math.floor(n / 10), n % 10];
  const ten = tens === 0 ? '' : `${tens > 1 ? KANJI.charAt(tens - 1) : ''}十`;
  return ten + (ones === 0 ? '' : KANJI.charAt(ones - 1));
}
