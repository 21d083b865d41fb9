import type { Act } from './act.ts';
import { momentOf } from './build-time.ts';

const PHOTO = 'slip-wall-lath';

/** The inspector is not sure of what is said first of a photo; nobody has answered yet. */
export function doubts(raising: string, said: readonly Act[]): Act[] {
  const of = said.find((act) => act.does === 'tag' && act.photo === PHOTO);
  if (of?.does !== 'tag') return [];
  const reason =
    '楔が写っていない。通しただけではないか。 No wedge is to be seen: has it been put through only?';
  return [
    {
      ...{ at: momentOf(raising, 27, '10:20'), by: 'inspector' },
      ...{ does: 'say', method: 'POST', path: `/tags/${of.tag.id}/dispute`, body: { reason } },
    },
  ];
}
