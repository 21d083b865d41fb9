import type { PhotoDetailView } from '#domain/contract/views';
import { sheetedAt } from '#domain/record/protection';
import { useWords } from '../../i18n/use-words.ts';
import { useProtections } from '../protection/use-protections.ts';

export interface UnderProtectionProps {
  photo: PhotoDetailView;
  mark: string | null;
  /** It is tagged already: nobody has to be told at once. */
  isSaid?: boolean;
}

/** Says that protection lay over the member when the photo was taken: it may be tagged, and is no record of it there. */
export function UnderProtection({ photo, mark, isSaid = false }: UnderProtectionProps) {
  const { t } = useWords();
  const { data } = useProtections(photo.house);
  const { capture } = photo;
  if (!data || mark === null || capture.state !== 'dated') return null;
  const { instant, uncertaintyS } = capture;
  for (const { name, laidAt, lifted, hides } of data.protections) {
    if (!hides.some((over) => over.mark === mark)) continue;
    const period = { stretch: null, laidAt, liftedAt: lifted && lifted.at };
    const [lay] = sheetedAt(instant, uncertaintyS, [period]);
    if (lay)
      return (
        <p role={isSaid ? undefined : 'status'} className="bench-under">
          {t(`protection.bench.${lay.isSure ? 'sure' : 'perhaps'}`, { mark, name })}
        </p>
      );
  }
  return null;
}
