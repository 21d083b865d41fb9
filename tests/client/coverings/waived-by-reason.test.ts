import { expect, test } from 'vitest';
import type { CoveringLine } from '../../../client/screens/coverings/closing-preview.ts';
import { waivedByReason } from '../../../client/screens/coverings/waived-by-reason.ts';

const line = (mark: string, state: CoveringLine['state'], reason: string | null) => {
  const by = { id: 'a', name: '佐藤 光' };
  const waiver = reason === null ? null : { release: 'r', at: '', by, reason, takenBack: null };
  return { mark, state, waiver } as CoveringLine;
};

test('members accepted for the same reason stand together, others by themselves', () => {
  const lines = [
    line('い一', 'waived', 'seen on site'),
    line('い二', 'on-record', null),
    line('い三', 'waived', 'behind the scaffold'),
    line('ろ一', 'waived', 'seen on site'),
  ];
  expect(waivedByReason(lines)).toEqual([
    { marks: ['い一', 'ろ一'], who: '佐藤 光', reason: 'seen on site' },
    { marks: ['い三'], who: '佐藤 光', reason: 'behind the scaffold' },
  ]);
});

test('what is accepted by a release no longer standing is not among them', () =>
  expect(waivedByReason([line('い一', 'lost', 'seen on site')])).toEqual([]));
