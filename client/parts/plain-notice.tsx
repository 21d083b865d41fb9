import type { ReactNode } from 'react';

export type NoticeTone = 'problem' | 'done' | 'info';

export interface NoticeProps {
  tone?: NoticeTone;
  children: ReactNode;
  actions?: ReactNode;
}

/** A problem is announced at once, the rest when the reader pauses. */
export function Notice({ tone = 'info', children, actions }: NoticeProps) {
  return (
    <div className={`notice notice-${tone}`} role={tone === 'problem' ? 'alert' : 'status'}>
      <div className="notice-text">{children}</div>
      {actions ? <div className="notice-actions">{actions}</div> : null}
    </div>
  );
}
