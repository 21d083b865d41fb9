import { useEffect, useRef } from 'react';
import type { Answer } from '#domain/contract/routes';
import { LINK_DAYS } from '#domain/contract/link-days';
import { useWords } from '../../i18n/use-words.ts';
import { CopyLine } from '../../parts/copy-line.tsx';
import { Notice } from '../../parts/notice.tsx';

/** Says what came of it: the person is in, or there is a link to hand on. Below the form, so it comes into sight. */
export function PersonAdded({ answer, email }: { answer: Answer<'addPerson'>; email: string }) {
  const { t } = useWords();
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.focus({ preventScroll: true });
    box.current?.scrollIntoView({ block: 'nearest' });
  }, [answer]);
  return (
    <div ref={box} tabIndex={-1}>
      {answer.link === null ? (
        <Notice tone="done">{t('people.added', { name: answer.person?.name ?? email })}</Notice>
      ) : (
        <Notice tone="done">
          <p>
            <strong>{t('people.linkTitle', { email })}</strong>
          </p>
          <p>{t('people.linkText', { count: LINK_DAYS })}</p>
          <CopyLine label={t('people.link')} text={`${window.location.origin}/link/${answer.link}`} />
        </Notice>
      )}
    </div>
  );
}
