import { useState } from 'react';
import type { FindingView } from '#domain/contract/findings';
import type { FindingKind } from '#domain/record/findings/kinds';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { AcceptDialog } from './accept-dialog.tsx';
import { FindingItem } from './finding-item.tsx';

export interface FindingGroupProps {
  kind: FindingKind;
  findings: readonly FindingView[];
}

/** The findings of one kind, with what is to be done about it said once. */
export function FindingGroup({ kind, findings }: FindingGroupProps) {
  const { t } = useWords();
  const [isAsking, setIsAsking] = useState(false);
  const open = findings.filter(({ answer }) => !answer?.stands);
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
            <FindingItem finding={finding} />
          </li>
        ))}
      </ul>
      {open.length > 1 ? (
        <div className="row">
          <Button onPress={() => setIsAsking(true)}>{t('findings.acceptAll', { count: open.length })}</Button>
        </div>
      ) : null}
      {isAsking ? <AcceptDialog findings={open} onClose={() => setIsAsking(false)} /> : null}
    </section>
  );
}
