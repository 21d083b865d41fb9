import { HEX_HASH, toHex } from './hashing.ts';
import { LEDGER } from './file-names.ts';
import { lineOf } from './ledger-entry.ts';
import type { ReadLedger } from './read-ledger.ts';
import type { Said, TakenBack } from './replay/state.ts';
import { recordsSince, type ToldRecord } from './told-since.ts';
import { Wrong } from './wrong.ts';

/** What stands on a sheet of paper, or in somebody's diary: a tree head, and perhaps a release under it. */
export interface Paper {
  readonly size: number;
  readonly head: string;
  readonly release: string | null;
}

/** Reads what was typed or came with an address; undefined where it is no head with its size. */
export function parsePaper(written: {
  readonly size: string | null;
  readonly head: string | null;
  readonly release: string | null;
}): Paper | undefined {
  const [size, head] = [written.size?.trim() ?? '', written.head?.replace(/\s/g, '').toLowerCase() ?? ''];
  if (!/^\d{1,15}$/.test(size) || !HEX_HASH.test(head)) return undefined;
  return { size: Number(size), head, release: written.release?.trim().toLowerCase() || null };
}

export interface PaperVerdict extends Paper {
  /** Whether the words of the release itself lie under this head; otherwise only what it rests on does. */
  readonly includesRelease: boolean;
  /** That the release was taken back since; null while it stands, or where none is named. */
  readonly withdrawn: TakenBack | null;
  /** Who said while it stood that the covering is ready anew. */
  readonly ended: Said | null;
  /** Of the records that the release rests on, those of which something was said after it. */
  readonly since: readonly ToldRecord[];
}

/** Whether the archive is the one of which the paper speaks, not altered since. Throws Wrong. */
export function assertPaper(paper: Paper, { tree, replay }: ReadLedger): PaperVerdict {
  const { size, head, release } = paper;
  if (size > tree.size) throw new Wrong('paper-size', { file: LEDGER }, { found: size, expected: tree.size });
  const expected = toHex(tree.head(size));
  if (head !== expected)
    throw new Wrong('paper-head', size === 0 ? { file: LEDGER } : lineOf(size - 1), {
      ...{ size, found: head, expected },
    });
  if (release === null) return { ...paper, includesRelease: false, withdrawn: null, ended: null, since: [] };
  const given = replay.state.given.find((one) => one.release === release);
  if (!given) throw new Wrong('paper-release', { file: LEDGER }, { release });
  return {
    ...paper,
    includesRelease: given.seq < size,
    withdrawn: replay.state.takenBack.get(release) ?? null,
    ended: replay.state.ended.get(release) ?? null,
    since: recordsSince(replay.state, given),
  };
}
