import type { ScheduleField } from '#domain/contract/schedule-views';

/** In the order in which they are offered; the type makes sure that none is forgotten. */
const order: Record<ScheduleField, number> = {
  ...{ mark: 0, kind: 1, name: 2, place: 3, track: 4 },
  ...{ from: 5, to: 6, level: 7, base: 8, top: 9, width: 10, depth: 11, section: 12, note: 13 },
};

export const SCHEDULE_FIELD_NAMES = (Object.keys(order) as ScheduleField[]).sort(
  (a, b) => order[a] - order[b],
);
