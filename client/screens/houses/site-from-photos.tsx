import { useQuery } from '@tanstack/react-query';
import { middlePosition } from '#domain/place/middle-position';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { pairWords } from '../place/length-words.ts';

/** Proposes the middle of the photos' positions as that of the site; nothing without any. */
export function SiteFromPhotos({ house, onTake }: { house: string; onTake: (site: string) => void }) {
  const { t } = useWords();
  const { data } = useQuery({
    queryKey: keys.places(house),
    queryFn: ({ signal }) => call('listPlaces', { params: { house }, signal }),
  });
  const positions = (data?.photos ?? []).flatMap(({ place }) => place.position ?? []);
  const middle = middlePosition(positions);
  if (!middle) return null;
  const { lat, lon } = pairWords(middle);
  return (
    <div className="row">
      <Button onPress={() => onTake(`${lat}, ${lon}`)}>{t('place.settings.fromPhotos')}</Button>
      <span className="soft">{t('place.settings.fromPhotosHint', { count: positions.length })}</span>
    </div>
  );
}
