import { describe, expect, it } from 'vitest';
import type { Capture, CaptureFlag } from '#domain/contract/capture';
import { decideCapture } from '#domain/photo/capture-time';
import { doubtCapture } from '#domain/photo/capture-doubt';
import { basisOf, finding } from '#domain/record/findings/finding';
import { FINDING_KINDS, isOfPhotos, stopsRecords, type FindingKind } from '#domain/record/findings/kinds';
import { findingsOfCovering, type CoveringEvidence } from '#domain/record/findings/of-covering';
import { findingOfPair } from '#domain/record/findings/of-pictures';
import { findingsOfPhoto, type PhotoEvidence } from '#domain/record/findings/of-photo';
import { someReadings } from '../../../support/some-readings.ts';

const TAG = { tag: 't', photo: 'p', mark: 'い三', stage: 'pegged' as const };
const dated = (wallTime: string, zone = 'Asia/Tokyo') => decideCapture(someReadings({ wallTime }), zone);
const kindsOf = (evidence: Partial<PhotoEvidence>) =>
  findingsOfPhoto({
    ...{ photo: 'p', capture: dated('2026-04-01T09:30:00'), rivals: [], site: null },
    tags: [{ ...TAG, unreadable: null }],
    ...evidence,
  }).map(({ kind }) => kind);
const flagged = (flag: CaptureFlag): Capture => {
  const capture = dated('2026-04-01T09:30:00');
  return capture.state === 'dated' ? { ...capture, flags: [flag] } : capture;
};

describe('a photo', () => {
  it('that nothing speaks against has no finding', () => {
    expect(kindsOf({})).toEqual([]);
  });
  it('without a date', () => {
    expect(kindsOf({ capture: decideCapture(someReadings({}), 'Asia/Tokyo') })).toEqual(['no-date']);
  });
  it.each([
    ['2026-03-01T09:30:00', 'before-first-day'],
    ['2026-06-01T09:30:00', 'after-upload'],
  ])('of %s, first day 1 April, added on 1 May: %s', (wallTime, kind) => {
    const bounds = { zone: 'Asia/Tokyo', firstDay: '2026-04-01', addedAt: '2026-05-01T00:00:00.000Z' };
    expect(kindsOf({ capture: doubtCapture(dated(wallTime), bounds) })).toEqual([kind]);
  });
  it('in the hour that came twice (clocks went back in Oslo on 25 October 2026 at 3:00, IANA tz database)', () => {
    expect(kindsOf({ capture: dated('2026-10-25T02:30:00', 'Europe/Oslo') })).toEqual(['time-unsure']);
  });
  it.each([
    ['gps-disagrees', ['clock-disagrees']],
    ['camera-not-in-house-zone', ['clock-disagrees']],
    ['gps-stale', []],
    ['gps-not-utc', []],
  ] as const)('flagged %s', (flag, kinds) => {
    expect(kindsOf({ capture: flagged(flag) })).toEqual(kinds);
  });
  it('of which the file gives two answers, with both', () => {
    const rivals = [
      { field: 'wallTime', first: '2026-04-01T09:30:00', second: '2026-04-08T09:30:00' },
    ] as const;
    const [found] = findingsOfPhoto({
      ...{ photo: 'p', capture: dated('2026-04-01T09:30:00'), rivals, site: null },
      tags: [{ ...TAG, unreadable: null }],
    });
    expect(found).toMatchObject({
      kind: 'readers-differ',
      facts: { 'wallTime.first': '2026-04-01T09:30:00', 'wallTime.second': '2026-04-08T09:30:00' },
      tags: [{ tag: 't' }],
    });
  });
  it('off site, and only when that is certain', () => {
    const site = { distanceM: 5000, errorM: 12 };
    expect(kindsOf({ site: { ...site, verdict: 'off-site' } })).toEqual(['off-site']);
    expect(kindsOf({ site: { ...site, verdict: 'cannot-tell' } })).toEqual([]);
  });
  it('with a tag that cannot be read, one finding a tag', () => {
    const tags = [
      { ...TAG, unreadable: ['too-small', 'blurred'] },
      { ...TAG, tag: 'u', unreadable: null },
    ];
    expect(
      findingsOfPhoto({
        photo: 'p',
        capture: dated('2026-04-01T09:30:00'),
        rivals: [],
        site: null,
        tags,
      }),
    ).toMatchObject([{ key: 'unreadable:t', facts: { why: 'too-small blurred' }, tags: [{ tag: 't' }] }]);
  });
});

const CLOSED = Date.parse('2026-04-20T03:00:00.000Z');
const covering = (more: Partial<CoveringEvidence>): CoveringEvidence => ({
  ...{ covering: 'c', name: 'North wall', kind: 'plaster', closedMs: CLOSED, lost: [], sightings: [] },
  ...{ released: true, without: null, takenBack: null },
  ...more,
});
const sighting = (afterMs: number, uncertaintyMs = 0, stage: 'pegged' | 'plastered' = 'pegged') => ({
  ...{ ...TAG, stage },
  ...{ takenMs: CLOSED + afterMs, uncertaintyMs, hiddenMs: CLOSED },
});

