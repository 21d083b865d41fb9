import { cross, dot } from '#domain/frame/clip';
import { materialIndex } from '../surface/materials.ts';
import { sub, type Vec } from '../vec.ts';
import { BOX_NUMBERS, NOBODY, type Mesh, type Thing } from './mesh.ts';
import { share, sharedBytes, sharedFloats, sharedInts, sharedWholes } from './shared-memory.ts';

/** Collects triangles; whoever adds them says first to which thing they belong. */
export class MeshBuilder {
  private readonly positions: number[] = [];
  private readonly normals: number[] = [];
  private readonly locals: number[] = [];
  private readonly corners: number[] = [];
  private readonly owners: number[] = [];
  private readonly materials: number[] = [];
  private readonly members: number[] = [];
  private readonly tones: number[] = [];
  private readonly boxOf: number[] = [];
  private readonly boxes: number[] = [];

  begin({ material, member, tone, box }: Thing): void {
    this.materials.push(materialIndex(material));
    this.members.push(member ?? NOBODY);
    this.tones.push(tone);
    this.boxOf.push(box ? this.boxes.length / BOX_NUMBERS : NOBODY);
    if (box) this.boxes.push(...box.axes.flat(), ...box.half);
  }

  /** Its number, by which triangles name it. */
  vertex(position: Vec, normal: Vec, local: Vec): number {
    this.positions.push(position[0], position[1], position[2]);
    this.normals.push(normal[0], normal[1], normal[2]);
    this.locals.push(local[0], local[1], local[2]);
    return this.positions.length / 3 - 1;
  }

  triangle(a: number, b: number, c: number): void {
    this.corners.push(a, b, c);
    this.owners.push(this.materials.length - 1);
  }

  quad(a: number, b: number, c: number, d: number): void {
    this.triangle(a, b, c);
    this.triangle(a, c, d);
  }

  /** A flat piece with its own normal, at the side of `towards`. */
  flat(corners: readonly Vec[], locals: readonly Vec[], towards: Vec): void {
    const [a, b, c] = [corners[0]!, corners[1]!, corners[2]!];
    const across = cross(sub(b, a), sub(c, a));
    const normal: Vec = dot(across, towards) < 0 ? [-across[0], -across[1], -across[2]] : across;
    const size = Math.sqrt(dot(normal, normal)) || 1;
    const facing: Vec = [normal[0] / size, normal[1] / size, normal[2] / size];
    const numbers = corners.map((corner, i) => this.vertex(corner, facing, locals[i]!));
    for (let i = 2; i < numbers.length; i += 1) this.triangle(numbers[0]!, numbers[i - 1]!, numbers[i]!);
  }

  finish(): Mesh {
    return {
      positions: share(this.positions, sharedFloats),
      normals: share(this.normals, sharedFloats),
      locals: share(this.locals, sharedFloats),
      corners: share(this.corners, sharedWholes),
      owners: share(this.owners, sharedWholes),
      materials: share(this.materials, sharedBytes),
      members: share(this.members, sharedInts),
      tones: share(this.tones, sharedFloats),
      boxOf: share(this.boxOf, sharedInts),
      boxes: share(this.boxes, sharedFloats),
    };
  }
}
