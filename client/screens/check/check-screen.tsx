import { useSearchParams } from 'react-router';
import { checkHeading } from '../../check/check-heading.ts';
import { CheckPanel } from '../../check/check-panel.tsx';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { ReleaseHere } from './release-here.tsx';

/** Needs no account and sends nothing of an archive: whoever got one on a stick can check it here. */
export function CheckScreen() {
  const { t, lang } = useWords();
  const [search] = useSearchParams();
  const release = search.get('release');
  return (
    <Page {...checkHeading(t, search)}>
      <CheckPanel {...{ t, lang, search }} onServer={release ? <ReleaseHere release={release} /> : null} />
    </Page>
  );
}
