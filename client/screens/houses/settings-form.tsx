import { useState, type FormEvent } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { HouseFacts } from '#domain/contract/shapes';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import { SaveRow } from '../../parts/save-row.tsx';
import { useUnsaved } from '../../parts/unsaved.tsx';
import { draftOf, emptiesSite, isChanged, readDraft, type HouseDraft } from './house-draft.ts';
import { SiteFromPhotos } from './site-from-photos.tsx';
import { HouseFields } from './house-fields.tsx';
import type { PlainHouse } from '../../shell/use-house.ts';

export function SettingsForm({ house }: { house: PlainHouse }) {
  const { t } = useWords();
  const client = useQueryClient();
  const [draft, setDraft] = useState(() => draftOf(house));
  const [tried, setTried] = useState(false);
  const read = readDraft(draft);
  const save = useMutation({
    mutationFn: (facts: HouseFacts) => call('changeHouse', { params: { house: house.id }, body: facts }),
    onSuccess: async (changed) => {
      client.setQueryData(keys.house(house.id), changed);
      await client.invalidateQueries({ queryKey: keys.houses });
    },
  });
  const unsaved = useUnsaved(isChanged(draft, house));
  const change = (next: HouseDraft) => {
    setDraft(next);
    save.reset();
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if ('facts' in read) save.mutate(read.facts);
  };
  return (
    <form className="form" onSubmit={submit} noValidate>
      <HouseFields
        draft={draft}
        onChange={change}
        wrong={tried && 'wrong' in read ? read.wrong : []}
        besideSite={
          <>
            {emptiesSite(draft, house) ? <Notice>{t('houses.settings.siteEmptied')}</Notice> : null}
            <SiteFromPhotos house={house.id} onTake={(site) => change({ ...draft, site })} />
          </>
        }
      />
      <SaveRow save={save} saved={t('houses.settings.saved')} />
      {unsaved.question}
    </form>
  );
}
