import { describe, expect, test } from 'vitest';
import type { Place } from '#domain/contract/place';
import { followLine } from '#domain/place/geodesic';
import { lengthWords } from '../../../client/screens/place/length-words.ts';
import { marksOf } from '../../../client/screens/place/plan-marks.ts';
import { planWords } from '../../../client/screens/place/place-words.ts';
import { wordsOf } from '../words.ts';

const SITE = { lat: 35.0116, lon: 135.7681, radiusM: 100 };
const at = (azimuth: number, distanceM: number) => followLine(SITE, { azimuth, distanceM });
const heading = {
  ...{ trueDegrees: 247, stated: 255, reference: 'magnetic' as const, flags: [] },
  ...{ declination: -8, declinationUncertainty: 0.3 },
};
const place: Place = {
  position: { ...at(45, 62), errorM: 10, errorStated: true, altitudeM: null, datum: 'wgs-84' },
  heading,
  fieldOfView: { horizontal: 67, vertical: 53 },
  site: { distanceM: 62, azimuth: 45, verdict: 'on-site' },
  device: null,
};

describe('what the plan shows, in words', () => {
  test('in English', async () => {
    const t = await wordsOf('en');
    expect(planWords(t, 'en', place, SITE)).toBe(
      '62 m north-east of the site’s middle, ± 10 m, looking west-south-west',
    );
    expect(planWords(t, 'en', place, null)).toMatch(/^35\.01\d+, 135\.76\d+, looking/);
  });
  test('in Japanese', async () => {
    const t = await wordsOf('ja');
    expect(planWords(t, 'ja', place, SITE)).toBe('現場の中心から北東へ 62 m、誤差 ±10 m、西南西向き');
  });
  test('names the device apart, and nothing where there is nothing', async () => {
    const t = await wordsOf('en');
    const device = { ...at(180, 30), errorM: 20, measuredAt: '2026-04-01T00:00:00.000Z', by: null };
    const alone = { ...place, position: null, site: null, device };
    expect(planWords(t, 'en', alone, SITE)).toBe('device: 30 m south of the site’s middle, ± 20 m');
    expect(marksOf('p', alone)).toMatchObject([{ kind: 'device', view: null }]);
    expect(planWords(t, 'en', { ...alone, device: null }, SITE)).toBeNull();
  });
  test('does not say where a camera looked that could not be turned to true north', async () => {
    const t = await wordsOf('en');
    const lost = { ...place, heading: { ...heading, flags: ['no-magnetic-model' as const] } };
    expect(planWords(t, 'en', lost, SITE)).not.toMatch(/looking/);
    expect(marksOf('p', lost)[0]?.view).toBeNull();
    expect(marksOf('p', place)[0]?.view).toEqual({ degrees: 247, opening: 67 });
  });
});

test.each([
  [0.014, '0 m'],
  [4.94, '4.9 m'],
  [62.4, '62 m'],
  [999.4, '999 m'],
  [999.6, '1 km'],
  [40_123, '40.1 km'],
])('%d m is told as %s', async (metres, words) => {
  expect(lengthWords(await wordsOf('en'), 'en', metres)).toBe(words);
});
