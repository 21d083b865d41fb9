import { useSearchParams } from 'react-router';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { Page } from '../../parts/page.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { useHouse } from '../../shell/use-house.ts';
import type { Days } from './kept-walk.ts';
import { Walk } from './walk.tsx';
import './shots.css';

const USUAL_DAYS = 7;
const CHOICES = ['3', '7', '14', 'all'] as const;

/** What has no record before it closes, as one walk, for whoever goes out with the camera. */
export function ShotsScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [search, setSearch] = useSearchParams();
  const days = daysOf(search.get('days'));
  return (
    <Page
      title={t('shots.title')}
      lead={t('shots.lead')}
      breadcrumb={[{ to: `/houses/${house}/report`, label: t('common.nav.report') }]}
      actions={
        <>
          <LinkButton look="act" to={`/houses/${house}/photos`}>
            {t('shots.addPhotos')}
          </LinkButton>
          <Button onPress={() => window.print()}>{t('shots.print')}</Button>
        </>
      }
    >
      <div className="no-print">
        <RadioChoice
          label={t('shots.within')}
          value={String(days)}
          choices={CHOICES.map((value) => ({
            value,
            label: value === 'all' ? t('shots.all') : t('shots.days', { count: Number(value) }),
          }))}
          onChange={(value) => setSearch({ days: value }, { replace: true })}
        />
      </div>
      <Walk key={String(days)} days={days} />
    </Page>
  );
}

function daysOf(text: string | null): Days {
  if (text === 'all') return 'all';
  return text !== null && /^\d{1,3}$/.test(text) ? Number(text) : USUAL_DAYS;
}
