import type { QueryClient } from '@tanstack/react-query';
import { createTouchLog, type TouchLog } from '../live/touch-log.ts';

const LOGS = new WeakMap<QueryClient, Map<string, TouchLog>>();

/** One a house, as long as what was read of the house is remembered. */
export function touchLogOf(client: QueryClient, house: string): TouchLog {
  const logs = LOGS.get(client) ?? new Map<string, TouchLog>();
  LOGS.set(client, logs);
  const log = logs.get(house) ?? createTouchLog();
  logs.set(house, log);
  return log;
}
