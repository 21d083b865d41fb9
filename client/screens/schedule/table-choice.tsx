import { useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { newId } from '../../api/new-id.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { contentTypeOf, type ChosenTable } from './chosen-table.ts';

const ACCEPTED = ['.csv', '.tsv', '.txt', '.xlsx', contentTypeOf('.csv'), contentTypeOf('.xlsx')];

export interface TableChoiceProps {
  hasTable: boolean;
  onChoose: (table: ChosenTable | null) => void;
}

export function TableChoice({ hasTable, onChoose }: TableChoiceProps) {
  const { t } = useWords();
  const [isUnreadable, setIsUnreadable] = useState(false);
  const choose = async (file: File | undefined) => {
    setIsUnreadable(false);
    if (!file) return;
    try {
      const bytes = await file.arrayBuffer();
      onChoose({ key: newId(), fileName: file.name, contentType: contentTypeOf(file.name), bytes });
    } catch {
      onChoose(null);
      setIsUnreadable(true);
    }
  };
  return (
    <div className="stack">
      <div className="row">
        <FileTrigger acceptedFileTypes={ACCEPTED} onSelect={(files) => void choose(files?.[0])}>
          <Button look={hasTable ? 'plain' : 'act'}>
            {t(hasTable ? 'schedule.chooseOther' : 'schedule.choose')}
          </Button>
        </FileTrigger>
        <span className="soft">{t('schedule.chooseHint')}</span>
      </div>
      {isUnreadable ? <Notice tone="problem">{t('schedule.unreadableFile')}</Notice> : null}
    </div>
  );
}
