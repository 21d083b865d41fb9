import { pointOn } from '../axis-of.ts';
import type { FamilyName } from '../grid.ts';
import type { Axis, Point } from '../set-out.ts';
import type { Flat, Strip } from './flat.ts';
import { among, OTHER_FAMILY } from './views.ts';

/** What meets a plane nearly along it would be cut without end. */
const LEAST_COSINE = 0.25;

/** The cut of a member that goes through the plane of a line, as a strip lying level. */
export function elevationCut(
  axis: Axis,
  cutAt: number,
  family: FamilyName,
  view: (point: Point) => Flat,
): Strip {
  const { start, end } = axis;
  const through = Math.abs(among(family, end) - among(family, start));
  const aside = Math.abs(among(OTHER_FAMILY[family], end) - among(OTHER_FAMILY[family], start));
  const plan = Math.hypot(through, aside) || 1;
  const rise = Math.hypot(plan, end.z - start.z);
  const wide = axis.width / Math.max(LEAST_COSINE, through / plan);
  const high = axis.depth / Math.max(LEAST_COSINE, plan / rise);
  return levelStrip(view(pointOn(axis, cutAt)), wide, high);
}

export function levelStrip({ u, v }: Flat, wide: number, high: number): Strip {
  return { from: { u: u - wide / 2, v }, to: { u: u + wide / 2, v }, half: high / 2 };
}
