import './screen.css';
import type { ComponentChildren } from 'preact';
import { IconButton } from '../button/icon-button.tsx';

export interface ScreenProps {
  readonly title: string;
  /** above the title, smaller: the garment a piece belongs to */
  readonly over?: string | undefined;
  /** where back goes, and its name: 'Back to Heather pullover' */
  readonly back?: { readonly href: string; readonly label: string } | undefined;
  /** icon buttons at the end of the head; two at most */
  readonly actions?: ComponentChildren;
  readonly children: ComponentChildren;
  /** stays at the bottom, under the thumb; a Toast before it */
  readonly foot?: ComponentChildren;
}

/** The frame of a screen: a head that says where she is, what is to be read, and what her thumb needs at the foot. */
export function Screen({ title, over, back, actions, children, foot }: ScreenProps) {
  return (
    <div class="screen">
      <header class="screen-head">
        {back && <IconButton icon="back" href={back.href} label={back.label} />}
        <div class="screen-title">
          {over && <div class="screen-over">{over}</div>}
          <h1 tabIndex={-1}>{title}</h1>
        </div>
        {actions}
      </header>
      <main class="screen-main">{children}</main>
      {foot && <footer class="screen-foot">{foot}</footer>}
    </div>
  );
}
