import type { BvhData } from './bvh-build.ts';
import type { Ray } from './ray.ts';

const DEEPEST = 128;
const FLAT = 1e-9;
/** Nearer together than this is at one place: faces of two pieces that are let into each other flush. */
const FLUSH_MM = 0.05;

/** Finds what a ray meets. Not for two threads at once: it keeps its place in the tree. */
export class Bvh {
  private readonly bounds: Float32Array;
  private readonly links: Int32Array;
  private readonly triangles: Float32Array;
  private readonly order: Uint32Array;
  private readonly waiting = new Int32Array(DEEPEST);
  private readonly distances = new Float64Array(DEEPEST);

  constructor({ bounds, links, triangles, order }: BvhData) {
    this.bounds = bounds;
    this.links = links;
    this.triangles = triangles;
    this.order = order;
  }

  /** The nearest triangle within ray.far; of those that lie flush the one that was added first. */
  nearest(ray: Ray): boolean {
    return this.search(ray, false);
  }

  /** Whether anything lies within ray.far. */
  blocked(ray: Ray): boolean {
    return this.search(ray, true);
  }

  private search(ray: Ray, anyWillDo: boolean): boolean {
    const { links, waiting, distances } = this;
    ray.met = -1;
    let depth = 0;
    let node = 0;
    for (;;) {
      const first = links[2 * node]!;
      const count = links[2 * node + 1]!;
      if (count > 0) {
        if (this.leaf(ray, first, first + count) && anyWillDo) return true;
      } else {
        const one = this.distanceTo(ray, 6 * first);
        const other = this.distanceTo(ray, 6 * first + 6);
        const isOneNearer = one <= other;
        const near = isOneNearer ? one : other;
        const far = isOneNearer ? other : one;
        if (far < Infinity) {
          waiting[depth] = isOneNearer ? first + 1 : first;
          distances[depth] = far;
          depth += 1;
        }
        if (near < Infinity) {
          node = isOneNearer ? first : first + 1;
          continue;
        }
      }
      do {
        if (depth === 0) return ray.met >= 0;
        depth -= 1;
      } while (distances[depth]! >= ray.far + FLUSH_MM);
      node = waiting[depth]!;
    }
  }

  /** To where the ray enters a box, or Infinity: slabs of T. Kay and J. Kajiya, SIGGRAPH 1986. */
  private distanceTo(ray: Ray, at: number): number {
    const bounds = this.bounds;
    const x0 = (bounds[at]! - ray.ox) * ray.ix;
    const x1 = (bounds[at + 3]! - ray.ox) * ray.ix;
    const y0 = (bounds[at + 1]! - ray.oy) * ray.iy;
    const y1 = (bounds[at + 4]! - ray.oy) * ray.iy;
    const z0 = (bounds[at + 2]! - ray.oz) * ray.iz;
    const z1 = (bounds[at + 5]! - ray.oz) * ray.iz;
    const enter = Math.max(Math.min(x0, x1), Math.min(y0, y1), Math.min(z0, z1));
    const leave = Math.min(Math.max(x0, x1), Math.max(y0, y1), Math.max(z0, z1));
    return leave >= enter && leave > 0 && enter < ray.far + FLUSH_MM ? enter : Infinity;
  }

  /** T. Möller and B. Trumbore, "Fast, minimum storage ray/triangle intersection", JGT 2 (1997). */
  private leaf(ray: Ray, from: number, to: number): boolean {
    const t = this.triangles;
    const { ox, oy, oz, dx, dy, dz } = ray;
    let found = false;
    for (let i = from; i < to; i += 1) {
      const o = 9 * i;
      const ax = t[o + 3]!;
      const ay = t[o + 4]!;
      const az = t[o + 5]!;
      const bx = t[o + 6]!;
      const by = t[o + 7]!;
      const bz = t[o + 8]!;
      const px = dy * bz - dz * by;
      const py = dz * bx - dx * bz;
      const pz = dx * by - dy * bx;
      const size = ax * px + ay * py + az * pz;
      if (size > -FLAT && size < FLAT) continue;
      const sx = ox - t[o]!;
      const sy = oy - t[o + 1]!;
      const sz = oz - t[o + 2]!;
      const u = (sx * px + sy * py + sz * pz) / size;
      if (u < 0 || u > 1) continue;
      const qx = sy * az - sz * ay;
      const qy = sz * ax - sx * az;
      const qz = sx * ay - sy * ax;
      const v = (dx * qx + dy * qy + dz * qz) / size;
      if (v < 0 || u + v > 1) continue;
      const far = (bx * qx + by * qy + bz * qz) / size;
      if (far <= 0 || !this.isBefore(ray, i, far)) continue;
      ray.far = far;
      ray.met = i;
      ray.u = u;
      ray.v = v;
      found = true;
    }
    return found;
  }

  private isBefore({ far: nearest, met }: Ray, triangle: number, far: number): boolean {
    if (met < 0 || Math.abs(far - nearest) > FLUSH_MM) return far < nearest;
    return this.order[triangle]! < this.order[met]!;
  }
}
