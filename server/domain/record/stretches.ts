/** A part of a member along its axis, in mm from its start; from < to. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What is shorter than this is no gap: nobody sets out a frame by less. */
export const SHORTEST_GAP_MM = 5;

/** Sorted and merged; stretches that touch are one. */
export function unionOf(stretches: readonly Stretch[]): Stretch[] {
  const merged: Stretch[] = [];
  for (const next of [...stretches].sort((a, b) => a.from - b.from || a.to - b.to)) {
    const last = merged.at(-1);
    if (last && next.from <= last.to)
      merged[merged.length - 1] = { from: last.from, to: Math.max(last.to, next.to) };
    else merged.push(next);
  }
  return merged;
}

/** What of `whole` no stretch of `taken` covers; slivers are dropped. Both may be in any order. */
export function without(whole: readonly Stretch[], taken: readonly Stretch[]): Stretch[] {
  const covers = unionOf(taken);
  return unionOf(whole).flatMap((stretch) => cut(stretch, covers));
}

function cut(stretch: Stretch, covers: readonly Stretch[]): Stretch[] {
  const left: Stretch[] = [];
  let from = stretch.from;
  for (const cover of covers) {
    if (cover.to <= from || cover.from >= stretch.to) continue;
    if (cover.from - from >= SHORTEST_GAP_MM) left.push({ from, to: cover.from });
    from = Math.max(from, cover.to);
  }
  if (stretch.to - from >= SHORTEST_GAP_MM) left.push({ from, to: stretch.to });
  return left;
}

/**
 * Where at least `times` of these sets of stretches lie over each other: sweep over their ends. Each set
 * counts once however its stretches overlap.
 */
export function coveredTimes(sets: readonly (readonly Stretch[])[], times: number): Stretch[] {
  const ends = sets
    .flatMap((set) => unionOf(set))
    .flatMap(({ from, to }) => [
      { at: from, step: 1 },
      { at: to, step: -1 },
    ])
    .sort((a, b) => a.at - b.at || b.step - a.step);
  const covered: Stretch[] = [];
  let depth = 0;
  let from = 0;
  for (const { at, step } of ends) {
    const before = depth;
    depth += step;
    if (before < times && depth >= times) from = at;
    if (before >= times && depth < times && at > from) covered.push({ from, to: at });
  }
  return unionOf(covered);
}

export function lengthOf(stretches: readonly Stretch[]): number {
  return unionOf(stretches).reduce((sum, { from, to }) => sum + to - from, 0);
}

/** Whether a stretch has more than a sliver in common with any of these. */
export function meets(stretch: Stretch, others: readonly Stretch[]): boolean {
  return others.some(
    ({ from, to }) => Math.min(to, stretch.to) - Math.max(from, stretch.from) >= SHORTEST_GAP_MM,
  );
}
