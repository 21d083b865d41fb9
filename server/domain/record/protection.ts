import { without, type Stretch } from './stretches.ts';

/**
 * Temporary protection (養生) as it lies over one member, such as sheets over a finished sill. It hides and
 * does not close: what it lay over can be photographed once it is lifted. Instants as in StandingTag.
 */
export interface Protection {
  readonly id: string;
  readonly name: string;
  readonly mark: string;
  /** What of the member it lies over; null: all of it. */
  readonly stretch: Stretch | null;
  readonly laidAt: string;
  /** From here on it lies no more; null: it still lies. */
  readonly liftedAt: string | null;
}

/** What of a member lay under protection when a photo was taken. */
export interface Sheeted {
  readonly stretch: Stretch | null;
  /** Whether it surely lay there, however wrong the time of the photo is within its uncertainty. */
  readonly isSure: boolean;
}

/** What lay over a member at an instant that may be wrong by `uncertaintyS`: all of which that is not ruled out. */
export function sheetedAt(
  instant: string,
  uncertaintyS: number,
  over: readonly Pick<Protection, 'stretch' | 'laidAt' | 'liftedAt'>[],
): Sheeted[] {
  const [taken, within] = [Date.parse(instant), uncertaintyS * 1000];
  return over.flatMap(({ stretch, laidAt, liftedAt }) => {
    const [laid, lifted] = [Date.parse(laidAt), liftedAt === null ? Infinity : Date.parse(liftedAt)];
    const isSurelyOut = taken < laid ? laid - taken >= within : taken - lifted >= within;
    if (isSurelyOut || lifted <= laid) return [];
    return [{ stretch, isSure: taken - within >= laid && taken + within <= lifted }];
  });
}

/** What of a stretch none of these lies over; slivers are dropped. */
export function clearOf(shown: Stretch, sheeted: readonly Sheeted[]): Stretch[] {
  const taken = sheeted.flatMap(({ stretch }) => stretch ?? []);
  if (taken.length < sheeted.length) return [];
  return taken.length === 0 ? [shown] : without([shown], taken);
}

/** Whether it lies there at an instant. */
export function liesAt({ laidAt, liftedAt }: Pick<Protection, 'laidAt' | 'liftedAt'>, instant: string) {
  return laidAt <= instant && (liftedAt === null || instant < liftedAt);
}
