import type { Mesh } from '../mesh/mesh.ts';
import { sharedFloats, sharedInts, sharedWholes } from '../mesh/shared-memory.ts';

/**
 * A tree of boxes about triangles. Node i has six bounds (low x, y, z, high x, y, z) and two links: where its two
 * children begin and 0, or where its triangles begin and how many they are.
 */
export interface BvhData {
  readonly bounds: Float32Array;
  readonly links: Int32Array;
  /** The triangles in the order of the tree: first corner and the two sides from it, nine numbers each. */
  readonly triangles: Float32Array;
  /** Which of the mesh each of them is. */
  readonly order: Uint32Array;
}

const BINS = 16;
const LEAF = 4;
/** What a step down the tree costs, in intersections. */
const STEP = 1.2;

/** Binned by the surface area heuristic: I. Wald, "On fast construction of SAH-based BVHs", IRT 2007. */
export function buildBvh(mesh: Mesh): BvhData {
  return new Builder(mesh).build();
}

interface Split {
  readonly axis: number;
  readonly bin: number;
  readonly cost: number;
}

class Builder {
  private readonly count: number;
  private readonly mesh: Mesh;
  /** Six a triangle. */
  private readonly boxes: Float32Array;
  private readonly order: Uint32Array;
  private readonly bounds: Float32Array;
  private readonly links: Int32Array;
  private nodes = 1;
  // Used again at each node: there are as many nodes as triangles.
  private readonly bins = new Float32Array(6 * BINS);
  private readonly counts = new Int32Array(BINS);

  constructor(mesh: Mesh) {
    this.mesh = mesh;
    this.count = mesh.owners.length;
    this.boxes = boxesOf(mesh);
    this.order = sharedWholes(this.count);
    for (let i = 0; i < this.count; i += 1) this.order[i] = i;
    this.bounds = sharedFloats(12 * this.count + 6);
    this.links = sharedInts(4 * this.count + 2);
  }

  build(): BvhData {
    const open: [node: number, from: number, to: number][] = [[0, 0, this.count]];
    for (let next = open.pop(); next; next = open.pop()) {
      const [node, from, to] = next;
      this.bound(node, from, to);
      const middle = this.divide(node, from, to);
      if (middle === null) this.links.set([from, to - from], 2 * node);
      else {
        const first = this.nodes;
        this.nodes += 2;
        this.links.set([first, 0], 2 * node);
        open.push([first, from, middle], [first + 1, middle, to]);
      }
    }
    return {
      bounds: this.bounds.subarray(0, 6 * this.nodes),
      links: this.links.subarray(0, 2 * this.nodes),
      triangles: this.triangles(),
      order: this.order,
    };
  }

  private bound(node: number, from: number, to: number): void {
    this.bounds.set(EMPTY, 6 * node);
    for (let i = from; i < to; i += 1) widen(this.bounds, 6 * node, this.boxes, 6 * this.order[i]!);
  }

  /** Puts the triangles of one side before those of the other; null where one leaf is as good. */
  private divide(node: number, from: number, to: number): number | null {
    const count = to - from;
    if (count <= 2) return null;
    const middles = this.middles(from, to);
    const best = [0, 1, 2]
      .map((axis) => this.bestSplit(axis, from, to, middles))
      .reduce((a, b) => (b.cost < a.cost ? b : a));
    if (best.cost === Infinity) return count <= LEAF * 4 ? null : from + (count >> 1);
    const whole = areaOf(this.bounds, 6 * node);
    if (count <= LEAF && best.cost + STEP * whole >= count * whole) return null;
    return this.partition(best, from, to, middles);
  }

  private middles(from: number, to: number): Float64Array {
    const range = Float64Array.of(Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity);
    for (let i = from; i < to; i += 1)
      for (let axis = 0; axis < 3; axis += 1) {
        const middle = this.middle(this.order[i]!, axis);
        if (middle < range[axis]!) range[axis] = middle;
        if (middle > range[axis + 3]!) range[axis + 3] = middle;
      }
    return range;
  }

  private middle(triangle: number, axis: number): number {
    return (this.boxes[6 * triangle + axis]! + this.boxes[6 * triangle + axis + 3]!) / 2;
  }

