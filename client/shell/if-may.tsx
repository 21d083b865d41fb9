import type { ReactNode } from 'react';
import type { Act } from '#domain/contract/acts';
import { useMay } from './use-house.ts';

/** What only those see whose role in the house allows the act. */
export function IfMay({ act, children }: { act: Act; children: ReactNode }) {
  return useMay(act) ? children : null;
}
