import type { Family, FamilyName, Grid } from './grid.ts';
import { gridReader, type GridReader } from './grid-reader.ts';
import { markKey } from './mark-order.ts';

export interface GridProblem {
  readonly reason: 'no-lines' | 'label-empty' | 'label-repeated' | 'label-unreadable' | 'not-ascending';
  readonly family: FamilyName | 'levels';
  readonly label: string;
}

/** Lines nearer than this are one line. */
const NEAREST_MM = 1;

/**
 * The first thing that is wrong with a grid, or null: each family has a line, labels differ and can be read
 * as what they are, positions and heights ascend.
 */
export function gridProblem(grid: Grid): GridProblem | null {
  const reader = gridReader(grid);
  const heights = grid.levels.map(({ label, height }) => ({ label, at: height }));
  return (
    familyProblem(grid.first, 'first') ??
    familyProblem(grid.second, 'second') ??
    listProblem(heights, 'levels') ??
    unreadable(reader)
  );
}

function familyProblem({ lines }: Family, family: FamilyName): GridProblem | null {
  return lines.length === 0 ? { reason: 'no-lines', family, label: '' } : listProblem(lines, family);
}

function listProblem(
  lines: readonly { readonly label: string; readonly at: number }[],
  family: GridProblem['family'],
): GridProblem | null {
  const known = new Set<string>();
  let before = -Infinity;
  for (const { label, at } of lines) {
    const { parts } = markKey(label);
    if (parts.length === 0) return { reason: 'label-empty', family, label };
    const key = JSON.stringify(parts);
    if (known.has(key)) return { reason: 'label-repeated', family, label };
    if (!(at - before >= NEAREST_MM)) return { reason: 'not-ascending', family, label };
    known.add(key);
    before = at;
  }
  return null;
}

/** A label such as い又 or 通り is read as something else. */
function unreadable(reader: GridReader): GridProblem | null {
  for (const family of ['first', 'second'] as const)
    for (const { label } of reader.grid[family].lines) {
      const line = reader.line(label, family);
      if (!line.ok || line.value.label !== label) return { reason: 'label-unreadable', family, label };
    }
  return null;
}
