import { useMemo, useState } from 'react';
import { STAGES, type Stage, type Track } from '#domain/frame/stage';
import { formatNumber } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { Checkbox } from '../../parts/checkbox.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { searchMembers, type MemberIndex } from '../../finding/member-index.ts';
import type { CoveringDraft, CoveringEvent } from './covering-draft.ts';
import { HidesRow } from './hides-row.tsx';
import { PasteMarks } from './paste-marks.tsx';

export interface HidesPickerProps {
  draft: CoveringDraft;
  index: MemberIndex;
  tracks: ReadonlyMap<string, Track>;
  tell: (event: CoveringEvent) => void;
  /** Given, no stage is asked of any member; stands for the words about that. */
  lead?: string;
}

const SHOWN = 200;

/** Which members the covering hides: narrow the list, tick; or paste their marks. */
export function HidesPicker({ draft, index, tracks, tell, lead }: HidesPickerProps) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const [search, setSearch] = useState('');
  const [onlyTicked, setOnlyTicked] = useState(false);
  const fitting = useMemo(() => {
    const found = searchMembers(index, search);
    return found.filter(({ mark, retired }) => draft.hides.has(mark) || (!retired && !onlyTicked));
  }, [index, search, onlyTicked, draft.hides]);
  if (index.entries.length === 0) {
    return (
      <EmptyState
        title={t('coverings.form.noMembers')}
        action={<LinkButton to={`/houses/${house}/schedule`}>{t('coverings.form.toSchedule')}</LinkButton>}
      />
    );
  }
  const marks = fitting.map(({ mark }) => mark as string);
  const count = formatNumber(fitting.length, lang);
  return (
    <fieldset className="fieldset coverings-picker">
      <legend>{t('coverings.form.hides')}</legend>
      <p className="soft">{lead ?? t('coverings.form.hidesLead')}</p>
      <Field
        type="search"
        label={t('coverings.form.search')}
        description={t('coverings.form.searchHint')}
        value={search}
        onChange={setSearch}
      />
      <div className="row">
        <Button onPress={() => tell({ type: 'tick', members: fitting })}>
          {t('coverings.form.tickShown', { count: fitting.length, replace: { count } })}
        </Button>
        <Button onPress={() => tell({ type: 'untick', marks })}>
          {t('coverings.form.untickShown', { count: fitting.length, replace: { count } })}
        </Button>
        <Checkbox isSelected={onlyTicked} onChange={setOnlyTicked}>
          {t('coverings.form.onlyTicked')}
        </Checkbox>
      </div>
      <p role="status">
        <strong>{t('coverings.form.ticked', { count: draft.hides.size })}</strong>
      </p>
      {draft.hides.size > 1 && lead === undefined ? <LeastOfAll tracks={tracks} tell={tell} /> : null}
      <ul className="plain-list coverings-members" aria-label={t('coverings.form.members')}>
        {fitting.slice(0, SHOWN).map((member) => (
          <HidesRow
            key={member.mark}
            member={member}
            kind={draft.kind}
            least={draft.hides.get(member.mark)}
            tell={tell}
            asksStage={lead === undefined}
          />
        ))}
        {fitting.length === 0 ? <li className="soft">{t('coverings.form.noFit')}</li> : null}
      </ul>
      {fitting.length > SHOWN ? (
        <p className="soft">{t('coverings.form.shownOf', { shown: SHOWN, total: count })}</p>
      ) : null}
      <PasteMarks index={index} tell={tell} />
    </fieldset>
  );
}

function LeastOfAll({ tracks, tell }: Pick<HidesPickerProps, 'tracks' | 'tell'>) {
  const { t } = useWords();
  const stages = STAGES.map((stage) => ({ value: stage, label: t(`common.stage.${stage}`) }));
  return (
    <Select<Stage | ''>
      label={t('coverings.form.leastAll')}
      description={t('coverings.form.leastAllHint')}
      value=""
      choices={[{ value: '', label: t('coverings.form.leastAllKeep') }, ...stages]}
      onChange={(stage) => {
        if (stage !== '') tell({ type: 'choose-least-of-all', stage, tracks });
      }}
    />
  );
}
