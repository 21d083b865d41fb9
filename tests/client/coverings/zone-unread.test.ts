import { expect, test } from 'vitest';
import type { StatedGrid } from '#domain/contract/frame-shapes';
import type { Zone } from '#domain/frame/zone';
import { zoneUnread } from '../../../client/screens/coverings/zone-unread.ts';
import { someGrid } from '../../support/some-grid.ts';

const grid: StatedGrid = { unit: 'mm', ...structuredClone(someGrid()) };
const fewer: StatedGrid = { ...grid, first: { ...grid.first, lines: grid.first.lines.slice(0, 2) } };
const wall = (line: string): Zone => ({
  ...{ shape: 'wall', family: 'first', line, from: '一', to: '三' },
  ...{ bottom: 450, top: 3250, face: 'both', over: 'between-posts' },
});
const flat = (corners: string[]): Zone => ({ shape: 'flat', corners, bottom: 300, top: 450 });

test('says why a zone has no place in the grid', () => {
  expect(zoneUnread(null, grid)).toBeNull();
  expect(zoneUnread(null, null)).toBeNull();
  expect(zoneUnread(wall('は'), grid)).toBeNull();
  expect(zoneUnread(wall('は'), fewer)).toBe('lines');
  expect(zoneUnread(wall('は'), null)).toBe('lines');
  expect(zoneUnread(flat(['い一', 'は三']), grid)).toBeNull();
  expect(zoneUnread(flat(['い一', 'は三']), fewer)).toBe('lines');
  // Lies in one line, and so takes no space.
  expect(zoneUnread(flat(['い一', 'い三']), grid)).toBe('shape');
});
