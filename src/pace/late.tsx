import { effect, type ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { drawLate, drawNoMore, type LateJob } from './late-queue.ts';
import type { Turn } from './order.ts';

export interface LateProps<Value> {
  readonly of: ReadonlySignal<Value>;
  /** when its turn comes */
  readonly turn: Turn;
  /** the first value is drawn at once, and only those after it late */
  readonly firstNow?: boolean;
  /** not called while there is no value */
  readonly children: (value: NonNullable<Value>) => ComponentChildren;
}

/**
 * Draws a value late: what is looked at second does not hold up what is looked at first, and no frame has more to draw
 * than it can. Until then nothing of it is gone through.
 */
export function Late<Value>({ of, turn, firstNow, children }: LateProps<Value>) {
  const late = useLate(of, turn, firstNow);
  return useMemo(() => (late === undefined || late === null ? null : children(late)), [late]);
}

/** The value as it was a moment ago, for a part that shows more than that. */
export function useLate<Value>(of: ReadonlySignal<Value>, turn: Turn, firstNow = false) {
  const [late, setLate] = useState<Value | undefined>(() => (firstNow ? of.peek() : undefined));
  useEffect(() => {
    const job: LateJob = { turn, draw: () => setLate(() => of.peek()) };
    const stop = effect(() => {
      void of.value;
      drawLate(job);
    });
    return () => {
      stop();
      drawNoMore(job);
    };
  }, [of, turn]);
  return late;
}
