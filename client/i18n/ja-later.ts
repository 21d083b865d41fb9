import { ledger } from './ja/ledger.ts';
import { protection } from './ja/protection.ts';

/** Those of `en-later.ts`. */
export const jaLater = { ledger, protection } as const;
