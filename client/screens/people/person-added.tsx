import type { Answer } from '#domain/contract/routes';
import { useWords } from '../../i18n/use-words.ts';
import { CopyLine } from '../../parts/copy-line.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Outcome } from './outcome.tsx';

export interface PersonAddedProps {
  answer: Answer<'addPerson'>;
  email: string;
  days: number;
}

/** Says what came of it: the person is in, or there is a link to hand on. */
export function PersonAdded({ answer, email, days }: PersonAddedProps) {
  const { t } = useWords();
  return (
    <Outcome of={answer}>
      {answer.link === null ? (
        <Notice tone="done">{t('people.added', { name: answer.person?.name ?? email })}</Notice>
      ) : (
        <Notice tone="done">
          <p>
            <strong>{t('people.linkTitle', { email })}</strong>
          </p>
          <p>{t('people.linkText', { count: days })}</p>
          <CopyLine label={t('people.link')} text={`${window.location.origin}/link/${answer.link}`} />
        </Notice>
      )}
    </Outcome>
  );
}
