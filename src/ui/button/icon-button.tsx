import './button.css';
import type { Ref } from 'preact';
import { Icon, type IconName } from '../icon/icon.tsx';

export interface IconButtonProps {
  readonly icon: IconName;
  /** its name for a screen reader; a hint on hover would be read out a second time */
  readonly label: string;
  readonly href?: string | undefined;
  /** given: it is a switch, on or off */
  readonly pressed?: boolean | undefined;
  readonly disabled?: boolean | undefined;
  readonly buttonRef?: Ref<HTMLButtonElement> | undefined;
  readonly onPress?: ((event: MouseEvent) => void) | undefined;
}

export function IconButton({ icon, label, href, pressed, disabled, buttonRef, onPress }: IconButtonProps) {
  if (href !== undefined) {
    return (
      <a class="icon-button" href={href} aria-label={label} onClick={onPress}>
        <Icon name={icon} />
      </a>
    );
  }
  return (
    <button
      ref={buttonRef ?? null}
      class="icon-button"
      type="button"
      aria-label={label}
      aria-pressed={pressed}
      disabled={disabled}
      onClick={onPress}
    >
      <Icon name={icon} />
    </button>
  );
}
