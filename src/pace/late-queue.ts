import { FRAMES_AFTER_CHANGE, FRAMES_BETWEEN, type Turn, turns } from './order.ts';

/** A part of the screen that can wait. */
export interface LateJob {
  readonly turn: Turn;
  readonly draw: () => void;
  timer?: ReturnType<typeof setTimeout>;
}

/** One call a frame for all of them: each call of its own would be felt in the frame that shows the row. */
const waiting = new Set<LateJob>();
let resting = 0;
let asked = false;

/** What it shows has changed: it is drawn once its turn comes, and nothing else late in that frame. */
export function drawLate(job: LateJob): void {
  clearTimeout(job.timer);
  waiting.add(job);
  resting = FRAMES_AFTER_CHANGE;
  askFrame();
}

export function drawNoMore(job: LateJob): void {
  waiting.delete(job);
  clearTimeout(job.timer);
}

function askFrame(): void {
  if (!asked) requestAnimationFrame(onFrame);
  asked = true;
}

function onFrame(): void {
  asked = false;
  resting -= 1;
  if (resting < 0) drawNext();
  if (waiting.size > 0) askFrame();
}

function drawNext(): void {
  const [job] = [...waiting].sort((a, b) => turns.indexOf(a.turn) - turns.indexOf(b.turn));
  if (!job) return;
  waiting.delete(job);
  resting = FRAMES_BETWEEN;
  // after the frame, not in it
  job.timer = setTimeout(job.draw);
}
