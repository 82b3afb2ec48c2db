import { isShaping } from '../../app/in-hand/row-now.ts';
import type { PlannedRow } from '../../knit/piece/planned.ts';
import type { PadShaping } from '../../ui/pad/finish-pad.tsx';

/** How the pad shows a shaping row; undefined for a plain one. */
export function padShapingOf(row: PlannedRow): PadShaping | undefined {
  if (!isShaping(row)) return undefined;
  return { notch: notchOf(row), turn: turnOf(row) };
}

/** The edges at which the row shapes, as the work lies in her lap: turned over, what is right lies left. */
export function notchOf({ shaping, side }: PlannedRow): PadShaping['notch'] {
  const edges = new Set(shaping.map((mark) => mark.edge));
  if (edges.has('right') && edges.has('left')) return 'both';
  if (edges.has('right')) return side === 'RS' ? 'right' : 'left';
  if (edges.has('left')) return side === 'RS' ? 'left' : 'right';
  return 'across';
}

function turnOf(row: PlannedRow): PadShaping['turn'] {
  if (row.shaping.every(({ kind }) => kind === 'bind off')) return 'bindOff';
  const up = row.shaping.some((mark) => mark.by > 0);
  const down = row.shaping.some((mark) => mark.by < 0);
  return up && down ? 'both' : up ? 'increase' : 'decrease';
}
