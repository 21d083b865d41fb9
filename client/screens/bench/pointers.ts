import type { UnitPoint } from '#domain/photo/region';
import type { BenchState, Hit, TagAtHand, Work } from './bench-model.ts';
import type { BenchEvent } from './bench-state.ts';
import { cutInHand } from './gestures.ts';
import type { Loupe } from './loupe.ts';
import type { Viewer } from './viewer.ts';

export interface PointerParts {
  readonly viewer: Viewer;
  readonly tallness: number;
  /** The state at the moment: it changes under the hand. */
  readonly bench: () => BenchState;
  readonly tagAt: (id: string) => Extract<Hit, { on: 'tag' }> | null;
  /** The tag that a line being cut goes through. */
  readonly crossed: (line: readonly [UnitPoint, UnitPoint]) => TagAtHand | null;
  readonly act: (event: BenchEvent) => void;
  /** The size of the last box on this photo: members of a row look alike. */
  readonly lastSize: () => UnitPoint | null;
  /** Nothing is drawn on a picture that nobody sees. */
  readonly isReady: () => boolean;
  /** Shows what lies under a finger. */
  readonly loupe: Loupe;
  /** Whether a press can take hold of a region; else the picture is all that moves. */
  readonly mayDraw: boolean;
  /** A drawing was finished by hand: what it shows can be typed at once. */
  readonly onDrawn: () => void;
}

const REACH = { mouse: 8, touch: 20 };
const TAP_SIZE = 56;

/**
 * Turns what mouse, pen and fingers do on the picture into events of the bench. What the bench takes is
 * kept from the viewer below; all else (dragging the picture, wheel, pinch while looking) goes through.
 */
export function listenToPointers(layer: HTMLElement, parts: PointerParts): () => void {
  const fingers = new Map<number, readonly [number, number]>();
  /** A finger's press on a drawing tool that acts at once waits until it is clear that no second one comes. */
  let held: PointerEvent | null = null;
  /** What lay there when the hand came down. */
  let before: Work | null = null;

  const units = (pixels: number): UnitPoint => {
    const { width } = parts.viewer.view();
    return [pixels / width, pixels / (width * parts.tallness)];
  };
  const at = (event: MouseEvent) => parts.viewer.toUnit(event.clientX, event.clientY);
  const reach = (event: PointerEvent) => units(event.pointerType === 'mouse' ? REACH.mouse : REACH.touch);

  const press = (event: PointerEvent, hit: Hit) =>
    parts.act({
      type: 'press',
      at: at(event),
      hit,
      reach: reach(event),
      small: parts.lastSize() ?? units(TAP_SIZE),
    });
  const look = (event: PointerEvent) => {
    if (event.pointerType !== 'mouse' && (held || parts.bench().gesture))
      parts.loupe.show(event.clientX, event.clientY);
  };

  const down = (event: PointerEvent) => {
    if ((event.pointerType === 'mouse' && event.button !== 0) || !parts.isReady()) return;
    const bench = parts.bench();
    const hit = hitOf(event.target, parts);
    if (!parts.mayDraw || isForViewer(bench, hit)) {
      press(event, hit);
      return;
    }
    event.stopPropagation();
    layer.setPointerCapture(event.pointerId);
    if (event.pointerType !== 'mouse') fingers.set(event.pointerId, [event.clientX, event.clientY]);
    if (fingers.size > 1) {
      held = null;
      parts.loupe.hide();
      parts.act({ type: 'break-off' });
      return;
    }
    before = bench.work;
    const waits = event.pointerType !== 'mouse' && (bench.tool === 'polygon' || bench.tool === 'tap');
    if (waits && hit.on !== 'draft' && hit.on !== 'handle') held = event;
    else press(event, hit);
    look(event);
  };

  const move = (event: PointerEvent) => {
    const before = fingers.get(event.pointerId);
    if (before) fingers.set(event.pointerId, [event.clientX, event.clientY]);
    if (fingers.size > 1 && before) {
      event.stopPropagation();
      pinch(parts.viewer, fingers, event.pointerId, before);
      return;
    }
    const { gesture, work } = parts.bench();
    if (gesture) event.stopPropagation();
    if (gesture || (work.corners.length > 0 && event.pointerType === 'mouse'))
      parts.act({ type: 'drag', at: at(event), reach: reach(event) });
    look(event);
  };

  const up = (event: PointerEvent) => {
    const pinching = fingers.size > 1;
    const isOurs = fingers.delete(event.pointerId) || parts.bench().gesture !== null;
    // Where the finger leaves: until then the loupe shows it where that will be.
    if (held?.pointerId === event.pointerId) press(event, { on: 'nothing' });
    held = null;
    parts.loupe.hide();
    if (!isOurs && event.pointerType !== 'mouse') return;
    const line = cutInHand(parts.bench());
    const crossed = line && parts.crossed([line[0], at(event)]);
    if (!pinching) parts.act({ type: 'release', at: at(event), crossed });
    if (isNewIn(parts.bench().work, before)) parts.onDrawn();
    before = parts.bench().work;
  };

  const cancel = (event: PointerEvent) => {
    fingers.delete(event.pointerId);
    held = null;
    parts.loupe.hide();
    parts.act({ type: 'break-off' });
  };

  const doublePress = (event: MouseEvent) => {
    if (parts.bench().tool !== 'polygon') return;
    event.stopPropagation();
    parts.act({ type: 'close-outline', reach: units(REACH.mouse) });
    if (parts.bench().work.draft) parts.onDrawn();
  };

  const listening = new AbortController();
  const { signal } = listening;
  layer.addEventListener('pointerdown', down, { signal });
  layer.addEventListener('pointermove', move, { signal });
  layer.addEventListener('pointerup', up, { signal });
  layer.addEventListener('pointercancel', cancel, { signal });
  layer.addEventListener('dblclick', doublePress, { signal });
  return () => listening.abort();
}

/** A first drawing, or one that was split: there is something to say. */
function isNewIn({ draft, waiting }: Work, before: Work | null): boolean {
  return draft !== null && (!before?.draft || waiting.length > before.waiting.length);
}

/** While looking, a press on nothing or on a tag that is not chosen yet moves the picture as well. */
function isForViewer({ tool, selected, work }: BenchState, hit: Hit): boolean {
  if (tool !== 'look') return false;
  if (hit.on === 'tag') return hit.tag.id !== selected || work.draft !== null;
  return hit.on === 'nothing';
}

function hitOf(target: EventTarget | null, { tagAt }: PointerParts): Hit {
  const name = target instanceof Element ? target.closest('[data-hit]')?.getAttribute('data-hit') : null;
  const [on, which = ''] = (name ?? '').split(':');
  if (on === 'draft') return { on };
  if (on === 'handle') return { on, handle: Number(which) };
  return (on === 'tag' ? tagAt(which) : null) ?? { on: 'nothing' };
}

/** One of two fingers has moved: zoom by the change of their distance, move with the middle between them. */
function pinch(
  viewer: Viewer,
  fingers: ReadonlyMap<number, readonly [number, number]>,
  moved: number,
  before: readonly [number, number],
): void {
  const now = fingers.get(moved);
  const other = [...fingers].find(([id]) => id !== moved)?.[1];
  if (!now || !other) return;
  const distance = (a: readonly [number, number]) => Math.hypot(a[0] - other[0], a[1] - other[1]);
  const factor = distance(now) / Math.max(1, distance(before));
  const middle = [(now[0] + other[0]) / 2, (now[1] + other[1]) / 2] as const;
  viewer.pinch(middle, factor, [(now[0] - before[0]) / 2, (now[1] - before[1]) / 2]);
}
