import { useEffect, type ReactNode } from 'react';
import { Link } from 'react-router';
import { useWords } from '../i18n/use-words.ts';

export interface Crumb {
  to: string;
  label: string;
}

export interface PageProps {
  title: string;
  /** Drawn beside the heading, e.g. the strokes of a member. */
  badge?: ReactNode;
  breadcrumb?: readonly Crumb[];
  actions?: ReactNode;
  /** Until it is known which actions there are: they keep their room unseen, so that none moves under a finger. */
  areActionsKnown?: boolean;
  lead?: ReactNode;
  children: ReactNode;
}

/** One screen: where one is, its heading, what can be done, the content. Sets the window's title. */
export function Page({
  title,
  badge,
  breadcrumb = [],
  actions,
  areActionsKnown = true,
  lead,
  children,
}: PageProps) {
  const { t } = useWords();
  useEffect(() => {
    document.title = t('common.windowTitle', { title });
  }, [t, title]);
  return (
    <div className="page">
      {breadcrumb.length > 0 ? <Breadcrumb crumbs={breadcrumb} label={t('common.youAreHere')} /> : null}
      <div className="page-head">
        <h1>
          {title}
          {badge}
        </h1>
        {actions ? (
          <div className={areActionsKnown ? 'row page-actions' : 'row page-actions unknown'}>{actions}</div>
        ) : null}
      </div>
      {lead ? <p className="lead">{lead}</p> : null}
      {children}
    </div>
  );
}

function Breadcrumb({ crumbs, label }: { crumbs: readonly Crumb[]; label: string }) {
  return (
    <nav className="breadcrumb" aria-label={label}>
      <ol>
        {crumbs.map((crumb) => (
          <li key={crumb.to}>
            <Link to={crumb.to}>{crumb.label}</Link>
          </li>
        ))}
      </ol>
    </nav>
  );
}
