import { createTouchLog, type TouchLog } from '../live/touch-log.ts';

const logs = new Map<string, TouchLog>();

/** One a house, for as long as the page lives. */
export function touchLogOf(house: string): TouchLog {
  const log = logs.get(house) ?? createTouchLog();
  logs.set(house, log);
  return log;
}
