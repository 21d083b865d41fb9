import { meets, unionOf, without, type Stretch } from './stretches.ts';

/** A covering over one stretch of a member: from which faces it hides it, and when. Instants compare as text. */
export interface Layer {
  readonly id: string;
  readonly face: 'both' | 'lower' | 'higher';
  /** null while it is open. */
  readonly closedAt: string | null;
  readonly plannedDay: string | null;
  readonly stretch: Stretch;
}

export interface HiddenSince {
  /** From when no face is open anywhere on what this layer hides: evidence ends there. null: one still is. */
  readonly since: string | null;
  /** Parts that other layers had hidden from all faces before this one hid them. */
  readonly before: readonly Stretch[];
  /** Where that is all of it: the layer that hid the last of it. */
  readonly by: string | null;
  /**
   * Of a layer on one face: when the other was covered along all of it, or, while it is not, the first day on
   * which some of that is planned.
   */
  readonly otherFace: { readonly closedAt: string | null; readonly plannedDay: string | null } | null;
}

const OTHER = { lower: 'higher', higher: 'lower' } as const;

interface Sealed {
  readonly at: string;
  readonly by: string;
}

/** A part of it over which the same other layers lie from end to end. */
interface Piece {
  readonly stretch: Stretch;
  readonly over: readonly Layer[];
  /** By them alone, where that was before this layer hid it. */
  readonly earlier: Sealed | null;
  readonly now: Sealed | null;
}

/**
 * When a stretch of a member went out of sight: a covered face leaves it to be seen from the other one. `others`
 * are the layers over the same member at the same place; what they have in common with it need not be all of it.
 */
export function hiddenSince(own: Layer, others: readonly Layer[]): HiddenSince {
  const near = others.filter(({ stretch }) => overlaps(stretch, own.stretch));
  if (near.length === 0) return alone(own);
  const pieces = piecesOf(own.stretch, near).map((stretch): Piece => {
    const over = near.filter((layer) => overlaps(layer.stretch, stretch));
    const earlier = sealing(over);
    const isBefore = earlier !== null && (own.closedAt === null || earlier.at < own.closedAt);
    return { stretch, earlier: isBefore ? earlier : null, now: sealing([own, ...over]), over };
  });
  const before = unionOf(stretchesWhere(pieces, ({ earlier }) => earlier !== null));
  const rest = before.length === 0 ? [own.stretch] : without([own.stretch], before);
  const otherFace = own.face === 'both' ? null : facing(own, OTHER[own.face], pieces);
  if (rest.length === 0) {
    const last = latest(pieces.map(({ earlier }) => earlier));
    return { since: last?.at ?? null, before, by: last?.by ?? null, otherFace };
  }
  const isOpen =
    without(
      rest,
      stretchesWhere(pieces, ({ now }) => now !== null),
    ).length > 0;
  const wanted = pieces.filter(({ stretch }) => rest.some((one) => overlaps(one, stretch)));
  const since = isOpen ? null : (latest(wanted.map(({ now }) => now))?.at ?? null);
  return { since, before, by: null, otherFace };
}

function alone({ face, closedAt }: Layer): HiddenSince {
  const isBoth = face === 'both';
  const otherFace = isBoth ? null : { closedAt: null, plannedDay: null };
  return { since: isBoth ? closedAt : null, before: [], by: null, otherFace };
}

function facing(
  own: Layer,
  side: 'lower' | 'higher',
  pieces: readonly Piece[],
): NonNullable<HiddenSince['otherFace']> {
  const covered = pieces.map(({ stretch, over }) => ({ stretch, first: firstOn(side, over) }));
  const open = without(
    [own.stretch],
    stretchesWhere(covered, ({ first }) => first !== null),
  );
  if (open.length === 0)
    return { closedAt: latest(covered.map(({ first }) => first))?.at ?? null, plannedDay: null };
  const days = pieces
    .flatMap(({ over }) => over)
    .filter(({ face, closedAt, stretch }) => face !== own.face && closedAt === null && meets(stretch, open))
    .flatMap(({ plannedDay }) => plannedDay ?? []);
  return { closedAt: null, plannedDay: days.sort()[0] ?? null };
}

function stretchesWhere<T extends { readonly stretch: Stretch }>(
  pieces: readonly T[],
  fits: (piece: T) => boolean,
): Stretch[] {
  return pieces.filter(fits).map(({ stretch }) => stretch);
}

const overlaps = (a: Stretch, b: Stretch) => Math.min(a.to, b.to) > Math.max(a.from, b.from);

/** The stretch cut wherever a layer begins or ends. */
function piecesOf({ from, to }: Stretch, layers: readonly Layer[]): Stretch[] {
  const ends = layers.flatMap(({ stretch }) => [stretch.from, stretch.to]);
  const cuts = [...new Set([from, to, ...ends])].filter((at) => at >= from && at <= to).sort((a, b) => a - b);
  return cuts.slice(1).map((end, i) => ({ from: cuts[i] as number, to: end }));
}

/** The closing with which the second of both faces was covered; null while one is open. */
function sealing(layers: readonly Layer[]): Sealed | null {
  const [lower, higher] = [firstOn('lower', layers), firstOn('higher', layers)];
  return lower && higher && latest([lower, higher]);
}

function firstOn(side: 'lower' | 'higher', layers: readonly Layer[]): Sealed | null {
  let first: Sealed | null = null;
  for (const { id, face, closedAt } of layers) {
    if (closedAt === null || (face !== side && face !== 'both')) continue;
    const closing = { at: closedAt, by: id };
    if (first === null || isEarlier(closing, first)) first = closing;
  }
  return first;
}

function latest(all: readonly (Sealed | null)[]): Sealed | null {
  return all.reduce<Sealed | null>(
    (last, one) => (one && (!last || isEarlier(last, one)) ? one : last),
    null,
  );
}

/** Of two closings at once one is the earlier all the same, whichever is given first. */
function isEarlier(a: Sealed, b: Sealed): boolean {
  return a.at === b.at ? a.by < b.by : a.at < b.at;
}
