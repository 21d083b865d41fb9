import type { ReviewView } from '#domain/contract/review-views';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { SaidList } from './said-list.tsx';

interface LastRefusalProps {
  review: Pick<ReviewView, 'lastRefusal' | 'lines'>;
  onGoTo: (mark: string) => void;
}

/** Why the last review did not let the covering close, before the next one begins. */
export function LastRefusal({ review: { lastRefusal, lines }, onGoTo }: LastRefusalProps) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  if (!lastRefusal) return null;
  const { at, by, note, takenBack } = lastRefusal;
  const hidden = new Set<string>(lines.map(({ mark }) => mark));
  const lacking = lastRefusal.lacking.filter(({ mark }) => hidden.has(mark));
  const [news, same] = [true, false].map((saidSince) => lacking.filter((one) => one.saidSince === saidSince));
  const words = { when: formatInstant(at, zone, lang), who: by?.name ?? t('common.nobody') };
  const toSaid = (found: typeof lacking = []) => found.map((one) => ({ mark: one.mark, words: one.note }));
  return (
    <section className="review-last" aria-labelledby="review-last">
      <h2 id="review-last">{t(`hold.review.before.${takenBack ? 'takenBack' : 'refused'}`, words)}</h2>
      {note === '' ? null : <p className="review-said">{t('hold.review.quoted', { note })}</p>}
      <SaidList
        title={t('hold.review.before.withNews', { count: news?.length ?? 0 })}
        said={toSaid(news)}
        onGoTo={onGoTo}
      />
      <SaidList
        title={t('hold.review.before.withoutNews', { count: same?.length ?? 0 })}
        said={toSaid(same)}
        onGoTo={onGoTo}
      />
    </section>
  );
}
