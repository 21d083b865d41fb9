import { useState } from 'react';
import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useMembers } from '../../finding/use-members.ts';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { AddMember } from './add-member.tsx';
import { MemberFinder } from './member-finder.tsx';
import './members.css';

export function MembersScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [isAdding, setIsAdding] = useState(false);
  const query = useQuery({
    queryKey: keys.members(house),
    queryFn: ({ signal }) => call('listMembers', { params: { house }, signal }),
  });
  const { index } = useMembers(house);
  const mayRecord = useMay('record');
  const isEmpty = query.data?.members.length === 0;
  const ways = (
    <>
      {mayRecord ? (
        <LinkButton look={isEmpty ? 'act' : 'plain'} to={`/houses/${house}/schedule`}>
          {t('members.import')}
        </LinkButton>
      ) : null}
      <LinkButton to={`/houses/${house}/lexicon`}>{t('lexicon.title')}</LinkButton>
      {mayRecord ? <Button onPress={() => setIsAdding(true)}>{t('members.add')}</Button> : null}
    </>
  );
  return (
    <Page title={t('members.title')} actions={isEmpty ? null : ways}>
      <QueryState query={query}>
        {({ members }) => (
          <>
            {isEmpty ? (
              <EmptyState title={t('members.none')} action={ways}>
                {mayRecord ? t('members.noneText') : null}
              </EmptyState>
            ) : (
              <MemberFinder index={index} />
            )}
            <AddMember
              isOpen={isAdding}
              taken={new Set(members.filter((m) => !m.retired).map(({ mark }) => mark as string))}
              onClose={() => setIsAdding(false)}
            />
          </>
        )}
      </QueryState>
    </Page>
  );
}
