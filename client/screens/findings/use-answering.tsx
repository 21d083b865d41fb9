import { useEffect, useRef, useState, type ReactNode } from 'react';
import type { FindingView } from '#domain/contract/findings';
import { AcceptDialog } from './accept-dialog.tsx';
import { ReopenDialog } from './reopen-dialog.tsx';

export interface Answering {
  accept: (findings: readonly FindingView[]) => void;
  reopen: (finding: FindingView) => void;
}

type Asked = { readonly act: 'accept' | 'reopen'; readonly findings: readonly FindingView[] };

/**
 * Asks for the answer to findings in a dialog of the whole list, which stays when a finding goes from the
 * list meanwhile. Afterwards the focus is on the finding that has come to the place of the answered one.
 */
export function useAnswering(shown: readonly FindingView[]): Answering & { dialog: ReactNode } {
  const [asked, setAsked] = useState<Asked | null>(null);
  const answered = useRef<{ key: string; place: number } | null>(null);
  const ask = (act: Asked['act'], findings: readonly FindingView[]) => {
    const key = findings[0]?.key ?? '';
    answered.current = { key, place: shown.findIndex((finding) => finding.key === key) };
    setAsked({ act, findings });
  };
  useEffect(() => {
    const { key, place } = answered.current ?? { key: '', place: -1 };
    if (asked !== null || place < 0 || shown.some((finding) => finding.key === key)) return;
    answered.current = null;
    if (document.activeElement !== document.body) return;
    const articles = document.querySelectorAll<HTMLElement>('.finding');
    (articles[Math.min(place, articles.length - 1)] ?? document.querySelector<HTMLElement>('h1'))?.focus();
  }, [asked, shown]);
  const close = () => setAsked(null);
  const [first] = asked?.findings ?? [];
  return {
    accept: (findings) => ask('accept', findings),
    reopen: (finding) => ask('reopen', [finding]),
    dialog:
      asked === null || first === undefined ? null : asked.act === 'accept' ? (
        <AcceptDialog findings={asked.findings} onClose={close} />
      ) : (
        <ReopenDialog finding={first} onClose={close} />
      ),
  };
}
