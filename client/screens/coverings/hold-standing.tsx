import type { Standing } from '#domain/contract/hold';
import { HoldReason } from './hold-reason.tsx';
import { HoldWord } from './hold-word.tsx';

/** The same in a list, with the reason where one was asked for. */
export function HoldStanding({ standing }: { standing: Omit<Standing, 'beyond'> }) {
  return (
    <>
      <HoldWord phase={standing.phase} /> <HoldReason standing={standing} />
    </>
  );
}
