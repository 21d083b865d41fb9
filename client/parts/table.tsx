import type { ReactNode } from 'react';

export interface TableProps {
  /** Says what the table holds; drawn above it unless `hideLabel`. */
  label: string;
  hideLabel?: boolean;
  headings: readonly ReactNode[];
  children: ReactNode;
}

/** A plain table; give `<tr>` rows as children. On a narrow screen it scrolls sideways by itself. */
export function Table({ label, hideLabel = false, headings, children }: TableProps) {
  return (
    <div className="table-scroll" role="group" aria-label={label} tabIndex={0}>
      <table className="table">
        <caption className={hideLabel ? 'out-of-sight' : undefined}>{label}</caption>
        <thead>
          <tr>
            {headings.map((heading, i) => (
              <th key={i} scope="col">
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </div>
  );
}
