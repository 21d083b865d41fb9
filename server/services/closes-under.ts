import type { CoveringView } from '#domain/contract/views';
import { outrunBy } from '#domain/record/release';
import type { Context } from './context.ts';
import { readCoveringLines } from './covering-lines.ts';
import { Failure } from './failure.ts';
import type { HouseWriting } from './record-store.ts';
import { someMarks } from './some-marks.ts';

interface Under {
  readonly release: string | null;
  readonly without: string | null;
}

/**
 * The release that a covering closes under at an instant: said before it, and for no less than is hidden and missing
 * now. Where none is, work may go on, but only with a reason that stays on record.
 */
export async function closesUnder(
  context: Context,
  writing: HouseWriting,
  { id, name, hold }: CoveringView,
  closedAt: string,
  withoutRelease: string | null,
): Promise<Under> {
  const release = hold.release === null ? undefined : await writing.release(hold.release);
  if (!release || release.at > closedAt) {
    if (withoutRelease === null) throw new Failure('not-released', { covering: name, state: hold.state });
    return { release: null, without: withoutRelease };
  }
  const { lines } = await readCoveringLines(context, writing, { house: writing.houseId, covering: id });
  const beyond = outrunBy(release.facts.hides, lines);
  if (beyond.length === 0) return { release: release.facts.release, without: null };
  if (withoutRelease === null)
    throw new Failure('released-for-less', { covering: name, ...someMarks(beyond) });
  return { release: null, without: withoutRelease };
}
