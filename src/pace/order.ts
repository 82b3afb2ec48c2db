/**
 * What comes first and what can wait: the one list, with a reason each. The rest of the app says what can wait, and not
 * when it comes. A trick stays here only while it can be felt: a frame or more on a phone four times slower than the
 * machine that it was measured on, or where no figure can tell.
 *
 * A start.
 *   1. In the page's head, before the app is there: the browser opens the box, and is told the names of the files of a
 *      first visit (./ask-early.ts).
 *   2. The first script opens the store and loads the screen beside each other, and the row is painted.
 *   3. What is below waits for that (./first-screen.ts).
 *
 * A tap.
 *   1. The words of the next row change, which are what she reads, and the row is written.
 *   2. When that frame is painted, what is looked at second, all of it at once (./late.tsx): the pad's notch, what comes
 *      next, the ladder, notes, the drawings. In the frame of the words it would hold them up by half as much again; a
 *      part in a frame each cost half as much work again, and nobody saw it.
 *   3. When the row is on disk it is shown as done, and hand and ear are told. What is spoken waits for no frame: a phone
 *      in a pocket paints none.
 * Work that goes on for longer is cut in tasks, between which taps are taken (./next-task.ts).
 */

/** ms after the first screen stands. */
export const afterFirstScreen = {
  /** the worker for offline use, files and links that the app was opened with: nothing on the screen waits for them */
  worker: 0,
  listeners: 0,
  /** the rest of the knitting screen, in one go, so that no update takes a part away in the midst of knitting */
  rest: 200,
  /** sentences for what may go wrong: none is wanted before something did */
  sentences: 300,
} as const;

/** What waits for the first screen comes in the end, whatever became of that: longer than any start takes, ms. */
export const STANDS_AT_LATEST_MS = 5000;

/**
 * A row that comes sooner needs no sign that the tap was taken: a pad drawn pressed and let go at every row is a flicker
 * under the thumb, and a fifth more work.
 */
export const FELT_MS = 60;

/** After so long she is told in words that a tap is still being written down. */
export const SLOW_MS = 1000;
