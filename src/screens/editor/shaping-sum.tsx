import { changeOf } from '../../knit/piece/counts.ts';
import type { ShapingForm } from '../../knit/piece/form/form.ts';
import { readShaping } from '../../knit/piece/form/read-shaping.ts';
import type { Shaping } from '../../knit/piece/recipe.ts';
import type { Side } from '../../knit/row/step.ts';
import { say } from '../../words/say.ts';

interface ShapingSumProps {
  readonly entry: ShapingForm;
  /** of the section's row 1 */
  readonly side: Side;
}

/** 'Here: 12 stitches fewer. Rows of this section: 5, 9, 13 ...' */
export function ShapingSum({ entry, side }: ShapingSumProps) {
  const read = readShaping(entry, side, { field: '' }, () => undefined);
  const by = changeOf({ shaping: read });
  const rows = [...new Set(read.flatMap(rowsOf))].sort((a, b) => a - b);
  if (by === 0 || rows.length === 0) return null;
  const change = say(by < 0 ? 'editor.sumMinus' : 'editor.sumPlus', { count: Math.abs(by) });
  return (
    <p class="edit-sum">
      {say('editor.shapingSum', { change })}
      <br />
      <span class="edit-soft">{say('editor.rowsList', { rows: shortList(rows) })}</span>
    </p>
  );
}

function rowsOf(shaping: Shaping): readonly number[] {
  if ('groups' in shaping) return shaping.groups.map((group) => group.row);
  return 'rows' in shaping ? shaping.rows : [shaping.row];
}

const MOST_SHOWN = 12;

const shortList = (rows: readonly number[]): string =>
  rows.length <= MOST_SHOWN
    ? rows.join(', ')
    : `${rows.slice(0, MOST_SHOWN - 2).join(', ')} … ${rows.at(-1)}`;
