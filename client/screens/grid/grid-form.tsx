import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import type { StatedGrid } from '#domain/contract/frame-shapes';
import { LENGTH_UNITS } from '#domain/frame/length';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Select } from '../../parts/select.tsx';
import { TextArea } from '../../parts/text-area.tsx';
import { SaveRow } from '../../parts/save-row.tsx';
import { useUnsaved } from '../../parts/unsaved.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { FamilyFields } from './family-fields.tsx';
import { EMPTY_GRID, fieldOf, gridDraft, readGrid, type GridDraft, type GridWrong } from './grid-draft.ts';
import { isLoss } from './grid-losses.ts';
import { GridSketch } from './grid-sketch.tsx';
import { LossNotice } from './loss-notice.tsx';
import { useWeighGrid } from './use-weigh-grid.ts';

/** Lines and levels as they are typed, with the plan that they make beside them. */
export function GridForm({ grid }: { grid: StatedGrid | null }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const [start, setStart] = useState(() => (grid ? gridDraft(grid) : EMPTY_GRID));
  const [draft, setDraft] = useState(start);
  const [tried, setTried] = useState(false);
  const unsaved = useUnsaved(JSON.stringify(draft) !== JSON.stringify(start));
  const read = readGrid(draft);
  const save = useMutation({
    mutationFn: (body: StatedGrid) => call('stateGrid', { params: { house }, body }),
    onSuccess: async () => {
      setStart(draft);
      weigh.reset();
      await client.invalidateQueries({ queryKey: keys.allOf(house) });
    },
  });
  const weigh = useWeighGrid(house, grid, save.mutate);
  const change = (part: Partial<GridDraft>) => {
    setDraft({ ...draft, ...part });
    save.reset();
    weigh.reset();
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    save.reset();
    if ('grid' in read) weigh.mutate(read.grid);
  };
  const wrong = (family: GridWrong['family']) =>
    tried && 'wrong' in read && read.wrong.family === family
      ? {
          field: fieldOf(read.wrong),
          text: t(`grid.wrong.${read.wrong.reason}`, { label: read.wrong.label }),
        }
      : null;
  return (
    <form className="form" onSubmit={submit} noValidate>
      <Select
        label={t('grid.unit')}
        value={draft.unit}
        choices={LENGTH_UNITS.map((value) => ({ value, label: t(`grid.unitOf.${value}`) }))}
        onChange={(unit) => change({ unit })}
      />
      <FamilyFields
        family="first"
        draft={draft.first}
        runs={['leftward', 'rightward']}
        onChange={(first) => change({ first })}
        wrong={wrong('first')}
      />
      <FamilyFields
        family="second"
        draft={draft.second}
        runs={['downward', 'upward']}
        onChange={(second) => change({ second })}
        wrong={wrong('second')}
      />
      <TextArea
        label={t('grid.levels')}
        description={t('grid.levelsHint')}
        rows={4}
        maxLength={2000}
        value={draft.levels}
        onChange={(levels) => change({ levels })}
        error={wrong('levels')?.text ?? null}
      />
      {'grid' in read ? <GridSketch grid={read.grid} /> : null}
      {weigh.data && isLoss(weigh.data) && 'grid' in read ? (
        <LossNotice losses={weigh.data} isPending={save.isPending} onSave={() => save.mutate(read.grid)} />
      ) : null}
      <SaveRow
        save={{
          error: save.error ?? weigh.error,
          isSuccess: save.isSuccess,
          isPending: save.isPending || weigh.isPending,
        }}
        saved={t('grid.saved')}
      />
      {unsaved.question}
    </form>
  );
}
