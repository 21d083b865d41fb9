import type { ProtectionView } from '#domain/contract/protection';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { ProtectionItem } from './protection-item.tsx';
import { useProtections } from './use-protections.ts';
import './protection.css';

/** What lies over members today, and what has been lifted. */
export function ProtectionSection() {
  const { t } = useWords();
  const { id: house } = useHouse();
  return (
    <section className="section" aria-labelledby="protection">
      <h2 id="protection">{t('protection.title')}</h2>
      <p>{t('protection.lead')}</p>
      <p className="soft">{t('protection.caution')}</p>
      <IfMay act="record">
        <div className="row">
          <LinkButton to={`/houses/${house}/protection/new`}>{t('protection.lay')}</LinkButton>
        </div>
      </IfMay>
      <QueryState query={useProtections(house, false)}>
        {({ protections }) => (
          <>
            <Part
              title={t('protection.lying')}
              none={t('protection.lyingNone')}
              protections={protections.filter(({ lifted }) => !lifted)}
            />
            <Part title={t('protection.lifted')} protections={protections.filter(({ lifted }) => lifted)} />
          </>
        )}
      </QueryState>
    </section>
  );
}

function Part({
  title,
  none,
  protections,
}: {
  title: string;
  none?: string;
  protections: readonly ProtectionView[];
}) {
  if (protections.length === 0) return none === undefined ? null : <p className="soft">{none}</p>;
  return (
    <div className="protection-part">
      <h3>{title}</h3>
      <ul className="plain-list protection-list">
        {protections.map((protection) => (
          <ProtectionItem key={protection.id} protection={protection} />
        ))}
      </ul>
    </div>
  );
}
