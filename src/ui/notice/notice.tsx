import './notice.css';
import type { ComponentChildren } from 'preact';
import { Icon } from '../icon/icon.tsx';

export interface NoticeProps {
  /** `fault`: something cannot be done; `warning`: look before going on; `note`: good to know; `done`: it worked */
  readonly kind: 'fault' | 'warning' | 'note' | 'done';
  readonly title?: string | undefined;
  readonly children?: ComponentChildren;
  /** buttons */
  readonly actions?: ComponentChildren;
  /** it appears while she is here, so it is announced; a fault interrupts, the others wait */
  readonly live?: boolean | undefined;
}

const icons = { fault: 'fault', warning: 'warning', note: 'info', done: 'check' } as const;

export function Notice({ kind, title, children, actions, live = false }: NoticeProps) {
  const role = live ? (kind === 'fault' ? 'alert' : 'status') : undefined;
  return (
    // it may have to be scrolled above the pad, by keys too where nothing in it takes them
    <div class={`notice notice-${kind}`} role={role} tabIndex={live && !actions ? 0 : undefined}>
      <Icon name={icons[kind]} />
      <div class="notice-words">
        {title && <p class="notice-title">{title}</p>}
        {children && <div>{children}</div>}
        {actions && <div class="notice-actions">{actions}</div>}
      </div>
    </div>
  );
}
