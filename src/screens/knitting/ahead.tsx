import { beforeRow, nextWithBefore } from '../../app/in-hand/before-row.ts';
import { lookAtRow } from '../../app/in-hand/knit.ts';
import { type Reading, toWork } from '../../app/in-hand/reading.ts';
import { nextShaping } from '../../app/in-hand/row-now.ts';
import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import { Late } from '../../pace/late.tsx';
import { Ladder } from '../../ui/ladder/ladder.tsx';
import { rowsAhead } from '../../ui/ladder/rows-ahead.ts';
import { LapWindow } from '../../ui/lap-window/lap-window.tsx';
import { saysSide } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import { iconOf, saysMark } from './before-row.tsx';
import { LengthsBeside } from './lengths-beside.tsx';
import { saysShapingIn } from './spoken.ts';

/** The row as it lies in her lap, how long the work is, and the rows that come after it; a touch goes down to the map. */
export function Ahead() {
  return (
    <section class="ahead">
      <Late of={toWork} turn="lap">
        {(read) => <Lap {...read} />}
      </Late>
      <LengthsBeside />
      <Late of={toWork} turn="ladder">
        {(read) => <RowsAhead {...read} />}
      </Late>
    </section>
  );
}

// components, not calls: what they say is said anew in another language
const Lap = ({ part, row }: Reading) => (
  <LapWindow part={part} row={row} label={saysView(part, row)} onPress={toMap} />
);

/** Not smoothly where she asked her phone for less that moves. */
function toMap(): void {
  const isStill = matchMedia('(prefers-reduced-motion: reduce)').matches;
  document.querySelector('.place-map')?.scrollIntoView({ behavior: isStill ? 'instant' : 'smooth' });
}

function RowsAhead({ part, row }: Reading) {
  const rungs = rowsAhead(part.rows, row.n - 1, 4, nextWithBefore(part, row.n)?.n);
  const marksOf = (of: PlannedRow) =>
    beforeRow({ part, row: of }).map((one) => ({ icon: iconOf[one.kind], text: saysMark(one) }));
  return rungs.length > 0 ? <Ladder rungs={rungs} marksOf={marksOf} onRead={lookAtRow} /> : null;
}

const saysView = (part: PlannedPart, row: PlannedRow): string =>
  say('lap.view', {
    where: say('lap.map'),
    side: saysSide(row.side, true),
    next: saysNextShaping(part, row),
  });

function saysNextShaping(part: PlannedPart, row: PlannedRow): string {
  const next = nextShaping(part, row.n - 1);
  if (next === undefined) return say('lap.noMoreShaping');
  return saysShapingIn(row, next);
}
