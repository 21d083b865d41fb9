import { useState } from 'react';
import { useParams, useSearchParams } from 'react-router';
import type { CoveringView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { NotFound } from '../../shell/not-found.tsx';
import { NotYourRole } from '../../shell/not-your-role.tsx';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { useReport } from '../report/use-report.ts';
import { CloseDialog } from './close-dialog.tsx';
import { findCovering, isTimeToClose } from './closing-preview.ts';
import { CoveringDetails } from './covering-details.tsx';
import { CoveringFormScreen } from './covering-form-screen.tsx';
import { HoldActions } from './hold-actions.tsx';
import { LAYER_WORDS } from './layer-words.ts';
import { ReopenDialog } from './reopen-dialog.tsx';
import { standingOf } from './standing-of.ts';
import { useCoverings } from './use-coverings.ts';
import './coverings.css';

/** One covering: what it hides, how far the record is, and its closing. With `?change` its form. */
export function CoveringScreen() {
  const { id: house } = useHouse();
  const { covering: id = '' } = useParams();
  const [search] = useSearchParams();
  const query = useCoverings(house);
  const mayChange = useMay('record');
  if (search.has('change')) return mayChange ? <CoveringFormScreen /> : <NotYourRole />;
  return (
    <QueryState query={query}>
      {({ coverings }) => {
        const covering = coverings.find((c) => c.id === id);
        return covering ? <OneCovering covering={covering} /> : <NotFound />;
      }}
    </QueryState>
  );
}

function OneCovering({ covering }: { covering: CoveringView }) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const mayRecord = useMay('record');
  const [asks, setAsks] = useState(false);
  const close = () => setAsks(false);
  const reading = useReport(house);
  const report = reading.data;
  const isReportStillToCome = reading.fetchStatus === 'fetching' && reading.failureCount === 0;
  const [found, standing] = [findCovering(report, covering.id), standingOf(covering, report)];
  const gaps = found?.counts.gaps ?? 0;
  const next =
    covering.zone && mayRecord ? (
      <LinkButton to={`/houses/${house}/coverings/new?over=${covering.id}`}>
        {LAYER_WORDS[lang].next}
      </LinkButton>
    ) : null;
  const actions = covering.closed ? (
    <>
      {next}
      {mayRecord ? <Button onPress={() => setAsks(true)}>{t('coverings.one.reopen')}</Button> : null}
    </>
  ) : (
    // In the order in which it is done: look for what is missing, have it inspected, close.
    <>
      {gaps > 0 ? (
        <LinkButton
          look={mayRecord ? 'act' : 'plain'}
          to={`/houses/${house}/report?only=missing#${covering.id}`}
        >
          {t('coverings.one.toGaps', { count: gaps })}
        </LinkButton>
      ) : null}
      <HoldActions covering={covering} standing={standing} gaps={gaps} />
      {mayRecord ? (
        <>
          <Button look={found && isTimeToClose(found) ? 'act' : 'plain'} onPress={() => setAsks(true)}>
            {t('coverings.one.close')}
          </Button>
          <LinkButton to="?change">{t('coverings.one.change')}</LinkButton>
        </>
      ) : null}
      {next}
    </>
  );
  return (
    <Page
      title={covering.name}
      breadcrumb={[{ to: `/houses/${house}/coverings`, label: t('common.nav.coverings') }]}
      actions={actions}
      areActionsKnown={found !== undefined || !isReportStillToCome}
    >
      <CoveringDetails covering={covering} />
      {asks && covering.closed ? <ReopenDialog covering={covering} onClose={close} /> : null}
      {asks && !covering.closed ? <CloseDialog covering={covering} onClose={close} /> : null}
    </Page>
  );
}
