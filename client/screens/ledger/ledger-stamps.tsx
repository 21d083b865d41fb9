import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import { useHouse } from '../../shell/use-house.ts';

/** What an outsider has stamped of this ledger; nothing where no service is asked and none ever was. */
export function LedgerStamps() {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const { data } = useQuery({
    queryKey: keys.stamps(house),
    queryFn: ({ signal }) => call('readStamps', { params: { house }, signal }),
  });
  if (!data || (!data.isConfigured && !data.last)) return null;
  const { last, trouble } = data;
  const when = (instant: string) => formatInstant(instant, zone, lang);
  return (
    <div className="ledger-stamps">
      <p>
        {last
          ? t('ledger.stamp.last', { count: last.size, by: last.by, when: when(last.at) })
          : t('ledger.stamp.none')}
      </p>
      <p className="soft">{t('ledger.stamp.hint')}</p>
      {trouble ? (
        <Notice>
          {t('ledger.stamp.trouble', {
            when: when(trouble.at),
            reason: t(`ledger.stamp.troubleOf.${trouble.reason}`),
          })}
        </Notice>
      ) : null}
    </div>
  );
}
