import { account } from './en/account.ts';
import { bench } from './en/bench.ts';
import { clock } from './en/clock.ts';
import { common } from './en/common.ts';
import { coverings } from './en/coverings.ts';
import { days } from './en/days.ts';
import { findings } from './en/findings.ts';
import { grid } from './en/grid.ts';
import { frame } from './en/frame.ts';
import { handOn } from './en/hand-on.ts';
import { houses } from './en/houses.ts';
import { legibility } from './en/legibility.ts';
import { lexicon } from './en/lexicon.ts';
import { members } from './en/members.ts';
import { needs } from './en/needs.ts';
import { photos } from './en/photos.ts';
import { place } from './en/place.ts';
import { problems } from './en/problems.ts';
import { report } from './en/report.ts';
import { schedule } from './en/schedule.ts';

/** One entry an area of the interface; keys are `area.key`. The English one types them all. */
export const en = {
  account,
  bench,
  clock,
  common,
  coverings,
  days,
  findings,
  grid,
  frame,
  handOn,
  houses,
  legibility,
  lexicon,
  members,
  needs,
  photos,
  place,
  problems,
  report,
  schedule,
} as const;
