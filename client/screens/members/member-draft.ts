import type { MemberFacts } from '#domain/contract/shapes';
import type { MemberView } from '#domain/contract/views';
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
}

export const EMPTY_MEMBER: MemberDraft = { mark: '', kind: '', name: '', place: '', track: '', note: '' };

export function memberDraft({ mark, kind, name, place, statedTrack, note }: MemberView): MemberDraft {
  return { mark, kind, name, place, track: statedTrack ?? '', note };
}

/** Whether the draft says something else than what it began with. */
export function isChanged(draft: MemberDraft, start: MemberDraft): boolean {
  return (Object.keys(start) as (keyof MemberDraft)[]).some((field) => draft[field] !== start[field]);
}

/** Columns that the form does not show are kept as they were. */
export function memberBody(draft: MemberDraft, other: MemberFacts['other']): Omit<MemberFacts, 'mark'> {
  const { kind, name, place, track, note } = draft;
  return { kind: kind.trim(), name: name.trim(), place: place.trim(), track: track || null, note, other };
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
