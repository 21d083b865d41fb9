import { describe, expect, test } from 'vitest';
import type { CameraView } from '#domain/contract/clock';
import { clockShift, isFarOff, shiftSentences } from '../../../client/screens/bench/clock-shift.ts';
import { LANGUAGES, wordsOf } from '../words.ts';

const ZONE = 'Asia/Tokyo';
const shown = { wallTime: '2026-04-03T14:57:12', offsetMinutes: null };

describe('what a clock mark adds', () => {
  test('is the true time less what the clock showed, by its own zone or the house’s', () => {
    expect(clockShift(shown, '2026-04-03T05:20:00.000Z', ZONE)).toBe(-2232);
    expect(clockShift({ ...shown, offsetMinutes: 0 }, '2026-04-03T15:00:00.000Z', ZONE)).toBe(168);
  });
  test('is nothing without a time', () => {
    expect(clockShift(shown, null, ZONE)).toBeNull();
    expect(clockShift({ ...shown, wallTime: null }, '2026-04-03T05:20:00.000Z', ZONE)).toBeNull();
  });
  test.each([
    [null, false],
    [0, false],
    [86_399, false],
    [-86_399, false],
    [86_400, true],
    [-31_536_000, true],
  ])('of %s s is far off: %s', (seconds, expected) => expect(isFarOff(seconds)).toBe(expected));
});

describe.each(LANGUAGES)('said before it is made, in %s', async (lang) => {
  const t = await wordsOf(lang);
  const en = lang === 'en';
  const say = (seconds: number, camera?: { photos: number; marks: [] }) =>
    shiftSentences(t, lang, seconds, camera).join(' ');
  test('slow, fast, or right', () => {
    expect(say(2232)).toContain(en ? 'slow by 37 min 12 s' : '37分12秒 遅れて');
    expect(say(2232)).toContain(en ? 'move by +37 min 12 s' : '+37分12秒 補正');
    expect(say(-2232)).toContain(en ? 'fast by 37 min 12 s' : '37分12秒 進んで');
    expect(say(-2232)).toContain(en ? 'move by −37 min 12 s' : '−37分12秒 補正');
    expect(say(0.3)).not.toMatch(/[+−±]/);
  });
  test('with how many photos follow, where that is known', () => {
    expect(say(-60, { photos: 1234, marks: [] })).toMatch(en ? /All 1,234 photos/ : /1,234枚すべて/);
    expect(say(-60, { photos: 1, marks: [] })).toMatch(en ? /The only photo .* moves/ : /1枚/);
    expect(say(-60)).not.toMatch(/\{|undefined|clock\./);
  });
  test('and that other marks have a say', () => {
    const marks = [{}] as unknown as CameraView['marks'];
    expect(shiftSentences(t, lang, -60, { photos: 8, marks }).join(' ')).toMatch(
      en ? /other clock marks/ : /ほかの照合/,
    );
  });
});
