/** Everything that a person must look at, by what it is about. In this order they are shown. */
export const FINDING_KINDS = [
  'stage-goes-back',
  'stages-at-once',
  'places-at-once',
  'stage-outside-track',
  'same-picture',
  'off-site',
  'readers-differ',
  'clock-disagrees',
  'time-unsure',
  'before-first-day',
  'after-upload',
  'no-date',
  'unreadable',
  'unknown-mark',
  'shown-after-closing',
  'closed-with-gaps',
] as const;
export type FindingKind = (typeof FINDING_KINDS)[number];

/**
 * Kinds that say of a tag that it cannot be true as it stands: nothing may contradict a record
 * (design 3.4), so such tags count for no covering until somebody corrects or accepts it by name. The
 * others either stop nothing, or what they say stops a record by a rule of its own.
 */
const STOPPING: ReadonlySet<FindingKind> = new Set<FindingKind>([
  'stage-goes-back',
  'stages-at-once',
  'places-at-once',
  'stage-outside-track',
  'same-picture',
  'off-site',
  'readers-differ',
]);

export function stopsRecords(kind: FindingKind): boolean {
  return STOPPING.has(kind);
}

/** Kinds that say of whole photos what they are, whatever is tagged on them. */
const OF_PHOTOS: ReadonlySet<FindingKind> = new Set<FindingKind>([
  'same-picture',
  'off-site',
  'readers-differ',
  'clock-disagrees',
  'time-unsure',
  'before-first-day',
  'after-upload',
  'no-date',
]);

export function isOfPhotos(kind: FindingKind): boolean {
  return OF_PHOTOS.has(kind);
}
