import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import type { BenchTag } from './bench-tags.ts';

export interface TagActs {
  readonly onChange: (tag: BenchTag) => void;
  readonly onAlso: (tag: BenchTag) => void;
  readonly onWithdraw: (tag: BenchTag) => void;
}

/** The tag that is looked at, with what can be done about it, right below the picture. */
export function ChosenTag({ tag, acts }: { tag: BenchTag; acts: TagActs }) {
  const { t } = useWords();
  const { mark, stage } = tag;
  return (
    <div className="bench-chosen" role="group" aria-label={t('bench.list.chosen', { mark })}>
      <p className="row">
        <strong>{mark}</strong> <StageName stage={stage} />
      </p>
      <div className="row">
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
    </div>
  );
}
