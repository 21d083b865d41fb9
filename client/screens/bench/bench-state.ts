import { POLYGON_MAX_POINTS, type Region, type UnitPoint } from '#domain/photo/region';
import {
  boxAround,
  boxBetween,
  clampPoint,
  closedPolygon,
  growRegion,
  isNear,
  moveRegion,
  pullHandle,
} from './geometry.ts';

/** Drawing on a photo as a reducer: what the hands do goes in, what is drawn comes out. */

export const TOOLS = ['look', 'rectangle', 'polygon', 'tap'] as const;
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
}

/** `before` is the work to go back to when the hand lets it be. */
type Gesture =
  | { readonly is: 'box'; readonly before: Work; readonly from: UnitPoint; readonly to: UnitPoint }
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

export type BenchEvent =
  | { type: 'choose-tool'; tool: Tool }
  /** `reach`: how near counts as the same place; `small`: the size of a tapped box. Both in unit lengths. */
  | { type: 'press'; at: UnitPoint; hit: Hit; reach: UnitPoint; small: UnitPoint }
  | { type: 'drag'; at: UnitPoint; reach: UnitPoint }
  | { type: 'release'; at: UnitPoint }
  | { type: 'break-off' }
  | { type: 'close-outline'; reach: UnitPoint }
  | { type: 'escape' }
  | { type: 'drop' }
  | { type: 'undo' }
  | { type: 'redo' }
  | { type: 'select'; tag: string | null }
  | { type: 'box-in-middle'; size: UnitPoint; centre: UnitPoint }
  | { type: 'nudge' | 'grow'; by: UnitPoint; tag: TagAtHand | null }
  | { type: 'change'; tag: TagAtHand }
  | { type: 'also-here'; region: Region }
  | { type: 'take-up'; draft: Draft }
  | { type: 'placed' }
  | { type: 'resume'; work: Work };

const NOTHING: Work = { draft: null, corners: [] };
const NO_REACH: UnitPoint = [0, 0];
const UNDO_STEPS = 100;

export const START: BenchState = {
  tool: 'look',
  work: NOTHING,
  past: [],
  future: [],
  gesture: null,
  selected: null,
  hover: null,
};

export function reduceBench(state: BenchState, event: BenchEvent): BenchState {
  switch (event.type) {
    case 'choose-tool':
      return { ...state, tool: event.tool, gesture: null, hover: null };
    case 'press':
      return press(state, event);
    case 'drag':
      return drag(state, event.at, event.reach);
    case 'release':
      return release(isUnderWay(state) ? drag(state, event.at, NO_REACH) : state);
    case 'break-off':
      return breakOff(state);
    case 'close-outline':
      return closeOutline(state, event.reach);
    case 'escape':
      return escape(state);
    case 'drop':
      return isEmpty(state.work) ? state : { ...step(state, NOTHING), gesture: null, hover: null };
    case 'undo':
      return undo(state);
    case 'redo':
      return redo(state);
    case 'select':
      return { ...state, selected: event.tag };
    case 'box-in-middle':
      return step(state, drawn(boxAround(event.centre, event.size)));
    case 'nudge':
      return alter(state, event.tag, (region) => moveRegion(region, event.by[0], event.by[1]));
    case 'grow':
      return alter(state, event.tag, (region) => growRegion(region, event.by[0], event.by[1]));
    case 'change':
      return {
        ...step(state, { draft: { region: event.tag.region, replaces: event.tag.id }, corners: [] }),
        selected: event.tag.id,
      };
    case 'also-here':
      return { ...step(state, drawn(event.region)), selected: null };
    case 'take-up':
      return { ...step(state, { draft: event.draft, corners: [] }), gesture: null, hover: null };
    case 'placed':
      return { ...state, work: NOTHING, past: [], future: [], gesture: null, hover: null };
    case 'resume':
      return { ...state, work: event.work };
  }
}

export function isEmpty(work: Work): boolean {
  return work.draft === null && work.corners.length === 0;
}

/** What the box that is being dragged looks like right now. */
export function boxInHand({ gesture }: BenchState): Region | null {
  return gesture?.is === 'box' ? boxBetween(gesture.from, gesture.to) : null;
}

const drawn = (region: Region): Work => ({ draft: { region, replaces: null }, corners: [] });

/** A new piece of work that undo can take back. */
function step(state: BenchState, work: Work): BenchState {
  return { ...state, work, past: [...state.past, state.work].slice(-UNDO_STEPS), future: [] };
}

