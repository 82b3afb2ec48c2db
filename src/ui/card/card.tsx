import './card.css';
import type { ComponentChildren } from 'preact';

export interface CardProps {
  readonly children: ComponentChildren;
  /** what it stands for; told by its edge (a solid band, a notched band), never by colour alone */
  readonly tone?: 'plain' | 'place' | 'shaping' | 'resting' | undefined;
  /** the whole card is a link */
  readonly href?: string | undefined;
  /** the whole card is a button */
  readonly onPress?: (() => void) | undefined;
  /** names the region for a screen reader */
  readonly label?: string | undefined;
}

export function Card({ children, tone = 'plain', href, onPress, label }: CardProps) {
  const look = `card card-${tone}`;
  if (href !== undefined) {
    return (
      <a class={`${look} card-press`} href={href} aria-label={label} onClick={onPress}>
        {children}
      </a>
    );
  }
  if (onPress) {
    return (
      <button class={`${look} card-press`} type="button" aria-label={label} onClick={onPress}>
        {children}
      </button>
    );
  }
  return label === undefined ? (
    <div class={look}>{children}</div>
  ) : (
    <section class={look} aria-label={label}>
      {children}
    </section>
  );
}
