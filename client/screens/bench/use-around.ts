import { useEffect, useMemo } from 'react';
import type { TagView } from '#domain/contract/views';
import { addressOf } from '../../api/address.ts';
import type { Neighbours } from './neighbours.ts';
import { usePhoto } from './use-photo.ts';
import type { AroundPhoto } from './use-suggestions.ts';

const NO_TAGS: readonly TagView[] = [];
const LATER_MS = 600;

/** The photos before and after, read ahead: for what they suggest, and so that turning to them takes no time. */
export function useAround(house: string, neighbours: Neighbours | null): AroundPhoto {
  const before = usePhoto(house, neighbours?.previous ?? null).data?.allTags ?? NO_TAGS;
  const next = usePhoto(house, neighbours?.next ?? null).data;
  const after = next?.allTags ?? NO_TAGS;
  useReadAhead(next?.pictures === 'ready' ? next.id : null);
  return useMemo(() => ({ before, after }), [before, after]);
}

/** Into the browser's cache, once the picture that is looked at has had its turn. */
function useReadAhead(photo: string | null): void {
  useEffect(() => {
    if (photo === null) return undefined;
    const timer = setTimeout(() => {
      for (const size of ['photoThumb', 'photoPreview'] as const)
        new Image().src = addressOf(size, { photo });
    }, LATER_MS);
    return () => clearTimeout(timer);
  }, [photo]);
}
