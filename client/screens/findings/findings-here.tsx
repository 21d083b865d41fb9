import { Link } from 'react-router';
import type { QueryInput } from '#domain/contract/routes';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { FindingItem } from './finding-item.tsx';
import { useAnswering } from './use-answering.tsx';
import { useFindingsAbout } from './use-findings.ts';
import './findings.css';

export interface FindingsHereProps {
  about: Pick<QueryInput<'listFindings'>, 'photo' | 'mark' | 'covering'>;
}

/** What speaks against the thing on the screen; nothing where nothing does. */
export function FindingsHere({ about }: FindingsHereProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const findings = useFindingsAbout(house, about).data?.findings ?? [];
  const answering = useAnswering(findings);
  if (findings.length === 0) return answering.dialog;
  return (
    <section className="section findings-here">
      <h2>{about.photo === undefined ? t('findings.hereMember') : t('findings.here')}</h2>
      <ul className="plain-list">
        {findings.map((finding) => (
          <li key={finding.key}>
            <FindingItem
              finding={finding}
              answering={answering}
              isBrief={about.photo !== undefined}
              at={about.mark}
            />
          </li>
        ))}
      </ul>
      <p>
        <Link className="line-link" to={`/houses/${house}/findings`}>
          {t('findings.toAll')}
        </Link>
      </p>
      {answering.dialog}
    </section>
  );
}
