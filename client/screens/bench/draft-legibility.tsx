import type { PhotoDetailView } from '#domain/contract/views';
import type { Region } from '#domain/photo/region';
import { useWords } from '../../i18n/use-words.ts';
import { VerdictSign } from '../../parts/verdict-sign.tsx';
import { legibilityWords } from './legibility-words.ts';
import { useDraftLegibility } from './use-draft-legibility.ts';

/** One quiet line about the drawing: whether a stranger could read a member there. It stops nobody. */
export function DraftLegibility({ photo, region }: { photo: PhotoDetailView; region: Region }) {
  const { t } = useWords();
  const legibility = useDraftLegibility(photo, region);
  const { verdict } = legibility;
  return (
    <p role="status" className={verdict === 'unreadable' ? 'bench-legibility act-text' : 'bench-legibility'}>
      {verdict ? <VerdictSign verdict={verdict} /> : null} {legibilityWords(t, legibility)}
    </p>
  );
}
