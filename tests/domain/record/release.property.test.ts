import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MarkShape } from '#domain/contract/shapes';
import type { ReleasedMember } from '#domain/contract/hold';
import { changesSince, hiddenBeyond, outrunBy, recordedAlone, releasedMember } from '#domain/record/release';
import { reportLine, type ReportLine } from '#domain/record/report-line';
import type { StandingTag } from '#domain/record/requirement';
import { withWaiver, type WaivedMember } from '#domain/record/waived';
import { SHORTEST_GAP_MM, type Stretch } from '#domain/record/stretches';

/** Millimetres of each member. */
const REACH = 40;
const MARKS = ['い一', 'い二', 'い三', 'い四'].map((mark) => MarkShape.parse(mark));
const PEOPLE = ['haru', 'aki'] as const;

const stretch = fc
  .tuple(fc.nat(REACH - 10), fc.integer({ min: 6, max: REACH }))
  .map(([from, size]): Stretch => ({ from, to: Math.min(REACH, from + size) }));
const part = fc.option(stretch, { nil: null });

/** Dense sampling: which millimetres between integers are in it. */
const cells = ({ from, to }: Stretch) => Array.from({ length: REACH }, (_, mm) => from <= mm && mm < to);
/** Whether what is marked has a run of at least the shortest gap. */
const hasGap = (marked: readonly boolean[]) =>
  marked
    .map((is) => (is ? 'x' : ' '))
    .join('')
    .includes('x'.repeat(SHORTEST_GAP_MM));

interface Tag {
  readonly mark: number;
  readonly by: (typeof PEOPLE)[number];
  readonly photo: number;
  readonly shows: Stretch;
}
interface Asked {
  readonly hidden: Stretch;
  readonly views: number;
}

const tag: fc.Arbitrary<Tag> = fc.record({
  mark: fc.nat(MARKS.length - 1),
  by: fc.constantFrom(...PEOPLE),
  photo: fc.nat(3),
  shows: stretch,
});
const asked: fc.Arbitrary<Asked> = fc.record({ hidden: stretch, views: fc.integer({ min: 1, max: 2 }) });
const house = fc.record({
  tags: fc.array(tag, { maxLength: 14 }),
  asked: fc.tuple(asked, asked, asked, asked),
});

const standing = ({ mark, photo, shows }: Tag, id: number): StandingTag => ({
  ...{ id: `tag ${id}`, photo: `photo ${photo}`, mark: MARKS[mark] ?? '', stage: 'raised', stretch: shows },
  ...{ instant: '2026-04-01T00:00:00.000Z', uncertaintyS: 1, datedBy: 'file', doubt: null },
  ...{ legibility: 'clear', findings: [] },
});

/** The lines of one covering; ids of tags are their places in the list. */
function linesOf(tags: readonly Tag[], all: readonly Asked[], counts: (tag: Tag) => boolean): ReportLine[] {
  const said = tags.map((one, id) => ({ one, kept: standing(one, id) }));
  return MARKS.map((mark, n) => {
    const { hidden, views } = all[n] ?? { hidden: { from: 0, to: REACH }, views: 1 };
    const own = said.filter(({ one }) => one.mark === n && counts(one)).map(({ kept }) => kept);
    const member = { mark, kind: '柱', place: '', retired: false, axis: null };
    return reportLine(member, { covering: 'floor', least: 'raised', closedAt: null, hidden, views }, own);
  });
}

/**
 * Every millimetre of what is hidden on as many photos as are asked for, but for slivers; a photo of no more of it
 * than a sliver shows another part.
 */
function isOnRecord(tags: readonly Tag[], { hidden, views }: Asked): boolean {
  const counting = tags.filter(({ shows }) => meets(shows, hidden));
  const missing = cells(hidden).map((is, mm) => {
    const seen = counting.filter(({ shows }) => shows.from <= mm && mm < shows.to);
    return is && new Set(seen.map(({ photo }) => photo)).size < views;
  });
  return !hasGap(missing);
}

