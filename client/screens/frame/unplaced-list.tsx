import { Link } from 'react-router';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import type { FrameModel } from './frame-model.ts';

/** Members that cannot be drawn, each with why. */
export function UnplacedList({ model, house }: { model: FrameModel; house: string }) {
  const { t } = useWords();
  const { unplaced } = model;
  if (unplaced.length === 0) return null;
  return (
    <details className="frame-unplaced no-print">
      <summary>{t('frame.unplaced', { count: unplaced.length })}</summary>
      <p className="soft">{t('frame.unplacedLead')}</p>
      <ul className="plain-list">
        {unplaced.map(({ mark, kind, problem }) => (
          <li key={mark}>
            <Link className="alone" to={`/houses/${house}/members/${encodeURIComponent(mark)}`}>
              {mark}
            </Link>{' '}
            <KindName kind={kind} hasReading={false} />{' '}
            <span className="soft">
              {problem ? t(`schedule.why.${problem.reason}`) : t('frame.notStated')}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}
