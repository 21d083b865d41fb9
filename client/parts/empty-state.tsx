import type { ReactNode } from 'react';

/** Nothing here yet: says so, and what to do next. */
export function EmptyState({
  title,
  children,
  action,
}: {
  title: string;
  children?: ReactNode;
  action?: ReactNode;
}) {
  return (
    <div className="empty-state">
      <p className="empty-state-title">{title}</p>
      {children ? <div className="empty-state-text">{children}</div> : null}
      {action ? <div className="row">{action}</div> : null}
    </div>
  );
}
