import { RAISING_SHOTS } from './raising-shots.ts';
import { ROOF_SHOTS } from './roof-shots.ts';
import type { Shot } from './shot.ts';
import { WALL_SHOTS } from './wall-shots.ts';

/** In the order in which they were taken. */
export const SHOTS: readonly Shot[] = [...RAISING_SHOTS, ...ROOF_SHOTS, ...WALL_SHOTS];
