import type { FindingView } from '#domain/contract/findings';

export interface FindingWay {
  readonly word: 'settings' | 'cameras' | 'members' | 'covering' | 'member';
  readonly to: string;
}

/** Where a finding can be put right, apart from its photos. */
export function findingWays(house: string, { kind, marks, covering }: FindingView): FindingWay[] {
  const base = `/houses/${house}`;
  const [mark = ''] = marks;
  const settings: FindingWay = { word: 'settings', to: `${base}/settings` };
  const cameras: FindingWay = { word: 'cameras', to: `${base}/cameras` };
  const member: FindingWay = { word: 'member', to: `${base}/members/${encodeURIComponent(mark)}` };
  switch (kind) {
    case 'disputed':
    case 'stage-goes-back':
    case 'places-at-once':
    case 'stage-outside-track':
    case 'stages-at-once':
      return [member];
    case 'unknown-mark':
      return [{ word: 'members', to: `${base}/members` }];
    case 'off-site':
      return [settings];
    case 'before-first-day':
      return [cameras, settings];
    case 'closed-without-release':
    case 'release-taken-back':
    case 'closed-with-gaps':
    case 'shown-after-closing':
      return [{ word: 'covering', to: `${base}/coverings/${covering ?? ''}` }];
    case 'clock-disagrees':
    case 'time-unsure':
    case 'after-upload':
      return [cameras];
    case 'no-date':
    case 'unreadable':
    case 'readers-differ':
    case 'same-picture':
      return [];
  }
}
