import { useState } from 'react';
import { Link, useLocation } from 'react-router';
import { formatNumber } from '../i18n/format.ts';
import { useWords } from '../i18n/use-words.ts';
import { summarize } from '../upload/upload-queue.ts';
import { useUploads } from '../upload/use-uploads.ts';

/** How far the photos of this house are, on every page of it but the one that lists them. */
export function UploadLine({ house }: { house: string }) {
  const { t, lang } = useWords();
  const { pathname } = useLocation();
  const { mine } = useUploads(house);
  const sum = summarize(mine);
  const isUnderWay = sum.over < sum.total;
  const [stays, setStays] = useState('');
  // Stays until the next page, done or not: no picture may move under a drawing hand.
  if (isUnderWay && stays !== pathname) setStays(pathname);
  const list = `/houses/${house}/photos`;
  if (pathname === list || stays !== pathname || sum.total === 0) return null;
  const text = t('photos.queue.line', {
    sent: formatNumber(sum.added + sum.known + sum.elsewhere, lang),
    total: formatNumber(sum.total, lang),
  });
  return (
    <p className="upload-line no-print">
      <progress aria-label={text} max={Math.max(1, sum.bytes)} value={sum.bytesDone} />
      <Link to={list}>{text}</Link>
      {sum.refused > 0 ? (
        <span className="act-text">{t('photos.queue.lineRefused', { count: sum.refused })}</span>
      ) : null}
      {sum.atRisk > 0 ? <span className="act-text">{t('photos.queue.lineAtRisk')}</span> : null}
    </p>
  );
}
