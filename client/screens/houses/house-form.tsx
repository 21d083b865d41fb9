import { useState, type FormEvent } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from 'react-router';
import type { HouseFacts } from '#domain/contract/shapes';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useStableId } from '../../api/use-stable-id.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { useUnsaved } from '../../parts/unsaved.tsx';
import { emptyDraft, isBegun, readDraft } from './house-draft.ts';
import { HouseFields } from './house-fields.tsx';
import { ownZone } from './zones.ts';

export function HouseForm({ onCancel }: { onCancel: (() => void) | null }) {
  const { t } = useWords();
  const client = useQueryClient();
  const navigate = useNavigate();
  const idFor = useStableId();
  const [draft, setDraft] = useState(() => emptyDraft(ownZone()));
  const [tried, setTried] = useState(false);
  const unsaved = useUnsaved(isBegun(draft));
  const read = readDraft(draft);
  const open = useMutation({
    mutationFn: (facts: HouseFacts) => call('createHouse', { body: { ...facts, id: idFor(facts) } }),
    onSuccess: async (house) => {
      unsaved.saved();
      client.setQueryData(keys.house(house.id), house);
      await client.invalidateQueries({ queryKey: keys.houses });
      await navigate(`/houses/${house.id}`);
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if ('facts' in read) open.mutate(read.facts);
  };
  return (
    <section className="section">
      <h2>{t('houses.open')}</h2>
      <p className="lead">{t('houses.openLead')}</p>
      <form className="form" onSubmit={submit} noValidate>
        <HouseFields draft={draft} onChange={setDraft} wrong={tried && 'wrong' in read ? read.wrong : []} />
        <ProblemNotice error={open.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={open.isPending}>
            {t('houses.submit')}
          </Button>
          {onCancel ? (
            <Button onPress={() => unsaved.leaveThen(onCancel)}>{t('common.cancel')}</Button>
          ) : null}
        </div>
        {unsaved.question}
      </form>
    </section>
  );
}
