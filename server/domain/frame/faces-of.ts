import type { SetOut, UsualLie } from './set-out.ts';

/** Of a level member: heights of its underside and its top above its level or the datum, in mm. */
export interface Faces {
  readonly underside: number;
  readonly top: number;
}

/**
 * What base and top mean of a piece that lies: the lower and the upper face of its section, as timber
 * lists give them in 下端 and 上端; of what stands or slopes they are its ends. Common practice. null
 * where they are not both stated, are one height, or are no faces.
 */
export function facesOf({ to, base, top }: SetOut, { lies }: Pick<UsualLie, 'lies'>): Faces | null {
  if (lies !== 'level' || to.trim() === '') return null;
  return base === null || top === null || top <= base ? null : { underside: base, top };
}

/** Planing and the rounding of a list together take less off a section. Common practice. */
const SECTION_SLACK_MM = 30;
/** No sawn beam of a house is deeper. Common practice. */
const DEEPEST_MM = 1000;

/** Whether these can be the faces of one piece: by its stated depth, else by what beams there are. */
export function isPlausibleDepth({ underside, top }: Faces, depth: number | null): boolean {
  const between = top - underside;
  return depth === null ? between <= DEEPEST_MM : Math.abs(between - depth) <= SECTION_SLACK_MM;
}
