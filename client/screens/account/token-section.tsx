import { useState } from 'react';
import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { CopyLine } from '../../parts/copy-line.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Notice } from '../../parts/notice.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { TokenForm } from './token-form.tsx';
import { TokenTable } from './token-table.tsx';

export function TokenSection() {
  const { t } = useWords();
  const [made, setMade] = useState<{ name: string; secret: string } | null>(null);
  const query = useQuery({ queryKey: keys.tokens, queryFn: ({ signal }) => call('listTokens', { signal }) });
  return (
    <section className="section">
      <h2>{t('tokens.title')}</h2>
      <p className="lead">{t('tokens.lead')}</p>
      {made ? (
        <Notice tone="done">
          <p>
            <strong>{t('tokens.secretTitle', { name: made.name })}</strong>
          </p>
          <p>{t('tokens.secretText')}</p>
          <CopyLine label={t('tokens.secret')} text={made.secret} />
        </Notice>
      ) : null}
      <QueryState query={query}>
        {({ tokens }) =>
          tokens.length === 0 ? (
            <EmptyState title={t('tokens.none')}>{t('tokens.noneText')}</EmptyState>
          ) : (
            <TokenTable tokens={tokens} />
          )
        }
      </QueryState>
      <TokenForm onMade={(name, secret) => setMade({ name, secret })} />
    </section>
  );
}
