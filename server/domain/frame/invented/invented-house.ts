import type { StatedGrid } from '../../contract/frame-shapes.ts';
import type { CoveringKind } from '../../contract/shapes.ts';
import type { SetOut } from '../set-out.ts';
import type { Zone } from '../zone.ts';

export interface InventedMember {
  readonly mark: string;
  readonly kind: string;
  readonly place: string;
  readonly setOut: SetOut;
}

export interface InventedCovering {
  readonly name: string;
  readonly kind: CoveringKind;
  readonly plannedDay: string;
  readonly zone: Zone;
}

/** A house that nobody has built, as its crew would state it. */
export interface InventedHouse {
  readonly name: string;
  readonly firstDay: string;
  readonly grid: StatedGrid;
  readonly members: readonly InventedMember[];
  readonly coverings: readonly InventedCovering[];
  /** What is noted of days. */
  readonly days: readonly { readonly day: string; readonly text: string }[];
}

const DAY_MS = 86_400_000;

export function dayAfter(day: string, days: number): string {
  return new Date(Date.parse(day) + days * DAY_MS).toISOString().slice(0, 10);
}
