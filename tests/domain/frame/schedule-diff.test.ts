import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MemberFacts } from '#domain/contract/shapes';
import { readSchedule } from '#domain/frame/schedule';
import { diffSchedule, type CurrentMember } from '#domain/frame/schedule-diff';
import { TRACK_NAMES } from '#domain/frame/stage';

const facts = (mark: string, more: Partial<MemberFacts> = {}) => MemberFacts.parse({ mark, ...more });
const standing = (mark: string, more: Partial<MemberFacts> = {}) => ({
  facts: facts(mark, more),
  retired: false,
});
const gone = (mark: string) => ({ facts: facts(mark), retired: true });
const diff = (current: CurrentMember[], rows: string[][], missing: 'retire' | 'keep' = 'retire') =>
  diffSchedule(current, readSchedule(rows), missing);

describe('diffSchedule', () => {
  it('adds, changes, retires and leaves', () =>
    expect(
      diff(
        [
          standing('same', { kind: '柱' }),
          standing('moved', { kind: '貫' }),
          standing('い十'),
          standing('い二'),
        ],
        [
          ['Mark', 'Kind'],
          ['new', '梁'],
          ['same', '柱'],
          ['moved', '桁'],
        ],
      ),
    ).toEqual({
      added: [facts('new', { kind: '梁' })],
      changed: [
        { before: facts('moved', { kind: '貫' }), after: facts('moved', { kind: '桁' }), returns: false },
      ],
      retired: ['い二', 'い十'],
      unchanged: 1,
    }));

  it('retires nobody when missing ones are kept, and nobody twice', () => {
    expect(diff([standing('a'), gone('b')], [['Mark'], ['c']], 'keep').retired).toEqual([]);
    expect(diff([standing('a'), gone('b')], [['Mark'], ['c']]).retired).toEqual(['a']);
  });

  it('brings a retired member back, unchanged as it may be', () =>
    expect(diff([gone('a')], [['Mark'], ['a']]).changed).toEqual([
      { before: facts('a'), after: facts('a'), returns: true },
    ]));

  it('does not retire a member whose row is bad', () =>
    expect(
      diff(
        [standing('a')],
        [
          ['Mark', 'Track'],
          ['a', 'nonsense'],
        ],
      ),
    ).toMatchObject({
      retired: [],
      changed: [],
      unchanged: 0,
    }));

  it('retires nobody by a sheet whose column of marks is not known yet', () =>
    expect(diff([standing('a')], [['Ref'], ['a']]).retired).toEqual([]));

  it('retires nobody by a sheet that has a heading and no row', () =>
    expect(diff([standing('a')], [['Mark', 'Kind']]).retired).toEqual([]));

  it('leaves alone what the sheet does not speak of', () => {
    const was = standing('a', {
      note: 'scarfed',
      place: 'loft',
      track: 'lath',
      other: { Wood: 'cedar', Age: '3' },
    });
    const [change] = diff(
      [was],
      [
        ['Mark', 'Kind', 'Age'],
        ['a', 'post', '4'],
      ],
    ).changed;
    expect(change?.after).toEqual({ ...was.facts, kind: 'post', other: { Wood: 'cedar', Age: '4' } });
  });

  it('empties what the sheet has empty', () => {
    const was = standing('a', { note: 'scarfed', track: 'lath', other: { Wood: 'cedar' } });
    const [change] = diff(
      [was],
      [
        ['Mark', 'Note', 'Track', 'Wood'],
        ['a', '', '', ''],
      ],
    ).changed;
    expect(change?.after).toEqual(facts('a'));
  });
});

describe('import of what was exported', () => {
  const text = fc.constantFrom('', '貫', 'post', '15×105', 'a, b', 'Mark');
  const mark = fc.constantFrom('い一', 'い二', 'N-1', 'N-2', '又 三', 'x');
  const house = fc.uniqueArray(
    fc.record({
      mark,
      kind: text,
      name: text,
      place: text,
      track: fc.constantFrom(null, ...TRACK_NAMES),
      note: fc.constantFrom('', 'one\ntwo'),
      other: fc.dictionary(fc.constantFrom('Wood', 'Grain', 'Location', 'No.', '番付'), text, {
        maxKeys: 3,
      }),
    }),
    { selector: (m) => m.mark },
  );

  function exported(members: readonly MemberFacts[]): string[][] {
    const others = [...new Set(members.flatMap((m) => Object.keys(m.other)))];
    return [
      ['mark', 'kind', 'name', 'place', 'track', 'note', ...others],
      ...members.map((m) => [
        ...[m.mark, m.kind, m.name, m.place, m.track ?? '', m.note],
        ...others.map((column) => m.other[column] ?? ''),
      ]),
    ];
  }
  const members = house.map((list) => list.map((m) => MemberFacts.parse(m)));
  const current = (list: MemberFacts[]) => list.map((m) => ({ facts: m, retired: false }));

  it('changes nothing', () => {
    fc.assert(
      fc.property(members, (list) => {
        expect(diff(current(list), exported(list))).toEqual({
          added: [],
          changed: [],
          retired: [],
          unchanged: list.length,
        });
      }),
      { numRuns: 1000 },
    );
  });

  it('adds to an empty house exactly what it holds', () => {
    const filled = (m: MemberFacts) => ({
      ...m,
      other: Object.fromEntries(Object.entries(m.other).filter(([, value]) => value !== '')),
    });
    fc.assert(
      fc.property(members, (list) => {
        expect(diff([], exported(list)).added).toEqual(list.map(filled));
      }),
      { numRuns: 1000 },
    );
  });

  it('says the same of two houses whatever the order of rows', () => {
    fc.assert(
      fc.property(members, members, fc.integer(), (before, now, seed) => {
        const [head = [], ...body] = exported(now);
        const shuffled = body
          .map((row, i) => ({ row, at: Math.sin(seed + i * 7) }))
          .sort((a, b) => a.at - b.at)
          .map(({ row }) => row);
        const byMark = (a: MemberFacts, b: MemberFacts) => (a.mark < b.mark ? -1 : 1);
        const plain = diff(current(before), [head, ...body]);
        const other = diff(current(before), [head, ...shuffled]);
        expect([...other.added].sort(byMark)).toEqual([...plain.added].sort(byMark));
        expect(other.changed.map((c) => c.after).sort(byMark)).toEqual(
          plain.changed.map((c) => c.after).sort(byMark),
        );
        expect(other.retired).toEqual(plain.retired);
        expect(other.unchanged).toBe(plain.unchanged);
      }),
      { numRuns: 1000 },
    );
  });

  it('done once leaves nothing to do', () => {
    fc.assert(
      fc.property(members, members, (before, now) => {
        const rows = exported(now);
        const { added, changed, retired } = diff(current(before), rows);
        const after = new Map(current(before).map((m) => [m.facts.mark, m]));
        for (const m of [...added, ...changed.map((c) => c.after)])
          after.set(m.mark, { facts: m, retired: false });
        for (const gone of retired) after.set(gone, { facts: facts(gone), retired: true });
        expect(diff([...after.values()], rows)).toMatchObject({ added: [], changed: [], retired: [] });
      }),
      { numRuns: 1000 },
    );
  });
});
