import { distanceTo, type Flat } from './flat.ts';
import type { DrawnMember } from './sheet.ts';

/**
 * What of a drawing a pointer means: the nearest member within reach (mm); among those it is on, what is
 * shown cut before what lies, and the shorter before the longer, since it lies over it.
 */
export function memberAt(members: readonly DrawnMember[], at: Flat, reach: number): DrawnMember | null {
  let best: { member: DrawnMember; off: number } | null = null;
  for (const member of members) {
    const off = distanceTo(member, at);
    if (off > reach) continue;
    if (!best || off < best.off || (off === best.off && isOver(member, best.member))) best = { member, off };
  }
  return best?.member ?? null;
}

function isOver(one: DrawnMember, other: DrawnMember): boolean {
  if ((one.cutAt === null) !== (other.cutAt === null)) return one.cutAt !== null;
  return one.length < other.length;
}
