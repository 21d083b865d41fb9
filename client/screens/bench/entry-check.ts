import { parseMark, type Mark, type MarkProblem } from '#domain/frame/mark';
import type { ShownStretch } from '#domain/contract/frame-shapes';
import { TRACKS, type Stage } from '#domain/frame/stage';
import type { Entry } from './desk-state.ts';
import { findMember, type MemberIndex } from '../../finding/member-index.ts';

export type EntryCheck =
  | {
      readonly ok: true;
      readonly said: {
        readonly mark: Mark;
        readonly stage: Stage;
        readonly note: string;
        readonly stretch?: ShownStretch | 'all';
      };
    }
  | { readonly ok: false; readonly field: 'mark'; readonly problem: MarkProblem }
  | { readonly ok: false; readonly field: 'stage'; readonly problem: 'missing' | 'outside' };

/** Whether what was typed can be said. An unknown mark can: the schedule may come later. */
export function checkEntry({ mark, stage, note, stretch }: Entry, index: MemberIndex): EntryCheck {
  const parsed = parseMark(mark);
  if (!parsed.ok) return { ok: false, field: 'mark', problem: parsed.problem };
  const member = findMember(index, mark);
  if (stage === null) return { ok: false, field: 'stage', problem: 'missing' };
  const track: readonly Stage[] | null = member ? TRACKS[member.track] : null;
  if (track && !track.includes(stage)) return { ok: false, field: 'stage', problem: 'outside' };
  const said = { mark: parsed.mark, stage, note: note.trim() };
  return { ok: true, said: stretch === undefined ? said : { ...said, stretch } };
}
