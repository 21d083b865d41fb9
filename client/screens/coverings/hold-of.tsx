import { useHouse } from '../../shell/use-house.ts';
import { HoldWord } from './hold-word.tsx';
import { useCoverings } from './use-coverings.ts';

/** Where the inspection of a covering stands, for a list that does not say so itself. */
export function HoldOf({ id }: { id: string }) {
  const { id: house } = useHouse();
  const covering = useCoverings(house).data?.coverings.find((one) => one.id === id);
  return covering ? <HoldWord covering={covering} /> : null;
}
