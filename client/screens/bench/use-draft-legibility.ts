import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { PhotoDetailView } from '#domain/contract/views';
import { sizeVerdict } from '#domain/photo/legibility';
import type { Region } from '#domain/photo/region';
import { acrossPx } from '#domain/photo/region-width';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import type { SeenLegibility } from './legibility-words.ts';

/** While the hand still moves nothing is said. */
const STILL_MS = 150;
/** And the server is asked only when it seems to stay. */
const ASK_MS = 300;

/** By size at once, by what the server measures in the original shortly after. */
export function useDraftLegibility(photo: PhotoDetailView, region: Region): SeenLegibility {
  const still = useSettled(region, STILL_MS);
  const asked = useSettled(still, ASK_MS);
  const text = JSON.stringify(asked);
  const { data } = useQuery({
    queryKey: keys.regionLegibility(photo.house, photo.id, text),
    // The first answer is asked for after a rest as well.
    enabled: useRested(photo.id, ASK_MS),
    retry: false,
    staleTime: Infinity,
    gcTime: 60_000,
    queryFn: ({ signal }) =>
      call('photoLegibility', { params: { photo: photo.id }, query: { region: text }, signal }),
  });
  if (data && still === asked) return data;
  return bySize(photo, still);
}

function bySize(photo: PhotoDetailView, region: Region): SeenLegibility {
  const across = acrossPx(region, photo);
  const verdict = sizeVerdict(across);
  // That it is large enough says nothing yet.
  return verdict === 'clear'
    ? { verdict: null, reasons: [], acrossPx: across }
    : { verdict, reasons: ['too-small'], acrossPx: across };
}

/** The value once it has not changed for so long; the first one at once. */
function useSettled<T>(value: T, ms: number): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), ms);
    return () => clearTimeout(timer);
  }, [value, ms]);
  return settled;
}

function useRested(key: string, ms: number): boolean {
  const [rested, setRested] = useState<string | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setRested(key), ms);
    return () => clearTimeout(timer);
  }, [key, ms]);
  return rested === key;
}
