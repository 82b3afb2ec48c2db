import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';

export interface LateProps<Value> {
  readonly value: Value;
  readonly children: (value: Value) => ComponentChildren;
}

/** Draws a value one frame late: what is looked at second does not hold up what is looked at first. */
export function Late<Value>({ value, children }: LateProps<Value>) {
  const [late, setLate] = useState<Value>();
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    // after the frame, not in it
    const frame = requestAnimationFrame(() => {
      timer = setTimeout(() => setLate(() => value));
    });
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(timer);
    };
  }, [value]);
  return useMemo(() => (late === undefined ? null : children(late)), [late]);
}
