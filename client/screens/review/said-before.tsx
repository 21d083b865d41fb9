import type { ReviewLineView, ReviewView } from '#domain/contract/review-views';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

interface SaidBeforeProps {
  line: Pick<ReviewLineView, 'mark'>;
  review: Pick<ReviewView, 'lastRefusal' | 'lastWaived'>;
}

/** What the last review said of a member that did not let the covering close. */
export function SaidBefore({ line: { mark }, review: { lastRefusal, lastWaived } }: SaidBeforeProps) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const lacking = lastRefusal?.lacking.find((one) => one.mark === mark);
  const waived = lastWaived?.waived.find((one) => one.mark === mark);
  const saidBy = ({ at, by }: Pick<NonNullable<ReviewView['lastWaived']>, 'at' | 'by'>) => ({
    when: formatInstant(at, zone, lang),
    who: by?.name ?? t('common.nobody'),
  });
  return (
    <>
      {lastRefusal && lacking ? (
        <p className="review-before">
          <span className="act-text">
            {lacking.note === ''
              ? t('hold.review.before.member', saidBy(lastRefusal))
              : t('hold.review.before.memberNote', { ...saidBy(lastRefusal), note: lacking.note })}
          </span>{' '}
          {t(`hold.review.before.${lacking.saidSince ? 'news' : 'noNews'}`)}
        </p>
      ) : null}
      {lastWaived && waived ? (
        <p className="review-before">
          {t('hold.review.before.waived', { ...saidBy(lastWaived), reason: waived.reason })}
        </p>
      ) : null}
    </>
  );
}
