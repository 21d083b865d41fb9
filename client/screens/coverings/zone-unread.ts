import type { StatedGrid } from '#domain/contract/frame-shapes';
import { gridReader } from '#domain/frame/grid-reader';
import type { Zone, ZoneProblem } from '#domain/frame/zone';
import { zoneBody } from '#domain/frame/zone-body';
import type { Language } from '../../i18n/language.ts';

/** Why a covering hides nothing by its zone: the grid has its lines no longer, or they lie otherwise. */
export function zoneUnread(zone: Zone | null, grid: StatedGrid | null): 'lines' | 'shape' | null {
  if (zone === null) return null;
  if (grid === null) return 'lines';
  const read = zoneBody(zone, gridReader(grid));
  if (read.ok) return null;
  return OF_LINES.includes(read.problem.reason) ? 'lines' : 'shape';
}

const OF_LINES: readonly ZoneProblem['reason'][] = ['unknown-line', 'unknown-corner'];

/** Beside the catalogs, so that the first visit does not fetch what only one screen says. */
export const ZONE_UNREAD_WORDS: Readonly<Record<Language, Readonly<Record<'lines' | 'shape', string>>>> = {
  en: {
    lines:
      'The grid no longer has the lines of its zone, so it hides nothing by it. State them again in the grid, or give it another zone.',
    shape:
      'By the grid as it is now its zone takes no space, so it hides nothing by it. Put the grid right, or give it another zone.',
  },
  ja: {
    lines:
      '範囲の通りが通り芯にないため、範囲では何も隠れません。通り芯に通りを入れ直すか、範囲を決め直してください。',
    shape: '今の通り芯では範囲が成り立たず、範囲では何も隠れません。通り芯か範囲を直してください。',
  },
};
