/** Fingers and mouse on a sheet, apart from what they do there: a tested reducer over pointers in pixels. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Hand {
  readonly down: ReadonlyMap<number, Spot>;
  /** Where the first came down; null once it was more than a press. */
  readonly pressed: Spot | null;
}

export type HandDeed =
  | { readonly kind: 'none' }
  | { readonly kind: 'move'; readonly dx: number; readonly dy: number }
  | { readonly kind: 'pinch'; readonly factor: number; readonly about: Spot }
  | { readonly kind: 'press'; readonly at: Spot };

export const EMPTY_HAND: Hand = { down: new Map(), pressed: null };
const NONE = { kind: 'none' } as const;
/** A hand in a glove is not still. */
const PRESS_PX = 8;

export function handDown({ down }: Hand, pointer: number, at: Spot): Hand {
  return { down: new Map([...down, [pointer, at]]), pressed: down.size === 0 ? at : null };
}

export function handMove(hand: Hand, pointer: number, at: Spot): [Hand, HandDeed] {
  const before = hand.down.get(pointer);
  if (!before) return [hand, NONE];
  const { pressed } = hand;
  if (pressed && Math.hypot(at.x - pressed.x, at.y - pressed.y) <= PRESS_PX) return [hand, NONE];
  const next: Hand = { down: new Map([...hand.down, [pointer, at]]), pressed: null };
  const other = [...hand.down].find(([id]) => id !== pointer)?.[1];
  if (!other) return [next, { kind: 'move', dx: at.x - before.x, dy: at.y - before.y }];
  const [wide, wider] = [apart(before, other), apart(at, other)];
  const factor = wide < 1 || wider < 1 ? 1 : wider / wide;
  return [next, { kind: 'pinch', factor, about: { x: (at.x + other.x) / 2, y: (at.y + other.y) / 2 } }];
}

export function handUp(hand: Hand, pointer: number): [Hand, HandDeed] {
  const down = new Map([...hand.down].filter(([id]) => id !== pointer));
  const at = hand.down.has(pointer) && down.size === 0 ? hand.pressed : null;
  return [{ down, pressed: null }, at ? { kind: 'press', at } : NONE];
}

const apart = (a: Spot, b: Spot) => Math.hypot(a.x - b.x, a.y - b.y);
