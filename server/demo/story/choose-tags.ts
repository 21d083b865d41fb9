import { compareText } from '#domain/frame/mark-order';
import { isInTrack, stageRank, type Stage } from '#domain/frame/stage';
import { lexiconOf } from '#domain/lexicon/lexicon';
import { trackOf } from '#domain/lexicon/track-of-kind';
import { acrossPx } from '#domain/photo/region-width';
import type { Shown, Truth } from '../render/truth/truth.ts';
import type { Tag } from './act.ts';
import { dueDays } from './due-days.ts';
import type { HousePlan } from './house-plan.ts';
import { seenStretch } from './seen-stretch.ts';

export type Choice = Omit<Tag, 'id'>;

/** So many a photo: more nobody says after a day's work. */
const MOST = 10;
/** Of its outline in the picture so much must be seen, and so wide a strip that it can be told. */
const SEEN_SHARE = 0.5;
const LEAST_ACROSS_PX = 16;

/**
 * What a carpenter says of photos, one after the other: first what is hidden soonest, then what is largest; nothing
 * twice at one stage, and nothing of what is left to be found.
 */
export function tagChooser(plan: HousePlan, left: ReadonlySet<string>) {
  const said = new Set<string>();
  const lexicon = lexiconOf([]);
  return (truth: Truth, day: string): Choice[] => {
    const dueDay = dueDays(
      plan,
      plan.coverings.filter(({ plannedDay }) => plannedDay > day),
    );
    const news = truth.members.flatMap((shown) => {
      const { mark } = shown;
      const kind = plan.members.find((member) => member.mark === mark)?.kind ?? '';
      const stage = shown.stage as Stage;
      if (left.has(mark) || !isInTrack(stage, trackOf(null, kind, lexicon))) return [];
      const choice = choiceOf(truth, shown, plan);
      return choice && !said.has(keyOf(choice)) ? [{ choice, shown }] : [];
    });
    const chosen = news
      .sort(
        (a, b) =>
          compareText(dueDay(a.choice.mark), dueDay(b.choice.mark)) || b.shown.pixels - a.shown.pixels,
      )
      .slice(0, MOST)
      .map(({ choice }) => choice);
    for (const choice of chosen) said.add(keyOf(choice));
    return chosen;
  };
}

const keyOf = ({ mark, stage, stretch }: Choice) => JSON.stringify([mark, stageRank(stage), stretch]);

function choiceOf(truth: Truth, shown: Shown, { axes, grid }: HousePlan): Choice | null {
  const axis = axes.get(shown.mark);
  if (!axis || shown.outline.length < 6 || shown.ofPicture < SEEN_SHARE) return null;
  const region = regionOf(shown.outline, truth);
  if (acrossPx(region, truth) < LEAST_ACROSS_PX) return null;
  const seen = seenStretch(truth, axis, grid);
  if (seen === null) return null;
  return { mark: shown.mark, stage: shown.stage as Stage, region, stretch: seen === 'whole' ? null : seen };
}

function regionOf(outline: readonly number[], { width, height }: Truth): Tag['region'] {
  const points = Array.from({ length: outline.length / 2 }, (_, i): [number, number] => {
    const [x = 0, y = 0] = outline.slice(2 * i, 2 * i + 2);
    return [share(x, width), share(y, height)];
  });
  return { shape: 'polygon', points };
}

/** To four digits: less than a pixel. */
const share = (px: number, of: number) => Math.round(Math.min(1, Math.max(0, px / of)) * 1e4) / 1e4;
