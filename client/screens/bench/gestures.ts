import { POLYGON_MAX_POINTS, type Region, type UnitPoint } from '#domain/photo/region';
import {
  drawn,
  step,
  type BenchState,
  type Draft,
  type Gesture,
  type Press,
  type TagAtHand,
} from './bench-model.ts';
import {
  boxAround,
  boxBetween,
  clampPoint,
  closedPolygon,
  isNear,
  moveRegion,
  pullHandle,
} from './geometry.ts';
import { splitAlong } from './split-region.ts';

/** What a hand that presses, drags and lets go does to the bench. */

const NO_REACH: UnitPoint = [0, 0];

/** What the box that is being dragged looks like right now. */
export function boxInHand({ gesture }: BenchState): Region | null {
  return gesture?.is === 'box' ? boxBetween(gesture.from, gesture.to) : null;
}

/** The line along which a region is being split. */
export function cutInHand({ gesture }: BenchState): readonly [UnitPoint, UnitPoint] | null {
  return gesture?.is === 'cut' ? [gesture.from, gesture.to] : null;
}

export function press(state: BenchState, event: Press): BenchState {
  const { hit } = event;
  const at = clampPoint(event.at);
  const before = state.work;
  const { draft } = before;
  if (draft && hit.on === 'handle')
    return { ...state, gesture: { is: 'pull', before, handle: hit.handle, start: draft, moved: false } };
  if (draft && hit.on === 'draft' && state.tool !== 'split')
    return { ...state, gesture: { is: 'move', before, from: at, start: draft, moved: false } };
  switch (state.tool) {
    case 'look':
      return hit.on === 'tag' ? takeTag(state, hit.tag, at) : { ...state, selected: null };
    case 'rectangle':
      return { ...state, gesture: { is: 'box', before, from: at, to: at } };
    case 'split':
      return { ...state, gesture: { is: 'cut', before, from: at, to: at } };
    case 'polygon':
      return pressCorner(state, at, event.reach);
    case 'tap':
      return step(state, drawn(boxAround(at, event.small), before));
  }
}

/** The first press chooses a tag; only a chosen one can be dragged, or every slip would move a region. */
function takeTag(state: BenchState, tag: TagAtHand, at: UnitPoint): BenchState {
  if (state.selected !== tag.id || state.work.draft) return { ...state, selected: tag.id };
  const start: Draft = { region: tag.region, replaces: tag.id };
  return { ...state, gesture: { is: 'move', before: state.work, from: at, start, moved: false } };
}

function pressCorner(state: BenchState, at: UnitPoint, reach: UnitPoint): BenchState {
  const { corners, waiting } = state.work;
  const first = corners[0];
  if (first && isNear(first, at, reach)) return closeOutline(state, reach);
  if (corners.length >= POLYGON_MAX_POINTS) return state;
  return { ...step(state, { draft: null, corners: [...corners, at], waiting }), hover: at };
}

export function drag(state: BenchState, to: UnitPoint, reach: UnitPoint): BenchState {
  const at = clampPoint(to);
  const { gesture } = state;
  if (!gesture) return state.work.corners.length > 0 ? { ...state, hover: at } : state;
  if (gesture.is === 'box') return { ...state, gesture: { ...gesture, to: at } };
  if (gesture.is === 'cut') return { ...state, gesture: { ...gesture, to: at } };
  if (gesture.is === 'pull')
    return reshape(state, gesture, pullHandle(gesture.start.region, gesture.handle, at));
  // A hand that trembles does not move anything.
  if (!gesture.moved && isNear(gesture.from, at, reach)) return state;
  const { from, start } = gesture;
  return reshape(state, gesture, moveRegion(start.region, at[0] - from[0], at[1] - from[1]));
}

function reshape(
  state: BenchState,
  gesture: Extract<Gesture, { is: 'move' | 'pull' }>,
  region: Region,
): BenchState {
  const draft: Draft = { ...gesture.start, region };
  const { waiting } = state.work;
  return { ...state, gesture: { ...gesture, moved: true }, work: { draft, corners: [], waiting } };
}

function isUnderWay({ gesture }: BenchState): boolean {
  return gesture !== null && (gesture.is === 'box' || gesture.is === 'cut' || gesture.moved);
}

/** `crossed`: the tag that a line being cut goes through, where no drawing is to be cut. */
export function release(state: BenchState, at: UnitPoint, crossed: TagAtHand | null): BenchState {
  const { gesture } = state;
  if (!gesture) return state;
  if (!isUnderWay(state)) return { ...state, gesture: null };
  const moved = drag(state, at, NO_REACH);
  const rest = { ...moved, gesture: null };
  if (gesture.is === 'cut') return cut(rest, [gesture.from, clampPoint(at)], crossed);
  if (gesture.is !== 'box') return step({ ...rest, work: gesture.before }, moved.work);
  const region = boxInHand(moved);
  return region ? step(rest, drawn(region, state.work)) : rest;
}

function cut(
  state: BenchState,
  line: readonly [UnitPoint, UnitPoint],
  crossed: TagAtHand | null,
): BenchState {
  const draft = state.work.draft ?? (crossed && { region: crossed.region, replaces: crossed.id });
  const pieces = draft && splitAlong(draft.region, line);
  // A region is split once; then one goes on drawing.
  return pieces ? { ...splitInto(state, draft, pieces), tool: 'rectangle' } : state;
}

/** The first piece keeps what the whole was said to be; the other one comes to its words after it. */
export function splitInto(
  state: BenchState,
  { replaces }: Draft,
  [first, other]: readonly [Region, Region],
): BenchState {
  const work = { draft: { region: first, replaces }, corners: [], waiting: [other, ...state.work.waiting] };
  return { ...step(state, work), selected: replaces ?? state.selected };
}

export function breakOff(state: BenchState): BenchState {
  return state.gesture ? { ...state, gesture: null, work: state.gesture.before } : state;
}

export function closeOutline(state: BenchState, reach: UnitPoint): BenchState {
  const region = closedPolygon(state.work.corners, reach);
  return region ? { ...step(state, drawn(region, state.work)), hover: null } : state;
}
