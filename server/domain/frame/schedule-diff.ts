import type { MemberFacts } from '../contract/shapes.ts';
import type { Mark } from './mark.ts';
import { compareMarks } from './mark-order.ts';
import type { ScheduleField } from '../contract/schedule-views.ts';
import type { ReadSchedule } from './schedule.ts';
import { NOWHERE, statedSetOut } from './schedule-row.ts';
import type { SetOut } from './set-out.ts';

export interface CurrentMember {
  readonly facts: MemberFacts;
  readonly retired: boolean;
}

export interface ScheduleDiff {
  readonly added: readonly MemberFacts[];
  /** `returns`: a retired member that the sheet names again. */
  readonly changed: readonly { before: MemberFacts; after: MemberFacts; returns: boolean }[];
  readonly retired: readonly Mark[];
  readonly unchanged: number;
}

/**
 * What importing a sheet would do to the schedule. Fields and columns that the sheet does not have stay
 * as they are: a list of marks and kinds wipes no notes. With `missing: 'retire'` standing members that
 * the sheet does not name are retired, except those whose row is bad; a sheet that names nobody (without a
 * column of marks, or without rows) retires nobody. Order: of the sheet; retired by mark.
 */
export function diffSchedule(
  current: readonly CurrentMember[],
  read: Pick<ReadSchedule, 'members' | 'mentioned' | 'speaksOf'>,
  missing: 'retire' | 'keep',
): ScheduleDiff {
  const known = new Map(current.map((member) => [member.facts.mark, member]));
  const added: MemberFacts[] = [];
  const changed: { before: MemberFacts; after: MemberFacts; returns: boolean }[] = [];
  for (const member of read.members) {
    const was = known.get(member.mark);
    if (!was) {
      added.push(member);
      continue;
    }
    const after = merge(was.facts, member, read.speaksOf);
    if (was.retired || !sameFacts(was.facts, after))
      changed.push({ before: was.facts, after, returns: was.retired });
  }
  const retires = missing === 'retire' && read.mentioned.size > 0;
  const retired = current
    .filter(({ facts, retired: gone }) => retires && !gone && !read.mentioned.has(facts.mark))
    .map(({ facts }) => facts.mark)
    .sort(compareMarks);
  return { added, changed, retired, unchanged: read.members.length - added.length - changed.length };
}

function merge(before: MemberFacts, read: MemberFacts, speaksOf: ReadSchedule['speaksOf']): MemberFacts {
  const { fields } = speaksOf;
  const kept = Object.entries(before.other).filter(([column]) => !speaksOf.other.has(column));
  return {
    mark: before.mark,
    kind: fields.has('kind') ? read.kind : before.kind,
    name: fields.has('name') ? read.name : before.name,
    place: fields.has('place') ? read.place : before.place,
    track: fields.has('track') ? read.track : before.track,
    note: fields.has('note') ? read.note : before.note,
    setOut: mergeSetOut(before.setOut, read.setOut, fields),
    other: Object.fromEntries([...kept, ...Object.entries(read.other)]),
  };
}

const SET_OUT_FIELDS = ['from', 'to', 'level', 'base', 'top', 'width', 'depth'] as const;

function mergeSetOut(
  before: SetOut | null,
  read: SetOut | null,
  fields: ReadonlySet<ScheduleField>,
): SetOut | null {
  const speaks = (field: (typeof SET_OUT_FIELDS)[number]) =>
    fields.has(field) || ((field === 'width' || field === 'depth') && fields.has('section'));
  const [old, now] = [before ?? NOWHERE, read ?? NOWHERE];
  return statedSetOut(
    Object.fromEntries(
      SET_OUT_FIELDS.map((field) => [field, speaks(field) ? now[field] : old[field]]),
    ) as unknown as SetOut,
  );
}

function sameSetOut(a: SetOut | null, b: SetOut | null): boolean {
  return SET_OUT_FIELDS.every((field) => (a ?? NOWHERE)[field] === (b ?? NOWHERE)[field]);
}

function sameFacts(a: MemberFacts, b: MemberFacts): boolean {
  const plain = (['kind', 'name', 'place', 'track', 'note'] as const).every((field) => a[field] === b[field]);
  return plain && sameOther(a.other, b.other) && sameSetOut(a.setOut, b.setOut);
}

/** An empty value says no more than a missing column. */
function sameOther(a: MemberFacts['other'], b: MemberFacts['other']): boolean {
  const [inA, inB] = [new Map(Object.entries(a)), new Map(Object.entries(b))];
  return [...inA.keys(), ...inB.keys()].every(
    (column) => (inA.get(column) ?? '') === (inB.get(column) ?? ''),
  );
}
