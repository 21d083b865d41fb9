import type { PhotoRow } from './photo.ts';

export const PHOTOS: readonly PhotoRow[] = [];
