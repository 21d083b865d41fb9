import type { ReactNode } from 'react';
import type { SheetChange, SheetPart, SheetRefusal, SheetWaiver } from '#domain/record/sheet/sheet';
import { MemberLink } from './member-link.tsx';

export interface SheetPartSectionProps {
  part: Pick<SheetPart<unknown>, 'heading' | 'lead'>;
  /** Told apart from what was released. */
  isLater?: boolean;
  children?: ReactNode;
}

export function SheetPartSection({ part: { heading, lead }, isLater, children }: SheetPartSectionProps) {
  return (
    <section className={isLater ? 'section release-later' : 'section'}>
      <h2>{heading}</h2>
      <p className="soft">{lead}</p>
      {children}
    </section>
  );
}

/** Members by mark, each with what is said of it. */
export function MarkedLines({ items }: { items: readonly (SheetWaiver | SheetChange)[] }) {
  if (items.length === 0) return null;
  return (
    <ul className="plain-list release-marked">
      {items.map(({ mark, lines }) => (
        <li key={mark}>
          <h3>
            <MemberLink mark={mark} />
          </h3>
          {lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </li>
      ))}
    </ul>
  );
}

/** Refusals in order, each with what was missing. */
export function RefusedLines({ items }: { items: readonly SheetRefusal[] }) {
  return (
    <ul className="plain-list release-marked">
      {items.map(({ said, lines }) => (
        <li key={said}>
          <h3>{said}</h3>
          {lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </li>
      ))}
    </ul>
  );
}
