import { useRouteError } from 'react-router';
import { addressOf } from '../api/address.ts';
import { useWords } from '../i18n/use-words.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';

/** Shown in place of a screen that threw, or whose code could not be loaded. */
export function Broken() {
  const error = useRouteError();
  return isNotLoaded(error) ? <NotLoaded /> : <Stopped />;
}

function Stopped() {
  const { t } = useWords();
  return (
    <div className="page">
      <h1>{t('common.broken.title')}</h1>
      <Notice
        tone="problem"
        actions={<Button onPress={() => window.location.reload()}>{t('common.broken.reload')}</Button>}
      >
        {t('common.broken.text')}
      </Notice>
    </div>
  );
}

/** Either the network is gone or the server has a newer program with other files. Neither loads a page into the void. */
function NotLoaded() {
  const { t } = useWords();
  const again = () => {
    fetch(addressOf('health')).then(
      ({ ok }) => ok && window.location.reload(),
      () => undefined,
    );
  };
  return (
    <div className="page">
      <h1>{t('common.notLoaded.title')}</h1>
      <Notice actions={<Button onPress={again}>{t('common.notLoaded.again')}</Button>}>
        {t('common.notLoaded.text')}
      </Notice>
    </div>
  );
}

/** What Chromium, Firefox and Safari say when an `import()` finds no server; none of them gives it a type of its own. */
function isNotLoaded(error: unknown): boolean {
  return (
    error instanceof TypeError &&
    /dynamically imported module|importing a module script failed/i.test(error.message)
  );
}
