import { useState } from 'react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { KindSightingView } from '#domain/contract/terms';
import type { Kind } from '#domain/lexicon/kinds';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import { useHouse } from '../../shell/use-house.ts';

const FIRST = 8;
const MOST = 200;

/** What this house's own photos show of a kind, cut to the regions, the newest first. */
export function KindPhotos({ kind }: { kind: Kind }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [limit, setLimit] = useState(FIRST);
  const query = useQuery({
    queryKey: keys.kindSightings(house, kind.id, limit),
    queryFn: ({ signal }) =>
      call('kindSightings', { params: { house, kind: kind.id }, query: { limit }, signal }),
    placeholderData: keepPreviousData,
  });
  return (
    <QueryState query={query}>
      {({ sightings, total }) =>
        total === 0 ? (
          <p className="soft">{t('lexicon.photosNone')}</p>
        ) : (
          <>
            <ul className="lexicon-photos plain-list" aria-label={t('lexicon.photos')}>
              {sightings.map((seen) => (
                <li key={seen.tag}>
                  <Seen seen={seen} />
                </li>
              ))}
            </ul>
            {total > sightings.length && limit < MOST ? (
              <div className="row">
                <Button onPress={() => setLimit(MOST)}>{t('lexicon.allPhotos', { count: total })}</Button>
              </div>
            ) : null}
          </>
        )
      }
    </QueryState>
  );
}

function Seen({ seen: { photo, mark, stage, fileName, capture, crop } }: { seen: KindSightingView }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const alt = t('members.history.cropAlt', { mark, file: fileName, stage: t(`common.stage.${stage}`) });
  return (
    <figure>
      <Link to={`/houses/${house}/photos/${photo}`}>
        <img src={crop} alt={alt} loading="lazy" decoding="async" />
      </Link>
      <figcaption>
        <strong>{mark}</strong> <StageName stage={stage} />
        <span className="soft">
          {capture.state === 'dated' ? formatInstant(capture.instant, zone, lang) : null}
        </span>
      </figcaption>
    </figure>
  );
}
