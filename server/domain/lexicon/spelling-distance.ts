/**
 * Letters to put, drop, change or swap with their neighbour (optimal string alignment); `most` + 1 where it
 * is more than `most`.
 */
export function spellingDistance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) row.push(cell(a, b, i, j, row, last, before));
    if (Math.min(...row) > most) return most + 1;
    [before, last] = [last, row];
  }
  return Math.min(last[b.length] ?? 0, most + 1);
}

function cell(
  ...[a, b, i, j, row, last, before]: [string, string, number, number, number[], number[], number[]]
): number {
  const at = (line: number[], k: number) => line[k] ?? 0;
  const same = a[i - 1] === b[j - 1];
  const least = Math.min(at(row, j - 1) + 1, at(last, j) + 1, at(last, j - 1) + (same ? 0 : 1));
  const isSwapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
  return isSwapped ? Math.min(least, at(before, j - 2) + 1) : least;
}
