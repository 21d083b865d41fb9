import { describe, expect, it } from 'vitest';
import { parseLength, SHAKU_MM } from '#domain/frame/length';

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
    ['1間半', null],
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
});
