import { describe, expect, it } from 'vitest';
import { toldZone } from '#domain/record/sheet/told-zone';

/** Names: Unicode CLDR. Offsets: tz database, files asia, europe, northamerica; Japan has had +09:00 alone since 1952. */
describe('a zone beside the times of a sheet', () => {
  it.each([
    ['Asia/Tokyo', 'ja', '日本標準時', '+09:00'],
    ['Asia/Tokyo', 'en', 'Japan Standard Time', '+09:00'],
    ['Europe/Berlin', 'en', 'Central European Time', '+01:00 / +02:00'],
    ['America/St_Johns', 'en', 'Newfoundland Time', '-03:30 / -02:30'],
    ['UTC', 'ja', 'UTC', '+00:00'],
    ['Etc/GMT-9', 'en', 'Etc/GMT-9', '+09:00'],
  ] as const)('%s in %s is %s, %s', (zone, lang, name, offset) => {
    expect(toldZone(zone, lang, '2026-04-03T00:05:00.000Z')).toEqual({ name, offset });
  });

  it('that is not known is told as UTC', () => {
    const told = { name: 'UTC', offset: '+00:00' };
    expect(toldZone('Nowhere/Here', 'en', '2026-04-03T00:05:00.000Z')).toEqual(told);
  });
});
