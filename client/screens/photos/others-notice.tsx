import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import { isOver, type UploadItem } from '../../upload/upload-queue.ts';
import { useUploads } from '../../upload/use-uploads.ts';

/** On a shared phone: whose photos wait in this browser for their person to sign in. */
export function OthersNotice({ house }: { house: string }) {
  const { t } = useWords();
  const { others } = useUploads(house);
  const waiting = others.filter((item) => !isOver(item));
  return byPerson(waiting).map(({ id, name, count }) => (
    <Notice key={id}>{t('photos.queue.others', { count, name })}</Notice>
  ));
}

function byPerson(items: readonly UploadItem[]) {
  const counts = new Map<string, { id: string; name: string; count: number }>();
  for (const { by } of items) {
    const sum = counts.get(by.id) ?? { ...by, count: 0 };
    counts.set(by.id, { ...sum, count: sum.count + 1 });
  }
  return [...counts.values()];
}
