import { useSearchParams } from 'react-router';
import { CheckPanel } from '../../check/check-panel.tsx';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';

/** Needs no account and asks the server for nothing: whoever got an archive on a stick can check it here. */
export function CheckScreen() {
  const { t, lang } = useWords();
  const [search] = useSearchParams();
  return (
    <Page title={t('check.title')} lead={t('check.lead')}>
      <CheckPanel {...{ t, lang, search }} />
    </Page>
  );
}
