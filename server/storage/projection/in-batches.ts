/** Keeps statements below the limit of bound parameters, however large the schedule. */
export async function inBatches<T>(
  items: readonly T[],
  size: number,
  work: (batch: T[]) => Promise<void>,
): Promise<void> {
  for (let from = 0; from < items.length; from += size) await work(items.slice(from, from + size));
}
