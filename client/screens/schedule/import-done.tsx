import type { ScheduleImportView } from '#domain/contract/schedule-views';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useHouse } from '../../shell/use-house.ts';

export function ImportDone({ outcome, onAgain }: { outcome: ScheduleImportView; onAgain: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const count = (what: 'added' | 'changed' | 'retired') =>
    t(`schedule.outcome.${what}`, { count: outcome[what] });
  return (
    <>
      <Notice tone="done">
        <p>
          {outcome.seq === null
            ? t('schedule.doneNothing')
            : t('schedule.done', {
                added: count('added'),
                changed: count('changed'),
                retired: count('retired'),
              })}
        </p>
        {outcome.badRows > 0 ? <p>{t('schedule.doneBad', { count: outcome.badRows })}</p> : null}
      </Notice>
      <div className="row">
        <LinkButton look="act" to={`/houses/${house}/members`}>
          {t('schedule.toMembers')}
        </LinkButton>
        <Button onPress={onAgain}>{t('schedule.another')}</Button>
      </div>
    </>
  );
}
