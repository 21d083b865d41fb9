import type { Vec } from '../vec.ts';
import type { Thing } from '../mesh/mesh.ts';
import type { MeshBuilder } from '../mesh/mesh-builder.ts';
import { addBox, stick } from '../mesh/shapes.ts';
import type { OrientedBox } from '../oriented-box.ts';
import type { Random } from '../random.ts';
import type { MaterialName } from '../surface/materials.ts';

/** Where a picture's things are put, and the chances by which they differ. */
export interface Site {
  readonly mesh: MeshBuilder;
  readonly random: Random;
  /** 1: as much as a picture of full size shows; a share of it for a small one. Members are never fewer. */
  readonly detail: number;
}

/** Something without a mark, of a tone of its own. */
export const some = ({ random }: Site, material: MaterialName): Thing => ({ material, tone: random.next() });

export function put(site: Site, box: OrientedBox, material: MaterialName): void {
  addBox(site.mesh, box, some(site, material));
}

export function putStick(
  site: Site,
  ends: readonly [Vec, Vec],
  section: readonly [number, number],
  material: MaterialName,
): void {
  put(site, stick(ends[0], ends[1], section), material);
}

/** So many times, or a share of it where the picture is small. */
export function often({ detail }: Site, count: number, act: (i: number) => void): void {
  for (let i = 0; i < Math.ceil(count * detail); i += 1) act(i);
}
