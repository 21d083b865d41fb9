import { account } from './ja/account.ts';
import { bench } from './ja/bench.ts';
import { clock } from './ja/clock.ts';
import { common } from './ja/common.ts';
import { coverings } from './ja/coverings.ts';
import { days } from './ja/days.ts';
import { findings } from './ja/findings.ts';
import { grid } from './ja/grid.ts';
import { frame } from './ja/frame.ts';
import { handOn } from './ja/hand-on.ts';
import { houses } from './ja/houses.ts';
import { legibility } from './ja/legibility.ts';
import { lexicon } from './ja/lexicon.ts';
import { members } from './ja/members.ts';
import { needs } from './ja/needs.ts';
import { photos } from './ja/photos.ts';
import { place } from './ja/place.ts';
import { problems } from './ja/problems.ts';
import { report } from './ja/report.ts';
import { schedule } from './ja/schedule.ts';

export const ja = {
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
