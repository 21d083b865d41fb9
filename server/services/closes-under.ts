import type { CoveringView } from '#domain/contract/views';
import { hiddenBeyond } from '#domain/record/release';
import { Failure } from './failure.ts';
import type { HouseWriting } from './record-store.ts';
import { someMarks } from './some-marks.ts';

interface Under {
  readonly release: string | null;
  readonly without: string | null;
}

/**
 * The release that a covering closes under at an instant: said before it, and for no less than is hidden
 * now. Where none is, work may go on, but only with a reason that stays on record.
 */
export async function closesUnder(
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
  const beyond = hiddenBeyond(release.facts.hides, await hiddenNow(writing, id));
  if (beyond.length === 0) return { release: release.facts.release, without: null };
  if (withoutRelease === null)
    throw new Failure('released-for-less', { covering: name, ...someMarks(beyond) });
  return { release: null, without: withoutRelease };
}

/** Standing members only: a retired one is hidden by nothing. */
async function hiddenNow(writing: HouseWriting, covering: string) {
  const { members, coverings } = await writing.reportMaterial(writing.houseId, { coverings: [covering] });
  const facts = new Map(members.map((member) => [member.mark, member]));
  return (coverings[0]?.hides ?? [])
    .filter(({ mark }) => facts.get(mark)?.retired !== true)
    .map(({ mark, stretch }) => {
      const length = facts.get(mark)?.axis?.length;
      return { mark, stretch: stretch ?? (length === undefined ? null : { from: 0, to: length }) };
    });
}
