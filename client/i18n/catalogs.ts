import { account } from './en/account.ts';
import { bench } from './en/bench.ts';
import { common } from './en/common.ts';
import { coverings } from './en/coverings.ts';
import { days } from './en/days.ts';
import { houses } from './en/houses.ts';
import { ledger } from './en/ledger.ts';
import { members } from './en/members.ts';
import { people } from './en/people.ts';
import { photos } from './en/photos.ts';
import { problems } from './en/problems.ts';
import { report } from './en/report.ts';
import { schedule } from './en/schedule.ts';
import { account as accountJa } from './ja/account.ts';
import { bench as benchJa } from './ja/bench.ts';
import { common as commonJa } from './ja/common.ts';
import { coverings as coveringsJa } from './ja/coverings.ts';
import { days as daysJa } from './ja/days.ts';
import { houses as housesJa } from './ja/houses.ts';
import { ledger as ledgerJa } from './ja/ledger.ts';
import { members as membersJa } from './ja/members.ts';
import { people as peopleJa } from './ja/people.ts';
import { photos as photosJa } from './ja/photos.ts';
import { problems as problemsJa } from './ja/problems.ts';
import { report as reportJa } from './ja/report.ts';
import { schedule as scheduleJa } from './ja/schedule.ts';

/** One entry an area of the interface; keys are `area.key`. The English one types them all. */
export const en = {
  account,
  bench,
  common,
  coverings,
  days,
  houses,
  ledger,
  members,
  people,
  photos,
  problems,
  report,
  schedule,
} as const;

export const ja = {
  account: accountJa,
  bench: benchJa,
  common: commonJa,
  coverings: coveringsJa,
  days: daysJa,
  houses: housesJa,
  ledger: ledgerJa,
  members: membersJa,
  people: peopleJa,
  photos: photosJa,
  problems: problemsJa,
  report: reportJa,
  schedule: scheduleJa,
} as const;
