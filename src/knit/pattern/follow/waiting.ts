import { fault } from '../../fault.ts';
import { means } from '../../row/read/meanings.ts';
import type { Flow } from '../say/flow.ts';
import type { Build } from './build/build.ts';
import type { LineNotes } from './build/notes.ts';
import { isDone } from './build/part.ts';

/** Whether stitches that were left are spoken of again: what becomes of them is hers to see. */
const speaksOf = (text: string): boolean =>
  (text.toLowerCase().match(/[a-z\d]+/g) ?? []).some((word, i, all) => {
    const next = all[i + 1];
    return (
      means(word, 'speaks of stitches that wait') ||
      (means(word, 'set of stitches') && means(next, 'where stitches wait')) ||
      (means(word, 'other of two') && means(next, 'one of two sides')) ||
      (means(word, 'three') && next === 'needle')
    );
  });

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
      if (flow.slice(leftAt + 1).some(({ words }) => speaksOf(words))) continue;
      const { line, column } = one.span ?? { line: one.is === 'said' ? one.said.line : one.from, column: 1 };
      notes[one.line]?.faults.push({ ...fault('stitches wait', { stitches }), at: { line, column } });
    }
  }
}
