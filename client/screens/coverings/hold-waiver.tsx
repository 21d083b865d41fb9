import type { WaiverView } from '#domain/contract/report-views';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

/** By whom, when and why a member was accepted without a record. */
export function HoldWaiver({ waiver: { by, at, reason, takenBack } }: { waiver: WaiverView }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const [who, when] = [by?.name ?? t('common.nobody'), formatInstant(at, zone, lang)];
  if (takenBack === null) return <>{t('hold.waiver', { who, when, reason })}</>;
  const back = {
    backWho: takenBack.by?.name ?? t('common.nobody'),
    backWhen: formatInstant(takenBack.at, zone, lang),
    backReason: takenBack.reason,
  };
  return <>{t('hold.waiverBack', { who, when, reason, ...back })}</>;
}
