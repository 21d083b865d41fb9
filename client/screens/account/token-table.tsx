import { useState } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { TokenView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Confirm } from '../../parts/confirm.tsx';
import { Table } from '../../parts/table.tsx';

/** Tokens belong to no house: their times are shown in the zone of this device. */
const HERE = Intl.DateTimeFormat().resolvedOptions().timeZone;

export function TokenTable({ tokens }: { tokens: readonly TokenView[] }) {
  const { t, lang } = useWords();
  const client = useQueryClient();
  const [ending, setEnding] = useState<TokenView | null>(null);
  const end = useMutation({
    mutationFn: (token: string) => call('deleteToken', { params: { token } }),
    onSuccess: async () => {
      setEnding(null);
      await client.invalidateQueries({ queryKey: keys.tokens });
    },
  });
  const time = (at: string | null) => (at === null ? t('tokens.never') : formatInstant(at, HERE, lang));
  const { name, created, used, expires, action } = t('tokens', { returnObjects: true });
  const headings = [name, created, used, expires, action];
  return (
    <>
      <Table label={t('tokens.list')} hideLabel headings={headings} onPhone="blocks">
        {tokens.map((token) => (
          <tr key={token.id}>
            <th scope="row">{token.name}</th>
            <td data-label={created}>{time(token.createdAt)}</td>
            <td data-label={used}>{time(token.lastUsedAt)}</td>
            <td data-label={expires}>{time(token.expiresAt)}</td>
            <td>
              <Button
                look="danger"
                aria-label={t('tokens.endNamed', { name: token.name })}
                onPress={() => setEnding(token)}
              >
                {t('tokens.end')}
              </Button>
            </td>
          </tr>
        ))}
      </Table>
      <Confirm
        title={t('tokens.endTitle', { name: ending?.name ?? '' })}
        text={t('tokens.endText')}
        yes={t('tokens.end')}
        isOpen={ending !== null}
        isPending={end.isPending}
        error={end.error}
        onYes={() => ending && end.mutate(ending.id)}
        onClose={() => {
          setEnding(null);
          end.reset();
        }}
      />
    </>
  );
}
