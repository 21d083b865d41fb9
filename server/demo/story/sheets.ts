import type { Act } from './act.ts';
import { momentOf } from './build-time.ts';
import type { Ids } from './ids.ts';

/** A foot tie that is finished lies under a sheet while the crew walks over it. */
export function sheets(raising: string, { house, next }: Ids): Act[] {
  const protection = next();
  const at = (day: number, clock: string) => momentOf(raising, day, clock);
  const post = (when: string, path: string, body: unknown): Act => ({
    ...{ at: when, by: 'second', does: 'say', method: 'POST', path, body },
  });
  const [laidAt, liftedAt] = [at(16, '16:30'), at(17, '17:30')];
  const facts = {
    ...{ id: protection, name: 'は通り足固めの養生', what: 'ブルーシート blue sheet' },
    ...{ hides: ['は通り足固め'], laidAt },
  };
  return [
    post(laidAt, `/houses/${house}/protections`, facts),
    post(liftedAt, `/protections/${protection}/lift`, { liftedAt }),
  ];
}
