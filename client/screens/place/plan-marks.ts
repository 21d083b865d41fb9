import type { Place } from '#domain/contract/place';
import type { PlanMark } from '../../parts/plan-layout.ts';
import { isTrue } from './place-words.ts';

/** What the plan draws of one photo: where its file puts it, and where the device was that added it. */
export function marksOf(id: string, { position, heading, fieldOfView, device }: Place): PlanMark[] {
  const marks: PlanMark[] = [];
  if (device) marks.push({ id, kind: 'device', at: device, errorM: device.errorM, view: null });
  if (position) {
    const view =
      heading && isTrue(heading)
        ? { degrees: heading.trueDegrees, opening: fieldOfView?.horizontal ?? null }
        : null;
    marks.push({ id, kind: 'photo', at: position, errorM: position.errorM, view });
  }
  return marks;
}
