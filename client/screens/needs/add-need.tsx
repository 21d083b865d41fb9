import { useState } from 'react';
import type { CoveringForm } from '#domain/record/covering-form';
import { nameOfKind } from '../../i18n/kind-label.ts';
import { useWords } from '../../i18n/use-words.ts';
import { SearchSelect } from '../../parts/search-select.tsx';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { common, type Need } from './needs-draft.ts';

interface AddNeedProps {
  form: CoveringForm;
  needs: readonly Need[];
  onAdd: (need: Need) => void;
}

/** A further kind that this house's coverings of a form hide. */
export function AddNeed({ form, needs, onAdd }: AddNeedProps) {
  const { t, lang } = useWords();
  const { kinds, byId } = useLexicon();
  const [added, setAdded] = useState(0);
  const there = new Set(needs.map(({ kind }) => kind));
  const add = (id: string | null) => {
    const known = id === null ? undefined : byId.get(id);
    if (!known) return;
    onAdd({ ...common(form, known), hides: true, known, isOwn: true });
    setAdded(added + 1);
  };
  return (
    <div className="needs-add">
      <SearchSelect
        // Anew after each, so that the next can be typed.
        key={added}
        label={t('needs.add')}
        openLabel={t('needs.addOpen')}
        value={null}
        choices={kinds
          .filter(({ id }) => !there.has(id))
          .map((kind) => ({ id: kind.id, label: nameOfKind(kind, lang) }))}
        onChange={add}
      />
    </div>
  );
}
