import type { Region, UnitPoint } from '#domain/photo/region';
import {
  NOTHING,
  drawn,
  isEmpty,
  step,
  type BenchState,
  type Draft,
  type Press,
  type TagAtHand,
  type Tool,
  type Work,
} from './bench-model.ts';
import { boxAround, growRegion, moveRegion } from './geometry.ts';
import { breakOff, closeOutline, drag, press, release, splitInto } from './gestures.ts';
import { halve } from './split-region.ts';

/** Drawing on a photo as a reducer: what the hands do goes in, what is drawn comes out. */

export type BenchEvent =
  | { type: 'choose-tool'; tool: Tool }
  | ({ type: 'press' } & Press)
  | { type: 'drag'; at: UnitPoint; reach: UnitPoint }
  | { type: 'release'; at: UnitPoint; crossed?: TagAtHand | null }
  | { type: 'break-off' }
  | { type: 'close-outline'; reach: UnitPoint }
  | { type: 'escape' }
  | { type: 'drop' }
  | { type: 'undo' }
  | { type: 'redo' }
  | { type: 'select'; tag: string | null }
  | { type: 'box-in-middle'; size: UnitPoint; centre: UnitPoint }
  | { type: 'nudge' | 'grow'; by: UnitPoint; tag: TagAtHand | null }
  /** Cuts the drawing, or the tag's region, in two across its longer side. */
  | { type: 'halve'; tag: TagAtHand | null; tallness: number }
  | { type: 'change'; tag: TagAtHand }
  | { type: 'also-here'; region: Region }
  | { type: 'take-up'; draft: Draft }
  | { type: 'placed' }
  | { type: 'resume'; work: Work };

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
      return release(state, event.at, event.crossed ?? null);
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
      return step(state, drawn(boxAround(event.centre, event.size), state.work));
    case 'nudge':
      return alter(state, event.tag, (region) => moveRegion(region, event.by[0], event.by[1]));
    case 'grow':
      return alter(state, event.tag, (region) => growRegion(region, event.by[0], event.by[1]));
    case 'halve':
      return halveRegion(state, event);
    case 'change': {
      const draft = { region: event.tag.region, replaces: event.tag.id };
      return { ...step(state, { ...NOTHING, draft }), selected: event.tag.id };
    }
    case 'also-here':
      return { ...step(state, drawn(event.region, NOTHING)), selected: null };
    case 'take-up':
      return { ...step(state, { ...NOTHING, draft: event.draft }), gesture: null, hover: null };
    case 'placed':
      return { ...state, work: nextInLine(state.work), past: [], future: [], gesture: null, hover: null };
    case 'resume':
      return { ...state, work: event.work };
  }
}

function nextInLine({ waiting: [region, ...waiting] }: Work): Work {
  return region ? drawn(region, { ...NOTHING, waiting }) : NOTHING;
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

const draftOf = ({ work }: BenchState, tag: TagAtHand | null): Draft | null =>
  work.draft ?? (tag && { region: tag.region, replaces: tag.id });

/** Changes the drawing, or without one begins a change of the tag's region. */
function alter(state: BenchState, tag: TagAtHand | null, how: (region: Region) => Region): BenchState {
  const draft = draftOf(state, tag);
  if (!draft || state.gesture) return state;
  const { waiting } = state.work;
  return step(state, { draft: { ...draft, region: how(draft.region) }, corners: [], waiting });
}

function halveRegion(
  state: BenchState,
  { tag, tallness }: Extract<BenchEvent, { type: 'halve' }>,
): BenchState {
  const draft = draftOf(state, tag);
  const pieces = draft && !state.gesture ? halve(draft.region, tallness) : null;
  return draft && pieces ? splitInto(state, draft, pieces) : state;
}
