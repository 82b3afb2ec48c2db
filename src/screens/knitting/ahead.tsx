import { useMemo } from 'preact/hooks';
import { lookAtRow } from '../../app/intents/knit.ts';
import { type Reading, toWork } from '../../app/reading.ts';
import { nextShaping } from '../../app/row-now.ts';
import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import { Ladder } from '../../ui/ladder/ladder.tsx';
import { rowsAhead } from '../../ui/ladder/rows-ahead.ts';
import { saysShaping } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import { useLate } from './late.tsx';

/** What comes after the row in hand: the next shaping in words, and the rows up to it. */
export function Ahead({ part, row }: Reading) {
  return (
    <section class="ahead">
      <p class="ahead-next">{saysNextShaping(part, row)}</p>
      <Rungs />
    </section>
  );
}

/** The new rung comes first, and the one that is passed goes after it: both at once are too much for one frame. */
function Rungs() {
  const to = useLate(toWork, 3);
  const from = useLate(toWork, 4);
  return useMemo(() => to && ladder(to, from ?? to), [to, from]);
}

function ladder(to: Reading, from: Reading) {
  const ahead = rowsAhead(to.part.rows, to.row.n - 1);
  const hasPassed = from.part === to.part && from.row.n === to.row.n - 1;
  const rungs = hasPassed ? [{ row: to.row }, ...ahead] : ahead;
  return rungs.length > 0 && <Ladder rungs={rungs} onRead={lookAtRow} />;
}

function saysNextShaping(part: PlannedPart, row: PlannedRow): string {
  const next = nextShaping(part, row.n - 1);
  if (next === undefined) return say('knitting.noMoreShaping');
  return say('knitting.nextShaping', { count: next.n - row.n, row: next.n, shaping: saysShaping(next) });
}
