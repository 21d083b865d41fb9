import { compareMarkKeys, compareText, markKey, type MarkKey } from '../frame/mark-order.ts';
import type { ReportLine } from './report-line.ts';

/** Keys are costly beside comparisons, and places repeat: each text is taken apart once. */
export type KeyOf = (text: string) => MarkKey;

export function keyCache(): KeyOf {
  const keys = new Map<string, MarkKey>();
  return (text) => {
    const known = keys.get(text);
    if (known) return known;
    const key = markKey(text);
    keys.set(text, key);
    return key;
  };
}

const URGENCY: Readonly<Record<ReportLine['state'], number>> = {
  gap: 0,
  lost: 0,
  waived: 1,
  'on-record': 2,
  'hidden-before': 3,
  retired: 4,
};

/**
 * As somebody walks the house with the list in hand: what is missing first, place by place so that no
 * way is walked twice, there by mark; members without a place after those with one.
 */
export function sortLines(lines: readonly ReportLine[], keyOf: KeyOf): ReportLine[] {
  return lines
    .map((line) => ({ line, place: keyOf(line.place), mark: keyOf(line.mark) }))
    .sort(
      (a, b) =>
        URGENCY[a.line.state] - URGENCY[b.line.state] ||
        Number(a.line.place === '') - Number(b.line.place === '') ||
        compareMarkKeys(a.place, b.place) ||
        compareMarkKeys(a.mark, b.mark),
    )
    .map(({ line }) => line);
}

/** By name as people count (wall 2 before wall 10), then by id. */
export function sortNamed<T extends { readonly id: string; readonly name: string }>(
  things: readonly T[],
  keyOf: KeyOf,
): T[] {
  return [...things].sort((a, b) => compareMarkKeys(keyOf(a.name), keyOf(b.name)) || compareText(a.id, b.id));
}
