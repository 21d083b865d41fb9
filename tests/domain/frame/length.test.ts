import { describe, expect, it } from 'vitest';
import { LENGTH_UNITS, lengthText, parseLength, SHAKU_MM } from '#domain/frame/length';

describe('a length', () => {
  // 1 shaku = 10/33 m ("10/33m≒30.303cm"), 1891 law of weights and measures; ken = 6 shaku (CLDR, okuta.com:
  // 約181.8センチ); 京間 6.5 shaku = 1969.697 mm (toushirou.net: 1970). Not CLDR's shaku_to_m, which is 4/121.
  it.each([
    ['1尺', 303.03],
    ['1間', 1818.182],
    ['6.5尺', 1969.697],
    ['6.3尺', 1909.091],
    ['3尺', 909.091],
    ['3寸5分', 106.061],
    ['4寸', 121.212],
    // 半 is half of the unit before it, 半間 half a ken (three shaku): common practice.
    ['1間半', 2727.273],
    ['一間半', 2727.273],
    ['1 間 半', 2727.273],
    ['半間', 909.091],
    ['三尺半', 1060.606],
    ['4寸半', 136.364],
    ['一尺', 303.03],
    ['六尺', 1818.182],
    ['一間', 1818.182],
    ['九尺', 2727.273],
    ['十二尺', 3636.364],
    ['二〇尺', 6060.606],
    ['三尺五寸', 1060.606],
    ['一間三尺', 2727.273],
    ['3尺五寸', 1060.606],
    ['-六尺', -1818.182],
    ['十十尺', null],
    ['五寸三尺', null],
    ['6.5尺半', null],
    ['半間半', null],
    ['一間半3寸', null],
    ['3十尺', null],
    ['六', null],
    ['半', null],
    ['尺', null],
    ['六m', null],
    ['6m半', null],
    ['1ken半', null],
    ['1間3尺', 2727.273],
    ['５４６０', 5460],
    ['5,460', 5460],
    ['5.46m', 5460],
    ['5.46 m', 5460],
    ['45cm', 450],
    ['12\'6"', 3810],
    ['8 ft', 2438.4],
    ['+900', 900],
    ['-450mm', -450],
    ['3尺2間', null],
    ['1.2.3', null],
    ['', null],
    ['abc', null],
    ['1e3', null],
    ['∞', null],
  ] as const)('%s', (text, mm) =>
    mm === null ? expect(parseLength(text)).toBeNull() : expect(parseLength(text)).toBeCloseTo(mm, 3),
  );
  it('without a unit is in that of the house', () => {
    expect(parseLength('12', 'shaku')).toBeCloseTo(12 * SHAKU_MM, 3);
    expect(parseLength('6', 'inch')).toBeCloseTo(152.4, 3);
    expect(parseLength('900mm', 'shaku')).toBe(900);
  });
  it('in kanji means the same whatever the unit of the house, and comes back from each', () => {
    for (const unit of LENGTH_UNITS) {
      const mm = parseLength('三尺五寸', unit) ?? NaN;
      expect(mm).toBe(parseLength('3.5', 'shaku'));
      expect(parseLength(lengthText(mm, unit), unit)).toBeCloseTo(mm, 2);
    }
  });
});
