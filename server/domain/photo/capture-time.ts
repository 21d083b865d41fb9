import type { Capture, CaptureFlag, RejectedCandidate, RejectionReason } from '../contract/capture.ts';
import type { Complaint } from '../contract/complaints.ts';
import type { Readings } from '../contract/shapes.ts';
import {
  candidatesOf,
  gpsCandidate,
  minutesApart,
  MINUTES,
  type Candidate,
  type Candidates,
} from './capture-candidates.ts';
import type { ClockCorrection } from './clock-correction.ts';
import { dayOf } from '../record/zoned-day.ts';
import { atOffset, instantMs, instantText, inZone, wallMs, zoneOffset } from './wall-time.ts';

/**
 * Years in which a photo of a house under record can have been taken. Below lie scanned prints and the
 * epochs that clocks fall back to (1601, 1904, 1970, 1980); above, broken clocks. Fixed, not measured
 * from today, because the decision is repeated at every rebuild and must not change.
 */
const PLAUSIBLE_YEARS = { from: 1990, to: 2079 } as const;

/** Seconds by which each source may be wrong where GPS does not bound it. Common practice. */
const UNCERTAINTY_S = { 'own-offset': 60, 'house-zone': 300, 'gps-only': 900 } as const;
/** A receiver that has seen no satellite for longer is rarer than a clock that is wrong. Common practice. */
const OLDEST_FIX_MINUTES = 2 * 24 * 60;

type Dated = Extract<Capture, { state: 'dated' }>;
type Rejected = readonly [Candidate, RejectionReason];

/**
 * When a picture was taken, by design §3.1 rules 1 to 5, with what was not believed and why.
 * `zone` is the IANA zone of the house; RangeError where the engine does not know it.
 * `instant` + `offsetMinutes` is the wall time that the camera showed, whenever it showed one; with a
 * `correction` of its clock that is `correction.uncorrected` + `offsetMinutes`. A corrected reading is
 * the instant: satellite time then confirms it or speaks against it, and replaces it no more.
 */
export function decideCapture(
  readings: Readings,
  zone: string,
  correction: ClockCorrection | null = null,
): Capture {
  const wall = readings.wallTime === null ? null : wallMs(readings.wallTime);
  const gps = readings.gpsTime === null ? null : instantMs(readings.gpsTime);
  // A clock that fell back to its epoch is believed where marks bring it home.
  const believedWall = wall !== null && isPlausible(wall + (correction?.deltaMs ?? 0)) ? wall : null;
  const believedGps = gps !== null && isPlausible(gps) ? gps : null;
  const unbelieved: Rejected[] = [];
  if (wall !== null && believedWall === null) {
    unbelieved.push([unbelievedWall(wall, readings.offsetMinutes, zone), 'implausible-year']);
  }
  if (gps !== null && believedGps === null) unbelieved.push([gpsCandidate(gps, zone), 'implausible-year']);

  if (believedWall === null) return withoutWall(believedGps, unbelieved, zone);
  const found = candidatesOf(believedWall, readings.offsetMinutes, believedGps, zone, correction?.deltaMs);
  const chosen = correction ? (found.own ?? found.house[0]) : choose(found);
  const rejected = [...losers(found, chosen), ...unbelieved];
  const flags = flagsOf(found, chosen, zone);
  if (unbelieved.length > 0) flags.push('implausible-year');
  if (chosen.source === 'house-zone') flags.push(...flagsOfReading(readings, correction));
  if (!correction) return dated(chosen, zone, uncertainty(found, chosen, rejected), flags, rejected);
  const otherHours = rejected.filter(([, why]) => why === 'other-reading-of-the-hour');
  return corrected(dated(chosen, zone, rivalS(chosen, otherHours), flags, rejected), correction);
}

