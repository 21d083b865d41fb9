import type { Mm } from './length.ts';

/** One line of the grid (通り): its label as the crew writes it, and where it runs. */
export interface GridLine {
  readonly label: string;
  readonly at: Mm;
}

/** Lines that run beside each other; positions ascend in the order in which they are counted. */
export interface Family {
  readonly lines: readonly GridLine[];
}

/** A named height above the house's datum. */
export interface Level {
  readonly label: string;
  readonly height: Mm;
}

/**
 * The grid of a house. A mark names a line of `first`, then one of `second` (い三). x is the position among
 * the first lines, y among the second, z the height above the datum: house coordinates in mm. How both
 * are turned on a drawing is the crew's choice; commonly the first runs leftward, the second downward
 * (common practice: いの一 in the upper right).
 */
export interface Grid {
  readonly first: Family & { readonly runs: 'rightward' | 'leftward' };
  readonly second: Family & { readonly runs: 'upward' | 'downward' };
  readonly levels: readonly Level[];
}

export type FamilyName = 'first' | 'second';

/** A line of the grid, or the middle of the bay behind it (又い). */
export interface LinePlace {
  readonly label: string;
  readonly at: Mm;
}

/** Where a line of each family cross; `mark` is its one form. */
export interface Crossing {
  readonly x: Mm;
  readonly y: Mm;
  readonly mark: string;
}
