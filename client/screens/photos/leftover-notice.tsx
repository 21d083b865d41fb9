import { formatList } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useLeftovers } from '../../upload/use-uploads.ts';

const NAMED = 5;

/** After a reload: which photos had been chosen and not sent. They must be chosen again. */
export function LeftoverNotice({ house }: { house: string }) {
  const { t, lang } = useWords();
  const { names, forget } = useLeftovers(house);
  if (names.length === 0) return null;
  const rest = names.length - NAMED;
  const named = [...names.slice(0, NAMED), ...(rest > 0 ? [t('photos.leftover.more', { count: rest })] : [])];
  return (
    <Notice
      tone="problem"
      actions={
        <Button look="quiet" onPress={forget}>
          {t('photos.leftover.forget')}
        </Button>
      }
    >
      <p>
        <strong>{t('photos.leftover.count', { count: names.length })}</strong> {t('photos.leftover.what')}
      </p>
      <p className="soft">{formatList(named, lang)}</p>
    </Notice>
  );
}
