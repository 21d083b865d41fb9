import type { ProtectionView } from '#domain/contract/protection';
import { useWords } from '../../i18n/use-words.ts';
import { Field } from '../../parts/field.tsx';
import { TextArea } from '../../parts/text-area.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { ClosingWhen } from '../coverings/closing-when.tsx';
import { laidFault, type ProtectionDraft, type ProtectionEvent } from './protection-draft.ts';

export interface ProtectionFieldsProps {
  draft: ProtectionDraft;
  wasTried: boolean;
  /** What is being changed. */
  protection: ProtectionView | null;
  tell: (event: ProtectionEvent) => void;
}

/** Name, what lies there, when it was laid and when it is to be lifted. */
export function ProtectionFields({ draft, wasTried, protection, tell }: ProtectionFieldsProps) {
  const { t } = useWords();
  const { zone } = useHouse();
  const { over, what, when } = draft;
  const write = (field: 'name' | 'plannedDay' | 'note') => (text: string) =>
    tell({ type: 'write', field, text });
  const fault = laidFault(when, new Date(), protection?.lifted?.at ?? null);
  return (
    <div className="form">
      <Field
        label={t('protection.form.name')}
        description={t('protection.form.nameHint')}
        value={over.name}
        onChange={write('name')}
        maxLength={200}
        error={wasTried && over.name.trim() === '' ? t('protection.form.needName') : null}
      />
      <Field
        label={t('protection.form.what')}
        description={t('protection.form.whatHint')}
        value={what}
        onChange={(text) => tell({ type: 'write-what', text })}
        maxLength={200}
        error={wasTried && what.trim() === '' ? t('protection.form.needWhat') : null}
      />
      <ClosingWhen
        when={when}
        wasTried={wasTried}
        isKnown={protection !== null}
        asked={{
          question: protection ? t('protection.form.laidAt', { zone }) : t('protection.form.when'),
          fault: fault === 'badTime' ? t('coverings.close.badTime') : fault && t(`protection.form.${fault}`),
        }}
        onChange={(next) => tell({ type: 'choose-when', when: next })}
      />
      <Field
        type="date"
        label={t('protection.form.day')}
        description={t('protection.form.dayHint')}
        value={over.plannedDay}
        onChange={write('plannedDay')}
      />
      <TextArea
        label={t('coverings.form.note')}
        value={over.note}
        onChange={write('note')}
        rows={2}
        maxLength={2000}
      />
    </div>
  );
}
