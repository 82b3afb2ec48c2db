import { useState } from 'preact/hooks';
import type { ReadLine, ReadRow } from '../../knit/pattern/read-pattern.ts';
import { Button } from '../../ui/button/button.tsx';
import { saysSide } from '../../words/craft.ts';
import { saysInTurn } from '../../words/in-turn.ts';
import { saysNumber } from '../../words/numbers.ts';
import { heldTogether, saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';

/** The stitches before and after a line, and the rows that it makes. */
export function Counts({ kind, rows, before, after }: Pick<ReadLine, 'kind' | 'rows' | 'before' | 'after'>) {
  if (kind === 'talk' && rows.length === 0) return <p class="quiet">{say('pattern.talk')}</p>;
  if (after === undefined) return null;
  if (before === undefined || rows.length === 0) {
    return <p class="pattern-counts">{say('pattern.onNeedle', { count: after })}</p>;
  }
  return (
    <p class="pattern-counts">
      <span aria-hidden="true">{saysInTurn([before, after])}</span>
      <span class="spoken">{say('pattern.countsLong', { before, after })}</span>
    </p>
  );
}

/** Rows that stand open; a line that makes more opens on demand. */
const OPEN_ROWS = 2;

export function Rows({ rows }: { readonly rows: readonly ReadRow[] }) {
  const [all, setAll] = useState(false);
  if (rows.length === 0) return null;
  const shown = all ? rows : rows.slice(0, OPEN_ROWS);
  return (
    <>
      <ol class="pattern-rows" role="list">
        {shown.map((row) => (
          <li key={`${row.piece} ${row.part} ${row.n}`}>
            <span class="pattern-row-n">
              {saysNumber(row.n)} {saysSide(row.side)}
            </span>
            <span class="pattern-row-work" dir="auto">
              {row.own === undefined ? heldTogether(saysRow(row.steps)) : `“${row.own}”`}
            </span>
            <strong class="pattern-row-count">{saysNumber(row.after)}</strong>
          </li>
        ))}
      </ol>
      {rows.length > OPEN_ROWS && !all && (
        <Button kind="quiet" onPress={() => setAll(true)}>
          {say('pattern.showAll', { count: rows.length })}
        </Button>
      )}
    </>
  );
}
