import type { CoveringKind } from '../contract/shapes.ts';
import { isInTrack, type Stage, type Track } from '../frame/stage.ts';
import type { Zone } from '../frame/zone.ts';
import type { CoveringForm } from './covering-form.ts';
import { defaultLeast } from './default-least.ts';

/** What a house states of one kind under one form of covering. `least` null: the usual stage of its track. */
export interface StatedRequirement {
  readonly form: CoveringForm;
  readonly kind: string;
  readonly hides: boolean;
  readonly least: Stage | null;
  readonly views: number;
}

/** What a covering needs on record of a member that lies in its zone. */
export interface NeedOfKind {
  readonly least: Stage;
  /** Photos that must show each part of it. */
  readonly views: number;
}

/** What of a kind decides whether a covering hides it; null for a kind that no lexicon knows. */
export type HidableKind = { readonly id: string; readonly hiddenBy: readonly CoveringForm[] } | null;

/** The form by which requirements are looked up; null where none is common: it hides what lies in its zone. */
export function formOf(kind: CoveringKind, zone: Zone): CoveringForm | null {
  if (kind === 'plaster')
    return zone.shape === 'wall' && zone.over === 'between-posts'
      ? 'plaster-between-posts'
      : 'plaster-over-posts';
  return kind === 'other' ? null : kind;
}

/**
 * What is needed of a member of this kind in the zone of such a covering, or null where it stays visible:
 * as the house states, else as is common for the kind. A kind that nobody knows is asked for, since what
 * is asked for in vain can be left out, and what is not asked for is lost.
 */
export function needOf(
  kind: HidableKind,
  track: Track,
  covering: { readonly kind: CoveringKind; readonly form: CoveringForm | null },
  stated: readonly StatedRequirement[],
): NeedOfKind | null {
  const usual = defaultLeast(covering.kind, track);
  if (kind === null || covering.form === null) return { least: usual, views: 1 };
  const own = stated.find((row) => row.form === covering.form && row.kind === kind.id);
  if (!own) return kind.hiddenBy.includes(covering.form) ? { least: usual, views: 1 } : null;
  if (!own.hides) return null;
  return { least: canBeAsked(own.least, track, covering.kind) ? own.least : usual, views: own.views };
}

/** A stage that this member passes, and at which this covering does not hide it yet: no other can come on record. */
function canBeAsked(least: Stage | null, track: Track, covering: CoveringKind): least is Stage {
  return least !== null && isInTrack(least, track) && !(covering === 'plaster' && least === 'plastered');
}
