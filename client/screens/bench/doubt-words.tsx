import { Link } from 'react-router';
import type { TagView } from '#domain/contract/views';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

interface DoubtWordsProps {
  tag: Pick<TagView, 'disputed' | 'state'>;
  /** Whether somebody has answered the finding: the tag counts again. */
  isAnswered: boolean;
}

/** Who doubts a tag and why, and how that is answered. */
export function DoubtWords({ tag: { disputed, state }, isAnswered }: DoubtWordsProps) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  if (!disputed || state !== 'standing') return null;
  const { at, by, reason } = disputed;
  const said = { when: formatInstant(at, zone, lang), who: by?.name ?? t('common.nobody'), reason };
  return (
    <span className={isAnswered ? 'soft' : 'act-text'}>
      {t('hold.doubt.said', said)} {t(isAnswered ? 'hold.doubt.answered' : 'hold.doubt.unanswered')}
      {isAnswered ? null : ' '}
      {isAnswered ? null : (
        <Link className="line-link" to={`/houses/${house}/findings?kind=disputed`}>
          {t('hold.doubt.toFindings')}
        </Link>
      )}
    </span>
  );
}
