/**
 * Reads again what has changed, and no more often than it can be borne: after a part has been read it
 * rests for a multiple of the time that took, so that on a slow network or in a large house the reading
 * takes a tenth of the time, and many changes make one.
 */
export interface RefresherParts {
  /** Reads one part again. */
  readonly read: (part: string) => Promise<unknown>;
  /** How many times as long as the reading it rests. */
  readonly restOf: (part: string) => number;
  /** For how long changes are gathered before it is read; in ms. */
  readonly gatherOf: (part: string) => number;
  readonly now: () => number;
}

export interface Refresher {
  readonly soon: (part: string) => void;
  readonly stop: () => void;
}

export const REST_MOST_MS = 30_000;

export function createRefresher({ read, restOf, gatherOf, now }: RefresherParts): Refresher {
  /** When a part may be read again. */
  const free = new Map<string, number>();
  const timers = new Map<string, ReturnType<typeof setTimeout>>();
  const reading = new Set<string>();
  const again = new Set<string>();
  let isStopped = false;

  const soon = (part: string) => {
    if (isStopped || timers.has(part)) return;
    if (reading.has(part)) {
      again.add(part);
      return;
    }
    const wait = Math.max(gatherOf(part), (free.get(part) ?? 0) - now());
    timers.set(
      part,
      setTimeout(() => void readNow(part), wait),
    );
  };
  const readNow = async (part: string) => {
    timers.delete(part);
    reading.add(part);
    const start = now();
    await read(part).catch(() => undefined);
    reading.delete(part);
    const end = now();
    free.set(part, end + Math.min((end - start) * restOf(part), REST_MOST_MS));
    if (again.delete(part)) soon(part);
  };
  return {
    soon,
    stop() {
      isStopped = true;
      for (const timer of timers.values()) clearTimeout(timer);
      timers.clear();
    },
  };
}
