import { buildBvh } from '../light/bvh-build.ts';
import type { Scene } from '../light/scene.ts';
import type { SkyKind } from '../light/sky.ts';
import { MeshBuilder } from '../mesh/mesh-builder.ts';
import { Random, pairSeed } from '../random.ts';
import { addBackground } from './background.ts';
import { addBoards } from './boards.ts';
import { addClutter } from './clutter.ts';
import { addFrame } from './frame.ts';
import { addGround } from './ground.ts';
import type { HouseState } from './house-state.ts';
import type { Site } from './site.ts';
import { groundAt, type Slip } from './terrain.ts';
import { addWalls } from './walls.ts';

export interface SceneSettings {
  /** The same seed and state give the same scene. */
  readonly seed: number;
  readonly detail: number;
  readonly sky: SkyKind;
}

/** Everything that the pictures of one state of the house show. */
export function buildScene(state: HouseState, { seed, detail, sky }: SceneSettings): Scene {
  const mesh = new MeshBuilder();
  const slip = slipOf(state);
  const height = (x: number, y: number) => groundAt(x, y, slip);
  const parts: ((site: Site) => void)[] = [
    (site) => addFrame(site, state),
    (site) => addWalls(site, state),
    (site) => addBoards(site, state),
    (site) => addGround(site, slip),
    (site) => addClutter(site, state, height),
    addBackground,
  ];
  // Each part with chances of its own: one more peg in the frame moves no stone on the ground.
  for (const [i, add] of parts.entries()) add({ mesh, detail, random: new Random(pairSeed(seed, i)) });
  const finished = mesh.finish();
  return { mesh: finished, bvh: buildBvh(finished), sky };
}

/** Clear of the stones under the posts. */
const CLEAR_MM = 420;

/** In the last bay along the first lines. */
function slipOf({ reader }: HouseState): Slip {
  const { first, second } = reader.grid;
  const [left, right] = [first.lines.at(-2)?.at ?? 0, first.lines.at(-1)?.at ?? 0];
  return { left: left + CLEAR_MM, right: right - CLEAR_MM, end: (second.lines.at(-1)?.at ?? 0) - 1300 };
}
