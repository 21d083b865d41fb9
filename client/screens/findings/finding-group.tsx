import type { FindingView } from '#domain/contract/findings';
import type { FindingKind } from '#domain/record/findings/kinds';
import { useSession } from '../../api/use-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { answerWords } from './answer-words.ts';
import { FindingItem } from './finding-item.tsx';
import type { Answering } from './use-answering.tsx';

export interface FindingGroupProps {
  kind: FindingKind;
  findings: readonly FindingView[];
  answering: Answering;
}

/** The findings of one kind, with what is to be done about it said once. */
export function FindingGroup({ kind, findings, answering }: FindingGroupProps) {
  const { t } = useWords();
  const mayAnswer = useMay('contribute');
  const me = useSession().data?.account?.id;
  const { fourEyes } = useHouse();
  const open = findings.filter(({ answer }) => !answer?.stands);
  const mine = open.filter(({ taggedBy }) => !fourEyes || taggedBy === null || taggedBy.id !== me);
  return (
    <section className="section finding-group">
      <h2>{t(`findings.kind.${kind}`)}</h2>
      {open.length > 0 ? (
        <p className="finding-todo">
          {t(`findings.todo.${kind}`)} {open[0]?.stops ? t('findings.stops') : null}
        </p>
      ) : null}
      <ul className="plain-list">
        {findings.map((finding) => (
          <li key={finding.key}>
            <FindingItem finding={finding} answering={answering} />
          </li>
        ))}
      </ul>
      {mine.length > 1 && mayAnswer ? (
        <div className="row">
          <Button onPress={() => answering.accept(mine)}>
            {t(`${answerWords(kind)}.acceptAll`, { count: mine.length })}
          </Button>
        </div>
      ) : null}
    </section>
  );
}
