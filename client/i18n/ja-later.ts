import { protection } from './ja/protection.ts';

/** Those of `en-later.ts`. */
export const jaLater = { protection } as const;
