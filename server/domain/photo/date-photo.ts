import type { Capture } from '../contract/capture.ts';
import type { DatedBy, DatingFacts } from '../contract/clock.ts';
import type { Person, Readings } from '../contract/shapes.ts';
import { dayOf } from '../record/zoned-day.ts';
import { doubtCapture, type DoubtBounds } from './capture-doubt.ts';
import { decideCapture } from './capture-time.ts';
import { correctClock } from './clock-correction.ts';
import { readClock, readMarks, type SaidMark } from './clock-reading.ts';
import { zoneOffset } from './wall-time.ts';

/** When a person said that a photo was taken. */
export type SaidDate = DatingFacts & { readonly by: Person | null; readonly at: string };

/** All by which the time of a photo is decided, beside what its file says. */
export interface DatingGrounds extends DoubtBounds {
  /** Marks of this photo's camera that stand, in the order of saying. */
  readonly marks: readonly SaidMark[];
  readonly byHand: SaidDate | null;
}

/** When a photo was taken: by hand over the file, the file's clock as its marks correct it, doubts over all. */
export function datePhoto(readings: Readings, grounds: DatingGrounds): Capture {
  const clock = readClock(readings, grounds.zone);
  const correction = clock && correctClock(clock.ms, readMarks(grounds.marks, grounds.zone));
  const file = decideCapture(readings, grounds.zone, correction);
  return doubtCapture(grounds.byHand ? dateByHand(file, grounds.byHand, grounds.zone) : file, grounds);
}

export function datedBy(capture: Capture): DatedBy | null {
  if (capture.state === 'undated') return null;
  if (capture.byHand) return 'by-hand';
  return capture.correction ? 'clock-mark' : 'file';
}

/** What the file says stays as rejected, for whoever wants to judge. */
function dateByHand(file: Capture, { taken, withinS, by, at, reason }: SaidDate, zone: string): Capture {
  const overruled =
    file.state === 'undated'
      ? []
      : [
          {
            source: file.source,
            instant: file.instant,
            offsetMinutes: file.offsetMinutes,
            why: 'dated-by-hand' as const,
          },
        ];
  return {
    state: 'dated',
    instant: taken,
    offsetMinutes: zoneOffset(Date.parse(taken), zone),
    day: dayOf(taken, zone),
    source: 'by-hand',
    uncertaintyS: withinS,
    flags: ['dated-by-hand'],
    rejected: [...overruled, ...file.rejected],
    correction: null,
    byHand: { by, at, reason },
  };
}
