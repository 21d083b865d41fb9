/**
 * The space that a covering takes, as it is stated: by lines and crossings of the grid, heights in mm above
 * the house's datum.
 */
export type Zone =
  | {
      readonly shape: 'wall';
      /** The line it stands on, of which family, and the lines of the other between which it stands. */
      readonly family: 'first' | 'second';
      readonly line: string;
      readonly from: string;
      readonly to: string;
      readonly bottom: number;
      readonly top: number;
      /** Which side is covered, seen along the counting of the lines: the side of lower or higher positions. */
      readonly face: 'both' | 'lower' | 'higher';
      /** Between posts that stay visible (真壁), or over them (大壁). */
      readonly over: 'between-posts' | 'over-posts';
    }
  | {
      readonly shape: 'flat';
      /** Two opposite corners of a rectangle, or the corners of a convex polygon in their order. */
      readonly corners: readonly string[];
      readonly bottom: number;
      readonly top: number;
    }
  | {
      readonly shape: 'slope';
      /** Rises from `eaves` to `ridge`, lines of one family; between two lines of the other. */
      readonly family: 'first' | 'second';
      readonly eaves: string;
      readonly ridge: string;
      readonly from: string;
      readonly to: string;
      readonly eavesHeight: number;
      readonly ridgeHeight: number;
      /** How far below its surface it hides, square to the slope. */
      readonly below: number;
    };

export const ZONE_PROBLEMS = [
  'unknown-line',
  'unknown-corner',
  'no-width',
  'no-height',
  'too-few-corners',
  'not-convex',
] as const;

export interface ZoneProblem {
  readonly reason: (typeof ZONE_PROBLEMS)[number];
  readonly field: string;
}

/** How far from its line a wall reaches on either side: what it holds lies within a stout post's section. Common practice. */
export const WALL_REACH_MM = 150;
