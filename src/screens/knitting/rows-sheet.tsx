import { useState } from 'preact/hooks';
import { goToRow } from '../../app/in-hand/knit.ts';
import { isShaping } from '../../app/in-hand/row-now.ts';
import type { InHand } from '../../app/state.ts';
import type { PlannedRow } from '../../knit/piece/planned.ts';
import { Button } from '../../ui/button/button.tsx';
import { ShapingIcons } from '../../ui/icon/shaping-icons.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { saysShaping, saysSide, saysStitches } from '../../words/craft.ts';
import { say } from '../../words/say.ts';

const AT_FIRST = 12;
const MORE = 40;

export interface RowsSheetProps {
  readonly now: InHand;
  readonly open: boolean;
  readonly onClose: () => void;
}

/** The rows worked, the last one first: a touch makes one the next row. */
export function RowsSheet({ now, open, onClose }: RowsSheetProps) {
  const [length, setLength] = useState(AT_FIRST);
  const { rows } = now.place;
  // closed, it has nothing to draw with every row
  const first = open ? Math.max(0, rows - length) : rows;
  const worked = now.part.rows.slice(first, rows).reverse();
  const go = (row: PlannedRow) => () => {
    onClose();
    void goToRow(row.n);
  };
  return (
    <Sheet open={open} title={say('knitting.goBack')} onClose={onClose}>
      <p>{say('otherRow.goBackHelp')}</p>
      <ol class="rows-back" role="list">
        {worked.map((row) => (
          <li key={row.n}>
            <button
              class={`row-back${isShaping(row) ? ' row-back-shaping' : ''}`}
              type="button"
              onClick={go(row)}
            >
              <strong>{say('otherRow.goBackTo', { row: row.n })}</strong>
              <span>
                {say('otherRow.rowLine', { side: saysSide(row.side), count: saysStitches(row.before) })}
              </span>
              {isShaping(row) && (
                <span class="row-back-word">
                  <ShapingIcons row={row} />
                  {saysShaping(row)}
                </span>
              )}
            </button>
          </li>
        ))}
      </ol>
      {first > 0 && (
        <Button wide onPress={() => setLength(length + MORE)}>
          {say('otherRow.olderRows')}
        </Button>
      )}
    </Sheet>
  );
}
