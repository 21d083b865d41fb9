import { useState, type FormEvent } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from 'react-router';
import type { TermFacts } from '#domain/contract/terms';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useStableId } from '../../api/use-stable-id.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { useUnsaved } from '../../parts/unsaved.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { readTermDraft, type TermDraft } from './term-draft.ts';
import { TermFields } from './term-fields.tsx';

/** `id` null: a kind of its own. */
export function TermForm({ id, start: given }: { id: string | null; start: TermDraft }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const navigate = useNavigate();
  // As it was when the form was opened: what others change meanwhile is not this person's.
  const [start] = useState(given);
  const [draft, setDraft] = useState(start);
  const [wasTried, setWasTried] = useState(false);
  const unsaved = useUnsaved(JSON.stringify(draft) !== JSON.stringify(start));
  const newIdFor = useStableId();
  const read = readTermDraft(draft);
  const list = `/houses/${house}/lexicon`;
  const put = useMutation({
    mutationFn: (facts: TermFacts) =>
      call('putTerm', { params: { house, term: id ?? newIdFor(facts) }, body: facts }),
    onSuccess: async (term) => {
      unsaved.saved();
      await client.invalidateQueries({ queryKey: keys.allOf(house) });
      await navigate(`${list}/${term.id}`);
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setWasTried(true);
    if ('facts' in read) put.mutate(read.facts);
  };
  return (
    <form className="form" onSubmit={submit} noValidate>
      <TermFields draft={draft} onChange={setDraft} wrong={wasTried && 'wrong' in read ? read.wrong : null} />
      <ProblemNotice error={put.error} keepsTyped />
      <div className="row">
        <Button type="submit" look="act" isPending={put.isPending}>
          {t('common.save')}
        </Button>
        <LinkButton to={id === null ? list : `${list}/${id}`}>{t('common.cancel')}</LinkButton>
      </div>
      {unsaved.question}
    </form>
  );
}
