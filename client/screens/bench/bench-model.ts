import type { Region, UnitPoint } from '#domain/photo/region';

/** What lies on the bench: the tool in the hand, the drawing, and the hand's movement. */

export const TOOLS = ['look', 'rectangle', 'polygon', 'tap', 'split'] as const;
export type Tool = (typeof TOOLS)[number];

/** A region that is not on record yet; `replaces` names the tag whose region it changes. */
export interface Draft {
  readonly region: Region;
  readonly replaces: string | null;
}

/** What undo and redo go back and forth over. */
export interface Work {
  readonly draft: Draft | null;
  readonly corners: readonly UnitPoint[];
  /** Further regions, cut off the drawing: each comes to its words once the one before is placed. */
  readonly waiting: readonly Region[];
}

/** `before` is the work to go back to when the hand lets it be. */
export type Gesture =
  | { readonly is: 'box'; readonly before: Work; readonly from: UnitPoint; readonly to: UnitPoint }
  | { readonly is: 'cut'; readonly before: Work; readonly from: UnitPoint; readonly to: UnitPoint }
  | {
      readonly is: 'move';
      readonly before: Work;
      readonly from: UnitPoint;
      readonly start: Draft;
      readonly moved: boolean;
    }
  | {
      readonly is: 'pull';
      readonly before: Work;
      readonly handle: number;
      readonly start: Draft;
      readonly moved: boolean;
    };

export interface BenchState {
  readonly tool: Tool;
  readonly work: Work;
  readonly past: readonly Work[];
  readonly future: readonly Work[];
  readonly gesture: Gesture | null;
  /** The tag that is looked at. */
  readonly selected: string | null;
  /** Where the pointer is while an outline is drawn. */
  readonly hover: UnitPoint | null;
}

export interface TagAtHand {
  readonly id: string;
  readonly region: Region;
}

/** What lies under the pointer. */
export type Hit =
  | { readonly on: 'nothing' }
  | { readonly on: 'draft' }
  | { readonly on: 'handle'; readonly handle: number }
  | { readonly on: 'tag'; readonly tag: TagAtHand };

export interface Press {
  readonly at: UnitPoint;
  readonly hit: Hit;
  /** How near counts as the same place; `small`: the size of a tapped box. Both in unit lengths. */
  readonly reach: UnitPoint;
  readonly small: UnitPoint;
}

export const NOTHING: Work = { draft: null, corners: [], waiting: [] };
const UNDO_STEPS = 100;

export function isEmpty({ draft, corners, waiting }: Work): boolean {
  return draft === null && corners.length === 0 && waiting.length === 0;
}

/** A fresh region on the bench; what waits still waits. */
export function drawn(region: Region, { waiting }: Work): Work {
  return { draft: { region, replaces: null }, corners: [], waiting };
}

/** A new piece of work that undo can take back. */
export function step(state: BenchState, work: Work): BenchState {
  return { ...state, work, past: [...state.past, state.work].slice(-UNDO_STEPS), future: [] };
}
