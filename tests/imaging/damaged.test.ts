import { describe, expect, it } from 'vitest';
import { decideCapture } from '#domain/photo/capture-time';
import type { Readings } from '#domain/contract/shapes';
import { HAS_SAMPLES, sample, sampleJson, sampleNames, saySoWithoutSamples } from '../support/samples.ts';
import { useImaging } from './some-pictures.ts';

const { imaging, file } = useImaging();

interface Outcome {
  readonly end: string;
  readonly readings: Readings | null;
}

/** Through the whole way of a photo: looked at, then pictures made of it. */
async function pass(path: string): Promise<Outcome> {
  const inspection = await imaging().inspect(path);
  if (!inspection.ok) return { end: inspection.code, readings: null };
  const to = { thumb: file('thumb.jpg'), preview: file('preview.jpg') };
  const { state } = await imaging().makePictures(path, inspection.mediaType, to);
  return { end: state, readings: inspection.readings };
}

const REFUSALS = ['photo-empty', 'photo-not-an-image', 'photo-type-not-supported', 'photo-damaged'];
const TAKEN = ['ready', 'damaged'];
const ANY = [...REFUSALS, ...TAKEN, 'unreadable', 'photo-too-many-pixels'];

/** What each expectation of damaged/expected_made.json allows. */
const ALLOWED: Record<string, readonly string[]> = {
  accept: ['ready'],
  'accept-first-frame': ['ready'],
  'accept-value-unknown': ['ready'],
  'accept-with-warning': TAKEN,
  'accept-if-heic-supported': ['ready'],
  'accept-if-tiff-supported': ['ready'],
  'accept-or-reject': ANY,
  'reject-or-accept-by-policy': ['ready', 'photo-too-many-pixels'],
  'flag-damaged': ['damaged', 'unreadable'],
  'reject-by-size': ['photo-too-many-pixels'],
  reject: REFUSALS,
};

/** Where we end otherwise than expected, and why that is right or cannot be helped. */
const OTHERWISE: Record<string, readonly [end: string, reason: string]> = {
  'made/bitflips_entropy_20.jpg': ['ready', 'the flipped bits give valid codes: no decoder can see them'],
  'made/animated.gif': [
    'photo-type-not-supported',
    'GIF is no photo format; the kinds taken are a closed list',
  ],
  'made/progressive_60_extra_scans.jpg': [
    'photo-damaged',
    'libjpeg gives no pixel at all, so it is refused at once',
  ],
};

const TIME_LIMIT = 10_000;
const expected: Record<string, { expect: string; how: string }> = HAS_SAMPLES
  ? (sampleJson('damaged', 'expected_made.json') as Record<string, { expect: string; how: string }>)
  : {};

/** The value that 'accept-value-unknown' speaks of, by the start of the file's name. */
function unknownValue(name: string, readings: Readings): unknown {
  if (name.startsWith('date_'))
    return decideCapture(readings, 'Asia/Tokyo').state === 'undated' ? null : 'dated';
  if (name.startsWith('offset_')) return readings.offsetMinutes;
  if (name.startsWith('heading_')) return readings.heading;
  if (name.startsWith('subsec_')) return readings.wallTime?.includes('.') ? readings.wallTime : null;
  return readings.position;
}

describe('the damaged set', () => {
  saySoWithoutSamples();

  it.each(Object.entries(expected))('%s', async (name, { expect: expectation }) => {
    const started = performance.now();
    const { end, readings } = await pass(sample('damaged', name));
    expect(performance.now() - started).toBeLessThan(TIME_LIMIT);
    const [known] = OTHERWISE[name] ?? [];
    if (known !== undefined) expect([end, ALLOWED[expectation]?.includes(end)]).toEqual([known, false]);
    else expect(ALLOWED[expectation]).toContain(end);
    if (expectation !== 'accept-value-unknown') return;
    expect(readings && unknownValue(name.replace('made/', ''), readings)).toBeNull();
  });

  it.each(sampleNames('damaged/fixtures'))('fixtures/%s ends in a known way and in time', async (name) => {
    const started = performance.now();
    expect(ANY).toContain((await pass(sample('damaged', 'fixtures', name))).end);
    expect(performance.now() - started).toBeLessThan(TIME_LIMIT);
  });

  // PngSuite names: x… are the corrupt ones. Source: the suite's own page by Willem van Schaik.
  it.each(sampleNames('damaged/pngsuite'))('pngsuite/%s', async (name) => {
    const { end } = await pass(sample('damaged', 'pngsuite', name));
    expect(name.startsWith('x') ? [...REFUSALS, 'damaged'] : ['ready']).toContain(end);
  });
});
