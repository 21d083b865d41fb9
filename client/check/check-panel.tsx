import { useState, type ReactNode } from 'react';
import { formatBytes } from '../i18n/format.ts';
import type { Language } from '../i18n/language.ts';
import type { Words } from '../i18n/words.ts';
import { Progress } from '../parts/progress.tsx';
import { CheckGuide } from './check-guide.tsx';
import { CheckOutcome } from './check-outcome.tsx';
import type { Chosen } from './chosen-files.ts';
import { ChooseArchive } from './choose-archive.tsx';
import { PaperFields } from './paper-fields.tsx';
import { useCheck } from './use-check.ts';
import { paperOf, writtenIn, type Written } from './written-on-paper.ts';
import './check.css';

export interface CheckPanelProps {
  t: Words;
  lang: Language;
  /** What came with the address, as by a code on paper. */
  search: URLSearchParams;
  /** What the server from which this page comes offers besides. */
  onServer?: ReactNode;
}

/**
 * Chooses an archive and says yes, or what is wrong with it. Stands on a page of the program and on the one that lies
 * in every archive, so it takes its words from outside and asks nobody for anything.
 */
export function CheckPanel({ t, lang, search, onServer }: CheckPanelProps) {
  const { state, check } = useCheck();
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [written, setWritten] = useState<Written>(() => writtenIn(search));
  const [code] = useState(() => paperOf(writtenIn(search)));
  const paper = paperOf(written);
  const choose = (next: Chosen) => {
    setChosen(next);
    if (paper !== undefined) void check(next, paper);
  };
  return (
    <div className="check">
      {code ? (
        <>
          <CheckGuide {...{ t, paper: code, onServer }} />
          <h2>{t('check.zip')}</h2>
          <p>{t('check.lead')}</p>
        </>
      ) : null}
      <PaperFields
        {...{ t, written }}
        isUnusable={paper === undefined}
        isFromCode={Boolean(code)}
        onChange={(next) => {
          setWritten(next);
          const now = paperOf(next);
          if (chosen && now !== undefined) void check(chosen, now);
        }}
      />
      <ChooseArchive t={t} isWaiting={paper === undefined} onChoose={choose} />
      {state.kind === 'checking' ? (
        <Progress
          label={t('check.checking')}
          value={state.done}
          total={state.total}
          text={t('check.progress', {
            read: formatBytes(state.done, lang),
            all: formatBytes(state.total, lang),
          })}
        />
      ) : null}
      {state.kind === 'right' || state.kind === 'wrong' ? <CheckOutcome {...{ t, lang, state }} /> : null}
    </div>
  );
}
