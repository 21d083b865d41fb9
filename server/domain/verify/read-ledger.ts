import { HashTree } from './hash-tree.ts';
import { toHex, type Hashing } from './hashing.ts';
import { LEDGER } from './file-names.ts';
import { lineOf, parseLine, type LedgerLine } from './ledger-entry.ts';
import { linesOf } from './lines.ts';
import { hashLeaf } from './merkle-hashes.ts';
import { Replay } from './replay/replay.ts';
import { Wrong } from './wrong.ts';

export interface ReadLedger {
  readonly house: string;
  readonly tree: HashTree;
  readonly replay: Replay;
  /**
   * Entries whose time lies before that of the one before. A clock may be set back, and several servers have
   * several clocks: it is told, and nothing is wrong.
   */
  readonly back: readonly number[];
}

/** Reads the whole ledger, line by line: form, place, leaf, head, and what is said. Throws Wrong at the first fault. */
export async function readLedger(hashing: Hashing, source: AsyncIterable<Uint8Array>): Promise<ReadLedger> {
  const tree = new HashTree(hashing);
  const replay = new Replay();
  let [house, last] = ['', ''];
  const back: number[] = [];
  for await (const line of linesOf(source, LEDGER)) {
    const read = parseLine(line);
    const { entry } = read;
    if (tree.size === 0) house = entry.house;
    assertPlace(read, house, tree.size);
    assertHashes(hashing, read, tree);
    replay.apply(entry);
    if (entry.at < last) back.push(entry.seq);
    last = entry.at;
  }
  return { house, tree, replay, back };
}

function assertPlace({ entry }: LedgerLine, house: string, seq: number): void {
  if (entry.seq !== seq) throw new Wrong('entry-place', lineOf(seq), { found: entry.seq, expected: seq });
  if (entry.house !== house)
    throw new Wrong('entry-house', lineOf(seq), { found: entry.house, expected: house });
}

/** Appends the entry to the tree, and holds its line against it. */
function assertHashes(hashing: Hashing, { canonical, leaf, head }: LedgerLine, tree: HashTree): void {
  const place = lineOf(tree.size);
  const hash = hashLeaf(hashing, new TextEncoder().encode(canonical));
  if (toHex(hash) !== leaf) throw new Wrong('entry-leaf', place, { found: leaf, expected: toHex(hash) });
  tree.append(hash);
  const now = toHex(tree.head());
  if (now !== head) throw new Wrong('entry-head', place, { found: head, expected: now });
}
