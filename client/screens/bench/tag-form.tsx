import { useState } from 'react';
import { parseMark } from '#domain/frame/mark';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { StageChoice } from '../../parts/stage-choice.tsx';
import type { Draft } from './bench-state.ts';
import type { BenchTag } from './bench-tags.ts';
import type { Desk, DeskEvent, Entry } from './desk-state.ts';
import { checkEntry, type EntryCheck } from './entry-check.ts';
import { MarkField } from './mark-field.tsx';
import { findMember, offeredFor, type MemberIndex } from '../../finding/member-index.ts';
import { SaidLine } from './said-line.tsx';
import { suggestedIn } from './suggested.ts';
import type { SaidHere } from './use-desk.ts';

type Said = Extract<EntryCheck, { ok: true }>['said'];

export interface TagFormProps {
  desk: Desk;
  tags: readonly BenchTag[];
  index: MemberIndex;
  tell: (event: DeskEvent) => void;
  onPlace: (draft: Draft, said: Said) => void;
  said: SaidHere | null;
}

/** What the drawn region shows. Without a drawing there is nothing to say yet. */
export function TagForm(props: TagFormProps) {
  const { t } = useWords();
  const { draft } = props.desk.bench.work;
  const changed = props.tags.find(({ id }) => id === draft?.replaces);
  const title = changed ? t('bench.form.changeTitle', { mark: changed.mark }) : t('bench.form.title');
  return (
    <section className="section bench-form" aria-label={title}>
      <h2>{title}</h2>
      {draft ? (
        <Words key={draft.replaces ?? ''} {...props} draft={draft} />
      ) : (
        <p className="soft">{t('bench.form.drawFirst')}</p>
      )}
      <SaidLine said={props.said} isBusy={draft !== null} />
    </section>
  );
}

function Words({ desk: { entry, fresh }, index, tell, draft, onPlace }: TagFormProps & { draft: Draft }) {
  const { t } = useWords();
  const [problem, setProblem] = useState<Exclude<EntryCheck, { ok: true }> | null>(null);
  /** The unknown mark that was to be placed once, while the list offered others: perhaps it was only begun. */
  const [asked, setAsked] = useState<string | null>(null);
  const member = findMember(index, entry.mark);
  const suggested = draft.replaces === null ? suggestedIn(entry, fresh) : null;
  const write = (part: Partial<Entry>) => {
    setProblem(null);
    tell({ type: 'write', entry: part });
  };
  const place = (words: Entry) => {
    const isUnclear = !findMember(index, words.mark) && offeredFor(index, words.mark).length > 0;
    if (isUnclear && parseMark(words.mark).ok && asked !== words.mark) {
      setAsked(words.mark);
      return;
    }
    const check = checkEntry(words, index);
    if (check.ok) onPlace(draft, check.said);
    else setProblem(check);
  };
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        place(entry);
      }}
    >
      <MarkField
        value={entry.mark}
        index={index}
        remark={suggested ? t(`bench.form.suggested.${suggested}`) : ''}
        error={problem?.field === 'mark' ? t(`bench.form.badMark.${problem.problem}`) : null}
        onWrite={(mark) => write({ mark })}
        onEnter={(mark) => {
          if (mark !== entry.mark) write({ mark });
          place({ ...entry, mark });
        }}
      />
      <AboutMark entry={entry} index={index} isAsked={asked === entry.mark} />
      <StageChoice
        label={t('bench.form.stage')}
        value={entry.stage}
        track={member?.track ?? null}
        onChange={(stage) => write({ stage })}
      />
      <p className="soft bench-hint bench-keyboard">{t('bench.form.stageKeys')}</p>
      {problem?.field === 'stage' ? <StageProblem entry={entry} problem={problem.problem} /> : null}
      <Field
        label={t('bench.form.note')}
        value={entry.note}
        onChange={(note) => write({ note })}
        maxLength={1000}
      />
      <div className="row">
        <Button type="submit" look="act">
          {draft.replaces === null ? t('bench.form.place') : t('bench.form.save')}
        </Button>
        <Button onPress={() => tell({ type: 'drop' })}>
          {draft.replaces === null ? t('bench.drop') : t('bench.leave')}
        </Button>
      </div>
    </form>
  );
}

/** Says plainly when the schedule does not have the mark, or has it no longer. */
function AboutMark({ entry, index, isAsked }: { entry: Entry; index: MemberIndex; isAsked: boolean }) {
  const { t } = useWords();
  const parsed = parseMark(entry.mark);
  if (!parsed.ok) return null;
  const { mark } = parsed;
  const member = findMember(index, mark);
  if (member) return member.retired ? <p className="act-text">{t('bench.form.retired', { mark })}</p> : null;
  if (!isAsked && offeredFor(index, mark).length > 0) return null;
  return (
    <p role="status" className="act-text">
      {isAsked ? t('bench.form.unknownAsk', { mark }) : t('bench.form.unknown', { mark })}
    </p>
  );
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
