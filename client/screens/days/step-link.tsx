import type { ReactNode } from 'react';
import { LinkButton, type LinkButtonProps } from '../../parts/button.tsx';

interface StepLinkProps extends Pick<LinkButtonProps, 'to' | 'onClick'> {
  /** What is to be done first of those that are left. */
  isNext: boolean;
  why: string;
  children: ReactNode;
}

/** One of a few things to do or to look at, and what for. */
export function StepLink({ isNext, why, ...link }: StepLinkProps) {
  return (
    <div className="stack">
      <div className="row">
        <LinkButton look={isNext ? 'act' : 'plain'} {...link} />
      </div>
      <span>{why}</span>
    </div>
  );
}
