import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';

export interface LateProps<Value> {
  readonly value: Value;
  /** how many frames late */
  readonly frames?: number;
  /** the first value is drawn at once, and only those after it late */
  readonly firstNow?: boolean;
  readonly children: (value: Value) => ComponentChildren;
}

/**
 * Draws a value some frames late: what is looked at second does not hold up what is looked at first, and no frame has
 * more to draw than it can.
 */
export function Late<Value>({ value, frames = 1, firstNow, children }: LateProps<Value>) {
  const [late, setLate] = useState<Value | undefined>(firstNow ? value : undefined);
  useEffect(() => {
    let frame = 0;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const wait = (left: number) => {
      frame = requestAnimationFrame(() => {
        if (left > 1) wait(left - 1);
        // after the frame, not in it
        else timer = setTimeout(() => setLate(() => value));
      });
    };
    wait(frames);
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(timer);
    };
  }, [value]);
  return useMemo(() => (late === undefined ? null : children(late)), [late]);
}
