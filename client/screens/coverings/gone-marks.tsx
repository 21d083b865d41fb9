import { formatList } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import type { MemberIndex } from '../../finding/member-index.ts';
import type { CoveringDraft, CoveringEvent } from './covering-draft.ts';

export interface GoneMarksProps {
  draft: CoveringDraft;
  index: MemberIndex;
  tell: (event: CoveringEvent) => void;
}

/** Members that the covering names but the schedule no longer has: the server would refuse them. */
export function GoneMarks({ draft, index, tell }: GoneMarksProps) {
  const { t, lang } = useWords();
  const gone = [...draft.hides.keys()].filter((mark) => !index.byMark.has(mark));
  if (gone.length === 0) return null;
  return (
    <Notice
      tone="problem"
      actions={
        <Button onPress={() => tell({ type: 'untick', marks: gone })}>
          {t('coverings.form.untickGone')}
        </Button>
      }
    >
      {t('coverings.form.gone', { marks: formatList(gone, lang) })}
    </Notice>
  );
}
