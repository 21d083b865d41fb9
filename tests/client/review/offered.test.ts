import { describe, expect, test } from 'vitest';
import type { LastRefusalView } from '#domain/contract/review-views';
import { parseMark } from '#domain/frame/mark';
import { offeredOf } from '../../../client/screens/review/offered.ts';
import { NOTHING_SAID, say } from '../../../client/screens/review/review-draft.ts';

const parsed = parseMark('い一');
if (!parsed.ok) throw new Error('No mark.');
const { mark } = parsed;
const line = { mark, basis: 'a', state: 'gap' as const };
const said = { at: '2026-11-27T13:20:00.000Z', by: null };
const lastRefusal: LastRefusalView = {
  ...{ ...said, note: '', takenBack: false },
  lacking: [{ mark, note: 'another photo', saidSince: false }],
};
const nothing = { draft: NOTHING_SAID, lastRefusal: null, lastWaived: null };

describe('what is offered to be said of a member', () => {
  test('is nothing where nothing was said', () => {
    expect(offeredOf(nothing, line, [])).toEqual({ reason: '', lacks: '' });
  });
  test('is why it was accepted in the release that was taken back', () => {
    const lastWaived = { ...said, waived: [{ mark, reason: 'seen on site' }] };
    expect(offeredOf({ ...nothing, lastWaived }, line, [])).toEqual({ reason: 'seen on site', lacks: '' });
  });
  test('is what was missing last, but the reason of a doubt before that; neither is a reason to accept', () => {
    expect(offeredOf({ ...nothing, lastRefusal }, line, [])).toEqual({ reason: '', lacks: 'another photo' });
    const draft = { ...NOTHING_SAID, doubts: { い一: { tag: 'a', reason: 'This is い二.' } } };
    expect(offeredOf({ ...nothing, lastRefusal, draft }, line, [])).toEqual({
      ...{ reason: '', lacks: 'This is い二.' },
    });
  });
  test('is not what was missing before something new came on record', () => {
    const lacking = lastRefusal.lacking.map((one) => ({ ...one, saidSince: true }));
    expect(offeredOf({ ...nothing, lastRefusal: { ...lastRefusal, lacking } }, line, []).lacks).toBe('');
  });
  test('is before all else what the same person said of it, also of another basis', () => {
    const draft = say(NOTHING_SAID, { ...line, basis: 'b' }, { is: 'waived', reason: 'from the loft' });
    expect(offeredOf({ ...nothing, draft }, line, []).reason).toBe('from the loft');
  });
});
