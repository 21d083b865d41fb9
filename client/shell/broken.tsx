import { useWords } from '../i18n/use-words.ts';
import { Notice } from '../parts/notice.tsx';

/** Shown in place of a screen that threw, or whose code could not be loaded. */
export function Broken() {
  const { t } = useWords();
  return (
    <div className="page">
      <h1>{t('common.broken.title')}</h1>
      <Notice tone="problem">{t('common.broken.text')}</Notice>
      <button type="button" className="button button-act" onClick={() => window.location.reload()}>
        {t('common.broken.reload')}
      </button>
    </div>
  );
}
