import { describe, expect, test } from 'vitest';
import { parseMark, type Mark } from '#domain/frame/mark';
import {
  answerOf,
  hasChanged,
  hasWords,
  nextOpen,
  NOTHING_SAID,
  outcomeOf,
  say,
  takeUp,
} from '../../../client/screens/review/review-draft.ts';

const mark = (text: string): Mark => {
  const parsed = parseMark(text);
  if (!parsed.ok) throw new Error(`${text} is no mark.`);
  return parsed.mark;
};
const line = (name: string, basis: string, state: 'on-record' | 'gap' = 'on-record') => ({
  ...{ mark: mark(name), basis, state },
});
const [seen, gap, other] = [line('い一', 'a'), line('い二', 'b', 'gap'), line('い三', 'c')];
const lines = [seen, gap, other];

describe('the answers of a review', () => {
  test('are about what they were given about: another basis is asked for again', () => {
    const draft = say(NOTHING_SAID, seen, { is: 'seen' });
    expect(answerOf(draft, seen)).toEqual({ is: 'seen' });
    const now = line('い一', 'another');
    expect(answerOf(draft, now)).toBeNull();
    expect([hasChanged(draft, seen), hasChanged(draft, now), hasChanged(draft, other)]).toEqual([
      ...[false, true, false],
    ]);
  });
  test('a gap is never merely seen', () => {
    expect(answerOf(say(NOTHING_SAID, gap, { is: 'seen' }), gap)).toBeNull();
  });
  test('lead on to the next member without one, around the end', () => {
    const draft = say(NOTHING_SAID, other, { is: 'seen' });
    expect(nextOpen(draft, lines, null)).toBe('い一');
    expect(nextOpen(draft, lines, 'い一')).toBe('い二');
    expect(nextOpen(draft, lines, 'い二')).toBe('い一');
    const all = say(say(draft, seen, { is: 'seen' }), gap, { is: 'missing', note: '' });
    expect(nextOpen(all, lines, 'い三')).toBeNull();
  });
  test('offer the last three reasons, the newest first, each once', () => {
    const reasons = ['wet', 'dark', 'wet', 'hidden', 'seen on site'];
    const draft = reasons.reduce((said, reason) => say(said, gap, { is: 'waived', reason }), NOTHING_SAID);
    expect(draft.reasons).toEqual(['seen on site', 'hidden', 'wet']);
  });
  test('come to what was seen, accepted, is missing and is open', () => {
    const draft = say(say(NOTHING_SAID, seen, { is: 'seen' }), gap, { is: 'waived', reason: 'seen on site' });
    expect(outcomeOf(draft, lines)).toEqual({
      seen: [seen],
      waived: [{ line: gap, reason: 'seen on site' }],
      missing: [],
      open: [other],
    });
  });
  test('tell whoever records what to mend by a word at a member or in the note, not by blanks', () => {
    const isTold = (note: string, ofMember: string) => {
      const draft = { ...say(NOTHING_SAID, gap, { is: 'missing', note: ofMember }), note };
      return hasWords(draft, outcomeOf(draft, lines));
    };
    expect([isTold('', ''), isTold(' \n', ' '), isTold('see い二', ''), isTold('', 'too dark')]).toEqual([
      ...[false, false, true, true],
    ]);
  });
  test('stand after a refusal, but for the refused members, once', () => {
    const before = say(say(NOTHING_SAID, seen, { is: 'seen' }), gap, {
      is: 'missing',
      note: 'another photo',
    });
    const refusal = { at: '2026-11-27T13:20:00.000Z', lacking: [gap] };
    const after = takeUp(before, refusal);
    expect([answerOf(after, seen), answerOf(after, gap)]).toEqual([{ is: 'seen' }, null]);
    const again = say(after, gap, { is: 'missing', note: 'still' });
    expect(takeUp(again, refusal)).toBe(again);
    expect(takeUp(before, null)).toBe(before);
    const later = takeUp(again, { ...refusal, at: '2026-11-28T09:00:00.000Z' });
    expect(answerOf(later, gap)).toBeNull();
  });
});
