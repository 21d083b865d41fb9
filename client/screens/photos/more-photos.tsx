import { formatNumber } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { loaded, type PhotoPages } from './use-photo-pages.ts';

/** The rest of a list, a page at a time; nothing where all of it is shown. */
export function MorePhotos({ pages }: { pages: PhotoPages }) {
  const { t, lang } = useWords();
  if (!pages.hasNextPage) return null;
  const { photos, total } = loaded(pages);
  const shown = { shown: formatNumber(photos.length, lang), total: formatNumber(total, lang) };
  return (
    <div className="row">
      <Button isPending={pages.isFetchingNextPage} onPress={() => void pages.fetchNextPage()}>
        {t('photos.list.more')}
      </Button>
      <span className="soft">{t('photos.list.shown', shown)}</span>
    </div>
  );
}
