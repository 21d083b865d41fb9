import { Button as AriaButton, type ButtonProps as AriaButtonProps } from 'react-aria-components';
import { Link, type LinkProps } from 'react-router';

/** 'act' is the one thing to do on a screen, in vermilion; 'plain' the rest; 'quiet' looks like text; 'danger' ends something. */
export type ButtonLook = 'act' | 'plain' | 'quiet' | 'danger';

export interface ButtonProps extends Omit<AriaButtonProps, 'className' | 'style'> {
  look?: ButtonLook;
}

export function Button({ look = 'plain', ...rest }: ButtonProps) {
  return <AriaButton {...rest} className={`button button-${look}`} />;
}

export interface LinkButtonProps extends Omit<LinkProps, 'className' | 'style'> {
  look?: ButtonLook;
}

/** Goes to another screen but has the weight of a button. */
export function LinkButton({ look = 'plain', ...rest }: LinkButtonProps) {
  return <Link {...rest} className={`button button-${look}`} />;
}
