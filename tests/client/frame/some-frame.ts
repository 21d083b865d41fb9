import type { FrameView } from '#domain/contract/frame-views';
import type { Axis } from '#domain/frame/set-out';
import type { Zone } from '#domain/frame/zone';
import { frameModel, type FrameModel } from '../../../client/screens/frame/frame-model.ts';
import { axisBetween, BAY, someGrid } from '../../support/some-grid.ts';

export const TODAY = '2026-05-01';

export const wall: Zone = {
  ...{ shape: 'wall', family: 'first', line: 'い', from: '一', to: '四', bottom: 450, top: 3250 },
  ...{ face: 'both', over: 'between-posts' },
};

interface Said {
  readonly mark: string;
  readonly axis: Axis | null;
  readonly seen?: readonly { day: string; stage: string }[];
  readonly retired?: boolean;
}

const memberOf = ({ mark, axis, seen = [], retired = false }: Said) => ({
  ...{ mark, axis, seen, retired, kind: '柱', name: '', place: '', track: 'wall' as const, problem: null },
});

/** On い a post, and a rail of three bays of which one has a record; 三 has a beam; one has no place. */
export function someFrame(
  more: readonly Said[] = [],
  coverings: readonly object[] = [plaster()],
  protections: readonly object[] = [],
): FrameModel {
  const members: Said[] = [
    {
      mark: 'い三',
      axis: axisBetween([0, 2 * BAY, 450], [0, 2 * BAY, 3250], [120, 120]),
      seen: [{ day: '2026-04-02', stage: 'raised' }],
    },
    {
      mark: 'い貫',
      axis: axisBetween([0, 0, 1250], [0, 3 * BAY, 1250], [24, 105]),
      seen: [{ day: '2026-04-10', stage: 'pegged' }],
    },
    { mark: '三梁', axis: axisBetween([0, 2 * BAY, 3250], [2 * BAY, 2 * BAY, 3250], [120, 240]) },
    { mark: '無', axis: null },
    ...more,
  ];
  const all = { members: members.map(memberOf), coverings, protections };
  const frame = { today: TODAY, grid: someGrid(), ...all };
  return frameModel(frame as unknown as FrameView);
}

export function plaster(
  facts: Partial<Record<string, unknown>> & { readonly closedDay?: string } = {},
  hidden: object = {},
): object {
  const { closedDay = null } = facts;
  const whole = [{ from: 0, to: 3 * BAY }];
  const missing = [{ from: BAY, to: 3 * BAY }];
  return {
    ...{ id: 'c', name: 'North wall', kind: 'plaster', zone: wall, plannedDay: null, closedDay: null },
    hides: [
      {
        ...{ mark: 'い貫', least: 'pegged', stretches: whole, missing, state: 'gap', onRecordSince: null },
        hiddenDay: closedDay,
        ...hidden,
      },
    ],
    ...facts,
  };
}
