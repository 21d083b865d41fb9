import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hiddenSince, type Layer } from '#domain/record/hidden-since';

const LENGTH_MM = 40;
const INSTANTS = [1, 2, 3, 4].map((day) => `2026-04-0${day}T03:00:00.000Z`);
const DAYS = ['2026-05-01', '2026-05-02', '2026-05-03'];

const layer: fc.Arbitrary<Layer> = fc.record({
  id: fc.constant(''),
  face: fc.constantFrom('both', 'lower', 'higher', 'lower', 'higher'),
  closedAt: fc.constantFrom(null, ...INSTANTS, ...INSTANTS),
  plannedDay: fc.constantFrom(null, ...DAYS),
  // Whole millimetres; a few shorter than the least gap of 5 mm.
  stretch: fc
    .tuple(fc.nat(LENGTH_MM - 4), fc.integer({ min: 4, max: LENGTH_MM }))
    .map(([from, long]) => ({ from, to: Math.min(LENGTH_MM, from + long) })),
});
const someLayers = fc.tuple(layer, fc.array(layer, { maxLength: 5 })).map(
  ([own, others]) =>
    [
      {
        ...own,
        id: 'own',
        stretch: { from: own.stretch.from, to: Math.max(own.stretch.to, own.stretch.from + 5) },
      },
      others.map((other, i) => ({ ...other, id: `l${String(i)}` })),
    ] as const,
);

const covers = ({ stretch: { from, to } }: Layer, mm: number) => from <= mm && mm < to;
const millimetres = ({ stretch: { from, to } }: Layer) =>
  Array.from({ length: to - from }, (_, i) => from + i);

/** The moment after which somebody on either side sees nothing of this millimetre; goes through all moments. */
function goneAt(mm: number, layers: readonly Layer[]): string | null {
  for (const moment of INSTANTS) {
    const closed = layers.filter((one) => covers(one, mm) && one.closedAt !== null && one.closedAt <= moment);
    const isSeenFrom = (side: string) => !closed.some(({ face }) => face === 'both' || face === side);
    if (!isSeenFrom('lower') && !isSeenFrom('higher')) return moment;
  }
  return null;
}

/** Without millimetres in runs of less than 5, which nobody sets out by. */
function withoutSlivers(all: readonly number[]): number[] {
  const isIn = new Set(all);
  return all.filter((mm) => {
    let [low, high] = [mm, mm];
    while (isIn.has(low - 1)) low--;
    while (isIn.has(high + 1)) high++;
    return high - low + 1 >= 5;
  });
}

function oracle(own: Layer, others: readonly Layer[]) {
  const all = millimetres(own);
  const isBefore = (mm: number) => {
    const gone = goneAt(mm, others);
    return gone !== null && (own.closedAt === null || gone < own.closedAt);
  };
  const before = all.filter(isBefore);
  const rest = withoutSlivers(all.filter((mm) => !isBefore(mm)));
  const latest = (instants: (string | null)[]) =>
    instants
      .flatMap((at) => at ?? [])
      .sort()
      .at(-1) ?? null;
  if (rest.length === 0)
    return { before, since: latest(before.map((mm) => goneAt(mm, others))), isAllBefore: true };
  const open = withoutSlivers(rest.filter((mm) => goneAt(mm, [own, ...others]) === null));
  const since = open.length > 0 ? null : latest(rest.map((mm) => goneAt(mm, [own, ...others])));
  return { before, since, isAllBefore: false };
}

function otherFaceOf(own: Layer, others: readonly Layer[]) {
  if (own.face === 'both') return null;
  const facing = others.filter(({ face }) => face !== own.face);
  const coveredAt = (mm: number) =>
    facing
      .filter((one) => covers(one, mm))
      .flatMap(({ closedAt }) => closedAt ?? [])
      .sort()[0];
  const open = withoutSlivers(millimetres(own).filter((mm) => coveredAt(mm) === undefined));
  if (open.length === 0) {
    const instants = millimetres(own).flatMap((mm) => coveredAt(mm) ?? []);
    return { closedAt: instants.sort().at(-1) ?? null, plannedDay: null };
  }
  const planned = facing.filter(
    (one) => one.closedAt === null && withoutSlivers(open.filter((mm) => covers(one, mm))).length > 0,
  );
  const days = planned.flatMap(({ plannedDay }) => plannedDay ?? []).sort();
  return { closedAt: null, plannedDay: days[0] ?? null };
}

