import { useEffect } from 'react';
import type { ReviewView } from '#domain/contract/review-views';
import { addressOf } from '../../api/address.ts';
import { evidenceOf } from './evidence-of.ts';

const AHEAD = 2;

/** Fetches the pictures of the next members while one is looked at. */
export function useNextPictures(review: ReviewView, place: number): void {
  useEffect(() => {
    if (place === -1) return;
    for (const line of review.lines.slice(place + 1, place + 1 + AHEAD)) {
      const [first] = evidenceOf(review, line);
      if (!first) continue;
      for (const address of [first.crop, addressOf('photoPreview', { photo: first.tag.photo })])
        new Image().src = address;
    }
  }, [review, place]);
}
