import { useQuery } from '@tanstack/react-query';
import { useParams, useSearchParams } from 'react-router';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { StageStrokes } from '../../parts/stage-strokes.tsx';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { listAddress, readListPlace } from './list-address.ts';
import { MemberActions } from './member-actions.tsx';
import { MemberHistory } from './member-history.tsx';
import './members.css';

export function MemberScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { mark = '' } = useParams();
  const [search] = useSearchParams();
  const list = listAddress({ ...readListPlace(search), at: mark });
  const query = useQuery({
    queryKey: keys.member(house, mark),
    queryFn: ({ signal }) => call('readMember', { params: { house, mark }, signal }),
  });
  const member = query.data?.member;
  const mayChange = useMay('record');
  return (
    <Page
      title={mark}
      badge={member ? <StageStrokes stage={member.stage} track={member.track} size="large" /> : null}
      breadcrumb={[{ to: `/houses/${house}/members${list}`, label: t('common.nav.members') }]}
      actions={member && mayChange ? <MemberActions key={mark} member={member} /> : null}
    >
      <QueryState query={query}>{(history) => <MemberHistory history={history} />}</QueryState>
    </Page>
  );
}
