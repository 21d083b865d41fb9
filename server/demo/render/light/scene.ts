import type { Mesh } from '../mesh/mesh.ts';
import type { BvhData } from './bvh-build.ts';
import type { SkyKind } from './sky.ts';

/** All that a picture needs but the camera; threads share it. */
export interface Scene {
  readonly mesh: Mesh;
  readonly bvh: BvhData;
  readonly sky: SkyKind;
}

export interface Settings {
  readonly samples: number;
  readonly seed: number;
  /** How often light that comes to what is seen has been thrown back before, at most. */
  readonly bounces: number;
}
