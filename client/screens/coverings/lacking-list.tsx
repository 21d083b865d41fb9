import { Link } from 'react-router';
import type { FindingView } from '#domain/contract/findings';
import type { Lacking } from '#domain/contract/hold';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { useFindings } from '../findings/use-findings.ts';

const DOUBTS = { kind: 'disputed', state: 'open' } as const;

/** What an inspector has named as missing, member by member, with the doubts about their tags. */
export function LackingList({ lacking }: { lacking: readonly Lacking[] }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const doubts = useFindings(house, DOUBTS).data?.pages.flatMap(({ findings }) => findings) ?? [];
  if (lacking.length === 0) return null;
  return (
    <>
      <p>{t('hold.lacking', { count: lacking.length })}</p>
      <ul className="plain-list" aria-label={t('hold.lacking', { count: lacking.length })}>
        {lacking.map(({ mark, note }) => (
          <li key={mark} className="row coverings-lacking">
            <Link to={`/houses/${house}/members/${encodeURIComponent(mark)}`}>{mark}</Link>
            {note === '' ? null : <span>{note}</span>}
            {doubts
              .filter(({ marks }) => marks.includes(mark))
              .map((doubt) => (
                <Doubt key={doubt.key} doubt={doubt} />
              ))}
          </li>
        ))}
      </ul>
    </>
  );
}

function Doubt({ doubt: { facts, tags } }: { doubt: FindingView }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const [tag] = tags;
  const said = t('hold.doubt.said', {
    who: String(facts['by']),
    when: formatInstant(String(facts['at']), zone, lang),
    reason: String(facts['reason']),
  });
  return tag ? (
    <Link className="line-link" to={`/houses/${house}/photos/${tag.photo}?tag=${tag.tag}`}>
      {said}
    </Link>
  ) : (
    <span>{said}</span>
  );
}
