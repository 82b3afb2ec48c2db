import { fault } from '../../fault.ts';
import type { Flow } from '../say/flow.ts';
import type { Build } from './build/build.ts';
import type { LineNotes } from './build/notes.ts';
import { isDone } from './build/part.ts';

/** Words by which stitches that were left are spoken of again: what becomes of them is hers to see. */
const SPOKEN_OF =
  /\b(?:holders?|pins?|held|hold|wait(?:ing)?|resting|spare|waste|live|unworked|graft(?:ed|ing)?|rejoin|(?:st(?:itche)?s|group|set)\.? (?:left|from|on|of)|(?:3|three)[- ]needle|(?:other|second|opposite|remaining) (?:side|half|shoulder|front|edge|group|set|st(?:itche)?s))\b/i;

/**
 * Stitches that were left for later, and the piece ends without a word of them. A piece with a sentence that was not
 * understood says so there: it may be the one that takes them up.
 */
export function tellWaiting({ begun }: Build, flow: readonly Flow[], notes: readonly LineNotes[]): void {
  for (const piece of begun) {
    const { resting, unreadAt } = piece;
    // where the text stops in the midst of a piece they may still come
    if (piece === begun.at(-1) && !isDone(piece.parts.at(-1))) continue;
    for (const { leftAt, stitches } of resting) {
      const one = flow[leftAt];
      if (one === undefined || unreadAt >= leftAt) continue;
      if (flow.slice(leftAt + 1).some(({ words }) => SPOKEN_OF.test(words))) continue;
      const { line, column } = one.span ?? { line: one.is === 'said' ? one.said.line : one.from, column: 1 };
      notes[one.line]?.faults.push({ ...fault('stitches wait', { stitches }), at: { line, column } });
    }
  }
}
