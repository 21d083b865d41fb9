import type { BurstView } from '#domain/contract/legibility-views';
import type { Words } from '../../i18n/words.ts';

export interface AlikeWords {
  /** As short as a small picture has room for. */
  readonly mark: string;
  /** For who cannot see it. */
  readonly label: string;
  readonly isSharpest: boolean;
}

/** That a photo is one of several taken in one go, and whether it is the sharpest; null for one alone. */
export function alikeWords(t: Words, photo: string, burst: BurstView | null): AlikeWords | null {
  if (!burst) return null;
  const place = { at: burst.photos.indexOf(photo) + 1, total: burst.photos.length };
  const isSharpest = burst.sharpest === photo;
  const mark = t('legibility.alike.of', place);
  // What is seen must stand in what is heard, in the same order (WCAG 2.2, 2.5.3).
  const label = isSharpest ? `${mark} ${t('legibility.alike.sharpest')}` : mark;
  return { mark, label, isSharpest };
}
