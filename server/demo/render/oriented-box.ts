import { memberBody } from '#domain/frame/member-body';
import type { Axis } from '#domain/frame/set-out';
import { add, addScaled, scale, type Vec } from './vec.ts';

/** A box by its middle, its three directions of length one, and half its size along each, mm. */
export interface OrientedBox {
  readonly middle: Vec;
  readonly axes: readonly [along: Vec, across: Vec, upward: Vec];
  readonly half: Vec;
}

/** A member as the frame's own geometry has it: the three slabs of its body. */
export function boxOfMember(axis: Axis): OrientedBox {
  const slabs = memberBody(axis);
  const sides = [0, 2, 4].map((i) => {
    const [behind, before] = [slabs[i]!, slabs[i + 1]!];
    return {
      normal: behind.normal,
      middle: (behind.limit - before.limit) / 2,
      half: (behind.limit + before.limit) / 2,
    };
  });
  const [along, across, upward] = [sides[0]!, sides[1]!, sides[2]!];
  const middle = sides.reduce<Vec>((sum, side) => addScaled(sum, side.normal, side.middle), [0, 0, 0]);
  return {
    middle,
    axes: [along.normal, across.normal, upward.normal],
    half: [along.half, across.half, upward.half],
  };
}

/** From local coordinates about the middle, mm. */
export function pointIn({ middle, axes }: OrientedBox, [x, y, z]: Vec): Vec {
  return add(middle, turned(axes, [x, y, z]));
}

export function turned(axes: OrientedBox['axes'], [x, y, z]: Vec): Vec {
  return addScaled(addScaled(scale(axes[0], x), axes[1], y), axes[2], z);
}

const SIGNS = [-1, 1] as const;

/** Corner i lies on the far side of axis 0, 1, 2 where bit 0, 1, 2 of i is set. */
export function cornersOf(box: OrientedBox): Vec[] {
  const [x, y, z] = box.half;
  return SIGNS.flatMap((k) => SIGNS.flatMap((j) => SIGNS.map((i) => pointIn(box, [i * x, j * y, k * z]))));
}
