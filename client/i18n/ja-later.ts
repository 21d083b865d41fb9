import { calendar } from './ja/calendar.ts';
import { check } from './ja/check.ts';
import { guest } from './ja/guest.ts';
import { hold } from './ja/hold.ts';
import { ledger } from './ja/ledger.ts';
import { password } from './ja/password.ts';
import { people } from './ja/people.ts';
import { protection } from './ja/protection.ts';
import { releases } from './ja/releases.ts';
import { roles } from './ja/roles.ts';
import { shots } from './ja/shots.ts';
import { tokens } from './ja/tokens.ts';
import { unread } from './ja/unread.ts';
import { walls } from './ja/walls.ts';
import { zones } from './ja/zones.ts';

/** Words of screens that nobody sees on a first visit; fetched with those screens. */
export const jaLater = {
  calendar,
  check,
  guest,
  hold,
  ledger,
  password,
  people,
  protection,
  releases,
  roles,
  shots,
  tokens,
  unread,
  walls,
  zones,
} as const;
