import type { ReactNode } from 'react';
import { Checkbox as AriaCheckbox, type CheckboxProps as AriaCheckboxProps } from 'react-aria-components';

export interface CheckboxProps extends Omit<AriaCheckboxProps, 'className' | 'style' | 'children'> {
  children: ReactNode;
}

export function Checkbox({ children, ...rest }: CheckboxProps) {
  return (
    <AriaCheckbox {...rest} className="checkbox">
      <span className="checkbox-box" aria-hidden="true">
        <svg viewBox="0 0 18 18">
          <path d="M3 9.5l4 4 8-9" />
        </svg>
      </span>
      <span>{children}</span>
    </AriaCheckbox>
  );
}
