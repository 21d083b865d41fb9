import type { CoveringKind } from '../contract/shapes.ts';
import type { Stage, Track } from '../frame/stage.ts';

/**
 * The stage proposed as the least on record: the last one that still shows the member well. Of a rail
 * or post that is the pegging, since lath hides its wedges; of lath the finished lath. Common practice;
 * a person can choose otherwise.
 */
const PROPOSED: Readonly<Record<CoveringKind, Readonly<Record<Track, Stage>>>> = {
  plaster: { wall: 'pegged', timber: 'pegged', floor: 'pegged', lath: 'lath-on' },
  floor: { wall: 'pegged', timber: 'pegged', floor: 'pegged', lath: 'lath-on' },
  ceiling: { wall: 'pegged', timber: 'pegged', floor: 'pegged', lath: 'lath-on' },
  'roof-boards': { wall: 'pegged', timber: 'pegged', floor: 'pegged', lath: 'lath-on' },
  other: { wall: 'pegged', timber: 'pegged', floor: 'pegged', lath: 'lath-on' },
};

export function defaultLeast(covering: CoveringKind, track: Track): Stage {
  return PROPOSED[covering][track];
}
