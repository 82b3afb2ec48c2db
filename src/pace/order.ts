/**
 * What comes first and what can wait: the one list, with a reason each. The rest of the app says by name what it is,
 * and not when its turn comes.
 *
 * A start. In the page's head, before the app is there: the browser opens the box, and is told the names of the files of
 * a first visit (./ask-early.ts). Then the first script: it opens the store and loads the screen beside each other, and
 * the row is painted. What follows waits for that (./first-screen.ts).
 *
 * A tap. In the task of the finger the words of the next row change: they are what she reads. In the next task
 * (./next-task.ts) the row is written, since a frame that is due waits for the whole of the task before it. When it is on
 * disk the screen shows it as done; in the task after that hand and ear are told. What is looked at second follows, one
 * part in a frame, in the order below (./late.tsx). What is spoken waits for no frame: a phone in a pocket paints none.
 *
 * A long page. It stands from its top on, one part in a task (./in-turn.tsx).
 */

/** ms after the first screen stands. */
export const afterFirstScreen = {
  /**
   * the worker for offline use: on a first visit it fetches and keeps all of the app, which on a phone of two cores took
   * half of the processor from a long page that was still being drawn
   */
  worker: 1500,
  /** files and links that the app was opened with: nothing on the screen waits for them */
  listeners: 0,
  /** the rest of the knitting screen, in one go, so that no update takes a part away in the midst of knitting */
  rest: 200,
  /** sentences for what may go wrong: none is wanted before something did */
  sentences: 300,
} as const;

/** What waits for the first screen comes in the end, whatever became of that: longer than any start takes, ms. */
export const STANDS_AT_LATEST_MS = 5000;

/** What a row changes beside its words, the first first. */
export const turns = [
  // under the thumb: whether the row shapes is seen from the corner of the eye
  'pad',
  // the part before its first row, which goes with that row and moves all below
  'set-up',
  // how the work lies in her lap, and what comes after the row: read before she begins it
  'lap',
  'ladder',
  // by a hair longer with every row
  'progress',
  // figures beside the rows, glanced at now and then
  'lengths',
  // what she wrote to a row is fetched from the log
  'notes',
  // below the edge of the screen, and the most to draw
  'map',
] as const;

export type Turn = (typeof turns)[number];

/** Frames left free after a change, so that what the disk answers to it is not drawn in one frame with something late. */
export const FRAMES_AFTER_CHANGE = 2;

/** A frame with nothing of ours to draw makes up for one that took too long. */
export const FRAMES_BETWEEN = 1;

/** A row that comes sooner needs no sign that the tap was taken: a pad drawn pressed at every touch holds up the row. */
export const FELT_MS = 60;

/** After so long she is told in words that a tap is still being written down. */
export const SLOW_MS = 1000;
