import { useEffect, useState } from 'preact/hooks';

export interface LiveRegionProps {
  /** the whole phrase: row, shaping, count */
  readonly text: string;
  /** change it to have the same phrase said again */
  readonly again?: number | undefined;
  /** how long it waits for a burst of taps to end, ms */
  readonly waitMs?: number | undefined;
}

/** Says what has changed, politely and whole, once the taps have settled. Stands in the page before it speaks. */
export function LiveRegion({ text, again = 0, waitMs = 250 }: LiveRegionProps) {
  const [said, setSaid] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setSaid(again % 2 ? `${text}\u00a0` : text), waitMs);
    return () => clearTimeout(timer);
  }, [text, again, waitMs]);
  return (
    <div class="spoken" role="status" aria-live="polite" aria-atomic="true">
      {said}
    </div>
  );
}
