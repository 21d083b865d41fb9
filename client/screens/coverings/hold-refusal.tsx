import type { HoldView } from '#domain/contract/hold';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { LackingList } from './lacking-list.tsx';

/** By whom and when it was refused, and what is missing, before somebody says again that it is ready. */
export function HoldRefusal({ hold: { state, said, lacking } }: { hold: HoldView }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  if (state !== 'refused' || said === null) return null;
  const words = { when: formatInstant(said.at, zone, lang), who: said.by?.name ?? t('common.nobody') };
  return (
    <div className="coverings-refusal">
      <p className="act-text">{t('hold.said.refused', words)}</p>
      {said.note === '' ? null : (
        <p className="coverings-note">{t('hold.review.quoted', { note: said.note })}</p>
      )}
      <LackingList lacking={lacking} />
    </div>
  );
}
