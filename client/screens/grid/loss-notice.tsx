import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import type { GridLosses } from './grid-losses.ts';
import { LOSS_WORDS } from './loss-words.ts';

/** So many are named. */
const NAMED = 5;

export interface LossNoticeProps {
  losses: GridLosses;
  isPending: boolean;
  onSave: () => void;
}

/** What the grid as it is typed would take away, before it is saved. */
export function LossNotice({ losses: { coverings, members }, isPending, onSave }: LossNoticeProps) {
  const { lang } = useWords();
  const words = LOSS_WORDS[lang];
  // What is closed comes first: nobody can look behind it again.
  const ordered = [...coverings].sort((a, b) => Number(b.isClosed) - Number(a.isClosed));
  const more = ordered.length - NAMED;
  return (
    <Notice
      tone="problem"
      actions={
        <Button isPending={isPending} onPress={onSave}>
          {words.saveAllTheSame}
        </Button>
      }
    >
      {coverings.length > 0 ? (
        <>
          <p>{words.coverings(coverings.length)}</p>
          <ul>
            {ordered.slice(0, NAMED).map(({ name, isClosed }, i) => (
              <li key={i}>{words.named(name, isClosed)}</li>
            ))}
            {more > 0 ? <li>{words.more(more)}</li> : null}
          </ul>
        </>
      ) : null}
      {members > 0 ? <p>{words.members(members)}</p> : null}
      <p>{words.what}</p>
    </Notice>
  );
}
