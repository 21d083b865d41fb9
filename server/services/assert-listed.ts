import type { Mark } from '#domain/frame/mark';
import { gridReader } from '#domain/frame/grid-reader';
import type { Zone } from '#domain/frame/zone';
import { zoneBody } from '#domain/frame/zone-body';
import type { MemberView } from '#domain/contract/views';
import { Failure } from './failure.ts';
import type { HouseWriting } from './record-store.ts';
import { someMarks } from './some-marks.ts';

/** What hides names members of the schedule, and each of those that it lists once; resolves to the schedule. */
export async function assertListed(
  writing: HouseWriting,
  { hides, except }: { readonly hides: readonly Mark[]; readonly except: readonly Mark[] },
): Promise<ReadonlyMap<string, MemberView>> {
  const members = new Map((await writing.members(writing.houseId)).map((member) => [member.mark, member]));
  const unknown = [...new Set([...hides, ...except].filter((mark) => !members.has(mark)))];
  if (unknown.length > 0) throw new Failure('unknown-marks', someMarks(unknown));
  const seen = new Set<string>();
  const twice = hides.find((mark) => seen.size === seen.add(mark).size);
  if (twice)
    throw new Failure('invalid-request', { mark: twice }, [
      { path: 'hides', message: `${twice} stands twice in the list.` },
    ]);
  return members;
}

/** A zone is stated in lines of the grid, and must be a space in it. */
export async function assertZone(writing: HouseWriting, zone: Zone | null): Promise<void> {
  if (zone === null) return;
  const grid = await writing.grid(writing.houseId);
  if (grid === null) throw new Failure('zone-without-grid');
  const read = zoneBody(zone, gridReader(grid));
  if (!read.ok)
    throw new Failure('zone-impossible', { reason: read.problem.reason, field: read.problem.field });
}
