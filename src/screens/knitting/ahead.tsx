import { lookAtRow } from '../../app/in-hand/knit.ts';
import { type Reading, toWork } from '../../app/in-hand/reading.ts';
import { nextShaping } from '../../app/in-hand/row-now.ts';
import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import { Late } from '../../pace/late.tsx';
import { Ladder } from '../../ui/ladder/ladder.tsx';
import { rowsAhead } from '../../ui/ladder/rows-ahead.ts';
import { saysShaping } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import { coloursInHand } from './row-colour.tsx';

/** What comes after the row in hand: the next shaping in words, and the rows up to it. */
export function Ahead({ part, row }: Reading) {
  return (
    <section class="ahead">
      <p class="ahead-next">{saysNextShaping(part, row)}</p>
      <Late of={toWork} turn="ladder">
        {ladder}
      </Late>
    </section>
  );
}

function ladder({ part, row }: Reading) {
  const rungs = rowsAhead(part.rows, row.n - 1);
  return rungs.length > 0 && <Ladder rungs={rungs} colour={coloursInHand(part)} onRead={lookAtRow} />;
}

function saysNextShaping(part: PlannedPart, row: PlannedRow): string {
  const next = nextShaping(part, row.n - 1);
  if (next === undefined) return say('knitting.noMoreShaping');
  return say('knitting.nextShaping', { count: next.n - row.n, row: next.n, shaping: saysShaping(next) });
}