/** Marks say how sure the time is; only the other reading of an hour that came twice may be further off. */
function corrected(capture: Dated, correction: ClockCorrection): Capture {
  const { deltaMs, uncertaintyS, basis, marks, isSetBetween } = correction;
  const uncorrected = instantText(Date.parse(capture.instant) - deltaMs);
  if (uncorrected === null)
    throw new RangeError(`No four-digit year: ${capture.instant} less ${deltaMs} ms.`);
  return {
    ...capture,
    uncertaintyS: Math.max(uncertaintyS, capture.uncertaintyS),
    flags: [
      ...capture.flags,
      'clock-corrected',
      ...(isSetBetween ? (['clock-set-between-marks'] as const) : []),
    ],
    correction: { seconds: deltaMs / 1000, uncertaintyS, basis, marks: [...marks], uncorrected },
  };
}

/** Rules 1 to 3. */
function choose(found: Candidates): Candidate {
  const [house] = found.house;
  if (found.own) return found.own;
  if (house.source === 'house-zone-and-gps') return house;
  return found.gpsOffset && whyNotGpsOffset(found) === null ? found.gpsOffset : house;
}

/**
 * Why the offset that GPS suggests is not taken over the house's zone, or null. Near the house's own
 * offset only a fresh fix can prove another zone: a fix some minutes old is commoner on a site than a
 * camera half a zone away, so 556 minutes at a Japanese house stay +09:00 and do not become +09:30.
 */
function whyNotGpsOffset({ gpsFit, gpsMs, gpsRepeatsClock, house }: Candidates): RejectionReason | null {
  if (!gpsFit || gpsMs === null) return null;
  if (gpsFit.missMinutes > MINUTES.infer) return 'no-such-offset';
  if (gpsRepeatsClock) return 'gps-not-utc';
  const houseFits = minutesApart(house[0].ms, gpsMs) <= MINUTES.infer;
  return houseFits && gpsFit.missMinutes > MINUTES.fresh ? 'house-zone-preferred' : null;
}

/** Rules 4 and 5. */
function withoutWall(gps: number | null, rejected: readonly Rejected[], zone: string): Capture {
  if (gps === null) return { state: 'undated', rejected: rejected.flatMap(written) };
  const flags: CaptureFlag[] = rejected.length > 0 ? ['implausible-year'] : [];
  return dated(gpsCandidate(gps, zone), zone, UNCERTAINTY_S['gps-only'], flags, rejected);
}

/** All candidates that say something else than the chosen one, each with its reason. */
function losers(found: Candidates, chosen: Candidate): Rejected[] {
  const all: Rejected[] = found.house.map((c) => [c, whyNotHouse(c, chosen)]);
  if (found.gpsOffset) all.push([found.gpsOffset, whyNotGpsOffset(found) ?? 'a-better-source-exists']);
  if (found.gpsOnly)
    all.push([found.gpsOnly, found.gpsRepeatsClock ? 'gps-not-utc' : 'a-better-source-exists']);
  return all.filter(([c]) => c.ms !== chosen.ms || c.offsetMinutes !== chosen.offsetMinutes);
}

function whyNotHouse(candidate: Candidate, chosen: Candidate): RejectionReason {
  if (chosen.source === 'own-offset' || candidate.source === 'house-zone-and-gps')
    return 'a-better-source-exists';
  return chosen.source === 'house-zone' ? 'other-reading-of-the-hour' : 'disagrees-with-gps';
}

function flagsOf(found: Candidates, chosen: Candidate, zone: string): CaptureFlag[] {
  const flags: CaptureFlag[] = [];
  const fromHouse = chosen.source === 'house-zone' || chosen.source === 'house-zone-and-gps';
  if (!fromHouse && chosen.offsetMinutes !== zoneOffset(chosen.ms, zone))
    flags.push('camera-not-in-house-zone');
  if (found.hour === 'ambiguous' && chosen.source === 'house-zone') flags.push('ambiguous-hour');
  if (found.hour === 'skipped' && fromHouse) flags.push('skipped-hour');
  const gpsFlag = gpsFlagOf(found, chosen);
  if (gpsFlag) flags.push(gpsFlag);
  return flags;
}

