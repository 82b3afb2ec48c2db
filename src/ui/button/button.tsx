import './button.css';
import type { ComponentChildren, Ref } from 'preact';
import { Icon, type IconName } from '../icon/icon.tsx';

/** `main`: the one thing to do here; `plain`: another thing to do; `quiet`: beside a text; `danger`: hard to take back. */
export type ButtonKind = 'main' | 'plain' | 'quiet' | 'danger';

export interface ButtonProps {
  readonly children: ComponentChildren;
  readonly kind?: ButtonKind | undefined;
  readonly icon?: IconName | undefined;
  /** a link that looks like a button */
  readonly href?: string | undefined;
  /** fills the line */
  readonly wide?: boolean | undefined;
  readonly disabled?: boolean | undefined;
  /** work is under way: it cannot be pressed twice and says so */
  readonly busy?: boolean | undefined;
  readonly type?: 'button' | 'submit' | undefined;
  /** id of the text that says more (why it is disabled) */
  readonly describedBy?: string | undefined;
  readonly buttonRef?: Ref<HTMLButtonElement> | undefined;
  readonly onPress?: ((event: MouseEvent) => void) | undefined;
}

export function Button(props: ButtonProps) {
  const {
    children,
    kind = 'plain',
    icon,
    href,
    wide,
    disabled,
    busy,
    type = 'button',
    describedBy,
    onPress,
  } = props;
  const look = `button button-${kind}${wide ? ' button-wide' : ''}`;
  const inside = (
    <>
      {icon && <Icon name={icon} />}
      <span class="button-text">{children}</span>
    </>
  );
  if (href !== undefined) {
    return (
      <a class={look} href={href} aria-describedby={describedBy} onClick={onPress}>
        {inside}
      </a>
    );
  }
  return (
    <button
      ref={props.buttonRef ?? null}
      class={look}
      type={type}
      disabled={disabled || busy}
      aria-busy={busy || undefined}
      aria-describedby={describedBy}
      onClick={onPress}
    >
      {inside}
    </button>
  );
}
