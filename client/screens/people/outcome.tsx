import { useEffect, useRef, type ReactNode } from 'react';

/** What came of a form. Below it, so it comes into sight and gets the focus, again with each other answer. */
export function Outcome({ of, children }: { of: object; children: ReactNode }) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.focus({ preventScroll: true });
    box.current?.scrollIntoView({ block: 'nearest' });
  }, [of]);
  return (
    <div ref={box} tabIndex={-1}>
      {children}
    </div>
  );
}
