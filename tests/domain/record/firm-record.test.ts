import { describe, expect, it } from 'vitest';
import { reportLine } from '#domain/record/report-line';
import type { StandingTag } from '#domain/record/requirement';

const MEMBER = { mark: 'い二', kind: '貫', place: '', retired: false };
const OPEN = { covering: 'plaster', least: 'pegged', closedAt: null } as const;
const tag = (id: string, day: number, more: Partial<StandingTag> = {}): StandingTag => ({
  id,
  photo: `p${id}`,
  mark: 'い二',
  stage: 'pegged',
  instant: `2026-04-0${day}T03:00:00.000Z`,
  uncertaintyS: 60,
  datedBy: 'file',
  doubt: null,
  legibility: 'clear',
  findings: [],
  ...more,
});
const ids = (tags: StandingTag[]) => reportLine(MEMBER, OPEN, tags).records.map(({ tag: id }) => id);

describe('the record that is shown first', () => {
  it.each([
    ['dated by hand', { datedBy: 'by-hand' }],
    ['hard to read', { legibility: 'weak' }],
    ['with something to be looked at', { findings: [{ kind: 'clock-disagrees', accepted: null }] }],
    [
      'accepted by name',
      { findings: [{ kind: 'same-picture', accepted: { by: 'Haru', reason: 'seen on site' } }] },
    ],
    [
      'accepted although it cannot be read',
      {
        legibility: 'unreadable',
        findings: [{ kind: 'unreadable', accepted: { by: 'Haru', reason: 'seen on site' } }],
      },
    ],
  ] satisfies [string, Partial<StandingTag>][])('is a firm one before a later one %s', (_, more) =>
    expect(ids([tag('a', 8, more), tag('b', 2)])).toEqual(['b', 'a']),
  );

  it.each([
    ['a clock put right', { datedBy: 'clock-mark' }],
    ['what was not measured', { legibility: null }],
  ] satisfies [string, Partial<StandingTag>][])('is not held back by %s', (_, more) =>
    expect(ids([tag('a', 8, more), tag('b', 2)])).toEqual(['a', 'b']),
  );

  it('says what is to be looked at about it, and what stops it from counting', () => {
    const finding = { kind: 'stage-goes-back', accepted: null } as const;
    expect(reportLine(MEMBER, OPEN, [tag('a', 8, { findings: [finding] })])).toMatchObject({
      state: 'gap',
      nearestMiss: { reasons: ['contradicted'], tag: { tag: 'a', findings: [finding] } },
    });
  });
});