function press(state: BenchState, event: Extract<BenchEvent, { type: 'press' }>): BenchState {
  const { hit } = event;
  const at = clampPoint(event.at);
  const before = state.work;
  const { draft } = before;
  if (draft && hit.on === 'handle')
    return { ...state, gesture: { is: 'pull', before, handle: hit.handle, start: draft, moved: false } };
  if (draft && hit.on === 'draft')
    return { ...state, gesture: { is: 'move', before, from: at, start: draft, moved: false } };
  switch (state.tool) {
    case 'look':
      return hit.on === 'tag' ? takeTag(state, hit.tag, at) : { ...state, selected: null };
    case 'rectangle':
      return { ...state, gesture: { is: 'box', before, from: at, to: at } };
    case 'polygon':
      return pressCorner(state, at, event.reach);
    case 'tap':
      return step(state, drawn(boxAround(at, event.small)));
  }
}

/** The first press chooses a tag; only a chosen one can be dragged, or every slip would move a region. */
function takeTag(state: BenchState, tag: TagAtHand, at: UnitPoint): BenchState {
  if (state.selected !== tag.id || state.work.draft) return { ...state, selected: tag.id };
  const start: Draft = { region: tag.region, replaces: tag.id };
  return { ...state, gesture: { is: 'move', before: state.work, from: at, start, moved: false } };
}

function pressCorner(state: BenchState, at: UnitPoint, reach: UnitPoint): BenchState {
  const { corners } = state.work;
  const first = corners[0];
  if (first && isNear(first, at, reach)) return closeOutline(state, reach);
  if (corners.length >= POLYGON_MAX_POINTS) return state;
  return { ...step(state, { draft: null, corners: [...corners, at] }), hover: at };
}

function drag(state: BenchState, to: UnitPoint, reach: UnitPoint): BenchState {
  const at = clampPoint(to);
  const { gesture } = state;
  if (!gesture) return state.work.corners.length > 0 ? { ...state, hover: at } : state;
  if (gesture.is === 'box') return { ...state, gesture: { ...gesture, to: at } };
  if (gesture.is === 'pull')
    return reshape(state, gesture, pullHandle(gesture.start.region, gesture.handle, at));
  // A hand that trembles does not move anything.
  if (!gesture.moved && isNear(gesture.from, at, reach)) return state;
  const { from, start } = gesture;
  return reshape(state, gesture, moveRegion(start.region, at[0] - from[0], at[1] - from[1]));
}

function reshape(state: BenchState, gesture: Exclude<Gesture, { is: 'box' }>, region: Region): BenchState {
  const draft: Draft = { ...gesture.start, region };
  return { ...state, gesture: { ...gesture, moved: true }, work: { draft, corners: [] } };
}

function isUnderWay({ gesture }: BenchState): boolean {
  return gesture !== null && (gesture.is === 'box' || gesture.moved);
}

function release(state: BenchState): BenchState {
  const { gesture } = state;
  if (!gesture) return state;
  const rest = { ...state, gesture: null };
  if (!isUnderWay(state)) return rest;
  if (gesture.is !== 'box') return step({ ...rest, work: gesture.before }, state.work);
  const region = boxInHand(state);
  return region ? step(rest, drawn(region)) : rest;
}

function breakOff(state: BenchState): BenchState {
  return state.gesture ? { ...state, gesture: null, work: state.gesture.before } : state;
}

function closeOutline(state: BenchState, reach: UnitPoint): BenchState {
  const region = closedPolygon(state.work.corners, reach);
  return region ? { ...step(state, drawn(region)), hover: null } : state;
}

/** One thing at a time, the newest first: the hand's movement, the drawing, the choice, the tool. */
function escape(state: BenchState): BenchState {
  if (state.gesture) return breakOff(state);
  if (!isEmpty(state.work)) return { ...step(state, NOTHING), hover: null };
  if (state.selected !== null) return { ...state, selected: null };
  return { ...state, tool: 'look' };
}

function undo(state: BenchState): BenchState {
  const before = state.past.at(-1);
  if (!before || state.gesture) return state;
  const { work, future } = state;
  return { ...state, work: before, past: state.past.slice(0, -1), future: [work, ...future], hover: null };
}

function redo(state: BenchState): BenchState {
  const [after, ...future] = state.future;
  if (!after || state.gesture) return state;
  return { ...state, work: after, past: [...state.past, state.work], future, hover: null };
}

/** Changes the drawing, or without one begins a change of the tag's region. */
function alter(state: BenchState, tag: TagAtHand | null, how: (region: Region) => Region): BenchState {
  const draft = state.work.draft ?? (tag ? { region: tag.region, replaces: tag.id } : null);
  if (!draft || state.gesture) return state;
  return step(state, { draft: { ...draft, region: how(draft.region) }, corners: [] });
}
