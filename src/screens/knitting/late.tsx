import { effect, type ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';

export interface LateProps<Value> {
  readonly of: ReadonlySignal<Value>;
  /** in which turn after the frame that shows the value itself */
  readonly turn: number;
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

/** The value as it was some turns ago, for a part that shows more than that. */
export function useLate<Value>(of: ReadonlySignal<Value>, turn: number, firstNow = false) {
  const [late, setLate] = useState<Value | undefined>(() => (firstNow ? of.peek() : undefined));
  useEffect(() => {
    const job: Job = { left: 0, run: () => setLate(() => of.peek()) };
    const stop = effect(() => {
      void of.value;
      wait(job, turn * TURN_FRAMES);
    });
    return () => {
      stop();
      waiting.delete(job);
      clearTimeout(job.timer);
    };
  }, [of, turn]);
  return late;
}

/** The frame after each turn has nothing of ours to draw: one that took too long is made up for in it. */
const TURN_FRAMES = 2;

interface Job {
  /** frames that it still waits */
  left: number;
  readonly run: () => void;
  timer?: ReturnType<typeof setTimeout>;
}

/** One call a frame for all of them: each call of its own would be felt in the frame that shows the row. */
const waiting = new Set<Job>();
let asked = false;

function wait(job: Job, frames: number): void {
  askFrame();
  clearTimeout(job.timer);
  job.left = frames;
  waiting.add(job);
}

function askFrame(): void {
  if (!asked) requestAnimationFrame(count);
  asked = true;
}

function count(): void {
  asked = false;
  for (const job of waiting) {
    job.left -= 1;
    if (job.left >= 0) continue;
    waiting.delete(job);
    // after the frame, not in it
    job.timer = setTimeout(job.run);
  }
  if (waiting.size > 0) askFrame();
}
