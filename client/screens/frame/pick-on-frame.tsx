import { useMemo, useState } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { Select } from '../../parts/select.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { countGaps, gapsOn, toldOf, type FrameModel } from './frame-model.ts';
import { FrameSheet } from './frame-sheet.tsx';
import { SheetMembers } from './member-tree.tsx';
import { sheetName } from './sheet-name.ts';
import { useFrame } from './use-frame.ts';
import './frame.css';

export interface PickOnFrameProps {
  readonly mark: string;
  readonly onPick: (mark: string) => void;
  readonly onClose: () => void;
}

/** The drawings of the frame, in which one member is pressed or taken from the list below. */
export function PickOnFrame(props: PickOnFrameProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { query, model } = useFrame(house);
  return (
    <Dialog title={t('frame.pick.title')} isOpen onClose={props.onClose}>
      <QueryState query={query}>
        {() =>
          model && model.sheets.length > 0 ? <Pick {...props} house={house} model={model} /> : <Nothing />
        }
      </QueryState>
      <Button onPress={props.onClose}>{t('common.cancel')}</Button>
    </Dialog>
  );
}

function Nothing() {
  const { t } = useWords();
  return <p>{t('frame.empty')}</p>;
}

function Pick({ mark, onPick, house, model }: PickOnFrameProps & { house: string; model: FrameModel }) {
  const { t } = useWords();
  const day = model.frame.today;
  const gaps = useMemo(() => gapsOn(model, day), [model, day]);
  const [key, setKey] = useState(
    () => model.sheets.find((one) => shows(one, mark))?.key ?? model.sheets[0]?.key,
  );
  const [chosen, setChosen] = useState<string | null>(model.members.has(mark) ? mark : null);
  const sheet = model.sheets.find((one) => one.key === key);
  if (!sheet) return null;
  return (
    <div className="stack frame-pick">
      <Select
        label={t('frame.sheets')}
        value={sheet.key}
        onChange={setKey}
        choices={model.sheets.map((one) => {
          const count = countGaps(one, gaps);
          const name = sheetName(t, one);
          return { value: one.key, label: count > 0 ? `${name} · ${t('frame.gaps', { count })}` : name };
        })}
      />
      <FrameSheet
        {...{ model, sheet, day, gaps, chosen }}
        fits={null}
        onChoose={setChosen}
        // A finger errs: it chooses, and the button takes.
        onPress={(pressed, isFinger) => (isFinger ? setChosen(pressed) : onPick(pressed))}
      />
      {chosen === null ? (
        <p className="soft">{t('frame.pick.none')}</p>
      ) : (
        <Button look="act" onPress={() => onPick(chosen)}>
          {t('frame.pick.take', { mark: chosen })}
        </Button>
      )}
      <div className="frame-tree">
        <SheetMembers {...{ model, house, sheet, day, chosen }} onChoose={setChosen} onTake={onPick} />
      </div>
    </div>
  );
}

const shows = (sheet: FrameModel['sheets'][number], mark: string) =>
  toldOf(sheet).some((member) => member.mark === mark);
