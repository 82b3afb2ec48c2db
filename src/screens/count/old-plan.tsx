import { useState } from 'preact/hooks';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { saysSide, saysStitches } from '../../words/craft.ts';
import { heldTogether, saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';

/** A plan that is knitted by no more, row by row; its rows are put into words only when it is opened. */
export function OldPlan({ part, version }: { readonly part: PlannedPart; readonly version: number }) {
  const [open, setOpen] = useState(false);
  return (
    <details class="card" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{say('count.oldPlan', { plan: version, rows: part.rows.length })}</summary>
      {open && (
        <ol>
          {part.rows.map((row) => (
            <li key={row.n}>
              {saysSide(row.side)}: {heldTogether(saysRow(row.steps))}{' '}
              <span class="count-soft">({saysStitches(row.after)})</span>
            </li>
          ))}
        </ol>
      )}
    </details>
  );
}
