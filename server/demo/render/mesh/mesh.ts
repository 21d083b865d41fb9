import type { OrientedBox } from '../oriented-box.ts';
import type { MaterialName } from '../surface/materials.ts';

/** What a triangle belongs to. */
export interface Thing {
  readonly material: MaterialName;
  /** Index of the member that it is, or null for everything that has no mark. */
  readonly member?: number | null;
  /** 0 to 1: lets two things of one material differ. */
  readonly tone: number;
  /** Of what has edges that are to look broken. */
  readonly box?: OrientedBox;
}

/** No member, no box. */
export const NOBODY = -1;
export const BOX_NUMBERS = 12;

/**
 * Triangles in house coordinates, mm, in memory that threads share. Normals are those of a smooth surface; local
 * coordinates carry the grain of what they belong to.
 */
export interface Mesh {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly locals: Float32Array;
  /** Three vertices a triangle. */
  readonly corners: Uint32Array;
  /** The thing of each triangle. */
  readonly owners: Uint32Array;
  readonly materials: Uint8Array;
  readonly members: Int32Array;
  readonly tones: Float32Array;
  /** Which of the boxes each thing is, or NOBODY. */
  readonly boxOf: Int32Array;
  /** Twelve a box: its three directions and its half sizes. */
  readonly boxes: Float32Array;
}

export const triangleCount = (mesh: Mesh): number => mesh.owners.length;
