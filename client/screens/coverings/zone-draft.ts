import { lengthText, parseLength, type LengthUnit } from '#domain/frame/length';
import type { Zone } from '#domain/frame/zone';

/** A zone as it is typed; 'none': only listed members are hidden. Lengths in the unit of the house. */
export interface ZoneDraft {
  readonly shape: 'none' | Zone['shape'];
  readonly family: 'first' | 'second';
  readonly line: string;
  readonly from: string;
  readonly to: string;
  readonly bottom: string;
  readonly top: string;
  readonly face: 'both' | 'lower' | 'higher';
  readonly over: 'between-posts' | 'over-posts';
  readonly corners: string;
  readonly eaves: string;
  readonly ridge: string;
  readonly eavesHeight: string;
  readonly ridgeHeight: string;
  readonly below: string;
}

export const NO_ZONE: ZoneDraft = {
  ...{ shape: 'none', family: 'first', face: 'both', over: 'between-posts' },
  ...{ line: '', from: '', to: '', bottom: '', top: '', corners: '' },
  ...{ eaves: '', ridge: '', eavesHeight: '', ridgeHeight: '', below: '' },
} as const;

export function zoneDraft(zone: Zone | null, unit: LengthUnit): ZoneDraft {
  if (zone === null) return NO_ZONE;
  const text = (mm: number) => lengthText(mm, unit);
  switch (zone.shape) {
    case 'wall':
      return { ...NO_ZONE, ...zone, bottom: text(zone.bottom), top: text(zone.top) };
    case 'flat':
      return {
        ...{ ...NO_ZONE, shape: 'flat' as const, corners: zone.corners.join(' ') },
        ...{ bottom: text(zone.bottom), top: text(zone.top) },
      };
    case 'slope':
      return {
        ...{ ...NO_ZONE, ...zone, below: text(zone.below) },
        ...{ eavesHeight: text(zone.eavesHeight), ridgeHeight: text(zone.ridgeHeight) },
      };
  }
}

export type ZoneField = Exclude<keyof ZoneDraft, 'shape' | 'family' | 'face' | 'over'>;

/** Fields that each shape needs, in the order of the form. */
export const ZONE_FIELDS: Readonly<Record<Zone['shape'], readonly ZoneField[]>> = {
  wall: ['line', 'from', 'to', 'bottom', 'top'],
  flat: ['corners', 'bottom', 'top'],
  slope: ['eaves', 'ridge', 'from', 'to', 'eavesHeight', 'ridgeHeight', 'below'],
};
const LENGTHS: readonly ZoneField[] = ['bottom', 'top', 'eavesHeight', 'ridgeHeight', 'below'];

/** The zone, or the first field that is empty or no length. Whether it is a space in the grid is not asked here. */
export function readZone(
  draft: ZoneDraft,
  unit: LengthUnit,
): { ok: true; zone: Zone | null } | { ok: false; field: ZoneField; reason: 'empty' | 'not-a-length' } {
  if (draft.shape === 'none') return { ok: true, zone: null };
  for (const field of ZONE_FIELDS[draft.shape]) {
    if (draft[field].trim() === '') return { ok: false, field, reason: 'empty' };
    if (LENGTHS.includes(field) && parseLength(draft[field], unit) === null)
      return { ok: false, field, reason: 'not-a-length' };
  }
  return { ok: true, zone: toZone(draft, unit) };
}

function toZone(draft: ZoneDraft, unit: LengthUnit): Zone | null {
  const length = (field: ZoneField) => parseLength(draft[field], unit) ?? NaN;
  const text = (field: ZoneField) => draft[field].trim();
  const { shape, family, face, over } = draft;
  switch (shape) {
    case 'none':
      return null;
    case 'wall':
      return {
        ...{ shape, family, face, over, line: text('line'), from: text('from'), to: text('to') },
        ...{ bottom: length('bottom'), top: length('top') },
      };
    case 'flat': {
      const corners = draft.corners.split(/[\s,、，;；]+/u).filter((corner) => corner !== '');
      return { shape, corners, bottom: length('bottom'), top: length('top') };
    }
    case 'slope':
      return {
        ...{ shape, family, eaves: text('eaves'), ridge: text('ridge'), from: text('from'), to: text('to') },
        ...{ eavesHeight: length('eavesHeight'), ridgeHeight: length('ridgeHeight'), below: length('below') },
      };
  }
}
