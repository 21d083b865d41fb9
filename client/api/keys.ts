/** Query keys. Everything of a house hangs below ['house', id], so that one statement can refresh it all. */
export const keys = {
  session: ['session'] as const,
  link: (link: string) => ['link', link] as const,
  tokens: ['tokens'] as const,
  sessions: ['sessions'] as const,
  releaseOfCode: (release: string) => ['release-of-code', release] as const,
  guestPage: (secret: string) => ['guest', secret] as const,
  houses: ['houses'] as const,
  allOf: (house: string) => ['house', house] as const,
  house: (house: string) => ['house', house, 'facts'] as const,
  // What is stated once and holds for all: no photo and no tag has it read again.
  ground: (house: string) => ['house', house, 'ground'] as const,
  grid: (house: string) => ['house', house, 'ground', 'grid'] as const,
  requirements: (house: string) => ['house', house, 'ground', 'requirements'] as const,
  terms: (house: string) => ['house', house, 'ground', 'terms'] as const,
  frame: (house: string) => ['house', house, 'report', 'frame'] as const,
  people: (house: string) => ['house', house, 'people'] as const,
  // Below the people: whoever keeps the record no longer vouches for no guest.
  guests: (house: string) => ['house', house, 'people', 'guests'] as const,
  members: (house: string) => ['house', house, 'members'] as const,
  member: (house: string, mark: string) => ['house', house, 'members', mark] as const,
  // Below the members: a term decides the stages of those of its kind.
  kindSightings: (house: string, kind: string, limit: number) =>
    ['house', house, 'members', 'of-kinds', kind, limit] as const,
  days: (house: string) => ['house', house, 'days'] as const,
  journal: (house: string) => ['house', house, 'days', 'journal'] as const,
  earlierDays: (house: string, before: string) => ['house', house, 'days', 'before', before] as const,
  day: (house: string, date: string) => ['house', house, 'days', date] as const,
  photos: (house: string, filter: object = {}) => ['house', house, 'photos', filter] as const,
  places: (house: string) => ['house', house, 'photos', 'places'] as const,
  allPhotos: (house: string) => ['house', house, 'photos'] as const,
  // Below the photos: whatever changes those can change what cameras took.
  cameras: (house: string) => ['house', house, 'photos', 'cameras'] as const,
  allSingle: (house: string) => ['house', house, 'photo'] as const,
  photo: (house: string, photo: string) => ['house', house, 'photo', photo] as const,
  alike: (house: string, photo: string) => ['house', house, 'photo', photo, 'alike'] as const,
  regionLegibility: (house: string, photo: string, region: string) =>
    ['house', house, 'region', photo, region] as const,
  coverings: (house: string) => ['house', house, 'coverings'] as const,
  calendarLink: (house: string) => ['calendar-link', house] as const,
  // Below the coverings: what moves the zones of those moves these.
  protections: (house: string) => ['house', house, 'coverings', 'protections'] as const,
  // Below the report: whatever changes what is hidden and on record changes how the frame is drawn.
  report: (house: string) => ['house', house, 'report'] as const,
  coveringLedger: (house: string, covering: string) =>
    ['house', house, 'coverings', covering, 'ledger'] as const,
  review: (house: string, covering: string) => ['house', house, 'report', 'review', covering] as const,
  // What has changed since it was given follows from the same.
  release: (house: string, release: string) => ['house', house, 'report', 'release', release] as const,
  shots: (house: string, days: number | 'all') => ['house', house, 'report', 'shots', days] as const,
  // Schedule, grid and kinds decide it, and whatever changes those has everything read again.
  wallFigures: (house: string, covering: string) =>
    ['house', house, 'coverings', covering, 'wall-figures'] as const,
  allFindings: (house: string) => ['house', house, 'findings'] as const,
  findings: (house: string, filter: object = {}) => ['house', house, 'findings', filter] as const,
  archiveSize: (house: string) => ['house', house, 'ledger', 'archive-size'] as const,
  stamps: (house: string) => ['house', house, 'ledger', 'stamps'] as const,
  ledger: (house: string, from?: number) =>
    from === undefined ? (['house', house, 'ledger'] as const) : (['house', house, 'ledger', from] as const),
};
