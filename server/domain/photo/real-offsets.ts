/**
 * Offsets from UTC in minutes that some place has kept since 2010, by the IANA time zone database
 * (release 2025c). Ships' zones (Etc/*) are left out. tests/reference compares this list with the
 * zones of the running engine.
 */
export const REAL_OFFSETS: readonly number[] = [
  -660, -600, -570, -540, -480, -420, -360, -300, -270, -240, -210, -180, -150, -120, -60, 0, 60, 120, 180,
  210, 240, 270, 300, 330, 345, 360, 390, 420, 480, 510, 525, 540, 570, 600, 630, 660, 690, 720, 765, 780,
  825, 840,
];

export interface OffsetFit {
  readonly offsetMinutes: number;
  /** How far the measured difference lies from the offset, in minutes, never negative. */
  readonly missMinutes: number;
}

/** The offset in real use nearest to a measured difference of local time and UTC; of two equally near, the lower. */
export function nearestRealOffset(differenceMinutes: number): OffsetFit {
  let best: OffsetFit = { offsetMinutes: 0, missMinutes: Infinity };
  for (const offsetMinutes of REAL_OFFSETS) {
    const missMinutes = Math.abs(differenceMinutes - offsetMinutes);
    if (missMinutes < best.missMinutes) best = { offsetMinutes, missMinutes };
  }
  return best;
}
