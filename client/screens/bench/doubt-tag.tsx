import { useState } from 'react';
import { mayAct } from '#domain/contract/acts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { DoubtDialog } from '../review/doubt-dialog.tsx';
import type { BenchTag } from './bench-tags.ts';

/** For an inspector, to whom a tag may look wrong. */
export function DoubtTag({ tag }: { tag: BenchTag }) {
  const { t } = useWords();
  const { role } = useHouse();
  const [asks, setAsks] = useState(false);
  if (!mayAct(role, 'review') || tag.unsent !== null || tag.state !== 'standing') return null;
  return (
    <div className="row bench-row-acts">
      <Button aria-label={t('hold.doubt.openNamed', { mark: tag.mark })} onPress={() => setAsks(true)}>
        {t('hold.doubt.open')}
      </Button>
      {asks ? <DoubtDialog tag={tag} onClose={() => setAsks(false)} /> : null}
    </div>
  );
}
