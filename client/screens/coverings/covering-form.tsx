import { useMemo, useReducer, useState } from 'react';
import { useNavigate } from 'react-router';
import type { CoveringView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { useStableId } from '../../api/use-stable-id.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { Select } from '../../parts/select.tsx';
import { TextArea } from '../../parts/text-area.tsx';
import { useUnsaved } from '../../parts/unsaved.tsx';
import { useHouse } from '../../shell/use-house.ts';
import type { MemberIndex } from '../../finding/member-index.ts';
import { EMPTY_DRAFT, KINDS, draftOf, factsOfDraft, isChanged, reduceCovering } from './covering-draft.ts';
import { GoneMarks } from './gone-marks.tsx';
import { HidesPicker } from './hides-picker.tsx';
import { layerAfter, nameAfter } from './next-layer.ts';
import { NextLayerPart } from './next-layer-part.tsx';
import { readZone } from './zone-draft.ts';
import { ZonePart } from './zone-part.tsx';
import { useCoveringChange } from './use-covering-change.ts';

export interface CoveringFormProps {
  covering: CoveringView | null;
  /** The layer that a new one follows. */
  over?: CoveringView | null;
  index: MemberIndex;
}

export function CoveringForm({ covering, over = null, index }: CoveringFormProps) {
  const { t, lang } = useWords();
  const { id: house, unit } = useHouse();
  const navigate = useNavigate();
  // As it was when the form was opened: what others change meanwhile is not this person's.
  const [start] = useState(() => {
    if (covering) return draftOf(covering, unit);
    return over ? layerAfter(over, nameAfter(over, lang), unit) : EMPTY_DRAFT;
  });
  const [draft, tell] = useReducer(reduceCovering, start);
  const unsaved = useUnsaved(isChanged(draft, start));
  const [wasTried, setWasTried] = useState(false);
  const tracks = useMemo(
    () => new Map(index.entries.map(({ member }) => [member.mark as string, member.track])),
    [index],
  );
  const newIdFor = useStableId();
  const save = useCoveringChange(
    house,
    () => {
      const body = factsOfDraft(draft, unit);
      return covering
        ? call('changeCovering', { params: { covering: covering.id }, body })
        : call('planCovering', { params: { house }, body: { id: newIdFor(body), ...body } });
    },
    ({ id }) => {
      unsaved.saved();
      void navigate(`/houses/${house}/coverings/${id}`);
    },
  );
  const write = (field: 'name' | 'plannedDay' | 'note') => (text: string) =>
    tell({ type: 'write', field, text });
  const hasName = draft.name.trim() !== '';
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        setWasTried(true);
        if (hasName && readZone(draft.zone, unit).ok) save.mutate(undefined);
      }}
    >
      <div className="form">
        <Field
          label={t('coverings.form.name')}
          description={t('coverings.form.nameHint')}
          value={draft.name}
          onChange={write('name')}
          maxLength={200}
          error={wasTried && !hasName ? t('coverings.form.needName') : null}
        />
        <div className="pair">
          <Select
            label={t('coverings.form.kind')}
            value={draft.kind}
            choices={KINDS.map((kind) => ({ value: kind, label: t(`common.coveringKind.${kind}`) }))}
            onChange={(kind) => tell({ type: 'choose-kind', kind, tracks })}
          />
          <Field
            type="date"
            label={t('coverings.form.day')}
            value={draft.plannedDay}
            onChange={write('plannedDay')}
          />
        </div>
        <p className="soft">{t('coverings.form.dayHint')}</p>
        <TextArea
          label={t('coverings.form.note')}
          value={draft.note}
          onChange={write('note')}
          rows={2}
          maxLength={2000}
        />
      </div>
      {over ? <NextLayerPart over={over} tell={tell} /> : null}
      <ZonePart draft={draft} wasTried={wasTried} tell={tell} />
      <HidesPicker draft={draft} index={index} tracks={tracks} tell={tell} />
      <GoneMarks draft={draft} index={index} tell={tell} />
      <ProblemNotice error={save.error} keepsTyped />
      <div className="row">
        <Button type="submit" look="act" isPending={save.isPending}>
          {t('coverings.form.save')}
        </Button>
        <LinkButton to={`/houses/${house}/coverings${covering ? `/${covering.id}` : ''}`}>
          {t('common.cancel')}
        </LinkButton>
      </div>
      {unsaved.question}
    </form>
  );
}
