import { useWords } from '../../i18n/use-words.ts';
import { formatNumber } from '../../i18n/format.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { Progress } from '../../parts/progress.tsx';
import {
  canSendAgain,
  isDoubtful,
  isMoving,
  isSettled,
  lacksPosition,
  summarize,
  type UploadItem,
} from '../../upload/upload-queue.ts';
import { useUploads } from '../../upload/use-uploads.ts';
import { PositionMissing } from './position-missing.tsx';
import { UploadRow } from './upload-row.tsx';

const ROWS = 60;

/** What is on its way and what became of it as a whole; file by file only what moves, waits or needs somebody. */
export function UploadList({ house }: { house: string }) {
  const { t, lang } = useWords();
  const { mine: items, uploads } = useUploads(house);
  if (items.length === 0) return null;
  const sum = summarize(items);
  const isDone = sum.over === sum.total;
  const again = items.filter(canSendAgain).map(({ id }) => id);
  const rows = items
    .filter((item) => !isSettled(item) || isDoubtful(item) || lacksPosition(item))
    .sort((a, b) => urgency(a) - urgency(b));
  const title = t(isDone ? 'photos.queue.titleDone' : 'photos.queue.title');
  const keptWords = sum.atRisk > 0 ? null : t('photos.queue.kept');
  const text = t('photos.queue.count', {
    done: formatNumber(sum.over, lang),
    total: formatNumber(sum.total, lang),
  });
  return (
    <section className="section" aria-label={title}>
      <h2>{title}</h2>
      <Progress label={t('photos.queue.whole')} value={sum.bytesDone} total={sum.bytes} text={text} />
      <p role="status">{isDone ? t('photos.queue.finished', { ...sum }) : keptWords}</p>
      {sum.atRisk > 0 ? <p className="act-text">{t('photos.queue.atRisk', { count: sum.atRisk })}</p> : null}
      {isDone && sum.elsewhere > 0 ? (
        <p>{t('photos.queue.finishedElsewhere', { count: sum.elsewhere })}</p>
      ) : null}
      {sum.unheard > 0 ? (
        <p className="act-text">{t('photos.queue.unheard', { count: sum.unheard })}</p>
      ) : null}
      <PositionMissing items={items} uploads={uploads} />
      {rows.length > 0 ? (
        <ul className="plain-list photos-queue" aria-label={t('photos.queue.list')}>
          {rows.slice(0, ROWS).map((item) => (
            <UploadRow key={item.id} item={item} uploads={uploads} />
          ))}
          {rows.length > ROWS ? (
            <li className="soft">{t('photos.queue.more', { count: rows.length - ROWS })}</li>
          ) : null}
        </ul>
      ) : null}
      <div className="row">
        {isDone && sum.added > 0 ? (
          <LinkButton to={`/houses/${house}/photos?untagged=1`}>{t('photos.queue.toUntagged')}</LinkButton>
        ) : null}
        {again.length > 1 ? (
          <Button onPress={() => uploads.tell({ type: 'again', ids: again })}>
            {t('photos.queue.allAgain')}
          </Button>
        ) : null}
        {sum.over > 0 ? (
          <Button look="quiet" onPress={() => uploads.tell({ type: 'tidy', house })}>
            {t('photos.queue.tidy')}
          </Button>
        ) : null}
      </div>
    </section>
  );
}

const ORDER = ['refused', 'unreadable', 'failed', 'doubtful', 'waiting', 'added'];

/** What moves, then what needs somebody or may have to be taken again, then what waits, then what lacks its position. The sort keeps the order within. */
function urgency(item: UploadItem): number {
  return isMoving(item) ? -1 : Math.max(1, ORDER.indexOf(isDoubtful(item) ? 'doubtful' : item.state.is));
}
