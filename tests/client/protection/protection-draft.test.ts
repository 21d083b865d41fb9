import { describe, expect, test } from 'vitest';
import { ProtectionFacts, type ProtectionView } from '#domain/contract/protection';
import type { Mark } from '#domain/frame/mark';
import {
  NOTHING_LAID,
  draftOfProtection,
  factsOfProtection,
  isChanged,
  laidFault,
  liftedFault,
  reduceProtection,
  type ProtectionEvent,
} from '../../../client/screens/protection/protection-draft.ts';
import { closingTime, type When } from '../../../client/screens/coverings/closing-preview.ts';

const TOKYO = 'Asia/Tokyo';
const play = (...events: ProtectionEvent[]) => events.reduce(reduceProtection, NOTHING_LAID);
const at = (text: string): When => ({ is: 'earlier', text, time: closingTime(text, TOKYO) });
const zone: ProtectionView['zone'] = {
  ...{ shape: 'wall', family: 'first', line: 'い', from: '一', to: '二', bottom: 300, top: 600 },
  ...{ face: 'both', over: 'over-posts' },
};
const LAID: ProtectionView = {
  ...{ id: 'p', name: 'North sill', what: 'sheet', note: 'nailed', liftingDay: '2026-04-06' },
  ...{ zone, except: ['い二' as Mark], laidBy: null, changedAt: '', lifted: null, withdrawn: null },
  laidAt: '2026-04-03T23:00:42.123Z',
  hides: [
    { mark: 'い一' as Mark, stretch: null, byZone: false },
    { mark: 'い三' as Mark, stretch: { from: 0, to: 910 }, byZone: true },
  ],
};

describe('what was laid', () => {
  test('is said with its members and its time on site, or now', () => {
    const draft = play(
      { type: 'write', field: 'name', text: ' North sill ' },
      { type: 'write-what', text: ' sheet ' },
      { type: 'write', field: 'plannedDay', text: '2026-04-06' },
      { type: 'tick', members: [{ mark: 'い一' as Mark, track: 'timber' }] },
    );
    const facts = factsOfProtection(draft, 'mm');
    expect(facts).toEqual({
      ...{ name: 'North sill', what: 'sheet', note: '', liftingDay: '2026-04-06', laidAt: null },
      ...{ zone: null, except: [], hides: ['い一'] },
    });
    const timed = reduceProtection(draft, { type: 'choose-when', when: at('2026-04-04T08:00') });
    expect(factsOfProtection(timed, 'mm').laidAt).toBe('2026-04-03T23:00:00.000Z');
    expect(ProtectionFacts.parse(factsOfProtection(timed, 'mm'))).toEqual(factsOfProtection(timed, 'mm'));
  });
  test('comes back as it was said: to the millisecond, without what only lies in its zone', () => {
    const draft = draftOfProtection(LAID, 'mm', TOKYO);
    expect(draft.when).toMatchObject({ text: '2026-04-04T08:00' });
    const { name, what, note, liftingDay, except, laidAt } = LAID;
    expect(factsOfProtection(draft, 'mm')).toEqual({
      ...{ name, what, note, liftingDay, zone, except, laidAt, hides: ['い一'] },
    });
    expect(isChanged(draft, draftOfProtection(LAID, 'mm', TOKYO))).toBe(false);
  });
  test.each([
    [{ type: 'write-what', text: 'felt' }],
    [{ type: 'choose-when', when: at('2026-04-04T09:00') }],
    [{ type: 'untick', marks: ['い一'] }],
  ] as [ProtectionEvent][])('is changed by %o', (event) => {
    const start = draftOfProtection(LAID, 'mm', TOKYO);
    expect(isChanged(reduceProtection(start, event), start)).toBe(true);
  });
});

describe('times that cannot be', () => {
  const now = new Date('2026-04-10T00:00:00.000Z');
  test.each([
    [{ is: 'now' }, null, null],
    [at(''), null, 'badTime'],
    [at('2026-04-11T08:00'), null, 'future'],
    [at('2026-04-05T08:00'), '2026-04-06T00:00:00.000Z', null],
    [at('2026-04-07T08:00'), '2026-04-06T00:00:00.000Z', 'afterLifting'],
    [{ is: 'now' }, '2026-04-06T00:00:00.000Z', 'afterLifting'],
  ] as [When, string | null, string | null][])('laid %o, lifted %s: %s', (when, lifted, fault) =>
    expect(laidFault(when, now, lifted)).toBe(fault),
  );
  test.each([
    [{ is: 'now' }, null],
    [at('2026-04-04T08:00'), 'beforeLaying'],
    [at('2026-04-05T08:00'), null],
    [at('2026-04-11T08:00'), 'future'],
  ] as [When, string | null][])('laid on the 5th, lifted %o: %s', (when, fault) =>
    expect(liftedFault(when, now, '2026-04-04T23:00:00.000Z')).toBe(fault),
  );
});
