import { describe, expect, test } from 'vitest';
import { HouseFacts, SITE_RADIUS } from '#domain/contract/shapes';
import {
  draftOf,
  emptiesSite,
  emptyDraft,
  isBegun,
  isChanged,
  readDraft,
  readPosition,
  readRadius,
} from '../../../client/screens/houses/house-draft.ts';
import { allZones, narrowZones } from '../../../client/screens/houses/zones.ts';

describe('a position', () => {
  // 35°00′41.8″ N 135°46′05.2″ E: ISO 6709 puts latitude before longitude, south and west negative.
  test.each([
    ['35.0116, 135.7681', { lat: 35.0116, lon: 135.7681 }],
    ['３５．０１１６、１３５．７６８１', { lat: 35.0116, lon: 135.7681 }],
    ['-33.86 151.21', { lat: -33.86, lon: 151.21 }],
    ['−33.86°, 151.21°', { lat: -33.86, lon: 151.21 }],
    ['(35.0116, 135.7681)', { lat: 35.0116, lon: 135.7681 }],
    ['NaN, 135', undefined],
    ['35, Infinity', undefined],
    ['  ', null],
    ['91, 0', undefined],
    ['0, 181', undefined],
    ['35.0116', undefined],
    ['135.7681, 35.0116', undefined],
    ['Kyoto', undefined],
  ])('%j', (text, expected) => {
    expect(readPosition(text)).toEqual(expected);
  });
});

describe('the form of a house', () => {
  const facts = HouseFacts.parse({
    name: '桂の家',
    zone: 'Asia/Tokyo',
    firstDay: '2026-04-01',
    site: { lat: 35, lon: 135.5, radiusM: 80 },
  });
  test('gives back what was put in', () => {
    expect(readDraft(draftOf(facts))).toEqual({ facts });
  });
  test('names everything that stands in the way', () => {
    expect(readDraft({ ...emptyDraft(null), site: 'x' })).toEqual({ wrong: ['name', 'zone', 'site'] });
  });
  test('is changed by another value, not by another way to write the same', () => {
    const draft = draftOf(facts);
    expect(isChanged({ ...draft, name: ' 桂の家', site: '35.000 135.50' }, facts)).toBe(false);
    for (const other of [
      { name: 'x' },
      { name: '' },
      { zone: 'UTC' },
      { firstDay: '' },
      { site: '' },
      { site: 'x' },
      { radius: '81' },
      { radius: 'x' },
    ])
      expect(isChanged({ ...draft, ...other }, facts), JSON.stringify(other)).toBe(true);
  });
  test.each([
    ['100', 100],
    ['１２０ m', 120],
    ['10', 10],
    ['9.9', undefined],
    ['10001', undefined],
    ['-50', undefined],
    ['', undefined],
    ['NaN', undefined],
    ['1e3', undefined],
  ])('reads %j as a radius', (text, metres) => expect(readRadius(text)).toBe(metres));
  test('asks for a radius only where there is a position', () => {
    const draft = { ...draftOf(facts), radius: 'x' };
    expect(readDraft(draft)).toEqual({ wrong: ['radius'] });
    expect(readDraft({ ...draft, site: '' })).toMatchObject({ facts: { site: null } });
  });
  test('proposes the radius and keeps to the range of the contract', () => {
    expect(readRadius(emptyDraft(null).radius)).toBe(SITE_RADIUS.default);
    expect([readRadius(`${SITE_RADIUS.min}`), readRadius(`${SITE_RADIUS.max}`)]).toEqual([
      SITE_RADIUS.min,
      SITE_RADIUS.max,
    ]);
  });
  test('is begun by typing, not by the zone that is proposed', () => {
    expect(isBegun(emptyDraft('Asia/Tokyo'))).toBe(false);
    expect(isBegun({ ...emptyDraft(null), firstDay: '2026-04-01' })).toBe(true);
  });
  test('may leave day and position empty', () => {
    expect(readDraft({ ...emptyDraft('UTC'), name: ' A ' })).toEqual({
      facts: { name: 'A', zone: 'UTC', firstDay: null, site: null },
    });
  });
});

describe('the list of zones', () => {
  test('is narrowed by words in any order, blanks for underscores', () => {
    const found = narrowZones(['America/New_York', 'Asia/Tokyo', 'America/Nome'], 'york new');
    expect(found.map(({ id }) => id)).toEqual(['America/New_York']);
    expect(narrowZones(['Asia/Tokyo'], '')).toHaveLength(1);
  });
  test('holds the zone in use even when the browser does not list it', () => {
    expect(allZones('Asia/Nowhere')[0]).toBe('Asia/Nowhere');
    expect(allZones('Asia/Tokyo').filter((zone) => zone === 'Asia/Tokyo')).toHaveLength(1);
  });
});

describe('a position that is taken away', () => {
  const site = { lat: 35, lon: 135.5, radiusM: 80 };
  test.each([
    ['', site, true],
    ['　 ', site, true],
    ['35, 135.5', site, false],
    ['Kyoto', site, false],
    ['', null, false],
  ])('%j where there was %j: %s', (typed, was, expected) =>
    expect(emptiesSite({ site: typed }, { site: was })).toBe(expected),
  );
});
