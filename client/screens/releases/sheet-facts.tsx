import type { SheetFact } from '#domain/record/sheet/sheet';

export function SheetFacts({ facts }: { facts: readonly SheetFact[] }) {
  return (
    <dl className="facts release-facts">
      {facts.map(({ name, text }) => (
        <div key={name} className="facts-row">
          <dt>{name}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}
