import { useState } from 'react';
import type { ShownStretch } from '#domain/contract/frame-shapes';
import type { PhotoDetailView } from '#domain/contract/views';
import type { Region } from '#domain/photo/region';
import { parseMark } from '#domain/frame/mark';
import { meantMember, offeredFor, type MemberIndex } from '../../finding/member-index.ts';
import type { Space } from '../../finding/use-space.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { StageChoice } from '../../parts/stage-choice.tsx';
import { AboutMark } from './about-mark.tsx';
import type { Draft } from './bench-model.ts';
import type { Desk, DeskEvent, Entry } from './desk-state.ts';
import { checkEntry, type EntryCheck } from './entry-check.ts';
import { DraftLegibility } from './draft-legibility.tsx';
import { LikelyMarks } from './likely-marks.tsx';
import { MarkField } from './mark-field.tsx';
import { OnFrame } from '../frame/on-frame.tsx';
import { NoteField } from './note-field.tsx';
import { linesAlong } from './shown-stretch.ts';
import { StretchField } from './stretch-field.tsx';
import type { Suggestion } from './suggest-marks.ts';
import { suggestedIn } from './suggested.ts';
import { UnderProtection } from './under-protection.tsx';

export interface TagWordsProps {
  photo: PhotoDetailView;
  desk: Desk;
  draft: Draft;
  index: MemberIndex;
  suggestions: readonly Suggestion[];
  /** Marks that have a tag on this photo already, but for the one that is changed. */
  here: ReadonlySet<string>;
  tell: (event: DeskEvent) => void;
  /** Where members lie; null without a grid. */
  space: Space | null;
  guessFor: (mark: string) => ShownStretch | null;
  mustSayPart: (mark: string, region: Region) => boolean;
  onAsLast: () => void;
  onPlace: (draft: Draft, said: Extract<EntryCheck, { ok: true }>['said']) => void;
}

/** Member, stage and note of one region; placed by Enter, by the button, or by choosing a likely member. */
export function TagWords(props: TagWordsProps) {
  const { index, tell, draft, onPlace } = props;
  const { entry, fresh } = props.desk;
  const { t } = useWords();
  const [problem, setProblem] = useState<Exclude<EntryCheck, { ok: true }> | null>(null);
  /** The unknown mark that was to be placed once, while the list offered others: perhaps it was only begun. */
  const [asked, setAsked] = useState<string | null>(null);
  /** The long member and its region, of which nobody has said yet that the picture, which cuts it off, shows all. */
  const [cut, setCut] = useState<{ mark: string; region: Region } | null>(null);
  const isAskedPart = (mark: string | undefined) => cut?.mark === mark && cut?.region === draft.region;
  const isTakenForIt = asked !== null && asked !== entry.mark && isOnlyOne(index, asked, entry.mark);
  const member = meantMember(index, entry.mark);
  const axis = member && props.space?.axis(member.mark);
  const lines = axis && props.space ? linesAlong(axis, props.space.reader).map(({ label }) => label) : [];
  const isNew = draft.replaces === null;
  const suggested = isNew ? suggestedIn(entry, fresh) : null;
  // Also a key chooses the stage, past this form: what is wrong is looked at anew.
  const now = problem?.field === 'stage' ? checkEntry(entry, index) : null;
  const stageFault = now && !now.ok && now.field === 'stage' ? now.problem : null;
  const write = (part: Partial<Entry>) => {
    setProblem(null);
    tell({ type: 'write', entry: part });
  };
  /** Pressed in a list: all is said, once the stage is known too. */
  const choose = (mark: string) => {
    // A change has its own button; and a stage that nobody chose must not be said.
    if (!isNew || entry.stage === null) write({ mark });
    else place({ ...entry, mark });
  };
  const place = (typed: Entry) => {
    const meant = meantMember(index, typed.mark);
    const words = meant ? { ...typed, mark: meant.mark } : typed;
    if (words.mark !== entry.mark) write({ mark: words.mark });
    const offered = meant ? [] : offeredFor(index, words.mark);
    if (offered.length > 0 && parseMark(words.mark).ok && asked !== words.mark) {
      setAsked(words.mark);
      const [only, other] = offered;
      if (only && !other) write({ mark: only.mark });
      return;
    }
    const check = checkEntry(words, index);
    if (!check.ok) return setProblem(check);
    const { mark, stretch } = check.said;
    if (stretch === undefined && !isAskedPart(mark) && props.mustSayPart(mark, draft.region))
      setCut({ mark, region: draft.region });
    else onPlace(draft, check.said);
  };
  return (
    <form
      className="stack bench-words"
      tabIndex={-1}
      aria-label={t('bench.sayNow')}
      onSubmit={(event) => {
        event.preventDefault();
        place(entry);
      }}
    >
      <DraftLegibility photo={props.photo} region={draft.region} />
      <LikelyMarks
        suggestions={isNew ? props.suggestions : props.suggestions.filter(({ why }) => why !== 'same')}
        onChoose={choose}
      />
      <MarkField
        value={entry.mark}
        index={index}
        remark={suggested ? t(`bench.form.suggested.${suggested}`) : ''}
        error={problem?.field === 'mark' ? t(`bench.form.badMark.${problem.problem}`) : null}
        onWrite={(mark) => write({ mark })}
        onChoose={choose}
        onEnter={(mark) => place({ ...entry, mark })}
        onAsLast={props.onAsLast}
      />
      <OnFrame mark={entry.mark} onPick={(mark) => write({ mark })} />
      {isTakenForIt ? (
        <p role="status">{t('bench.form.onlyOne', { mark: entry.mark })}</p>
      ) : (
        <AboutMark mark={entry.mark} index={index} here={props.here} isAsked={asked === entry.mark} />
      )}
      <UnderProtection photo={props.photo} mark={member?.mark ?? null} />
      <StageChoice
        label={t('bench.form.stage')}
        value={entry.stage}
        track={member?.track ?? null}
        onChange={(stage) => write({ stage })}
      />
      <p className="soft bench-hint bench-keyboard">{t('bench.form.stageKeys')}</p>
      {stageFault ? <StageProblem entry={entry} problem={stageFault} /> : null}
      {lines.length > 0 ? (
        <StretchField
          lines={lines}
          value={entry.stretch}
          guess={props.guessFor(member?.mark ?? '')}
          onChange={(stretch) => write({ stretch })}
        />
      ) : null}
      {member && isAskedPart(member.mark) && entry.stretch === undefined ? (
        <p role="alert" className="field-error">
          {t('bench.stretch.cut', { mark: member.mark })}
        </p>
      ) : null}
      <div className="row">
        <Button type="submit" look="act">
          {isNew ? t('bench.form.place') : t('bench.form.save')}
        </Button>
        <Button onPress={() => tell({ type: 'drop' })}>{isNew ? t('bench.drop') : t('bench.leave')}</Button>
        <NoteField value={entry.note} onChange={(note) => write({ note })} />
      </div>
    </form>
  );
}

/** What was typed could only mean this mark. */
function isOnlyOne(index: MemberIndex, typed: string, mark: string): boolean {
  const [only, other] = offeredFor(index, typed);
  return other === undefined && only?.mark === mark;
}

function StageProblem({ entry, problem }: { entry: Entry; problem: 'missing' | 'outside' }) {
  const { t } = useWords();
  const stage = entry.stage === null ? '' : t(`common.stage.${entry.stage}`);
  return (
    <p role="alert" className="field-error">
      {problem === 'missing'
        ? t('bench.form.needStage')
        : t('bench.form.outside', { mark: entry.mark, stage })}
    </p>
  );
}
