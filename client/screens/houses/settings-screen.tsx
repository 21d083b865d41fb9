import { Link } from 'react-router';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Page } from '../../parts/page.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { HouseFactsList } from './house-facts-list.tsx';
import { ReleaseRule } from './release-rule.tsx';
import { SettingsForm } from './settings-form.tsx';

export function SettingsScreen() {
  const { t } = useWords();
  const house = useHouse();
  const mayRule = useMay('rule');
  return (
    <Page
      title={t('houses.settings.title')}
      lead={t('houses.settings.lead')}
      actions={<LinkButton to={`/houses/${house.id}/plan`}>{t('place.toPlan')}</LinkButton>}
    >
      {mayRule ? (
        <SettingsForm key={house.id} house={house} />
      ) : (
        <>
          <Notice>{t('houses.settings.onlyKeeper')}</Notice>
          <HouseFactsList house={house} />
        </>
      )}
      <ReleaseRule />
      <IfMay act="record">
        <Link className="alone" to={`/houses/${house.id}/grid`}>
          {t('grid.title')}
        </Link>
      </IfMay>
      <Link className="alone" to={`/houses/${house.id}/cameras`}>
        {t('clock.toCameras')}
      </Link>
    </Page>
  );
}
