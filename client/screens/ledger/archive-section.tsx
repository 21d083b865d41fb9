import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import { addressOf } from '../../api/address.ts';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatBytes } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { ProblemNotice } from '../../parts/notice.tsx';

/** All of the house as one file, how large that is going to be, and where it can be checked. */
export function ArchiveSection({ house }: { house: string }) {
  const { t, lang } = useWords();
  const size = useQuery({
    queryKey: keys.archiveSize(house),
    queryFn: ({ signal }) => call('archiveSize', { params: { house }, signal }),
  });
  return (
    <section className="ledger-head" aria-labelledby="archive">
      <h2 id="archive">{t('ledger.archive.title')}</h2>
      <p>{t('ledger.archive.lead')}</p>
      {size.data ? (
        <p>
          {t('ledger.archive.size', {
            count: size.data.originals,
            bytes: formatBytes(size.data.bytes, lang),
          })}
        </p>
      ) : null}
      <ProblemNotice error={size.error} />
      <div className="row">
        <a className="button button-plain" href={addressOf('readArchive', { house }, { lang })} download>
          {t('ledger.archive.download')}
        </a>
        <Link className="alone" to="/check">
          {t('ledger.archive.check')}
        </Link>
      </div>
      <p className="soft">{t('ledger.archive.caution')}</p>
    </section>
  );
}
