import { Link } from 'react-router';
import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { ZONE_UNREAD_WORDS } from './zone-unread.ts';

/** Said where a covering has a zone that its house's grid cannot place. */
export function ZoneUnreadNotice({ why }: { why: 'lines' | 'shape' }) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  return (
    <Notice
      actions={
        <IfMay act="record">
          <Link className="alone" to={`/houses/${house}/grid`}>
            {t('schedule.place.toGrid')}
          </Link>
        </IfMay>
      }
    >
      {ZONE_UNREAD_WORDS[lang][why]}
    </Notice>
  );
}
