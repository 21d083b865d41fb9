import type { SchedulePreviewView } from '#domain/contract/schedule-views';
import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { useHouse, useHouseCounts } from '../../shell/use-house.ts';
import { useCoverings } from '../coverings/use-coverings.ts';
import type { ImportChoices } from './chosen-table.ts';

const CHOICES = ['keep', 'retire'] as const satisfies readonly ImportChoices['missing'][];
const NAMED = 20;

export interface MissingMembersProps {
  retired: SchedulePreviewView['retired'];
  value: ImportChoices['missing'];
  onChange: (missing: ImportChoices['missing']) => void;
}

/** What becomes of members that the table does not name; before they are retired, which ones and what hangs on them. */
export function MissingMembers({ retired, value, onChange }: MissingMembersProps) {
  const { t } = useWords();
  return (
    <section className="section">
      <h2>{t('schedule.missing.title')}</h2>
      <RadioChoice
        label={t('schedule.missing.question')}
        value={value}
        onChange={onChange}
        choices={CHOICES.map((choice) => ({ value: choice, label: t(`schedule.missing.${choice}`) }))}
      />
      {value === 'keep' ? null : retired.length === 0 ? (
        <p className="soft">{t('schedule.missing.none')}</p>
      ) : (
        <WouldRetire retired={retired} />
      )}
    </section>
  );
}

function WouldRetire({ retired }: Pick<MissingMembersProps, 'retired'>) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const counts = useHouseCounts();
  const coverings = useCoverings(house).data?.coverings ?? [];
  const hidden = new Set(coverings.flatMap(({ hides }) => hides.map(({ mark }) => mark)));
  const tagged = retired.filter(({ tags }) => tags > 0).length;
  const covered = retired.filter(({ mark }) => hidden.has(mark)).length;
  const rest = retired.length - NAMED;
  return (
    <Notice tone="problem">
      <p>
        <strong>{t('schedule.missing.warning', { count: retired.length, all: counts.members })}</strong>{' '}
        {t('schedule.missing.onlyWhole')}
      </p>
      <ul className="retired-marks plain-list" aria-label={t('schedule.missing.list')}>
        {retired.slice(0, NAMED).map(({ mark }) => (
          <li key={mark}>{mark}</li>
        ))}
        {rest > 0 ? <li>{t('schedule.outcome.andMore', { count: rest })}</li> : null}
      </ul>
      {tagged > 0 ? <p>{t('schedule.missing.tagged', { count: tagged })}</p> : null}
      {covered > 0 ? <p>{t('schedule.missing.hidden', { count: covered })}</p> : null}
    </Notice>
  );
}
