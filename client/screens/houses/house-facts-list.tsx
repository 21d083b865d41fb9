import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { lengthWords, pairWords } from '../place/length-words.ts';
import { draftOf } from './house-draft.ts';
import type { PlainHouse } from '../../shell/use-house.ts';

export function HouseFactsList({ house }: { house: PlainHouse }) {
  const { t, lang } = useWords();
  const { name, zone } = draftOf(house);
  const unset = t('houses.settings.unset');
  return (
    <dl className="facts">
      <dt>{t('houses.fields.name')}</dt>
      <dd>{name}</dd>
      <dt>{t('houses.fields.zone')}</dt>
      <dd>{zone}</dd>
      <dt>{t('houses.fields.firstDay')}</dt>
      <dd>{house.firstDay === null ? unset : formatDay(house.firstDay, lang)}</dd>
      <dt>{t('houses.fields.site')}</dt>
      <dd>
        {house.site
          ? t('place.settings.value', {
              ...pairWords(house.site),
              radius: lengthWords(t, lang, house.site.radiusM),
            })
          : unset}
      </dd>
    </dl>
  );
}
