import { dayAfter, type InventedHouse } from '../invented-house.ts';
import { coveringsOf } from './coverings.ts';
import { floorsOf } from './floors.ts';
import { frameOf } from './frame.ts';
import { gridOf, linesOf } from './lines.ts';
import { USUAL_SIZE, type BoathouseSize } from './measures.ts';
import { roofOf } from './roof.ts';

/**
 * A boat shed on a lake, with or without a loft to live in, of any number of bays: posts on stones, foot ties, rails,
 * a loft floor, and a roof that steps up on struts. The bay before the east wall is the slip. The same size gives the same
 * house. Throws RangeError for a size that cannot be built so.
 */
export function boathouse(firstDay: string, size: BoathouseSize = USUAL_SIZE): InventedHouse {
  const lines = linesOf(size);
  return {
    ...{ name: '谷の舟小屋', firstDay },
    grid: gridOf(lines, size),
    members: [...frameOf(lines, size), ...floorsOf(lines, size), ...roofOf(lines, size)],
    coverings: coveringsOf(lines, size, firstDay),
    days: [
      { day: firstDay, text: size.storeys === 2 ? '建方。一階の柱、足固め、床梁。' : '建方。柱、足固め。' },
      {
        day: dayAfter(firstDay, 1),
        text: size.storeys === 2 ? '二階の柱、桁、小屋組、棟木。' : '桁、小屋組、棟木。',
      },
      { day: dayAfter(firstDay, 5), text: '貫を通し、楔を打つ。' },
    ],
  };
}
