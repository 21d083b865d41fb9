import type { ReactNode } from 'react';
import { problemSentence } from '../i18n/problem-sentence.ts';
import { useWords } from '../i18n/use-words.ts';
import { Notice } from './plain-notice.tsx';

export { Notice };

export interface ProblemNoticeProps {
  /** Anything thrown by `call`; nothing is drawn for null and undefined. */
  error: unknown;
  /** Set beside a form, whose content is still there after a failure. */
  keepsTyped?: boolean;
  actions?: ReactNode;
}

export function ProblemNotice({ error, keepsTyped = false, actions }: ProblemNoticeProps) {
  const { t, lang } = useWords();
  if (error === null || error === undefined) return null;
  return (
    <Notice tone="problem" actions={actions}>
      {problemSentence(t, lang, error, keepsTyped)}
    </Notice>
  );
}
