interface Trait {
  /**
   * It says of a tag that it cannot be true as it stands: nothing may contradict a record (design 3.4), so such
   * tags count for no covering until somebody corrects or accepts it by name. The others either stop nothing,
   * or what they say stops a record by a rule of its own.
   */
  readonly stops: boolean;
  /** It says of whole photos what they are, whatever is tagged on them. */
  readonly isOfPhotos: boolean;
}

/** Everything that a person must look at, by what it is about. In this order they are shown. */
const KINDS = {
  disputed: { stops: true, isOfPhotos: false },
  'stage-goes-back': { stops: true, isOfPhotos: false },
  'stages-at-once': { stops: true, isOfPhotos: false },
  'places-at-once': { stops: true, isOfPhotos: false },
  'stage-outside-track': { stops: true, isOfPhotos: false },
  'same-picture': { stops: true, isOfPhotos: true },
  'off-site': { stops: true, isOfPhotos: true },
  'readers-differ': { stops: true, isOfPhotos: true },
  'clock-disagrees': { stops: false, isOfPhotos: true },
  'time-unsure': { stops: false, isOfPhotos: true },
  'before-first-day': { stops: false, isOfPhotos: true },
  'after-upload': { stops: false, isOfPhotos: true },
  'no-date': { stops: false, isOfPhotos: true },
  unreadable: { stops: false, isOfPhotos: false },
  'unknown-mark': { stops: false, isOfPhotos: false },
  'shown-after-closing': { stops: false, isOfPhotos: false },
  'closed-with-gaps': { stops: false, isOfPhotos: false },
  'closed-without-release': { stops: false, isOfPhotos: false },
  'release-taken-back': { stops: false, isOfPhotos: false },
} as const satisfies Record<string, Trait>;

export type FindingKind = keyof typeof KINDS;
export const FINDING_KINDS = Object.keys(KINDS) as FindingKind[];

export function stopsRecords(kind: FindingKind): boolean {
  return KINDS[kind].stops;
}

export function isOfPhotos(kind: FindingKind): boolean {
  return KINDS[kind].isOfPhotos;
}
