import type { Capture } from '#domain/contract/capture';
import type { DatingFacts } from '#domain/contract/clock';
import { findDoubt } from '#domain/photo/capture-doubts';
import { spanOfDay } from '#domain/record/zoned-day';
import { inZone, wallMs } from '#domain/photo/wall-time';

export const SURE = ['minute', 'hour', 'day'] as const;
export interface DateDraft {
  readonly day: string;
  readonly time: string;
  readonly sure: (typeof SURE)[number];
  readonly reason: string;
}
export type DateFault = 'needDay' | 'needTime' | 'needReason';

/** A local time as a field gives it, as an instant; of an hour that comes twice the first. Null where it is none. */
export function instantOf(local: string, zone: string): string | null {
  const wall = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/.test(local) ? wallMs(local) : null;
  return wall === null ? null : new Date(inZone(wall, zone).readings[0].ms).toISOString();
}

export function dateFaults({ day, time, sure, reason }: DateDraft): DateFault[] {
  const faults: DateFault[] = [];
  if (wallMs(`${day}T00:00`) === null || !/^\d{4}-/.test(day)) faults.push('needDay');
  if (sure !== 'day' && !/^\d{2}:\d{2}/.test(time)) faults.push('needTime');
  if (reason.trim() === '') faults.push('needReason');
  return faults;
}

/** A day alone is its middle, give or take its half; of today only what has passed. Null where it has faults. */
export function readDate(draft: DateDraft, zone: string, nowMs: number): DatingFacts | null {
  if (dateFaults(draft).length > 0) return null;
  const reason = draft.reason.trim();
  if (draft.sure !== 'day') {
    const taken = instantOf(`${draft.day}T${draft.time}`, zone);
    return taken === null ? null : { taken, withinS: draft.sure === 'minute' ? 60 : 3600, reason };
  }
  const { from, to: end } = spanOfDay(draft.day, zone);
  const to = from < nowMs && nowMs < end ? nowMs : end;
  const taken = new Date(Math.round((from + to) / 2)).toISOString();
  return { taken, withinS: Math.max(1, Math.ceil((to - from) / 2000)), reason };
}

/** Whether a person may say the date: a file with a time that can be has its say. */
export function mayDate(capture: Capture): boolean {
  return capture.state === 'undated' || capture.byHand !== null || findDoubt(capture.flags) !== null;
}
