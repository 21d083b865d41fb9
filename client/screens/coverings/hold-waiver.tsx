import type { WaiverView } from '#domain/contract/report-views';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

/** By whom, when and why a member was accepted without a record. */
export function HoldWaiver({ waiver: { by, at, reason } }: { waiver: WaiverView }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const [who, when] = [by?.name ?? t('common.nobody'), formatInstant(at, zone, lang)];
  return <>{t('hold.waiver', { who, when, reason })}</>;
}