const RUNS = { numRuns: 5000 };

describe('from when a stretch is out of sight, against each of its millimetres', () => {
  it('is the moment after which no face shows any of it', () => {
    fc.assert(
      fc.property(someLayers, ([own, others]) => {
        const found = hiddenSince(own, others);
        const { before, since, isAllBefore } = oracle(own, others);
        expect(found.since).toBe(since);
        const inBefore = millimetres(own).filter((mm) =>
          found.before.some(({ from, to }) => from <= mm && mm < to),
        );
        expect(inBefore).toEqual(before);
        expect(found.by !== null).toBe(isAllBefore);
        if (found.by !== null) expect(others.find(({ id }) => id === found.by)?.closedAt).toBe(since);
      }),
      RUNS,
    );
  });

  it('tells when the other face is covered along all of it, or is first to be', () => {
    fc.assert(
      fc.property(someLayers, ([own, others]) => {
        expect(hiddenSince(own, others).otherFace).toEqual(otherFaceOf(own, others));
      }),
      RUNS,
    );
  });

  it('does not depend on the order in which the others are given', () => {
    fc.assert(
      fc.property(someLayers, ([own, others]) => {
        const { by: _, ...forth } = hiddenSince(own, others);
        const { by: __, ...back } = hiddenSince(own, [...others].reverse());
        expect(back).toEqual(forth);
      }),
    );
  });
});

describe('an earthen wall', () => {
  const at = (day: string) => `2026-04-${day}T03:00:00.000Z`;
  const coat = (id: string, face: Layer['face'], closedAt: string | null, from = 0, to = 3640): Layer => ({
    ...{ id, face, closedAt, plannedDay: '2026-05-12', stretch: { from, to } },
  });

  // The rough coat is put on one face, the back coat on the other once it has dried. Common practice.
  it('shows its rails from behind until the back coat', () => {
    const rough = coat('rough', 'lower', at('01'));
    expect(hiddenSince(rough, [coat('back', 'higher', null)])).toEqual({
      ...{ since: null, before: [], by: null, otherFace: { closedAt: null, plannedDay: '2026-05-12' } },
    });
    expect(hiddenSince(rough, [coat('back', 'higher', at('20'))])).toMatchObject({
      ...{ since: at('20'), otherFace: { closedAt: at('20') } },
    });
  });

  it('is hidden once the back coats together reach from end to end', () => {
    const rough = coat('rough', 'lower', at('01'));
    const west = coat('west', 'higher', at('10'), 0, 1820);
    expect(hiddenSince(rough, [west]).since).toBeNull();
    expect(hiddenSince(rough, [west, coat('east', 'higher', at('15'), 1820, 3640)]).since).toBe(at('15'));
    // 3 mm short of each other: nobody sets out by less than 5.
    expect(hiddenSince(rough, [west, coat('east', 'higher', at('15'), 1823, 3640)]).since).toBe(at('15'));
  });

  it('asks nothing more of a top coat over both', () => {
    const coats = [coat('rough', 'lower', at('01')), coat('back', 'higher', at('20'))];
    expect(hiddenSince(coat('top', 'both', null), coats)).toMatchObject({ since: at('20'), by: 'back' });
    expect(hiddenSince(coat('top', 'both', at('25')), coats)).toMatchObject({ since: at('20'), by: 'back' });
    const wider = hiddenSince(coat('top', 'both', null, 0, 5460), coats);
    expect(wider).toMatchObject({ since: null, before: [{ from: 0, to: 3640 }], by: null });
  });
});
