import { expect, it } from 'vitest';
import { SITE_RADIUS } from '#domain/contract/shapes';
import { parseEntry } from '#domain/ledger/statements';

const HOUSE = { name: '桂の家', zone: 'Asia/Tokyo', firstDay: null };
const entry = (version: number, site: object | null) => ({
  ...{ house: 'b4a0f6a0-7c1d-4b0e-9d5f-0a1b2c3d4e5f', seq: 0, at: '2026-04-01T00:00:00.000Z', by: null },
  ...{ kind: 'house.created', version, payload: { ...HOUSE, site } },
});

it('reads a site from before it had an extent with the usual one', () => {
  const point = { lat: 35, lon: 135 };
  expect(parseEntry(entry(1, point))).toMatchObject({
    ...{ version: 2, payload: { ...HOUSE, site: { ...point, radiusM: SITE_RADIUS.default } } },
  });
  expect(parseEntry(entry(1, null)).payload).toEqual({ ...HOUSE, site: null });
  expect(parseEntry(entry(2, { ...point, radiusM: 40 })).payload).toMatchObject({ site: { radiusM: 40 } });
  // What the old version never had is no entry of it.
  expect(() => parseEntry(entry(1, { ...point, radiusM: 40 }))).toThrow();
});
