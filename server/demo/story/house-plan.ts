import { axisOf } from '#domain/frame/axis-of';
import { gridReader } from '#domain/frame/grid-reader';
import type { InventedHouse } from '#domain/frame/invented/invented-house';
import type { Axis } from '#domain/frame/set-out';
import { lexiconOf } from '#domain/lexicon/lexicon';
import { usualLie } from '#domain/lexicon/usual-lie';
import { boathouse } from '#domain/frame/invented/boathouse/boathouse';

/** The house as its crew planned it, with where each member lies. */
export interface HousePlan extends InventedHouse {
  readonly axes: ReadonlyMap<string, Axis>;
}

export function planOf(raising: string): HousePlan {
  const house = boathouse(raising);
  const [reader, lexicon] = [gridReader(house.grid), lexiconOf([])];
  const axes = house.members.map(({ mark, kind, setOut }) => {
    const read = axisOf(setOut, usualLie(kind, lexicon), reader);
    if (!read.ok) throw new RangeError(`${mark} cannot be: ${read.problem.reason}.`);
    return [mark, read.axis] as const;
  });
  return { ...house, axes: new Map(axes) };
}
