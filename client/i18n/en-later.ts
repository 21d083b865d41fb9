import { calendar } from './en/calendar.ts';
import { check } from './en/check.ts';
import { guest } from './en/guest.ts';
import { hold } from './en/hold.ts';
import { ledger } from './en/ledger.ts';
import { password } from './en/password.ts';
import { people } from './en/people.ts';
import { protection } from './en/protection.ts';
import { releases } from './en/releases.ts';
import { roles } from './en/roles.ts';
import { shots } from './en/shots.ts';
import { tokens } from './en/tokens.ts';
import { unread } from './en/unread.ts';
import { walls } from './en/walls.ts';
import { zones } from './en/zones.ts';

/** Words of screens that nobody sees on a first visit; fetched with those screens. */
export const enLater = {
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
