import { isInTrack, stageRank, type Stage } from '#domain/frame/stage';
import { lexiconOf } from '#domain/lexicon/lexicon';
import { trackOf } from '#domain/lexicon/track-of-kind';
import { acrossPx } from '#domain/photo/region-width';
import { daysBetween } from '#domain/record/days-between';
import type { Kept, KeptMember } from '../render/truth/truth-file.ts';
import type { Tag } from './act.ts';
import { dueDays } from './due-days.ts';
import type { HousePlan } from './house-plan.ts';
import { seenStretch } from './seen-stretch.ts';

export type Choice = Omit<Tag, 'id'>;

/** So many a photo: more nobody says after a day's work. */
const MOST = 12;
/** Of its outline in the picture so much must be seen, and so wide a strip that it can be told. */
const SEEN_SHARE = 0.6;
const LEAST_ACROSS_PX = 16;

/** How much more is thought of what is hidden within a week, and of what is hidden at all. */
const SOON = { days: 7, times: 8 };
const HIDDEN_TIMES = 2;

/**
 * What a carpenter says of photos, one after the other: what is large in them, above all what is hidden soon; nothing
 * twice at one stage, and nothing of what is left to be found.
 */
export function tagChooser(plan: HousePlan, left: ReadonlySet<string>) {
  const said = new Set<string>();
  const lexicon = lexiconOf([]);
  const kinds = new Map(plan.members.map(({ mark, kind }) => [mark, kind]));
  return (truth: Kept, day: string): Choice[] => {
    const dueDay = dueDays(plan, day);
    const weight = ({ mark, pixels }: KeptMember) => {
      const due = dueDay(mark);
      if (due === null) return pixels;
      return pixels * (daysBetween(day, due) <= SOON.days ? SOON.times : HIDDEN_TIMES);
    };
    const chosen = truth.members
      .filter(({ mark, stage }) => isInTrack(stage as Stage, trackOf(null, kinds.get(mark) ?? '', lexicon)))
      .filter(({ mark }) => !left.has(mark))
      .toSorted((a, b) => weight(b) - weight(a))
      .flatMap((shown) => choiceOf(truth, shown, plan) ?? [])
      .filter((choice) => !said.has(keyOf(choice)))
      .slice(0, MOST);
    for (const choice of chosen) said.add(keyOf(choice));
    return chosen;
  };
}

const keyOf = ({ mark, stage, stretch }: Choice) => JSON.stringify([mark, stageRank(stage), stretch]);

function choiceOf(truth: Kept, shown: KeptMember, { axes, grid }: HousePlan): Choice | null {
  const axis = axes.get(shown.mark);
  if (!axis || shown.outline.length < 6 || shown.ofPicture < SEEN_SHARE) return null;
  const region = regionOf(shown.outline, truth);
  if (acrossPx(region, truth) < LEAST_ACROSS_PX) return null;
  const seen = seenStretch(truth, axis, grid);
  if (seen === null) return null;
  return { mark: shown.mark, stage: shown.stage as Stage, region, stretch: seen === 'whole' ? null : seen };
}

function regionOf(outline: readonly number[], { width, height }: Kept): Tag['region'] {
  const points = Array.from({ length: outline.length / 2 }, (_, i): [number, number] => {
    const [x = 0, y = 0] = outline.slice(2 * i, 2 * i + 2);
    return [share(x, width), share(y, height)];
  });
  return { shape: 'polygon', points };
}

/** To four digits: less than a pixel. */
const share = (px: number, of: number) => Math.round(Math.min(1, Math.max(0, px / of)) * 1e4) / 1e4;
