import type { Axis } from '../frame/set-out.ts';

export interface ReportMember {
  readonly mark: string;
  readonly kind: string;
  readonly place: string;
  readonly retired: boolean;
  /** Without one it has no place in space, and is hidden and shown as a whole. */
  readonly axis?: Axis | null;
}
