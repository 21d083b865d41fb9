import { Link } from 'react-router';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { isInferred, type StageInterval } from './stage-interval-words.ts';

/** The photos that an interval rests on. */
export function BoundLinks({ interval }: { interval: StageInterval }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const bounds = (['after', 'by'] as const).flatMap((side) => {
    const bound = interval[side];
    return bound ? [{ side, photo: bound.photo }] : [];
  });
  if (bounds.length === 0) return null;
  const later = isInferred(interval) ? interval.by?.stage : null;
  return (
    <p className="row">
      {bounds.map(({ side, photo }) => (
        <Link key={side} to={`/houses/${house}/photos/${photo}`}>
          {side === 'by' && later
            ? t('members.history.bound.later', { stage: t(`common.stage.${later}`) })
            : t(`members.history.bound.${side}`)}
        </Link>
      ))}
    </p>
  );
}
