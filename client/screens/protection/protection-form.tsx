import { useMemo, useReducer, useState } from 'react';
import { useNavigate } from 'react-router';
import type { ProtectionView } from '#domain/contract/protection';
import { call } from '../../api/call.ts';
import { useStableId } from '../../api/use-stable-id.ts';
import type { MemberIndex } from '../../finding/member-index.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { useUnsaved } from '../../parts/unsaved.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { GoneMarks } from '../coverings/gone-marks.tsx';
import { HidesPicker } from '../coverings/hides-picker.tsx';
import { readZone } from '../coverings/zone-draft.ts';
import { ZonePart } from '../coverings/zone-part.tsx';
import {
  NOTHING_LAID,
  draftOfProtection,
  factsOfProtection,
  instantOf,
  isChanged,
  laidFault,
  reduceProtection,
} from './protection-draft.ts';
import { ProtectionFields } from './protection-fields.tsx';
import { useProtectionChange } from './use-protection-change.ts';

export interface ProtectionFormProps {
  protection: ProtectionView | null;
  index: MemberIndex;
}

export function ProtectionForm({ protection, index }: ProtectionFormProps) {
  const { t } = useWords();
  const { id: house, unit, zone } = useHouse();
  const navigate = useNavigate();
  // As it was when the form was opened: what others change meanwhile is not this person's.
  const [start] = useState(() => (protection ? draftOfProtection(protection, unit, zone) : NOTHING_LAID));
  const [draft, tell] = useReducer(reduceProtection, start);
  const unsaved = useUnsaved(isChanged(draft, start));
  const [wasTried, setWasTried] = useState(false);
  const tracks = useMemo(
    () => new Map(index.entries.map(({ member }) => [member.mark as string, member.track])),
    [index],
  );
  const list = `/houses/${house}/coverings`;
  const newIdFor = useStableId();
  const save = useProtectionChange(
    house,
    () => {
      const body = factsOfProtection(draft, unit);
      if (!protection)
        return call('layProtection', { params: { house }, body: { id: newIdFor(body), ...body } });
      const laidAt = instantOf(draft.when) ?? protection.laidAt;
      return call('changeProtection', { params: { protection: protection.id }, body: { ...body, laidAt } });
    },
    () => {
      unsaved.saved();
      void navigate(list);
    },
  );
  const { over, what, when } = draft;
  const isOverNothing = over.hides.size === 0 && over.zone.shape === 'none';
  const isReady = () =>
    over.name.trim() !== '' &&
    what.trim() !== '' &&
    !isOverNothing &&
    laidFault(when, new Date(), protection?.lifted?.at ?? null) === null &&
    readZone(over.zone, unit).ok;
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        setWasTried(true);
        if (isReady()) save.mutate(undefined);
      }}
    >
      <ProtectionFields draft={draft} wasTried={wasTried} protection={protection} tell={tell} />
      <ZonePart draft={over} wasTried={wasTried} tell={tell} isProtection />
      <HidesPicker draft={over} index={index} tracks={tracks} tell={tell} lead={t('protection.form.lead')} />
      <GoneMarks draft={over} index={index} tell={tell} />
      {wasTried && isOverNothing ? (
        <p role="alert" className="field-error">
          {t('protection.form.needMembers')}
        </p>
      ) : null}
      <ProblemNotice error={save.error} keepsTyped />
      <div className="row">
        <Button type="submit" look="act" isPending={save.isPending}>
          {t('protection.form.save')}
        </Button>
        <LinkButton to={list}>{t('common.cancel')}</LinkButton>
      </div>
      {unsaved.question}
    </form>
  );
}