describe('a covering', () => {
  it('that is open has none', () => {
    const open = covering({ closedMs: null, lost: ['い三'], sightings: [sighting(1000)] });
    expect(findingsOfCovering(open)).toEqual([]);
  });
  it('that closed over members without a record names them', () => {
    expect(findingsOfCovering(covering({ lost: ['い三', 'ろ二'] }))).toMatchObject([
      { kind: 'closed-with-gaps', marks: ['い三', 'ろ二'], covering: 'c', facts: { count: 2 } },
    ]);
  });
  it.each([
    [sighting(1), 1],
    [sighting(0), 0],
    [sighting(1000, 1000), 0],
    [sighting(1001, 1000), 1],
    [sighting(1000, 0, 'plastered'), 0],
  ])('and is seen through afterwards: %o, %d findings', (seen, number) => {
    expect(findingsOfCovering(covering({ sightings: [seen] }))).toHaveLength(number);
  });
  it('on one face of a wall is seen through from the other until that is covered too', () => {
    const later = sighting(1000);
    const found = (hiddenMs: number | null) =>
      findingsOfCovering(covering({ sightings: [{ ...later, hiddenMs }] })).length;
    expect(found(null)).toBe(0);
    expect(found(CLOSED + 1000)).toBe(0);
    expect(found(CLOSED + 999)).toBe(1);
    // An earlier layer had hidden it: this one was closed all the same.
    expect(found(CLOSED - 5000)).toBe(1);
  });
  it('whose release was taken back since says by whom and why', () => {
    const inspector = { id: '0198f000-0000-7000-8000-000000000001', name: 'Inspector' };
    const takenBack = { at: '2026-04-21T00:00:00.000Z', by: inspector, reason: 'another wall was meant' };
    expect(findingsOfCovering(covering({ takenBack }))).toMatchObject([
      {
        kind: 'release-taken-back',
        covering: 'c',
        facts: { name: 'North wall', ...takenBack, by: 'Inspector' },
      },
    ]);
    expect(findingsOfCovering(covering({ closedMs: null, takenBack }))).toEqual([]);
  });
  it('of another kind than plaster hides the plastered wall too', () => {
    const boards = covering({ kind: 'floor', sightings: [sighting(1000, 0, 'plastered')] });
    expect(findingsOfCovering(boards)).toHaveLength(1);
  });
});

describe('two pictures that are nearly the same', () => {
  const picture = (photo: string, takenMs: number | null, uncertaintyMs = 0) => ({
    ...{ photo, takenMs, uncertaintyMs, tags: [TAG] },
  });
  const hour = 3_600_000;
  it.each([
    [picture('a', 0), picture('b', 2 * hour), true],
    [picture('a', 0), picture('b', 60_000), false],
    [picture('a', 0, 2 * hour), picture('b', hour), false],
    [picture('a', 0), picture('b', null), true],
    [picture('a', null), picture('b', null), false],
  ])('%o and %o: %s', (a, b, isFinding) => {
    expect(findingOfPair(a, b, 3) !== null).toBe(isFinding);
    expect(findingOfPair(b, a, 3)).toEqual(findingOfPair(a, b, 3));
  });
});

it('of two pictures on which nothing is tagged there is none: a clock photographed every week', () => {
  const [a, b] = [1, 2].map((n) => ({ photo: `p${n}`, takenMs: n * 86_400_000, uncertaintyMs: 0, tags: [] }));
  if (!a || !b) throw new Error('unreachable');
  expect(findingOfPair(a, b, 0)).toBeNull();
  expect(findingOfPair(a, { ...b, tags: [TAG] }, 0)).toMatchObject({
    facts: { bits: 0, one: '1970-01-02T00:00:00.000Z', other: '1970-01-03T00:00:00.000Z' },
  });
});

it('an answer about a whole photo stands whatever is tagged on it, one about tags rests on them', () => {
  const of = (kind: FindingKind, tags: (typeof TAG)[], distance = 5000) =>
    JSON.stringify(basisOf(finding(kind, ['p'], { photos: ['p'], tags, facts: { distance } })));
  const other = { ...TAG, tag: 'u', mark: 'い四' };
  for (const kind of FINDING_KINDS)
    expect(of(kind, [TAG]) === of(kind, [TAG, other]), kind).toBe(isOfPhotos(kind));
  expect(of('off-site', [TAG])).not.toBe(of('off-site', [TAG], 4000));
  expect(FINDING_KINDS.filter((kind) => !isOfPhotos(kind))).toEqual([
    ...['disputed', 'stage-goes-back', 'stages-at-once', 'places-at-once', 'stage-outside-track'],
    ...['unreadable', 'unknown-mark', 'shown-after-closing', 'closed-with-gaps', 'closed-without-release'],
    'release-taken-back',
  ]);
});

it('what a person may know better does not stop a record, what contradicts it does', () => {
  expect(FINDING_KINDS.filter(stopsRecords)).toEqual([
    ...['disputed', 'stage-goes-back', 'stages-at-once', 'places-at-once', 'stage-outside-track'],
    ...['same-picture', 'off-site', 'readers-differ'],
  ]);
});
