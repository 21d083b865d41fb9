import type { InventedMember } from './invented-house.ts';

const HEADINGS = '番付,種類,場所,始点,終点,階,下端,上端,断面';

/** The schedule of an invented house as its crew would hand it in: CSV with a heading row. */
export function scheduleText(members: readonly InventedMember[]): string {
  const rows = members.map(({ mark, kind, place, setOut: { from, to, level, base, top, width, depth } }) =>
    [mark, kind, place, from, to, level, base ?? '', top ?? '', `${width ?? ''}×${depth ?? ''}`].join(','),
  );
  return [HEADINGS, ...rows].join('\n');
}
