import type { Flat } from './flat.ts';
import type { Sheet } from './sheet.ts';

/** An elevation from the other side of its line: left is right, heights stay. A plan has no other side. */
export function mirrored(sheet: Sheet): Sheet {
  if (sheet.subject.kind === 'plan') return sheet;
  const { left, right } = sheet.bounds;
  return {
    ...sheet,
    seenFrom: sheet.seenFrom === 'lower' ? 'higher' : 'lower',
    upright: sheet.upright.map((rule) => ({ ...rule, at: 0 - rule.at })),
    members: sheet.members.map((member) => ({ ...member, from: flip(member.from), to: flip(member.to) })),
    zones: sheet.zones.map((zone) => ({ ...zone, corners: zone.corners.map(flip) })),
    bounds: { ...sheet.bounds, left: 0 - right, right: 0 - left },
  };
}

const flip = ({ u, v }: Flat): Flat => ({ u: 0 - u, v });
