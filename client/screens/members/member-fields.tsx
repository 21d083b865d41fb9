import { TRACK_NAMES, type Track } from '#domain/frame/stage';
import { kindIn } from '#domain/lexicon/make-lexicon';
import { useWords } from '../../i18n/use-words.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { KindField } from './kind-field.tsx';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import { TextArea } from '../../parts/text-area.tsx';
import { SetOutFields } from './set-out-fields.tsx';
import type { MemberDraft } from './member-draft.ts';

export interface MemberFieldsProps {
  draft: MemberDraft;
  onChange: (draft: MemberDraft) => void;
}

/** Everything of a member but its mark. */
export function MemberFields({ draft, onChange }: MemberFieldsProps) {
  const { t } = useWords();
  const lexicon = useLexicon();
  // An unknown kind passes all stages, see TRACK_OF_UNKNOWN_KIND.
  const byKind = t(`common.track.${kindIn(lexicon, draft.kind)?.track ?? 'wall'}`);
  const tracks: { value: Track | ''; label: string }[] = [
    { value: '', label: t('members.fields.trackByKind') },
    ...TRACK_NAMES.map((value) => ({ value, label: t(`common.track.${value}`) })),
  ];
  return (
    <>
      <KindField value={draft.kind} onChange={(kind) => onChange({ ...draft, kind })} />
      <Field
        label={t('members.fields.name')}
        autoComplete="off"
        maxLength={200}
        value={draft.name}
        onChange={(name) => onChange({ ...draft, name })}
      />
      <Field
        label={t('members.fields.place')}
        autoComplete="off"
        maxLength={200}
        value={draft.place}
        onChange={(place) => onChange({ ...draft, place })}
      />
      <Select
        label={t('members.fields.track')}
        description={draft.track === '' ? byKind : undefined}
        value={draft.track}
        onChange={(track) => onChange({ ...draft, track })}
        choices={tracks}
      />
      <SetOutFields draft={draft} onChange={onChange} />
      <TextArea
        label={t('members.fields.note')}
        rows={3}
        maxLength={2000}
        value={draft.note}
        onChange={(note) => onChange({ ...draft, note })}
      />
    </>
  );
}
