import { BOX_NUMBERS, NOBODY, type Mesh } from '../mesh/mesh.ts';
import { MATERIAL_LIST, type Material } from '../surface/materials.ts';
import type { Spot, Surface } from '../surface/surface.ts';
import type { BvhData } from './bvh-build.ts';
import type { Ray } from './ray.ts';

/** Edges look broken by so much. */
const EDGE_MM = 3;

/** Where a ray has met the mesh; one object is used again and again. */
export class Place {
  x = 0;
  y = 0;
  z = 0;
  /** Of the surface as it looks, and of the triangle as it is; both at the side the ray came from. */
  nx = 0;
  ny = 0;
  nz = 1;
  gx = 0;
  gy = 0;
  gz = 1;
  member = NOBODY;
  material: Material = MATERIAL_LIST[0]!;
  readonly spot: Spot = { lx: 0, ly: 0, lz: 0, x: 0, y: 0, z: 0, tone: 0, spread: 0 };
  private readonly mesh: Mesh;
  private readonly bvh: BvhData;

  constructor(mesh: Mesh, bvh: BvhData) {
    this.mesh = mesh;
    this.bvh = bvh;
  }

  /** Of a ray that has met something; `spreadPerMm` is the size of a pixel over its distance. */
  find(ray: Ray, spreadPerMm: number): void {
    const triangle = this.bvh.order[ray.met]!;
    this.locate(ray, spreadPerMm);
    this.own(triangle);
    this.turn(triangle, ray);
    this.faceTowards(ray);
  }

  private locate(ray: Ray, spreadPerMm: number): void {
    this.x = ray.ox + ray.dx * ray.far;
    this.y = ray.oy + ray.dy * ray.far;
    this.z = ray.oz + ray.dz * ray.far;
    const { spot } = this;
    spot.x = this.x / 1000;
    spot.y = this.y / 1000;
    spot.z = this.z / 1000;
    spot.spread = (ray.far * spreadPerMm) / 1000;
  }

  private own(triangle: number): void {
    const { mesh } = this;
    const thing = mesh.owners[triangle]!;
    this.member = mesh.members[thing]!;
    this.material = MATERIAL_LIST[mesh.materials[thing]!]!;
    this.spot.tone = mesh.tones[thing]!;
  }

  private turn(triangle: number, { u, v, met }: Ray): void {
    const { normals, locals, corners, owners, boxOf } = this.mesh;
    const a = 3 * corners[3 * triangle]!;
    const b = 3 * corners[3 * triangle + 1]!;
    const c = 3 * corners[3 * triangle + 2]!;
    const w = 1 - u - v;
    this.nx = normals[a]! * w + normals[b]! * u + normals[c]! * v;
    this.ny = normals[a + 1]! * w + normals[b + 1]! * u + normals[c + 1]! * v;
    this.nz = normals[a + 2]! * w + normals[b + 2]! * u + normals[c + 2]! * v;
    const lx = locals[a]! * w + locals[b]! * u + locals[c]! * v;
    const ly = locals[a + 1]! * w + locals[b + 1]! * u + locals[c + 1]! * v;
    const lz = locals[a + 2]! * w + locals[b + 2]! * u + locals[c + 2]! * v;
    this.spot.lx = lx / 1000;
    this.spot.ly = ly / 1000;
    this.spot.lz = lz / 1000;
    this.square(met);
    const box = boxOf[owners[triangle]!]!;
    if (box !== NOBODY) this.breakEdges(BOX_NUMBERS * box, [lx, ly, lz]);
    this.straighten();
  }

  private square(met: number): void {
    const t = this.bvh.triangles;
    const o = 9 * met;
    const x = t[o + 4]! * t[o + 8]! - t[o + 5]! * t[o + 7]!;
    const y = t[o + 5]! * t[o + 6]! - t[o + 3]! * t[o + 8]!;
    const z = t[o + 3]! * t[o + 7]! - t[o + 4]! * t[o + 6]!;
    const size = Math.sqrt(x * x + y * y + z * z) || 1;
    this.gx = x / size;
    this.gy = y / size;
    this.gz = z / size;
  }

  /** Towards the side beyond an edge, the more the nearer it is; the outline stays that of the box. */
  private breakEdges(at: number, local: readonly [number, number, number]): void {
    const boxes = this.mesh.boxes;
    for (let axis = 0; axis < 3; axis += 1) {
      const along = local[axis]!;
      const gap = boxes[at + 9 + axis]! - Math.abs(along);
      if (gap > EDGE_MM) continue;
      const [x, y, z] = [boxes[at + 3 * axis]!, boxes[at + 3 * axis + 1]!, boxes[at + 3 * axis + 2]!];
      if (Math.abs(x * this.gx + y * this.gy + z * this.gz) > 0.5) continue;
      const by = (along < 0 ? -1 : 1) * (1 - gap / EDGE_MM);
      this.nx += x * by;
      this.ny += y * by;
      this.nz += z * by;
    }
  }

  private faceTowards(ray: Ray): void {
    if (this.gx * ray.dx + this.gy * ray.dy + this.gz * ray.dz > 0) {
      this.gx = -this.gx;
      this.gy = -this.gy;
      this.gz = -this.gz;
    }
    if (this.nx * this.gx + this.ny * this.gy + this.nz * this.gz < 0) {
      this.nx = -this.nx;
      this.ny = -this.ny;
      this.nz = -this.nz;
    }
  }

  /** By the relief of its surface, but never to the back. */
  bend({ bendX, bendY, bendZ }: Surface): void {
    if (bendX === 0 && bendY === 0 && bendZ === 0) return;
    this.nx -= bendX;
    this.ny -= bendY;
    this.nz -= bendZ;
    this.straighten();
    if (this.nx * this.gx + this.ny * this.gy + this.nz * this.gz >= 0.05) return;
    this.nx = (this.nx + this.gx) / 2;
    this.ny = (this.ny + this.gy) / 2;
    this.nz = (this.nz + this.gz) / 2;
    this.straighten();
  }

  private straighten(): void {
    const size = Math.sqrt(this.nx * this.nx + this.ny * this.ny + this.nz * this.nz) || 1;
    this.nx /= size;
    this.ny /= size;
    this.nz /= size;
  }
}
