import { effect, type ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { drawLate, drawNoMore } from './late-queue.ts';

export interface LateProps<Value> {
  readonly of: ReadonlySignal<Value>;
  /** the first value is drawn at once, and only those after it late */
  readonly firstNow?: boolean;
  /** not called while there is no value */
  readonly children: (value: NonNullable<Value>) => ComponentChildren;
}

/**
 * Draws a value late: what is looked at second does not hold up what is looked at first (./order.ts). Until then nothing
 * of it is gone through.
 */
export function Late<Value>({ of, firstNow, children }: LateProps<Value>) {
  const late = useLate(of, firstNow);
  return useMemo(() => (late === undefined || late === null ? null : children(late)), [late]);
}

/** The value as it was a moment ago, for a part that shows more than that. */
export function useLate<Value>(of: ReadonlySignal<Value>, firstNow = false) {
  const [late, setLate] = useState<Value | undefined>(() => (firstNow ? of.peek() : undefined));
  useEffect(() => {
    const draw = () => setLate(() => of.peek());
    const stop = effect(() => {
      void of.value;
      drawLate(draw);
    });
    return () => {
      stop();
      drawNoMore(draw);
    };
  }, [of]);
  return late;
}
