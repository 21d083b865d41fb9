import { ledger } from './en/ledger.ts';
import { protection } from './en/protection.ts';
import { shots } from './en/shots.ts';
import { walls } from './en/walls.ts';

/** Words of screens that nobody sees on a first visit; fetched with those screens. */
export const enLater = { ledger, protection, shots, walls } as const;
