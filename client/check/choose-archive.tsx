import { useId, useState, type DragEvent } from 'react';
import type { Words } from '../i18n/words.ts';
import { chosenByDrop, chosenFolder, type Chosen } from './chosen-files.ts';

export interface ChooseArchiveProps {
  t: Words;
  /** Until what was noted elsewhere can be read. */
  isWaiting: boolean;
  onChoose: (chosen: Chosen) => void;
}

/** A ZIP or a folder, chosen or dropped. */
export function ChooseArchive({ t, isWaiting, onChoose }: ChooseArchiveProps) {
  const id = useId();
  const [isOver, setOver] = useState(false);
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    if (!isWaiting) void chosenByDrop(event.dataTransfer.items).then((chosen) => chosen && onChoose(chosen));
  };
  return (
    <div
      className={isOver ? 'check-choice check-choice-over' : 'check-choice'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <div className="field">
        <label className="field-label" htmlFor={`${id}-zip`}>
          {t('check.chooseZip')}
        </label>
        <input
          id={`${id}-zip`}
          type="file"
          accept=".zip,application/zip"
          disabled={isWaiting}
          onChange={({ target: { files } }) => files?.[0] && onChoose({ zip: files[0] })}
        />
      </div>
      <div className="field">
        <label className="field-label" htmlFor={`${id}-folder`}>
          {t('check.chooseFolder')}
        </label>
        <input
          id={`${id}-folder`}
          type="file"
          {...{ webkitdirectory: '' }}
          disabled={isWaiting}
          onChange={({ target: { files } }) => files?.length && onChoose(chosenFolder([...files]))}
        />
      </div>
      <p className="soft">{t('check.drop')}</p>
    </div>
  );
}
