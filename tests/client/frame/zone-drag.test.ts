import { describe, expect, it } from 'vitest';
import { draggedZone, heightsOf, usualHeights } from '../../../client/screens/frame/zone-drag.ts';
import { BAY } from '../../support/some-grid.ts';
import { someFrame, wall } from './some-frame.ts';

const model = someFrame();
const reader = model.reader!;
const sheet = (key: string) => model.sheets.find((one) => one.key === key)!;
const HEIGHTS = { bottom: 150, top: 450 };

describe('a zone drawn by hand', () => {
  it('is a wall between the nearest lines and heights, whichever way it is dragged', () => {
    const drag = (a: [number, number], b: [number, number]) =>
      draggedZone(sheet('first:い'), { u: a[0], v: a[1] }, { u: b[0], v: b[1] }, reader, null, HEIGHTS);
    const drawn = { ...wall, from: '二', to: '又三', bottom: 450, top: 3250 };
    expect(drag([-BAY + 90, -500], [-2.5 * BAY - 100, -3100])).toEqual(drawn);
    expect(drag([-2.5 * BAY - 100, -500], [-BAY + 90, -3100])).toEqual(drawn);
    expect(drag([-BAY, -500], [-BAY - 20, -3100])).toBeNull();
    expect(drag([-BAY, -500], [-2 * BAY, -520])).toBeNull();
  });

  it('keeps on which side a wall is covered and whether its posts stay visible', () => {
    const before = { ...wall, face: 'lower', over: 'over-posts' } as const;
    const zone = draggedZone(
      sheet('first:い'),
      { u: 0, v: -450 },
      { u: -BAY, v: -3250 },
      reader,
      before,
      HEIGHTS,
    );
    expect(zone).toMatchObject({ from: '一', to: '二', face: 'lower', over: 'over-posts' });
  });

  it('snaps to where members end too', () => {
    expect(heightsOf(sheet('first:い'))).toEqual([450, 3250, 6000, 1250]);
  });

  it('is an area between two crossings on a plan', () => {
    const zone = draggedZone(
      sheet('level:1F'),
      { u: 30, v: -40 },
      { u: -2 * BAY, v: 1.4 * BAY },
      reader,
      null,
      HEIGHTS,
    );
    expect(zone).toEqual({ shape: 'flat', corners: ['い一', 'は又二'], ...HEIGHTS });
  });

  it('hides what bears a floor, and of a ceiling what bears the floor above', () => {
    expect(usualHeights('floor', sheet('level:2F'), reader)).toEqual({ bottom: 2950, top: 3250 });
    expect(usualHeights('ceiling', sheet('level:1F'), reader)).toEqual({ bottom: 2950, top: 3250 });
  });
});
