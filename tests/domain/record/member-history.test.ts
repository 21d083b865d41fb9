import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COVERING_KINDS } from '#domain/contract/shapes';
import { STAGES, TRACK_NAMES, TRACKS, type Stage } from '#domain/frame/stage';
import { defaultLeast } from '#domain/record/default-least';
import { stageIntervals, type StageSighting } from '#domain/record/member-history';
import { reasonsAgainst } from '#domain/record/requirement';

const at = (day: number) => `2026-04-0${String(day)}T00:00:00.000Z`;
const saw = (tag: string, stage: Stage, day: number | null): StageSighting => ({
  tag,
  photo: `photo of ${tag}`,
  stage,
  instant: day === null ? null : at(day),
  uncertaintyS: 0,
  clock: null,
});
const bound = (tag: string, stage: Stage, day: number) => ({
  tag,
  photo: `photo of ${tag}`,
  stage,
  instant: at(day),
});

describe('stageIntervals', () => {
  it('knows nothing of a member that nobody photographed', () =>
    expect(stageIntervals('lath', [])).toEqual([
      { stage: 'lath-on', after: null, by: null, contradicted: false },
      { stage: 'plastered', after: null, by: null, contradicted: false },
    ]));

  it('bounds each stage by the photos around it', () =>
    expect(
      stageIntervals('timber', [saw('c', 'pegged', 6), saw('b', 'raised', 4), saw('a', 'cut', 2)]),
    ).toEqual([
      { stage: 'cut', after: null, by: bound('a', 'cut', 2), contradicted: false },
      { stage: 'raised', after: bound('a', 'cut', 2), by: bound('b', 'raised', 4), contradicted: false },
      { stage: 'pegged', after: bound('b', 'raised', 4), by: bound('c', 'pegged', 6), contradicted: false },
    ]));

  it('leaves a stage not seen yet open to the right', () =>
    expect(stageIntervals('timber', [saw('a', 'cut', 2), saw('b', 'raised', 4)])[2]).toEqual({
      stage: 'pegged',
      after: bound('b', 'raised', 4),
      by: null,
      contradicted: false,
    }));

  it('lets a later stage stand for the ones before it', () =>
    expect(stageIntervals('wall', [saw('a', 'lath-on', 5)]).map((s) => s.by?.tag ?? null)).toEqual([
      'a',
      'a',
      'a',
      'a',
      null,
    ]));

  it('names a stage contradicted by a later photo that shows less, and keeps that out of the bounds', () =>
    expect(
      stageIntervals('timber', [saw('a', 'raised', 2), saw('b', 'pegged', 4), saw('c', 'raised', 6)])[2],
    ).toEqual({
      stage: 'pegged',
      after: bound('a', 'raised', 2),
      by: bound('b', 'pegged', 4),
      contradicted: true,
    }));

  it('takes nothing from photos of one instant and from undated ones', () =>
    expect(
      stageIntervals('timber', [saw('a', 'raised', 4), saw('b', 'pegged', 4), saw('c', 'cut', null)])[2],
    ).toEqual({ stage: 'pegged', after: null, by: bound('b', 'pegged', 4), contradicted: false }));

  it('lets the lowest tag speak for one instant', () => {
    const twins = [saw('b', 'cut', 2), saw('a', 'cut', 2), saw('d', 'raised', 4), saw('c', 'raised', 4)];
    expect(stageIntervals('timber', twins)[1]).toMatchObject({
      after: bound('a', 'cut', 2),
      by: bound('c', 'raised', 4),
    });
  });

  it('is not contradicted where the order of two photos is not certain', () => {
    const [pegged, raised] = [saw('a', 'pegged', 4), saw('b', 'raised', 5)];
    const of = (more: Partial<StageSighting>) =>
      stageIntervals('timber', [
        { ...pegged, ...more },
        { ...raised, ...more },
      ]).map(({ contradicted }) => contradicted);
    expect(of({ uncertaintyS: 43_199 })).toEqual([false, false, true]);
    expect(of({ uncertaintyS: 43_200 })).toEqual([false, false, false]);
    expect(of({ uncertaintyS: 43_200, clock: 'Test house-zone' })).toEqual([false, false, true]);
  });

  const sightings = fc
    .array(fc.tuple(fc.constantFrom(...STAGES), fc.constantFrom(null, 1, 2, 3, 4, 5)), { maxLength: 8 })
    .map((list) => list.map(([stage, day], i) => saw(`t${String((i * 5) % 8)}`, stage, day)));

  it('agrees with the definition on random histories', () => {
    const rank = (stage: Stage) => ['cut', 'raised', 'pegged', 'lath-on', 'plastered'].indexOf(stage);
    fc.assert(
      fc.property(fc.constantFrom(...TRACK_NAMES), sightings, (track, all) => {
        const stages = stageIntervals(track, all);
        expect(stages.map((s) => s.stage)).toEqual(TRACKS[track]);
        for (const { stage, after, by, contradicted } of stages) {
          const there = all.filter((s) => s.instant !== null && rank(s.stage) >= rank(stage));
          const notYet = all.filter((s) => s.instant !== null && rank(s.stage) < rank(stage));
          const times = there.map((s) => Date.parse(s.instant ?? ''));
          const first = times.length ? Math.min(...times) : null;
          expect(by && Date.parse(by.instant)).toBe(first);
          const before = notYet
            .map((s) => Date.parse(s.instant ?? ''))
            .filter((time) => first === null || time < first);
          expect(after && Date.parse(after.instant)).toBe(before.length ? Math.max(...before) : null);
          expect(contradicted).toBe(
            first !== null && notYet.some((s) => Date.parse(s.instant ?? '') > first),
          );
          for (const [end, pool] of [
            [by, there],
            [after, notYet],
          ] as const) {
            const same = pool.filter((s) => s.instant === end?.instant).map((s) => s.tag);
            expect(end?.tag).toBe(same.sort()[0]);
          }
        }
        expect(stageIntervals(track, [...all].reverse())).toEqual(stages);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('defaultLeast', () => {
  // Common practice: look at pegs and wedges before lath, at lath before the first coat.
  it.each([
    ['wall', 'pegged'],
    ['timber', 'pegged'],
    ['floor', 'pegged'],
    ['lath', 'lath-on'],
  ] as const)('of a %s member is %s', (track, stage) =>
    expect(COVERING_KINDS.map((kind) => defaultLeast(kind, track))).toEqual(COVERING_KINDS.map(() => stage)),
  );

  it('is a stage of the track that a photo can fulfil', () => {
    for (const covering of COVERING_KINDS)
      for (const track of TRACK_NAMES) {
        const least = defaultLeast(covering, track);
        expect(TRACKS[track]).toContain(least);
        const tag = {
          id: 't',
          photo: 'p',
          mark: 'm',
          stage: least,
          instant: at(1),
          doubt: null,
          uncertaintyS: 60,
          datedBy: 'file' as const,
          legibility: null,
          findings: [],
        };
        expect(reasonsAgainst(tag, { covering, least, closedAt: at(2) })).toEqual([]);
      }
  });
});
