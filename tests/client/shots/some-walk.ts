import type { AskedLineView, ShotListView, ShotPlaceView, ShotView } from '#domain/contract/shot-views';
import type { Mark } from '#domain/frame/mark';
import { someGrid } from '../../support/some-grid.ts';

export function shot(
  mark: string,
  parts: readonly [from: number, to: number][],
  covering = 'wall',
): ShotView {
  return {
    ...{ mark: mark as Mark, kind: '貫', place: '', coverings: [covering], least: 'pegged' },
    ...{ views: 1, whole: false },
    stretches: parts.map(([from, to]) => ({
      ...{ from, to, fromMark: null, toMark: null },
      ...{ start: { x: 0, y: from }, end: { x: 0, y: to } },
    })),
    nearestMiss: 'no-photo',
  };
}

export function placeOf(more: Partial<ShotPlaceView> = {}): ShotPlaceView {
  return {
    ...{ level: '1F', between: ['い一', 'ろ二'], before: null, eye: { x: 910, y: 910 } },
    ...{ footing: 'ground', closes: '2026-05-03', turns: [] },
    ...more,
  };
}

export function walkOf(shots: readonly ShotView[], more: Partial<ShotListView> = {}): ShotListView {
  return {
    ...{ asOf: '2026-05-01T00:00:00.000Z', today: '2026-05-01', grid: someGrid(), coverings: [] },
    places: [placeOf({ turns: [{ look: { family: 'first', line: 'い' }, shots: [...shots] }] })],
    ...{ unseen: [], placeless: [], asked: [], lying: [], later: 0 },
    ...more,
  };
}

/** How a rail stands for a covering; without a stretch said, all of it is hidden. */
export function askedLine(state: AskedLineView['state'], more: Partial<AskedLineView> = {}): AskedLineView {
  return { mark: 'rail' as Mark, state, hidden: null, missing: [], lostBefore: [], ...more };
}

export function asked(
  lines: readonly AskedLineView[],
  id = 'wall',
  hasClosed = false,
): ShotListView['asked'][number] {
  return { id, name: id, hasClosed, lines: [...lines] };
}
