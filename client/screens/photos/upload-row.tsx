import { formatDay } from '../../i18n/format.ts';
import { sentenceOf } from '../../i18n/problem-sentence.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { canSendAgain, type UploadItem } from '../../upload/upload-queue.ts';
import type { Uploads } from '../../upload/upload-driver.ts';

/** One file: its name, how far it is, and what became of it in a plain sentence. */
export function UploadRow({ item, uploads }: { item: UploadItem; uploads: Uploads }) {
  const { t } = useWords();
  const { id, fileName: file, state } = item;
  return (
    <li className={`photos-upload photos-upload-${state.is}`}>
      <span className="photos-upload-name">{file}</span>
      <UploadWords item={item} />
      {canSendAgain(item) ? (
        <Button
          aria-label={t('photos.queue.againNamed', { file })}
          onPress={() => uploads.tell({ type: 'again', ids: [id] })}
        >
          {t('photos.queue.again')}
        </Button>
      ) : null}
      {state.is === 'waiting' || state.is === 'failed' ? (
        <Button
          look="quiet"
          aria-label={t('photos.queue.leaveOutNamed', { file })}
          onPress={() => uploads.tell({ type: 'leave-out', id })}
        >
          {t('photos.queue.leaveOut')}
        </Button>
      ) : null}
    </li>
  );
}

const ADDED = {
  file: 'photos.outcome.added',
  device: 'place.upload.rowDevice',
  none: 'place.upload.row',
} as const;

function UploadWords({ item: { fileName: file, bytes, state } }: { item: UploadItem }) {
  const { t, lang } = useWords();
  const { firstDay } = useHouse();
  switch (state.is) {
    case 'waiting':
      return <span className="soft">{t('photos.outcome.waiting')}</span>;
    case 'sending':
    case 'storing': {
      const percent = state.is === 'sending' ? Math.floor((100 * state.sent) / Math.max(1, bytes)) : 100;
      const words = t(`photos.outcome.${state.is}`);
      return (
        <span className="photos-upload-bar">
          <progress aria-label={`${file}: ${words}`} max={100} value={Math.min(percent, 100)} />
          <span className="soft">
            {state.is === 'sending' ? t('photos.queue.percent', { percent }) : words}
          </span>
        </span>
      );
    }
    case 'added': {
      const first = firstDay === null ? t('common.none') : formatDay(firstDay, lang);
      return (
        <span>
          <span>{t(ADDED[state.position])}</span>
          {state.against.map((trouble) => (
            <span key={trouble} className="act-text photos-upload-against">
              {t(`photos.outcome.against.${trouble}`, { first })}
            </span>
          ))}
        </span>
      );
    }
    case 'already-here':
    case 'elsewhere':
      return null;
    case 'unreadable':
      return <span className="act-text">{t('photos.outcome.unreadable')}</span>;
    case 'refused':
      return <span className="act-text">{sentenceOf(t, lang, state.problem)}</span>;
    case 'failed':
      return (
        <span className="act-text">
          {state.problem ? sentenceOf(t, lang, state.problem) : t('photos.outcome.unheard')}
        </span>
      );
  }
}
