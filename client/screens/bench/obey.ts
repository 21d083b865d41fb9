import type { TagAtHand } from './bench-model.ts';
import type { BenchTag } from './bench-tags.ts';
import type { KeyOrder } from './bench-keys.ts';
import type { DeskStore } from './desk-store.ts';
import { boxInView } from './box-in-view.ts';
import type { Viewer } from './viewer.ts';

/** What the keys take hold of. */
export interface BenchHands {
  readonly store: DeskStore;
  readonly viewer: () => Viewer | null;
  readonly tallness: number;
  readonly focusOn: (selector: string) => void;
  readonly toWords: () => void;
  readonly onWithdraw: (tag: BenchTag) => void;
  readonly turn: (to: 'previous' | 'next') => void;
  /** To the sharpest of those that show nearly the same. */
  readonly toSharpest: () => void;
  readonly goBack: (which: 'undo' | 'redo') => void;
  /** Writes the words of the last tag to the drawing. */
  readonly asLast: () => void;
}

const DRAFT = '[data-hit=draft]';
export const PICTURE = '.bench-stage';
/** Where arrows and Enter have a meaning of their own. */
const HAS_ARROWS = '[role=radiogroup], [role=listbox], [role=combobox]';
const HAS_ENTER = 'a, button, summary, label, [role=button]';
/** Widths of a step by which the arrows move the picture. */
export const PAN = 8;

/** Does what a key asked for; false where it means nothing here, so that the browser may have it. */
export function obey(order: KeyOrder, hands: BenchHands, target: Element): boolean {
  const { store, viewer } = hands;
  switch (order.do) {
    case 'tool':
      store.tell({ type: 'choose-tool', tool: order.tool });
      return true;
    case 'stage':
      store.tell({ type: 'write', entry: { stage: order.stage } });
      return true;
    case 'nudge':
    case 'grow':
      return target.closest(HAS_ARROWS) === null && moveBy(order, hands, target);
    case 'box-in-middle':
      store.tell({ type: 'box-in-middle', ...boxInView(viewer(), hands.tallness) });
      hands.focusOn(DRAFT);
      return true;
    case 'zoom':
      viewer()?.zoom(order.by);
      return true;
    case 'turn':
      hands.turn(order.to);
      return true;
    case 'sharpest':
      hands.toSharpest();
      return true;
    case 'undo':
    case 'redo':
      hands.goBack(order.do);
      return true;
    case 'escape':
      store.tell({ type: 'escape' });
      return true;
    case 'halve':
      return halve(hands);
    case 'same':
      if (!store.get().bench.work.draft) return false;
      hands.asLast();
      hands.toWords();
      return true;
    case 'remove':
      return remove(hands);
    case 'enter':
      return (target.closest(PICTURE) !== null || target.closest(HAS_ENTER) === null) && enter(hands);
  }
}

function chosenTag({ store }: BenchHands): BenchTag | undefined {
  const tag = store.tag(store.get().bench.selected ?? '');
  return tag?.state === 'standing' ? tag : undefined;
}

type Moving = Extract<KeyOrder, { do: 'nudge' | 'grow' }>;

/**
 * The drawing if there is one, else the chosen tag, else the picture. Away from the picture only what is
 * meant beyond doubt, and the focus stays there: arrows also scroll the page.
 */
function moveBy(order: Moving, hands: BenchHands, target: Element): boolean {
  const { store, viewer } = hands;
  const isInPicture = target.closest(PICTURE) !== null;
  const isAtTag = isInPicture || target.closest('.bench-row-selected') !== null;
  const tag: TagAtHand | null = (isAtTag ? chosenTag(hands) : null) ?? null;
  if (store.get().bench.work.draft ?? tag) {
    store.tell({ type: order.do, by: order.by, tag });
    if (isInPicture) hands.focusOn(DRAFT);
    return true;
  }
  if (isInPicture && order.do === 'nudge') viewer()?.pan([order.by[0] * PAN, order.by[1] * PAN]);
  return isInPicture;
}

/** What is cut off comes to its words after the rest of it. */
function halve(hands: BenchHands): boolean {
  const { store, tallness } = hands;
  const tag = chosenTag(hands) ?? null;
  if (!store.get().bench.work.draft && !tag) return false;
  store.tell({ type: 'halve', tag, tallness });
  hands.toWords();
  return true;
}

function remove(hands: BenchHands): boolean {
  const { work } = hands.store.get().bench;
  const tag = chosenTag(hands);
  if (work.corners.length > 0) hands.store.tell({ type: 'undo' });
  else if (work.draft) hands.store.tell({ type: 'drop' });
  else if (tag) hands.onWithdraw(tag);
  else return false;
  return true;
}

/** Closes an outline; goes from a drawing, or from a tag that is to be changed, to its words. */
function enter(hands: BenchHands): boolean {
  const { store } = hands;
  const { work } = store.get().bench;
  const tag = chosenTag(hands);
  if (work.corners.length > 0) store.tell({ type: 'close-outline', reach: [0, 0] });
  else if (!work.draft && tag) store.tell({ type: 'change', tag });
  if (!store.get().bench.work.draft) return false;
  hands.toWords();
  return true;
}
