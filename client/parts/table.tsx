import type { ReactNode } from 'react';

export interface TableProps {
  /** Says what the table holds; drawn above it unless `hideLabel`. */
  label: string;
  hideLabel?: boolean;
  headings: readonly ReactNode[];
  /** A row over the headings, repeated with them on every page of paper. */
  above?: ReactNode;
  /** Class names of the columns, where their widths are set. */
  columns?: readonly string[];
  /** 'blocks': on a phone each row is a block; a cell with `data-label` says its heading there. */
  onPhone?: 'scroll' | 'blocks';
  children: ReactNode;
}

/** A plain table; give `<tr>` rows as children. On a narrow screen it scrolls sideways by itself, or each row is a block. */
export function Table(props: TableProps) {
  const { label, hideLabel = false, headings, above, columns = [], onPhone = 'scroll', children } = props;
  return (
    <div className={`table-scroll table-${onPhone}`} role="group" aria-label={label} tabIndex={0}>
      <table className="table">
        <caption className={hideLabel ? 'out-of-sight' : undefined}>{label}</caption>
        {columns.length > 0 ? (
          <colgroup>
            {columns.map((name) => (
              <col key={name} className={name} />
            ))}
          </colgroup>
        ) : null}
        <thead>
          {above}
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
