import { useState, type FormEvent } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice, ProblemNotice } from '../../parts/notice.tsx';
import { TextArea } from '../../parts/text-area.tsx';
import { useUnsaved } from '../../parts/unsaved.tsx';
import { useHouse } from '../../shell/use-house.ts';

/** `saved`: what stands on record. What is being typed is not overwritten when that changes. */
export function OwnNote({ date, saved }: { date: string; saved: string }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const [draft, setDraft] = useState<string | null>(null);
  const save = useMutation({
    mutationFn: (text: string) => call('writeNote', { params: { house, date }, body: { text } }),
    onSuccess: (day, text) => {
      client.setQueryData(keys.day(house, date), day);
      // Typing may have gone on while the note was on its way.
      setDraft((now) => (now === text ? null : now));
    },
  });
  const unsaved = useUnsaved(draft !== null && draft !== saved);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (draft !== null) save.mutate(draft);
  };
  const change = (text: string) => {
    setDraft(text);
    if (save.isSuccess) save.reset();
  };
  return (
    <form className="note-form" onSubmit={submit}>
      <TextArea
        label={t('days.day.ownNote')}
        description={t('days.day.ownNoteHint')}
        rows={5}
        maxLength={20_000}
        value={draft ?? saved}
        onChange={change}
      />
      <ProblemNotice error={save.error} keepsTyped />
      {save.isSuccess && draft === null ? <Notice tone="done">{t('days.day.noteSaved')}</Notice> : null}
      <div className="row">
        <Button type="submit" isPending={save.isPending} isDisabled={draft === null || draft === saved}>
          {t('days.day.saveNote')}
        </Button>
      </div>
      {unsaved.question}
    </form>
  );
}
