import type {
  FrameCoveringView,
  FrameHiddenView,
  FrameMemberView,
  FrameProtectionView,
  FrameView,
} from '#domain/contract/frame-views';
import type { Sheet } from '#domain/frame/drawing/sheet';
import { compareMarkKeys, markKey } from '#domain/frame/mark-order';
import { changeDays, hiddenOn } from '#domain/frame/drawing/state-on';
import { groupBy } from '#domain/group-by';
import type { Stretch } from '#domain/record/stretches';
import { gridReader, type GridReader } from '#domain/frame/grid-reader';
import { sheetsOf } from './sheets-of.ts';

export interface HidesMember {
  readonly covering: FrameCoveringView;
  readonly hidden: FrameHiddenView;
}

export interface SheetedMember {
  readonly protection: FrameProtectionView;
  readonly stretch: Stretch | null;
}

/** A frame with its drawings, made once an answer. */
export interface FrameModel {
  readonly frame: FrameView;
  readonly reader: GridReader | null;
  readonly sheets: readonly Sheet[];
  readonly members: ReadonlyMap<string, FrameMemberView>;
  readonly coverings: ReadonlyMap<string, FrameCoveringView>;
  readonly hides: ReadonlyMap<string, readonly HidesMember[]>;
  /** What lies over each member, or has. */
  readonly sheeted: ReadonlyMap<string, readonly SheetedMember[]>;
  /** Members that are to be drawn but have no place. */
  readonly unplaced: readonly FrameMemberView[];
  /** Days on which the drawing changes, ascending. */
  readonly days: readonly string[];
}

export function frameModel(frame: FrameView): FrameModel {
  const standing = frame.members.filter(({ retired }) => !retired);
  const drawable = { ...frame, members: standing };
  const hides = new Map<string, HidesMember[]>();
  for (const covering of frame.coverings)
    for (const hidden of covering.hides)
      hides.set(hidden.mark, [...(hides.get(hidden.mark) ?? []), { covering, hidden }]);
  return {
    frame,
    reader: frame.grid && gridReader(frame.grid),
    sheets: sheetsOf(drawable),
    members: new Map(standing.map((member) => [member.mark, member])),
    coverings: new Map(frame.coverings.map((covering) => [covering.id, covering])),
    hides,
    sheeted: sheetedMembers(frame.protections),
    unplaced: standing.filter(({ axis }) => axis === null),
    days: drawingDays({ ...frame, members: standing }),
  };
}

/** Whether two answers say the same of what hides a member, and name its parts alike. */
export function isToldAlike(a: FrameModel, b: FrameModel, mark: string): boolean {
  if (a === b) return true;
  const [before, now] = [a.hides.get(mark) ?? [], b.hides.get(mark) ?? []];
  return (
    a.frame.grid === b.frame.grid &&
    a.frame.today === b.frame.today &&
    a.frame.protections === b.frame.protections &&
    before.length === now.length &&
    before.every(({ covering, hidden }, i) => {
      const other = now[i];
      return hidden === other?.hidden && isSameCovering(covering, other.covering);
    })
  );
}

function isSameCovering(a: FrameCoveringView, b: FrameCoveringView): boolean {
  const { hides: _, ...facts } = a;
  return Object.entries(facts).every(([key, value]) => b[key as keyof typeof facts] === value);
}

function drawingDays(frame: FrameView): string[] {
  const laid = frame.protections.flatMap(({ laidDay, liftedDay }) => [laidDay, liftedDay ?? laidDay]);
  return [...new Set([...changeDays(frame), ...laid])].sort().filter((day) => day <= frame.today);
}

function sheetedMembers(protections: readonly FrameProtectionView[]): FrameModel['sheeted'] {
  const all = protections.flatMap((protection) =>
    protection.hides.map(({ mark, stretch }) => ({ mark, protection, stretch })),
  );
  return groupBy(all, ({ mark }) => mark);
}

/** What lay over a member at the end of a day, the latest laid first. */
export function sheetedOn({ sheeted }: FrameModel, mark: string, day: string): readonly SheetedMember[] {
  return (sheeted.get(mark) ?? []).filter(
    ({ protection: { laidDay, liftedDay } }) => laidDay <= day && (liftedDay === null || day < liftedDay),
  );
}

/** Marks with a gap on a day: what could still be photographed then. */
export function gapsOn(model: FrameModel, day: string): ReadonlySet<string> {
  const found = [...model.hides].filter(
    ([mark, all]) => model.members.has(mark) && all.some(({ hidden }) => hiddenOn(hidden, day) === 'gap'),
  );
  return new Set(found.map(([mark]) => mark));
}

const told = new WeakMap<Sheet, Sheet['members']>();

/** What is told of a sheet: what lies in it, not what goes through it; of a plan everything on it. */
export function toldOf(sheet: Sheet): Sheet['members'] {
  const { subject, members } = sheet;
  const kept =
    told.get(sheet) ?? (subject.kind === 'plan' ? members : members.filter(({ cutAt }) => cutAt === null));
  told.set(sheet, kept);
  return kept;
}

const listed = new WeakMap<Sheet, readonly string[]>();

/** The marks of what is told of a sheet, in the order of the grid: い二 before い三, 又二 between. Kept. */
export function marksIn(sheet: Sheet): readonly string[] {
  const before = listed.get(sheet);
  if (before) return before;
  const keys = toldOf(sheet).map(({ mark }) => markKey(mark));
  const marks = keys.sort(compareMarkKeys).map(({ text }) => text);
  listed.set(sheet, marks);
  return marks;
}

export function countGaps(sheet: Sheet, gaps: ReadonlySet<string>): number {
  return toldOf(sheet).filter(({ mark }) => gaps.has(mark)).length;
}

/** The sheet that an address means: a line or a level by its label, or by its key where two have the label. */
export function sheetOf(sheets: readonly Sheet[], line: string | null, level: string | null): Sheet | null {
  const asked = line === null ? (level === null ? null : `level:${level}`) : line;
  if (asked === null) return sheets[0] ?? null;
  const byKey = sheets.find(({ key }) => key === asked);
  return byKey ?? sheets.find((sheet) => labelOf(sheet) === asked) ?? sheets[0] ?? null;
}

export function labelOf({ subject }: Sheet): string {
  return subject.kind === 'plan' ? (subject.level?.label ?? '') : subject.line.label;
}

/** The query of a sheet's address. */
export function addressOf(sheets: readonly Sheet[], sheet: Sheet): { line: string } | { level: string } {
  if (sheet.subject.kind === 'plan') return { level: labelOf(sheet) };
  const isFirst = sheetOf(sheets, labelOf(sheet), null) === sheet;
  return { line: isFirst ? labelOf(sheet) : sheet.key };
}
