/**
 * The five stages of a member in their order of work; five, because 正 tallies to five. `pegged` is said of all that
 * is fixed, by pegs, wedges, nails or hardware: 緊結, as the Japanese building code calls it (Order, article 47).
 */
export const STAGES = ['cut', 'raised', 'pegged', 'lath-on', 'plastered'] as const;
export type Stage = (typeof STAGES)[number];

/** The subset of stages that a kind of member passes. */
export const TRACKS = {
  wall: ['cut', 'raised', 'pegged', 'lath-on', 'plastered'],
  timber: ['cut', 'raised', 'pegged'],
  floor: ['cut', 'raised', 'pegged'],
  lath: ['lath-on', 'plastered'],
} as const satisfies Record<string, readonly Stage[]>;
export type Track = keyof typeof TRACKS;
export const TRACK_NAMES = ['wall', 'timber', 'floor', 'lath'] as const satisfies readonly Track[];

export function stageRank(stage: Stage): number {
  return STAGES.indexOf(stage);
}

export function isInTrack(stage: Stage, track: Track): boolean {
  return (TRACKS[track] as readonly Stage[]).includes(stage);
}
