import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import type { StatedRequirement } from '#domain/record/requirements-of';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { SaveRow } from '../../parts/save-row.tsx';
import { useUnsaved } from '../../parts/unsaved.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { FormNeeds } from './form-needs.tsx';
import { COVERING_FORMS, isSameTable, needsUnder, withNeed, withoutNeed } from './needs-draft.ts';

/** The whole table, stated by one save. */
export function NeedsForm({ rows }: { rows: readonly StatedRequirement[] }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { kinds } = useLexicon();
  const client = useQueryClient();
  const [start, setStart] = useState(rows);
  const [draft, setDraft] = useState(rows);
  const unsaved = useUnsaved(!isSameTable(start, draft));
  const save = useMutation({
    mutationFn: () => call('stateRequirements', { params: { house }, body: { rows: [...draft] } }),
    onSuccess: async () => {
      setStart(draft);
      await client.invalidateQueries({ queryKey: keys.allOf(house) });
    },
  });
  const change = (next: readonly StatedRequirement[]) => {
    setDraft(next);
    save.reset();
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    save.mutate();
  };
  return (
    <form className="needs" onSubmit={submit} noValidate>
      {COVERING_FORMS.map((form) => (
        <FormNeeds
          key={form}
          form={form}
          needs={needsUnder(form, kinds, draft)}
          onChange={(need) => change(withNeed(draft, need))}
          onBack={(need) => change(withoutNeed(draft, need))}
        />
      ))}
      <p className="soft">{t('common.peggedMeans')}</p>
      <p className="soft">{t('needs.caution')}</p>
      <IfMay act="record">
        <SaveRow save={save} saved={t('needs.saved')} />
      </IfMay>
      {unsaved.question}
    </form>
  );
}
