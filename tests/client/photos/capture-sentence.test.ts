import { describe, expect, test } from 'vitest';
import { CAPTURE_FLAGS, CAPTURE_SOURCES, REJECTION_REASONS, type Capture } from '#domain/contract/capture';
import {
  againstLines,
  captureSentence,
  rejectedLines,
} from '../../../client/screens/photos/capture-sentence.ts';
import { LANGUAGES, wordsOf } from '../words.ts';

const dated: Extract<Capture, { state: 'dated' }> = {
  state: 'dated',
  instant: '2026-04-03T05:20:00.000Z',
  offsetMinutes: 540,
  day: '2026-04-03',
  source: 'own-offset',
  uncertaintyS: 1,
  flags: [],
  rejected: [],
  correction: null,
  byHand: null,
};
const ZONE = 'Asia/Tokyo';

describe.each(LANGUAGES)('when a photo was taken, in %s', async (lang) => {
  const t = await wordsOf(lang);
  test.each(CAPTURE_SOURCES)('by %s, in the time of the site', (source) => {
    const sentence = captureSentence(t, lang, ZONE, { ...dated, source });
    expect(sentence).toMatch(/14:20/);
    expect(sentence).not.toMatch(/photos\.|[{}]/);
  });
  test('says what is odd', () => {
    const said = ['clock-corrected', 'dated-by-hand'];
    for (const flag of CAPTURE_FLAGS) {
      const lines = againstLines(t, lang, '2026-04-01', { ...dated, flags: [flag] });
      expect(lines.length, flag).toBe(said.includes(flag) ? 0 : 1);
      for (const line of lines) expect(line).toMatch(/^(?!.*photos\.).{6,}/);
    }
  });
  test('says what clock marks moved, and what they confirm', () => {
    const uncorrected = '2026-04-03T05:57:12.000Z';
    const moved = (seconds: number) =>
      captureSentence(t, lang, ZONE, {
        ...dated,
        correction: { seconds, uncertaintyS: 60, basis: 'between-marks', marks: ['a', 'b'], uncorrected },
      });
    expect(moved(-2232)).toContain(
      lang === 'en' ? 'corrected by −37 min 12 s, by 2 clock marks' : '−37分12秒',
    );
    expect(moved(-2232)).toContain('14:57');
    expect(moved(-59)).not.toMatch(/14:57|[{}]/);
    expect(moved(-59)).toMatch(/confirm|確かめ/);
  });
  test('names who dated a photo by hand, and why', () => {
    const byHand = { by: { id: 'p', name: 'Sato' }, at: '2026-05-01T00:00:00.000Z', reason: 'site diary' };
    const sentence = captureSentence(t, lang, ZONE, {
      ...dated,
      source: 'by-hand',
      uncertaintyS: 43_200,
      byHand,
    });
    for (const word of ['Sato', 'site diary', '2026', '12']) expect(sentence).toContain(word);
  });
  test('lists what was not believed, with the reason', () => {
    const rejected = REJECTION_REASONS.map((why) => ({
      source: 'gps-only' as const,
      instant: '2026-04-03T05:00:00.000Z',
      offsetMinutes: 0,
      why,
    }));
    const lines = rejectedLines(t, lang, ZONE, { state: 'undated', rejected });
    expect(new Set(lines).size).toBe(REJECTION_REASONS.length);
    for (const line of lines) expect(line).toMatch(/14:00/);
  });
});

describe('the uncertainty', async () => {
  const t = await wordsOf('en');
  const say = (part: Partial<typeof dated>) => captureSentence(t, 'en', ZONE, { ...dated, ...part });
  const IF = 'if the camera’s clock was right';
  const satellite = (instant: string) => [
    { source: 'gps-only' as const, instant, offsetMinutes: 540, why: 'a-better-source-exists' as const },
  ];
  test('of a clock that nothing confirms holds only if that clock was right', () => {
    expect(say({ uncertaintyS: 60 })).toContain(`Uncertain by ± 60 s ${IF}.`);
    expect(say({ source: 'house-zone', uncertaintyS: 300 })).toContain(`Uncertain by ± 5 min ${IF}.`);
    const far = satellite('2026-04-03T06:20:00.000Z');
    expect(say({ uncertaintyS: 60, rejected: far })).toContain(IF);
  });
  test('is said as it is where a satellite, a clock mark or a person speaks too', () => {
    const uncorrected = '2026-04-03T05:57:12.000Z';
    const correction = {
      seconds: -2232,
      uncertaintyS: 60,
      basis: 'one-mark',
      marks: ['a'],
      uncorrected,
    } as const;
    const byHand = { by: null, at: '2026-05-01T00:00:00.000Z', reason: 'site diary' };
    const near = satellite('2026-04-03T05:22:30.000Z');
    const sure = [
      say({ uncertaintyS: 150, rejected: near }),
      say({ uncertaintyS: 1 }),
      say({ source: 'house-zone-and-gps', uncertaintyS: 40 }),
      say({ source: 'gps-offset', uncertaintyS: 40 }),
      say({ source: 'gps-only', uncertaintyS: 900 }),
      say({ source: 'house-zone', uncertaintyS: 60, correction: { ...correction, marks: ['a'] } }),
      say({ source: 'by-hand', uncertaintyS: 3600, byHand }),
    ];
    for (const sentence of sure) {
      expect(sentence).toMatch(/Uncertain by ± \d+ \w+\./);
      expect(sentence).not.toContain(IF);
    }
  });
});

test('the uncertainty is in seconds, minutes or hours', async () => {
  const t = await wordsOf('en');
  const within = (uncertaintyS: number) => captureSentence(t, 'en', ZONE, { ...dated, uncertaintyS });
  expect(within(0.5)).not.toContain('±');
  expect(within(60)).toContain('± 60 s');
  expect(within(900)).toContain('± 15 min');
  expect(within(7200)).toContain('± 2 h');
});
