import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import type { BenchTag } from './bench-tags.ts';

export interface TagActs {
  readonly onChange: (tag: BenchTag) => void;
  readonly onAlso: (tag: BenchTag) => void;
  readonly onWithdraw: (tag: BenchTag) => void;
}

/** What can be done about a tag that stands. */
export function TagActsRow({ tag, acts }: { tag: BenchTag; acts: TagActs }) {
  const { t } = useWords();
  const { mark } = tag;
  return (
    <div className="row bench-row-acts">
      <Button aria-label={t('bench.list.changeNamed', { mark })} onPress={() => acts.onChange(tag)}>
        {t('bench.list.change')}
      </Button>
      <Button aria-label={t('bench.list.alsoNamed', { mark })} onPress={() => acts.onAlso(tag)}>
        {t('bench.list.also')}
      </Button>
      <Button
        look="danger"
        aria-label={t('bench.list.withdrawNamed', { mark })}
        onPress={() => acts.onWithdraw(tag)}
      >
        {t('bench.list.withdraw')}
      </Button>
    </div>
  );
}
