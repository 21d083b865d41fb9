import { ledger } from './en/ledger.ts';
import { protection } from './en/protection.ts';

/** Words that no first visit needs: they come with the screens that speak them. */
export const enLater = { ledger, protection } as const;