  private binOf(triangle: number, axis: number, range: Float64Array): number {
    const share = (this.middle(triangle, axis) - range[axis]!) / (range[axis + 3]! - range[axis]!);
    return Math.min(BINS - 1, Math.floor(share * BINS));
  }

  private bestSplit(axis: number, from: number, to: number, range: Float64Array): Split {
    if (range[axis + 3]! - range[axis]! < 1e-6) return { axis, bin: 0, cost: Infinity };
    const { bins, counts } = this;
    bins.set(EMPTY_BINS);
    counts.fill(0);
    for (let i = from; i < to; i += 1) {
      const triangle = this.order[i]!;
      const bin = this.binOf(triangle, axis, range);
      counts[bin]! += 1;
      widen(bins, 6 * bin, this.boxes, 6 * triangle);
    }
    return cheapest(axis, bins, counts);
  }

  private partition({ axis, bin }: Split, from: number, to: number, range: Float64Array): number {
    let [low, high] = [from, to - 1];
    while (low <= high) {
      const triangle = this.order[low]!;
      if (this.binOf(triangle, axis, range) <= bin) low += 1;
      else {
        this.order[low] = this.order[high]!;
        this.order[high] = triangle;
        high -= 1;
      }
    }
    return low;
  }

  private triangles(): Float32Array {
    const { positions, corners } = this.mesh;
    const out = sharedFloats(9 * this.count);
    for (let i = 0; i < this.count; i += 1) {
      const [a, b, c] = [0, 1, 2].map((k) => 3 * corners[3 * this.order[i]! + k]!) as [
        number,
        number,
        number,
      ];
      for (let axis = 0; axis < 3; axis += 1) {
        const origin = positions[a + axis]!;
        out[9 * i + axis] = origin;
        out[9 * i + 3 + axis] = positions[b + axis]! - origin;
        out[9 * i + 6 + axis] = positions[c + axis]! - origin;
      }
    }
    return out;
  }
}

function boxesOf({ positions, corners, owners }: Mesh): Float32Array {
  const boxes = new Float32Array(6 * owners.length);
  for (let i = 0; i < owners.length; i += 1)
    for (let axis = 0; axis < 3; axis += 1) {
      const a = positions[3 * corners[3 * i]! + axis]!;
      const b = positions[3 * corners[3 * i + 1]! + axis]!;
      const c = positions[3 * corners[3 * i + 2]! + axis]!;
      boxes[6 * i + axis] = Math.min(a, b, c);
      boxes[6 * i + 3 + axis] = Math.max(a, b, c);
    }
  return boxes;
}

/** Of nothing: any triangle widens it. */
const EMPTY = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
const EMPTY_BINS = Array.from({ length: BINS }, () => EMPTY).flat();

function widen(into: Float32Array, at: number, by: Float32Array, from: number): void {
  for (let axis = 0; axis < 3; axis += 1) {
    if (by[from + axis]! < into[at + axis]!) into[at + axis] = by[from + axis]!;
    if (by[from + axis + 3]! > into[at + axis + 3]!) into[at + axis + 3] = by[from + axis + 3]!;
  }
}

/** Half of a box's surface. */
function areaOf(boxes: Float32Array, at: number): number {
  const x = boxes[at + 3]! - boxes[at]!;
  const y = boxes[at + 4]! - boxes[at + 1]!;
  const z = boxes[at + 5]! - boxes[at + 2]!;
  return x * y + y * z + z * x;
}

const behind = new Float64Array(BINS);
const side = new Float32Array(6);

/** The bin after which to cut: the sum of both sides' count times area is least. */
function cheapest(axis: number, bins: Float32Array, counts: Int32Array): Split {
  side.set(EMPTY);
  let count = 0;
  for (let bin = BINS - 1; bin > 0; bin -= 1) {
    widen(side, 0, bins, 6 * bin);
    count += counts[bin]!;
    behind[bin] = count === 0 ? Infinity : count * areaOf(side, 0);
  }
  side.set(EMPTY);
  count = 0;
  let best: Split = { axis, bin: 0, cost: Infinity };
  for (let bin = 0; bin < BINS - 1; bin += 1) {
    widen(side, 0, bins, 6 * bin);
    count += counts[bin]!;
    const cost = count === 0 ? Infinity : count * areaOf(side, 0) + behind[bin + 1]!;
    if (cost < best.cost) best = { axis, bin, cost };
  }
  return best;
}
