import type { Answer } from '#domain/contract/routes';
import { useWords } from '../../i18n/use-words.ts';
import { CopyLine } from '../../parts/copy-line.tsx';
import { Notice } from '../../parts/notice.tsx';

/** Says what came of it: the person is in, or there is a link to hand on. */
export function PersonAdded({ answer, email }: { answer: Answer<'addPerson'>; email: string }) {
  const { t } = useWords();
  if (answer.link === null) {
    return <Notice tone="done">{t('people.added', { name: answer.person?.name ?? email })}</Notice>;
  }
  return (
    <Notice tone="done">
      <p>
        <strong>{t('people.linkTitle', { email })}</strong>
      </p>
      <p>{t('people.linkText')}</p>
      <CopyLine label={t('people.link')} text={`${window.location.origin}/link/${answer.link}`} />
    </Notice>
  );
}
