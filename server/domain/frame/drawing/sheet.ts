import type { FamilyName, Grid, Level, LinePlace } from '../grid.ts';
import type { Axis } from '../set-out.ts';
import type { Zone } from '../zone.ts';
import type { Box, Flat, Strip } from './flat.ts';

/** What of a frame is drawn; a frame as the API tells it is one. */
export interface Drawable {
  readonly grid: Grid | null;
  readonly members: readonly { readonly mark: string; readonly axis: Axis | null }[];
  readonly coverings: readonly { readonly id: string; readonly zone: Zone | null }[];
}

/** A member as a sheet shows it. */
export interface DrawnMember extends Strip {
  readonly mark: string;
  /** Where along itself it is cut, in mm, if it only goes through the sheet; null: it lies in it. */
  readonly cutAt: number | null;
  /** Its length in mm, of which the strip shows all; stretches are measured in it. */
  readonly length: number;
}

export interface DrawnZone {
  readonly covering: string;
  readonly corners: readonly Flat[];
}

/** A line of the grid, or a level, across the whole sheet. */
export interface Rule {
  readonly label: string;
  /** u of an upright rule, v of a level one. */
  readonly at: number;
  /** Its position or height in house coordinates. */
  readonly stated: number;
}

export type SheetSubject =
  | { readonly kind: 'elevation'; readonly family: FamilyName; readonly line: LinePlace }
  | { readonly kind: 'plan'; readonly level: Level | null };

/** One drawing of the frame: the elevation of a line, or the plan of a level. */
export interface Sheet {
  readonly key: string;
  readonly subject: SheetSubject;
  /** Of an elevation the side of its line that is seen, by the order of the lines; null: from above. */
  readonly seenFrom: 'lower' | 'higher' | null;
  readonly upright: readonly Rule[];
  readonly level: readonly Rule[];
  readonly members: readonly DrawnMember[];
  readonly zones: readonly DrawnZone[];
  readonly bounds: Box;
}

export function sheetKey(subject: SheetSubject): string {
  if (subject.kind === 'plan') return `level:${subject.level?.label ?? ''}`;
  return `${subject.family}:${subject.line.label}`;
}
