import { buildBvh } from '../../server/demo/render/light/bvh-build.ts';
import type { Scene } from '../../server/demo/render/light/scene.ts';
import type { SkyKind } from '../../server/demo/render/light/sky.ts';
import { MeshBuilder } from '../../server/demo/render/mesh/mesh-builder.ts';
import { addBox } from '../../server/demo/render/mesh/shapes.ts';
import type { OrientedBox } from '../../server/demo/render/oriented-box.ts';
import type { Random } from '../../server/demo/render/random.ts';
import { UP, unit, type Vec } from '../../server/demo/render/vec.ts';
import { cross } from '#domain/frame/clip';

export const EVEN: SkyKind = { kind: 'even', radiance: 1 };
export const DAY: SkyKind = { kind: 'day', sun: unit([-0.6, -0.5, 0.6]), clouds: 1 };

export function sceneOf(build: (mesh: MeshBuilder) => void, sky: SkyKind): Scene {
  const builder = new MeshBuilder();
  build(builder);
  const mesh = builder.finish();
  return { mesh, bvh: buildBvh(mesh), sky };
}

/** Each box is the member of its index. */
export function sceneOfBoxes(boxes: readonly OrientedBox[], sky: SkyKind = EVEN): Scene {
  return sceneOf((mesh) => {
    for (const [member, box] of boxes.entries()) addBox(mesh, box, { material: 'wood', member, tone: 0.4 });
  }, sky);
}

/** A piece of timber that lies anyhow. */
export function anyBox(random: Random, middle: Vec = [0, 0, 0]): OrientedBox {
  const along = unit([random.about(1), random.about(1), random.about(1)]);
  const across = unit(cross(UP, along));
  return {
    middle,
    axes: [along, across, cross(along, across)],
    half: [random.between(200, 1500), random.between(20, 120), random.between(20, 150)],
  };
}

export const any = (random: Random, reach: number): Vec => [
  random.about(reach),
  random.about(reach),
  random.about(reach),
];
