import { ledger } from './ja/ledger.ts';
import { protection } from './ja/protection.ts';
import { shots } from './ja/shots.ts';
import { walls } from './ja/walls.ts';

export const jaLater = { ledger, protection, shots, walls } as const;