function gpsFlagOf({ gpsMs, gpsFit, gpsRepeatsClock }: Candidates, chosen: Candidate): CaptureFlag | null {
  if (gpsMs === null || !gpsFit || minutesApart(gpsMs, chosen.ms) <= MINUTES.confirm) return null;
  if (gpsRepeatsClock) return 'gps-not-utc';
  if (chosen.source === 'gps-offset') return null;
  const age = (chosen.ms - gpsMs) / 60_000;
  const isOldFix = age > 0 && age <= OLDEST_FIX_MINUTES;
  return isOldFix && gpsFit.missMinutes > MINUTES.fresh ? 'gps-stale' : 'gps-disagrees';
}

/** Seconds. A confirming GPS time bounds the clock's error; a rival that could be true widens it to reach that rival. */
function uncertainty(found: Candidates, chosen: Candidate, rejected: readonly Rejected[]): number {
  const gap = found.gpsMs === null ? Infinity : Math.abs(found.gpsMs - chosen.ms) / 1000;
  if (chosen.source === 'house-zone') return Math.max(UNCERTAINTY_S['house-zone'], rivalS(chosen, rejected));
  if (gap <= MINUTES.infer * 60 && chosen.source !== 'own-offset') return Math.max(1, Math.ceil(gap));
  return gap <= MINUTES.confirm * 60 ? Math.max(1, Math.ceil(gap)) : UNCERTAINTY_S['own-offset'];
}

/** Seconds to the furthest reading that could be true as well; 0 without one. */
function rivalS(chosen: Candidate, rejected: readonly Rejected[]): number {
  if (chosen.source !== 'house-zone') return 0;
  const rivals = rejected
    .filter(([c, why]) => isRival(c, why))
    .map(([c]) => Math.abs(c.ms - chosen.ms) / 1000);
  return Math.ceil(Math.max(0, ...rivals));
}

function isRival({ source }: Candidate, why: RejectionReason): boolean {
  if (source === 'gps-offset') return why === 'gps-not-utc' || why === 'house-zone-preferred';
  return why === 'other-reading-of-the-hour';
}

function unbelievedWall(wall: number, own: number | null, zone: string): Candidate {
  if (own !== null) return { ...atOffset(wall, own), source: 'own-offset' };
  return { ...inZone(wall, zone).readings[0], source: 'house-zone' };
}

function isPlausible(ms: number): boolean {
  const year = Number(instantText(ms)?.slice(0, 4) ?? NaN);
  return year >= PLAUSIBLE_YEARS.from && year <= PLAUSIBLE_YEARS.to;
}

const UNUSABLE_GPS: readonly Complaint[] = ['gps-date-missing', 'gps-date-invalid', 'gps-time-invalid'];
const ZONE_ELSEWHERE: Complaint = 'offset-in-thermal-record';

/** What the file would say of the zone, if it could be read. Clock marks tell the zone as well. */
function flagsOfReading(
  { gpsTime, complaints }: Readings,
  correction: ClockCorrection | null,
): CaptureFlag[] {
  const has = (codes: readonly Complaint[]) => codes.some((code) => complaints.includes(code));
  return [
    ...(gpsTime === null && has(UNUSABLE_GPS) ? (['gps-unusable'] as const) : []),
    ...(correction === null && has([ZONE_ELSEWHERE]) ? (['zone-not-read'] as const) : []),
  ];
}

function dated(
  chosen: Candidate,
  zone: string,
  uncertaintyS: number,
  flags: CaptureFlag[],
  rejected: readonly Rejected[],
): Dated {
  const { ms, offsetMinutes, source } = chosen;
  const instant = instantText(ms);
  if (instant === null) throw new RangeError(`No four-digit year: ${ms}.`);
  const day = dayOf(instant, zone);
  return {
    state: 'dated',
    instant,
    offsetMinutes,
    day,
    source,
    uncertaintyS,
    flags,
    rejected: rejected.flatMap(written),
    correction: null,
    byHand: null,
  };
}

/** Instants whose year does not fit four digits cannot be written down and are dropped. */
function written([{ ms, offsetMinutes, source }, why]: Rejected): RejectedCandidate[] {
  const instant = instantText(ms);
  return instant === null ? [] : [{ source, instant, offsetMinutes, why }];
}
