import type { Site } from '#domain/contract/shapes';
import { dayAfter } from '#domain/frame/invented/invented-house';
import { scheduleText } from '#domain/frame/invented/schedule-text';
import type { Act } from './act.ts';
import { FIRST_DAY, ZONE, momentOf } from './build-time.ts';
import type { HousePlan } from './house-plan.ts';
import type { Ids } from './ids.ts';

/** The record is opened, the plan entered, and everybody comes in. */
export function openRecord(plan: HousePlan, raising: string, site: Site, { house, covering }: Ids): Act[] {
  const at = (clock: string) => ({ at: momentOf(raising, FIRST_DAY, clock), by: 'carpenter' as const });
  const post = (clock: string, path: string, body: unknown): Act => ({
    ...at(clock),
    ...{ does: 'say', method: 'POST', path, body },
  });
  const facts = { id: house, name: plan.name, zone: ZONE, firstDay: dayAfter(raising, FIRST_DAY), site };
  const grid = { does: 'say', method: 'PUT', path: `/houses/${house}/grid`, body: plan.grid } as const;
  return [
    post('08:00', '/houses', facts),
    { ...at('08:05'), ...grid },
    { ...at('08:15'), does: 'hand-in-schedule', text: scheduleText(plan.members) },
    ...plan.coverings.map((one) =>
      post('08:30', `/houses/${house}/coverings`, { ...one, id: covering(one.name), hides: [] }),
    ),
    ...(['second', 'inspector', 'builder'] as const).map((by): Act => ({ ...at('09:00'), by, does: 'join' })),
  ];
}
