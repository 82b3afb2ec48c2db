import './icon.css';
import { drawings, type IconName } from './drawings.ts';

export type { IconName } from './drawings.ts';

export interface IconProps {
  readonly name: IconName;
  /** m is 1.5 rem */
  readonly size?: 's' | 'm' | 'l' | undefined;
  /** said to a screen reader; without it the icon is ornament beside a word */
  readonly label?: string | undefined;
}

export function Icon({ name, size = 'm', label }: IconProps) {
  const { d, fill, turns } = drawings[name];
  const named =
    label === undefined ? { 'aria-hidden': true } : ({ role: 'img', 'aria-label': label } as const);
  return (
    <svg
      class={`icon icon-${size}${turns ? ' icon-turns' : ''}`}
      viewBox="0 0 24 24"
      focusable="false"
      {...named}
    >
      {d && <path d={d} />}
      {fill && <path class="icon-fill" d={fill} />}
    </svg>
  );
}
