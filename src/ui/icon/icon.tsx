import './icon.css';
import { signal } from '@preact/signals';
import { type Drawing, firstDrawings } from './drawings.ts';
import type { moreDrawings } from './more-drawings.ts';

export type IconName = keyof typeof firstDrawings | keyof typeof moreDrawings;

type Drawings = Readonly<Partial<Record<IconName, Drawing>>>;

const drawings = signal<Drawings>(firstDrawings);

/** A box of the same size stands in its place for the moment; without its file (a first visit cut off) it stays. */
async function fetchMore(): Promise<void> {
  const more = await import('./more-drawings.ts').catch(() => undefined);
  if (more && drawings.value === firstDrawings) drawings.value = { ...firstDrawings, ...more.moreDrawings };
}

export interface IconProps {
  readonly name: IconName;
  /** m is 1.5 rem */
  readonly size?: 's' | 'm' | 'l' | undefined;
  /** said to a screen reader; without it the icon is ornament beside a word */
  readonly label?: string | undefined;
}

export function Icon({ name, size = 'm', label }: IconProps) {
  const drawing = drawings.value[name];
  if (!drawing) void fetchMore();
  const { d, fill, turns } = drawing ?? {};
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
