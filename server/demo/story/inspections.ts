import type { Act } from './act.ts';
import { momentOf } from './build-time.ts';
import type { Ids } from './ids.ts';
import type { Who } from './people.ts';

export const LAKE_ROOF = '湖側の屋根 野地板';
export const HILL_ROOF = '山側の屋根 野地板';
export const WEST_WALL = '西の壁 荒壁';

/** One roof goes as it should, the other without anybody's release; the first wall waits for the inspector. */
export function inspections(raising: string, { covering, next }: Ids): Act[] {
  const post = (day: number, clock: string, by: Who, path: string, body: unknown): Act => ({
    ...{ at: momentOf(raising, day, clock), by },
    ...{ does: 'say', method: 'POST', path, body },
  });
  const of = (name: string, what: string) => `/coverings/${covering(name)}/${what}`;
  const release = {
    id: next(),
    note: '足場から全数を見た。Seen from the scaffold, all of them.',
    waived: '足場から目視、釘打ちを確認。Seen from the scaffold: nailed as the others.',
  };
  return [
    post(7, '19:10', 'carpenter', of(LAKE_ROOF, 'ready'), {
      note: '写真は揃えたつもり。 Photos are in, as far as we know.',
    }),
    {
      ...{ at: momentOf(raising, 8, '07:40'), by: 'inspector' },
      ...{ does: 'release', covering: covering(LAKE_ROOF), release },
    },
    post(8, '17:40', 'carpenter', of(LAKE_ROOF, 'close'), { note: '' }),
    post(9, '16:45', 'carpenter', of(HILL_ROOF, 'close'), {
      withoutRelease:
        '雨の前に張り終えた。検査は頼んでいない。 Boarded before the rain; nobody was asked to inspect.',
    }),
    post(28, '19:00', 'carpenter', of(WEST_WALL, 'ready'), {
      note: '明後日に塗る。足りない貫は明朝撮る。 Clay goes on the day after tomorrow; missing rails will be photographed in the morning.',
    }),
  ];
}
