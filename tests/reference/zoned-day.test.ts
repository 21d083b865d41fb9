import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayOf, isKnownZone, spanOfDay } from '#domain/record/zoned-day';

/** The reference is the engine's own time zone data (ICU), through Intl. */
function dayByIntl(instant: number, zone: string): string {
  return new Intl.DateTimeFormat('en-CA', { timeZone: zone, dateStyle: 'short' }).format(instant);
}

describe('days of a site', () => {
  it('agree with Intl for any instant of this century in any zone', () => {
    const zones = Intl.supportedValuesOf('timeZone');
    const instant = fc.date({
      min: new Date('2000-01-01'),
      max: new Date('2099-12-31'),
      noInvalidDate: true,
    });
    fc.assert(
      fc.property(instant, fc.constantFrom(...zones), (date, zone) => {
        expect(dayOf(date.toISOString(), zone)).toBe(dayByIntl(date.getTime(), zone));
      }),
      { numRuns: 400 },
    );
  });

  it('begin and end where the day of the instant changes', () => {
    const zones = ['Asia/Tokyo', 'Europe/Oslo', 'America/St_Johns', 'Australia/Lord_Howe', 'Pacific/Apia'];
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), fc.constantFrom(...zones), (days, zone) => {
        const day = new Date(Date.UTC(1990, 0, 1) + days * 86_400_000).toISOString().slice(0, 10);
        // Samoa had no 30 December 2011 at all (tz database, zone Pacific/Apia).
        fc.pre(!(zone === 'Pacific/Apia' && day === '2011-12-30'));
        const { from, to } = spanOfDay(day, zone);
        expect(dayOf(new Date(from).toISOString(), zone)).toBe(day);
        expect(dayOf(new Date(from - 1).toISOString(), zone)).not.toBe(day);
        expect(dayOf(new Date(to - 1).toISOString(), zone)).toBe(day);
        expect(dayOf(new Date(to).toISOString(), zone)).not.toBe(day);
      }),
    );
  });

  it('have 23, 24 and 25 hours (Europe/Oslo: 29 March and 25 October 2026, last Sundays, EU directive 2000/84/EC)', () => {
    const hours = (day: string) => {
      const { from, to } = spanOfDay(day, 'Europe/Oslo');
      return (to - from) / 3_600_000;
    };
    expect(['2026-03-29', '2026-04-01', '2026-10-25'].map(hours)).toEqual([23, 24, 25]);
  });

  it('are kept only in zones that have a name and a clock law', () => {
    for (const zone of ['Asia/Tokyo', 'Europe/Oslo', 'UTC']) expect(isKnownZone(zone)).toBe(true);
    for (const zone of ['', 'Mars/Olympus', '+09:00', '-05:00', 'JST-9', 'Asia/Tokyo; drop'])
      expect(isKnownZone(zone), zone).toBe(false);
  });
});
