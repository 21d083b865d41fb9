import type { ReactNode } from 'react';

/** A name with what there is to say of it; null where there is nothing. */
export type ToldFact = readonly [name: string, value: ReactNode] | null;

export function ToldFacts({ facts }: { facts: readonly ToldFact[] }) {
  return (
    <dl className="facts check-told-facts">
      {facts
        .filter((fact) => fact !== null)
        .map(([name, value]) => (
          <div key={name} className="facts-row">
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
    </dl>
  );
}
