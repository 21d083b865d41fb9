import { useState } from 'react';
import { parsePaper, type Paper } from '#domain/verify/check-paper';
import { formatBytes } from '../i18n/format.ts';
import type { Language } from '../i18n/language.ts';
import type { Words } from '../i18n/words.ts';
import { Progress } from '../parts/progress.tsx';
import { CheckOutcome } from './check-outcome.tsx';
import type { Chosen } from './chosen-files.ts';
import { ChooseArchive } from './choose-archive.tsx';
import { PaperFields, type Written } from './paper-fields.tsx';
import { useCheck } from './use-check.ts';
import './check.css';

export interface CheckPanelProps {
  t: Words;
  lang: Language;
  /** What came with the address, as by a code on paper. */
  search: URLSearchParams;
}

/**
 * Chooses an archive and says yes, or what is wrong with it. Stands on a page of the program and on the one that lies
 * in every archive, so it takes its words from outside and asks nobody for anything.
 */
export function CheckPanel({ t, lang, search }: CheckPanelProps) {
  const { state, check } = useCheck();
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [written, setWritten] = useState<Written>(() => writtenIn(search));
  const paper = paperOf(written);
  const choose = (next: Chosen) => {
    setChosen(next);
    if (paper !== undefined) void check(next, paper);
  };
  return (
    <div className="check">
      <PaperFields
        {...{ t, written }}
        isUnusable={paper === undefined}
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

function writtenIn(search: URLSearchParams): Written {
  const read = (name: string) => search.get(name) ?? '';
  return { size: read('size'), head: read('head'), release: read('release') };
}

/** null: nothing was written down; undefined: it cannot be read. */
function paperOf(written: Written): Paper | null | undefined {
  const { size, head, release } = written;
  return `${size}${head}${release}`.trim() === '' ? null : parsePaper(written);
}
