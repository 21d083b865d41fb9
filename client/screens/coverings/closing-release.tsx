import type { Standing } from '#domain/contract/hold';
import type { CoveringView } from '#domain/contract/views';
import { ProblemError } from '../../api/errors.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Field } from '../../parts/field.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { beyondMarks } from './outrun-words.ts';

/** Whether a release stands at an instant (UTC text; null: now). Whether it is for all that is hidden, the server knows. */
export function isReleasedAt({ hold }: Pick<CoveringView, 'hold'>, closedAt: string | null): boolean {
  if (hold.state !== 'released') return false;
  return closedAt === null || hold.said === null || hold.said.at <= closedAt;
}

/** The answer that no release stands for all that a covering hides. */
export function isForLackOfRelease(error: unknown): boolean {
  if (!(error instanceof ProblemError)) return false;
  return error.problem.code === 'not-released' || error.problem.code === 'released-for-less';
}

interface ClosingReleaseProps {
  hold: CoveringView['hold'];
  isReleased: boolean;
  /** Of a release that is outrun. */
  beyond: Standing['beyond'];
  reason: string;
  isShort: boolean;
  onChange: (reason: string) => void;
}

/** Under which release a covering closes; where none stands, why it closes all the same. */
export function ClosingRelease(props: ClosingReleaseProps) {
  const { hold, isReleased, beyond, reason, isShort, onChange } = props;
  const { t, lang } = useWords();
  const { zone } = useHouse();
  if (isReleased && hold.said) {
    const when = formatInstant(hold.said.at, zone, lang);
    return <p>{t('hold.close.under', { when, who: hold.said.by?.name ?? t('common.nobody') })}</p>;
  }
  return (
    <>
      {beyond.length > 0 ? (
        <p className="act-text">{t('hold.close.outrun', { marks: beyondMarks(t, lang, beyond) })}</p>
      ) : null}
      <Field
        label={t('hold.close.reason')}
        description={t('hold.close.without')}
        value={reason}
        onChange={onChange}
        maxLength={1000}
        error={isShort ? t('hold.close.needReason') : null}
      />
    </>
  );
}
