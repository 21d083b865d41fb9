import type { CORRECTION_BASES } from '../contract/clock.ts';

const DAY_MS = 86_400_000;
/** Seconds a day that a clock may drift beyond its marks. Common practice: quartz drifts seconds a day. */
const DRIFT_S_PER_DAY = 2;
/** Marks further apart than this were not made by drift: somebody set the clock. Common practice. */
const SET_S = { atOnce: 60, perDay: 60 } as const;

/** One clock mark: what the camera's clock read, and what was to be added. Milliseconds since 1970, UTC. */
export interface ClockMark {
  readonly id: string;
  readonly clockMs: number;
  readonly deltaMs: number;
  readonly withinS: number;
}

export interface ClockCorrection {
  /** To be added to the reading; whole milliseconds. */
  readonly deltaMs: number;
  readonly uncertaintyS: number;
  readonly basis: (typeof CORRECTION_BASES)[number];
  readonly marks: readonly [string, ...string[]];
  /** The clock was set between the two marks around the reading, so that nothing lies between them. */
  readonly isSetBetween: boolean;
}

/** In order of what the clock read. Of marks at one reading the later said wins; `said` is in the order of saying. */
export function orderMarks(said: readonly ClockMark[]): ClockMark[] {
  const byReading = new Map(said.map((mark) => [mark.clockMs, mark]));
  return [...byReading.values()].sort((a, b) => a.clockMs - b.clockMs);
}

/** Whether two neighbouring marks differ by more than a clock can drift from one to the other. */
export function isSetBetween(a: ClockMark, b: ClockMark): boolean {
  const days = Math.abs(b.clockMs - a.clockMs) / DAY_MS;
  return Math.abs(b.deltaMs - a.deltaMs) / 1000 > SET_S.atOnce + SET_S.perDay * days;
}

/**
 * What a camera's clock was wrong by when it read `clockMs`: linear between marks, beyond them the
 * nearest mark's value, whose uncertainty grows with the drift. Null without marks. `said`: the marks of
 * this camera in the order in which they were said.
 */
export function correctClock(clockMs: number, said: readonly ClockMark[]): ClockCorrection | null {
  const marks = orderMarks(said);
  const [first] = marks;
  const last = marks.at(-1);
  if (!first || !last) return null;
  if (marks.length === 1) return beyond(clockMs, first, 'one-mark');
  if (clockMs < first.clockMs) return beyond(clockMs, first, 'before-first-mark');
  if (clockMs > last.clockMs) return beyond(clockMs, last, 'after-last-mark');
  const next = marks.findIndex((mark) => mark.clockMs >= clockMs);
  const b = marks[next] ?? last;
  const a = marks[next - 1];
  if (!a || b.clockMs === clockMs) return beyond(clockMs, b, 'between-marks');
  return isSetBetween(a, b) ? nearer(clockMs, a, b) : between(clockMs, a, b);
}

function beyond(clockMs: number, mark: ClockMark, basis: ClockCorrection['basis']): ClockCorrection {
  const days = Math.abs(clockMs - mark.clockMs) / DAY_MS;
  const uncertaintyS = Math.ceil(mark.withinS + DRIFT_S_PER_DAY * days);
  return { deltaMs: mark.deltaMs, uncertaintyS, basis, marks: [mark.id], isSetBetween: false };
}

function between(clockMs: number, a: ClockMark, b: ClockMark): ClockCorrection {
  const part = (clockMs - a.clockMs) / (b.clockMs - a.clockMs);
  return {
    deltaMs: Math.round(a.deltaMs + part * (b.deltaMs - a.deltaMs)),
    uncertaintyS: Math.max(a.withinS, b.withinS),
    basis: 'between-marks',
    marks: [a.id, b.id],
    isSetBetween: false,
  };
}

/** Of two equally near the earlier. */
function nearer(clockMs: number, a: ClockMark, b: ClockMark): ClockCorrection {
  const { id, deltaMs, withinS } = clockMs - a.clockMs <= b.clockMs - clockMs ? a : b;
  const apartS = Math.ceil(Math.abs(b.deltaMs - a.deltaMs) / 1000);
  const uncertaintyS = Math.max(apartS, withinS);
  return { deltaMs, uncertaintyS, basis: 'between-marks', marks: [id], isSetBetween: true };
}
