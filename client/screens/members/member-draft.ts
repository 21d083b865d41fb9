import type { MemberFacts } from '#domain/contract/shapes';
import type { MemberView } from '#domain/contract/views';
import { lengthText, parseLength, type LengthUnit } from '#domain/frame/length';
import type { SetOut } from '#domain/frame/set-out';
import { parseMark, type MarkProblem } from '#domain/frame/mark';
import type { Track } from '#domain/frame/stage';

/** What stands in the form of a member, as typed; '' for the track means: as its kind does. */
export interface MemberDraft {
  readonly mark: string;
  readonly kind: string;
  readonly name: string;
  readonly place: string;
  readonly track: Track | '';
  readonly note: string;
  /** Where it lies: marks and level, heights and section as typed in the unit of the house. */
  readonly setOut: Readonly<Record<keyof SetOut, string>>;
}

const LENGTHS = ['base', 'top', 'width', 'depth'] as const;
type LengthField = (typeof LENGTHS)[number];
const NOWHERE: MemberDraft['setOut'] = {
  ...{ from: '', to: '', level: '' },
  ...{ base: '', top: '', width: '', depth: '' },
};

export const EMPTY_MEMBER: MemberDraft = {
  ...{ mark: '', kind: '', name: '', place: '', track: '', note: '' },
  setOut: NOWHERE,
};

export function memberDraft(
  { mark, kind, name, place, statedTrack, note, setOut }: MemberView,
  unit: LengthUnit,
): MemberDraft {
  const length = (mm: number | null) => (mm === null ? '' : lengthText(mm, unit));
  const typed = setOut && {
    ...{ from: setOut.from, to: setOut.to, level: setOut.level },
    ...{ base: length(setOut.base), top: length(setOut.top) },
    ...{ width: length(setOut.width), depth: length(setOut.depth) },
  };
  return { mark, kind, name, place, track: statedTrack ?? '', note, setOut: typed ?? NOWHERE };
}

/** Whether the draft says something else than what it began with. */
export function isChanged(draft: MemberDraft, start: MemberDraft): boolean {
  return JSON.stringify(draft) !== JSON.stringify(start);
}

/** Columns that the form does not show are kept as they were; what is no length must not come here. */
export function memberBody(
  draft: MemberDraft,
  other: MemberFacts['other'],
  unit: LengthUnit,
): Omit<MemberFacts, 'mark'> {
  const { kind, name, place, track, note } = draft;
  const texts = { kind: kind.trim(), name: name.trim(), place: place.trim(), note };
  return { ...texts, track: track || null, other, setOut: setOutOf(draft.setOut, unit) };
}

function setOutOf(typed: MemberDraft['setOut'], unit: LengthUnit): SetOut | null {
  if (Object.values(typed).every((text) => text.trim() === '')) return null;
  const length = (field: LengthField) => parseLength(typed[field], unit);
  return {
    ...{ from: typed.from.trim(), to: typed.to.trim(), level: typed.level.trim() },
    ...{ base: length('base'), top: length('top'), width: length('width'), depth: length('depth') },
  };
}

/** Fields that hold something, and no length. */
export function wrongLengths({ setOut }: MemberDraft, unit: LengthUnit): readonly LengthField[] {
  return LENGTHS.filter((field) => setOut[field].trim() !== '' && parseLength(setOut[field], unit) === null);
}

/** What is wrong with the mark of a new member, or its normal form. `taken`: the marks of the house. */
export function readNewMark(
  text: string,
  taken: ReadonlySet<string>,
): { mark: string } | { wrong: MarkProblem | 'taken'; mark?: string } {
  const parsed = parseMark(text);
  if (!parsed.ok) return { wrong: parsed.problem };
  return taken.has(parsed.mark) ? { wrong: 'taken', mark: parsed.mark } : { mark: parsed.mark };
}
