import { useState } from 'react';
import { formatList } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { TextArea } from '../../parts/text-area.tsx';
import type { MemberIndex } from '../../finding/member-index.ts';
import { pastedMarks, type CoveringEvent } from './covering-draft.ts';

export interface PasteMarksProps {
  index: MemberIndex;
  tell: (event: CoveringEvent) => void;
}

/** For whoever has the list already, in a message or a spreadsheet. */
export function PasteMarks({ index, tell }: PasteMarksProps) {
  const { t, lang } = useWords();
  const [text, setText] = useState('');
  const [result, setResult] = useState<{ known: number; unknown: readonly string[] } | null>(null);
  const tick = () => {
    const marks = pastedMarks(text, (mark) => index.byMark.has(mark));
    const known = marks.flatMap((mark) => index.byMark.get(mark) ?? []);
    const unknown = marks.filter((mark) => !index.byMark.has(mark));
    tell({ type: 'tick', members: known });
    setResult({ known: known.length, unknown });
    setText(unknown.join('\n'));
  };
  return (
    <details className="coverings-paste">
      <summary>{t('coverings.form.paste')}</summary>
      <div className="stack">
        <TextArea
          label={t('coverings.form.pasteLabel')}
          description={t('coverings.form.pasteHint')}
          value={text}
          onChange={setText}
        />
        <div className="row">
          <Button onPress={tick} isDisabled={text.trim() === ''}>
            {t('coverings.form.pasteSubmit')}
          </Button>
        </div>
        <div role="status">
          {result ? <p>{t('coverings.form.pasted', { count: result.known })}</p> : null}
          {result && result.unknown.length > 0 ? (
            <p className="act-text">
              {t('coverings.form.pasteUnknown', { marks: formatList(result.unknown, lang) })}
            </p>
          ) : null}
        </div>
      </div>
    </details>
  );
}
