import type { FindingView } from '#domain/contract/findings';
import { useWords } from '../../i18n/use-words.ts';
import { ReasonDialog } from '../../parts/reason-dialog.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { answerWords } from './answer-words.ts';
import { findingSentence } from './finding-sentence.ts';
import { useReopen } from './use-findings.ts';

/** An acceptance, perhaps somebody else's, is taken back with a reason. */
export function ReopenDialog({ finding, onClose }: { finding: FindingView; onClose: () => void }) {
  const { t, lang } = useWords();
  const aboutHouse = useHouse();
  const house = aboutHouse.id;
  const reopen = useReopen(house, finding, onClose);
  const what = findingSentence(t, lang, aboutHouse, finding);
  return (
    <ReasonDialog
      title={t('findings.reopen.title')}
      text={[what, t(finding.stops ? 'findings.reopen.stops' : 'findings.reopen.text')].join(
        lang === 'ja' ? '' : ' ',
      )}
      yes={t(`${answerWords(finding.kind)}.takeBack`)}
      isPending={reopen.isPending}
      error={reopen.error}
      onYes={reopen.mutate}
      onClose={onClose}
    />
  );
}
