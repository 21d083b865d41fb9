import type { BenchTag } from './bench-tags.ts';
import type { Desk } from './desk-state.ts';

/**
 * In what a change that was left unsaved when the photo was open before differs from its tag; null where it
 * does not, or where no such change is on the desk.
 */
export function leftChange(
  { left, bench, entry }: Desk,
  tag: BenchTag | undefined,
): 'words' | 'region' | null {
  const { draft } = bench.work;
  if (!draft || !tag || left !== tag.id || draft.replaces !== tag.id) return null;
  const { mark, stage, note } = tag;
  if (entry.mark !== mark || entry.stage !== stage || entry.note !== note) return 'words';
  const stretch = entry.stretch === 'all' ? null : entry.stretch;
  if (stretch !== undefined && !isSame(stretch, tag.stretch)) return 'words';
  return isSame(draft.region, tag.region) ? null : 'region';
}

/** Of plain values, whatever the order of their keys: one may come from the server, the other from storage. */
function isSame(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const [inA, inB] = [new Map(Object.entries(a)), new Map(Object.entries(b))];
  return (
    inA.size === inB.size && [...inA].every(([key, value]) => inB.has(key) && isSame(value, inB.get(key)))
  );
}
