import { Link } from 'react-router';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import type { StageInterval } from './stage-interval-words.ts';

/** The photos that an interval rests on. */
export function BoundLinks({ interval }: { interval: StageInterval }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const bounds = (['after', 'by'] as const).flatMap((side) => {
    const bound = interval[side];
    return bound ? [{ side, photo: bound.photo }] : [];
  });
  if (bounds.length === 0) return null;
  return (
    <p className="row">
      {bounds.map(({ side, photo }) => (
        <Link key={side} to={`/houses/${house}/photos/${photo}`}>
          {t(`members.history.bound.${side}`)}
        </Link>
      ))}
    </p>
  );
}
