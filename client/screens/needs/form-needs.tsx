import { useState } from 'react';
import type { CoveringForm } from '#domain/record/covering-form';
import { useWords } from '../../i18n/use-words.ts';
import { Table } from '../../parts/table.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { AddNeed } from './add-need.tsx';
import { NeedRow } from './need-row.tsx';
import type { Need } from './needs-draft.ts';

export interface FormNeedsProps {
  form: CoveringForm;
  needs: readonly Need[];
  onChange: (need: Need) => void;
  onBack: (need: Need) => void;
}

/** One form of covering with the kinds that it hides; folded, since some hide a great many. */
export function FormNeeds({ form, needs, onChange, onBack }: FormNeedsProps) {
  const { t } = useWords();
  const { kind, hides, least, views } = t('needs.columns', { returnObjects: true });
  const own = needs.filter(({ isOwn }) => isOwn).length;
  // Only at first: it is not to fold while somebody works in it.
  const [isOpen] = useState(own > 0);
  const name = t(`lexicon.form.${form}`);
  return (
    <details className="needs-form" open={isOpen}>
      <summary>
        <h2>{name}</h2>{' '}
        <span className="soft">
          {t('needs.hidden', { count: needs.filter((need) => need.hides).length })}
        </span>
        {own > 0 ? <span className="needs-own">{t('needs.own', { count: own })}</span> : null}
      </summary>
      <Table label={name} hideLabel headings={[kind, hides, least, views, '']} onPhone="blocks">
        {needs.map((need) => (
          <NeedRow key={need.kind} need={need} onChange={onChange} onBack={onBack} />
        ))}
      </Table>
      <IfMay act="record">
        <AddNeed form={form} needs={needs} onAdd={onChange} />
      </IfMay>
    </details>
  );
}
