import { Link } from 'react-router';
import type { PhotoView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { againstLines, captureSentence, rejectedLines } from '../photos/capture-sentence.ts';
import { TimeActs } from './time-acts.tsx';

/** When the photo was taken, how that is known, what speaks against it, and what can be said about it. */
export function TakenFact({ photo }: { photo: PhotoView }) {
  const { t, lang } = useWords();
  const { id: house, zone, firstDay } = useHouse();
  const against = againstLines(t, lang, firstDay, photo.capture);
  const rejected = rejectedLines(t, lang, zone, photo.capture);
  return (
    <>
      <p>{captureSentence(t, lang, zone, photo.capture)}</p>
      {against.length > 0 ? (
        <>
          <p>{t('clock.against')}</p>
          <Lines lines={against} />
        </>
      ) : null}
      {rejected.length > 0 ? (
        <details>
          <summary>{t('photos.capture.rejected')}</summary>
          <Lines lines={rejected} />
        </details>
      ) : null}
      <IfMay act="record">
        <TimeActs photo={photo} />
      </IfMay>
      <Link className="alone" to={`/houses/${house}/cameras`}>
        {t('clock.toCameras')}
      </Link>
    </>
  );
}

function Lines({ lines }: { lines: readonly string[] }) {
  return (
    <ul>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