describe('a release against millimetres', () => {
  const RUNS = { numRuns: 400 };

  it('tells what a person has alone recorded', () => {
    let found = 0;
    fc.assert(
      fc.property(house, fc.constantFrom(...PEOPLE), ({ tags, asked: all }, person) => {
        const alone = recordedAlone(
          linesOf(tags, all, () => true),
          linesOf(tags, all, ({ by }) => by !== person),
        );
        const oracle = MARKS.filter((_, n) => {
          const of = tags.filter(({ mark }) => mark === n);
          const by = all[n];
          return (
            by &&
            isOnRecord(of, by) &&
            !isOnRecord(
              of.filter((one) => one.by !== person),
              by,
            )
          );
        });
        found += oracle.length;
        expect(alone).toEqual(oracle);
      }),
      RUNS,
    );
    expect(found).toBeGreaterThan(20);
  });

  it('tells of which members more is hidden than was released', () => {
    const some = fc.array(fc.tuple(fc.constantFrom(...MARKS), part), { maxLength: 6 });
    const onceEach = some.map((list) => [...new Map(list)].map(([mark, of]) => ({ mark, stretch: of })));
    fc.assert(
      fc.property(onceEach, onceEach, (released, now) => {
        const oracle = now.filter(({ mark, stretch: is }) => {
          const before = released.find((one) => one.mark === mark);
          if (!before) return true;
          if (before.stretch === null) return false;
          if (is === null) return true;
          const was = cells(before.stretch);
          return hasGap(cells(is).map((hides, mm) => hides && !was[mm]));
        });
        expect(hiddenBeyond(released, now)).toEqual(oracle.map(({ mark }) => mark));
      }),
      RUNS,
    );
  });

  it('is outrun by what is hidden beyond it, or is on record no more', () => {
    let found = 0;
    fc.assert(
      fc.property(house, house, ({ tags, asked: before }, after) => {
        const released = linesOf(tags, before, () => true)
          .slice(0, 3)
          .map(releasedMember);
        const now = linesOf(after.tags, after.asked, () => true).map((line) =>
          withWaiver(line, waivedOf(released, line.mark), null),
        );
        const oracle = MARKS.filter((_, n) => {
          const [was, is] = [before[n], after.asked[n]];
          if (!was || !is || n === 3) return true;
          const [hid, lacked] = [cells(was.hidden), missingCells(of(n, tags), was)];
          if (hasGap(cells(is.hidden).map((hides, mm) => hides && !hid[mm]))) return true;
          const lacks = missingCells(of(n, after.tags), is);
          if (!lacks.includes(true)) return false;
          if (!lacked.includes(true) || is.views > was.views) return true;
          return hasGap(lacks.map((missing, mm) => missing && !lacked[mm]));
        });
        found += oracle.length;
        expect(outrunBy(released, now)).toEqual(oracle);
      }),
      RUNS,
    );
    expect(found).toBeGreaterThan(100);
  });

  it('keeps of a line what counted, and what was missing where it was waived', () => {
    fc.assert(
      fc.property(house, ({ tags, asked: all }) => {
        for (const [n, line] of linesOf(tags, all, () => true).entries()) {
          const { mark, state, tags: named, stretch: of, missing, views } = releasedMember(line);
          const ask = all[n];
          if (!ask) throw new Error('There is no such line.');
          const counting = tags.flatMap((one, id) =>
            one.mark === n && meets(one.shows, ask.hidden) ? [id] : [],
          );
          expect([...named].sort()).toEqual(counting.map((id) => `tag ${id}`).sort());
          expect({ mark, of, views }).toEqual({ mark: MARKS[n], of: ask.hidden, views: ask.views });
          const isThere = isOnRecord(
            tags.filter((one) => one.mark === n),
            ask,
          );
          expect(state).toBe(isThere ? 'on-record' : 'waived');
          if (isThere) expect(missing).toEqual([]);
        }
      }),
      RUNS,
    );
  });

  it('tells what has changed, and nothing where nothing has', () => {
    let changes = 0;
    fc.assert(
      fc.property(house, house, fc.boolean(), (before, after, isSame) => {
        const then = linesOf(before.tags, before.asked, () => true).slice(0, 3);
        const now = isSame ? then : linesOf(after.tags, after.asked, () => true).slice(1);
        const since = changesSince(then.map(releasedMember), now);
        if (isSame) expect(since).toEqual([]);
        const told = new Map<string, (typeof since)[number]>(since.map((change) => [change.mark, change]));
        const idsOf = (line: ReportLine) => new Set(line.records.map(({ tag: id }) => id));
        for (const mark of MARKS) {
          const [was, is] = [then, now].map((lines) => lines.find((line) => line.mark === mark));
          const change = told.get(mark);
          const [had, has] = [was ? idsOf(was) : new Set(), is ? idsOf(is) : new Set()];
          changes += change ? 1 : 0;
          if (was && !is) expect(change).toEqual({ mark, what: 'hidden-no-more', gone: [], come: [] });
          if (!was && is) expect(change?.what).toBe('hidden-since');
          if (!was || !is) continue;
          const hid = cells(was.hidden ?? { from: 0, to: REACH });
          const more = hasGap(
            cells(is.hidden ?? { from: 0, to: REACH }).map((hides, mm) => hides && !hid[mm]),
          );
          const gone = [...had].filter((id) => !has.has(id)).sort();
          const come = [...has].filter((id) => !had.has(id)).sort();
          const what = more ? 'more-hidden' : gone.length + come.length > 0 ? 'records' : undefined;
          expect(change?.what).toBe(what);
          if (change) expect([[...change.gone].sort(), [...change.come].sort()]).toEqual([gone, come]);
        }
      }),
      RUNS,
    );
    expect(changes).toBeGreaterThan(100);
  });
});

const of = (n: number, tags: readonly Tag[]) => tags.filter(({ mark }) => mark === n);

function waivedOf(released: readonly ReleasedMember[], mark: string): WaivedMember | undefined {
  const member = released.find((one) => one.mark === mark && one.state === 'waived');
  const at = '2026-04-02T00:00:00.000Z';
  return member && { ...member, waiver: { release: 'r', at, by: null, reason: 'seen', takenBack: null } };
}

/** The millimetres without a record, but for slivers. */
function missingCells(tags: readonly Tag[], { hidden, views }: Asked): boolean[] {
  const counting = tags.filter(({ shows }) => meets(shows, hidden));
  const missing = cells(hidden).map((is, mm) => {
    const seen = counting.filter(({ shows }) => shows.from <= mm && mm < shows.to);
    return is && new Set(seen.map(({ photo }) => photo)).size < views;
  });
  return missing.map(
    (is, mm) => is && hasGap(missing.map((one, other) => one && isInRun(missing, mm, other))),
  );
}

/** Whether nothing between the two is on record. */
const isInRun = (missing: readonly boolean[], a: number, b: number) =>
  missing.slice(Math.min(a, b), Math.max(a, b) + 1).every(Boolean);

/** In more than a sliver. */
function meets(a: Stretch, b: Stretch): boolean {
  const other = cells(b);
  return hasGap(cells(a).map((is, mm) => is && (other[mm] ?? false)));
}
