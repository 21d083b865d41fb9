import { useParams } from 'react-router';
import type { ReleaseView } from '#domain/contract/review-views';
import { checkAddress } from '#domain/record/sheet/check-address';
import { releaseSheet } from '#domain/record/sheet/release-sheet';
import { addressOf } from '../../api/address.ts';
import { formatInstant } from '../../i18n/format.ts';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { printWhole } from './print-whole.ts';
import { SheetView } from './sheet-view.tsx';
import { TakeBack } from './take-back.tsx';
import { useRelease } from './use-release.ts';
import './releases.css';

/** What was released, on what it rests, and what came later; also on paper. */
export function ReleaseScreen() {
  const { id: house } = useHouse();
  const { release = '' } = useParams();
  const query = useRelease(house, release);
  return (
    <QueryState query={query}>
      {(view) => <OneRelease release={view} asOf={new Date(query.dataUpdatedAt).toISOString()} />}
    </QueryState>
  );
}

function OneRelease({ release, asOf }: { release: ReleaseView; asOf: string }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const lexicon = useLexicon();
  const mayTakeBack = useMay('review');
  const { id, covering, withdrawn } = release;
  const when = (instant: string) => formatInstant(instant, zone, lang);
  const sheet = releaseSheet(
    release,
    {
      lang,
      when,
      stage: (stage) => t(`common.stage.${stage}`),
      kind: (kind) => t(`common.coveringKind.${kind}`),
      member: (kind) => kindLabel(kind, lang, lexicon),
    },
    asOf,
  );
  const base = `/houses/${house}/coverings`;
  return (
    <Page
      title={sheet.title}
      breadcrumb={[
        { to: base, label: t('common.nav.coverings') },
        { to: `${base}/${covering.id}`, label: covering.name },
      ]}
      actions={
        <>
          <a
            className="button button-plain"
            href={addressOf('releaseSheet', { release: id }, { lang })}
            download
          >
            {t('releases.pdf')}
          </a>
          <Button onPress={() => void printWhole()}>{t('releases.print')}</Button>
          {withdrawn === null && mayTakeBack ? <TakeBack release={release} /> : null}
        </>
      }
    >
      <SheetView sheet={sheet} check={checkAddress(window.location.origin, release)} />
    </Page>
  );
}
