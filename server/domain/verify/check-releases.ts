import { isConsistent, isIncluded } from './check-proof.ts';
import { fromHex, toHex, type Hashing } from './hashing.ts';
import { lineOf } from './ledger-entry.ts';
import type { ReadLedger } from './read-ledger.ts';
import type { GivenRelease } from './replay/state.ts';
import { Wrong } from './wrong.ts';

/** Proves each release: it rests on an earlier state of this very ledger, and lies in it. Throws Wrong. */
export function assertReleases(hashing: Hashing, { tree, replay }: ReadLedger): void {
  for (const given of replay.state.given) assertRelease(hashing, tree, given);
}

/** Whether each stamp is of an earlier state of this very ledger. Throws Wrong. */
export function assertStamps({ tree, replay }: ReadLedger): void {
  for (const { seq, size, head } of replay.state.stamped) {
    const expected = toHex(tree.head(Math.min(size, seq)));
    if (size > seq || head !== expected)
      throw new Wrong('stamp-head', lineOf(seq), { size, found: head, expected });
  }
}

function assertRelease(hashing: Hashing, tree: ReadLedger['tree'], { seq, head }: GivenRelease): void {
  const place = lineOf(seq);
  if (head.size > seq) throw new Wrong('release-size', place, { found: head.size, expected: seq });
  const expected = toHex(tree.head(head.size));
  if (head.hash !== expected)
    throw new Wrong('release-head', place, { found: head.hash, expected, size: head.size });
  const last = { size: tree.size, head: tree.head() };
  const entry = { index: seq, leaf: tree.leaf(seq), ...last };
  if (!isIncluded(hashing, entry, tree.inclusion(seq))) throw new Wrong('release-not-included', place);
  if (head.size === 0) return;
  const first = { size: head.size, head: fromHex(head.hash) };
  if (!isConsistent(hashing, first, last, tree.consistency(head.size)))
    throw new Wrong('release-inconsistent', place);
}
