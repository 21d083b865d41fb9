import { call } from '../../api/call.ts';

export const LEDGER_PAGE = 50;

/**
 * One page of the ledger, counted from its end. `end`: the entry before which the page stops, null for
 * the newest page, whose place only the server knows.
 */
export async function readLedgerPage(house: string, end: number | null, signal: AbortSignal) {
  const stop = end ?? (await call('readLedger', { params: { house }, query: { limit: 1 }, signal })).size;
  const from = Math.max(0, stop - LEDGER_PAGE);
  const limit = Math.max(1, stop - from);
  const page = await call('readLedger', { params: { house }, query: { from, limit }, signal });
  return { ...page, from, entries: page.entries.toReversed() };
}

export function olderPage(page: { from: number }): number | undefined {
  return page.from > 0 ? page.from : undefined;
}
