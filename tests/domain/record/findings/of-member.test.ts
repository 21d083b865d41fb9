import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STAGES, stageRank, type Stage } from '#domain/frame/stage';
import { findingsOfMember, PLACES_AT_ONCE, type MemberSighting } from '#domain/record/findings/of-member';

const metres = (a: { lat: number; lon: number }, b: { lat: number; lon: number }) =>
  // Enough for the test: a degree of latitude is about 111 km.
  Math.hypot(a.lat - b.lat, a.lon - b.lon) * 111_000;

let count = 0;
const seen = (stage: Stage, takenMs: number | null, more: Partial<MemberSighting> = {}): MemberSighting => {
  const n = count++;
  return {
    ...{ tag: `t${String(n)}`, photo: `p${String(n)}`, mark: 'い三', stage, takenMs },
    ...{ uncertaintyMs: 0, clock: null, disputed: null, position: null },
    ...more,
  };
};
const found = (sightings: MemberSighting[], track: 'wall' | 'timber' = 'wall', known = true) =>
  findingsOfMember({ mark: 'い三', known, track, sightings }, metres);
const ofKind = (kind: string, ...args: Parameters<typeof found>) =>
  found(...args).filter((finding) => finding.kind === kind);
const tagsOf = (findings: ReturnType<typeof found>) =>
  findings.flatMap(({ tags }) => tags.map(({ tag }) => tag));

describe('a stage that goes back', () => {
  it('names the tags of both sides', () => {
    const [pegged, cut, later] = [seen('pegged', 1000), seen('cut', 2000), seen('pegged', 3000)];
    expect(tagsOf(ofKind('stage-goes-back', [later, cut, pegged]))).toEqual([pegged.tag, cut.tag]);
  });

  it('is none where the order of the photos is not certain', () => {
    const pegged = seen('pegged', 1000, { uncertaintyMs: 600 });
    expect(ofKind('stage-goes-back', [pegged, seen('cut', 2000, { uncertaintyMs: 400 })])).toEqual([]);
    expect(ofKind('stage-goes-back', [pegged, seen('cut', 2000, { uncertaintyMs: 399 })])).toHaveLength(1);
    expect(ofKind('stage-goes-back', [pegged, seen('cut', null)])).toEqual([]);
  });

  it('is certain by one and the same clock, however wrong it may be, from a second on', () => {
    const [wrongBy, clock] = [{ uncertaintyMs: 300_000 }, 'Test house-zone'];
    const by = (one: string | null, ms: number, other: string | null = one) =>
      ofKind('stage-goes-back', [
        seen('pegged', 0, { ...wrongBy, clock: one }),
        seen('raised', ms, { ...wrongBy, clock: other }),
      ]).length;
    expect([by(clock, 60_000), by(clock, 1001), by(clock, 1000), by(clock, 0)]).toEqual([1, 1, 0, 0]);
    expect([by(null, 60_000), by(clock, 60_000, 'Other house-zone')]).toEqual([0, 0]);
  });

  it('agrees with a look at every pair, for random sightings', () => {
    const sighting = fc.record({
      stage: fc.constantFrom(...STAGES),
      takenMs: fc.option(
        fc.nat(12).map((n) => n * 500),
        { freq: 6 },
      ),
      uncertaintyMs: fc.nat(3).map((n) => n * 500),
      clock: fc.constantFrom(null, 'A', 'B'),
    });
    fc.assert(
      fc.property(fc.array(sighting, { maxLength: 12 }), (facts) => {
        const all = facts.map(({ stage, ...more }) => seen(stage, more.takenMs, more));
        const wrong = new Set<string>();
        for (const a of all)
          for (const b of all) {
            if (a.takenMs === null || b.takenMs === null) continue;
            const isBefore =
              a.takenMs + a.uncertaintyMs < b.takenMs - b.uncertaintyMs ||
              (a.clock !== null && a.clock === b.clock && a.takenMs + 1000 < b.takenMs);
            if (isBefore && stageRank(a.stage) > stageRank(b.stage)) wrong.add(a.tag).add(b.tag);
          }
        expect(new Set(tagsOf(ofKind('stage-goes-back', all)))).toEqual(wrong);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('one member at one time', () => {
  it('has one stage in one photo, in however many regions', () => {
    const same = { photo: 'p' };
    expect(ofKind('stages-at-once', [seen('cut', 1, same), seen('cut', 1, same)])).toEqual([]);
    expect(ofKind('stages-at-once', [seen('cut', 1, same), seen('raised', 1, same)])).toMatchObject([
      { key: 'stages-at-once:い三:p', photos: ['p'] },
    ]);
  });

  const at = (metresNorth: number, errorM = 10) => ({
    position: { lat: 35 + metresNorth / 111_000, lon: 135, errorM },
  });
  const limit = PLACES_AT_ONCE.reachM + 20;
  it.each([
    [limit - 1, 0, 0],
    [limit + 1, 0, 1],
    [limit + 1, PLACES_AT_ONCE.withinMs, 1],
    [limit + 1, PLACES_AT_ONCE.withinMs + 1, 0],
  ])('%d m and %d ms apart: %d findings', (apart, later, number) => {
    const pair = [seen('raised', 0, at(0)), seen('raised', later, at(apart))];
    expect(ofKind('places-at-once', pair)).toHaveLength(number);
  });
});

it('a stage outside the track is named by its tag; lath is never on timber (common practice)', () => {
  const lath = seen('lath-on', 1);
  expect(ofKind('stage-outside-track', [lath, seen('pegged', 2)], 'timber')).toMatchObject([
    { key: `stage-outside-track:${lath.tag}`, marks: ['い三'] },
  ]);
  expect(ofKind('stage-outside-track', [lath], 'wall')).toEqual([]);
});

it('a mark that the schedule lacks is one finding, whatever else its tags say', () => {
  const kinds = found([seen('pegged', 1), seen('cut', 2)], 'wall', false).map(({ kind }) => kind);
  expect(kinds).toEqual(['unknown-mark']);
});
