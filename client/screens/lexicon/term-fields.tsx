import { TRACK_NAMES } from '#domain/frame/stage';
import { FAMILIES, LIES } from '#domain/lexicon/family';
import { COVERING_FORMS } from '#domain/record/covering-form';
import { useWords } from '../../i18n/use-words.ts';
import { Checkbox } from '../../parts/checkbox.tsx';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import type { TermDraft, TermWrong } from './term-draft.ts';

export interface TermFieldsProps {
  draft: TermDraft;
  onChange: (draft: TermDraft) => void;
  wrong: TermWrong | null;
}

export function TermFields({ draft, onChange, wrong }: TermFieldsProps) {
  const { t } = useWords();
  const set = (change: Partial<TermDraft>) => onChange({ ...draft, ...change });
  const word = (field: 'kanji' | 'kana' | 'romaji' | 'en', error: string | null = null) => (
    <Field
      label={t(`lexicon.edit.${field}`)}
      autoComplete="off"
      maxLength={60}
      value={draft[field]}
      onChange={(text) => set({ [field]: text })}
      error={error}
    />
  );
  return (
    <>
      {word('kanji', wrong?.name ? t('lexicon.edit.needName') : null)}
      <div className="pair">
        {word('kana')}
        {word('romaji')}
      </div>
      {word('en')}
      <Field
        label={t('lexicon.edit.also')}
        description={t('lexicon.edit.alsoHint')}
        autoComplete="off"
        maxLength={1000}
        value={draft.also}
        onChange={(also) => set({ also })}
      />
      <Field
        label={t('lexicon.edit.does')}
        autoComplete="off"
        maxLength={300}
        value={draft.does}
        onChange={(does) => set({ does })}
      />
      <Select
        label={t('lexicon.edit.family')}
        value={draft.family}
        onChange={(family) => set({ family })}
        choices={FAMILIES.map((value) => ({ value, label: t(`lexicon.family.${value}`) }))}
      />
      <Select
        label={t('lexicon.edit.lies')}
        value={draft.lies}
        onChange={(lies) => set({ lies })}
        choices={LIES.map((value) => ({ value, label: t(`lexicon.lies.${value}`) }))}
      />
      <Select
        label={t('lexicon.edit.track')}
        value={draft.track}
        onChange={(track) => set({ track })}
        choices={TRACK_NAMES.map((value) => ({ value, label: t(`common.track.${value}`) }))}
      />
      <Field
        label={t('lexicon.edit.section')}
        description={t('lexicon.edit.sectionHint')}
        autoComplete="off"
        maxLength={20}
        value={draft.section}
        onChange={(section) => set({ section })}
        error={wrong?.section ? t('lexicon.edit.wrongSection') : null}
      />
      <HiddenBy draft={draft} set={set} />
    </>
  );
}

function HiddenBy({ draft, set }: { draft: TermDraft; set: (change: Partial<TermDraft>) => void }) {
  const { t } = useWords();
  return (
    <fieldset className="fieldset">
      <legend className="field-label">{t('lexicon.edit.hiddenBy')}</legend>
      {COVERING_FORMS.map((form) => (
        <Checkbox
          key={form}
          isSelected={draft.hiddenBy.includes(form)}
          onChange={(isHidden) =>
            set({
              hiddenBy: COVERING_FORMS.filter((one) =>
                one === form ? isHidden : draft.hiddenBy.includes(one),
              ),
            })
          }
        >
          {t(`lexicon.form.${form}`)}
        </Checkbox>
      ))}
    </fieldset>
  );
}
