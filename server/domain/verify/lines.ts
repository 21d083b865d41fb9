import { joinBytes } from './archive-files.ts';
import { Wrong } from './wrong.ts';

export interface Line {
  /** Counted from 1. */
  readonly number: number;
  /** The byte of the file at which it begins. */
  readonly from: number;
  /** Without its end. */
  readonly bytes: Uint8Array;
}

/** An imported schedule of twenty thousand members takes some ten megabytes. */
const LONGEST_LINE = 256 * 1024 * 1024;
const LINE_FEED = 0x0a;

/** Cuts a file into lines, each of which ends with a line feed. Throws Wrong where the last one does not. */
export async function* linesOf(source: AsyncIterable<Uint8Array>, file: string): AsyncGenerator<Line> {
  let [number, from] = [1, 0];
  let begun: Uint8Array[] = [];
  let begunBytes = 0;
  for await (const piece of source) {
    let at = 0;
    for (let end = piece.indexOf(LINE_FEED); end >= 0; end = piece.indexOf(LINE_FEED, at)) {
      const bytes = joinBytes([...begun, piece.subarray(at, end)]);
      yield { number, from, bytes };
      number += 1;
      from += bytes.length + 1;
      at = end + 1;
      [begun, begunBytes] = [[], 0];
    }
    begun.push(piece.slice(at));
    begunBytes += piece.length - at;
    if (begunBytes > LONGEST_LINE) throw new Wrong('line-too-long', { file, line: number });
  }
  if (begunBytes > 0) throw new Wrong('line-cut', { file, line: number });
}
