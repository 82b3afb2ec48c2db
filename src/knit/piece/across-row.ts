import { ok, type Result, refuse } from '../fault.ts';
import { addRun, type Run } from '../row/shorten.ts';
import { spread } from '../shape/spread.ts';
import { type Columns, freshColumns } from './needle.ts';
import { mixed } from './row-faults.ts';
import { allWorked, type BuiltRow, faceOf, type RowSetting } from './row-setting.ts';
import type { RowShaping } from './row-shaping.ts';
import { slipFirst } from './slip-first.ts';

/** Increases or decreases spread over the row; the columns are counted anew afterwards. */
export function acrossRow(columns: Columns, shaping: RowShaping, setting: RowSetting): Result<BuiltRow> {
  const by = shaping.across ?? 0;
  if (Object.keys(shaping).length > 1 || unworkedIn(setting) > 0) return refuse(mixed());
  const laid = spread(columns.length, by);
  if (!laid.ok) return laid;
  const order = setting.side === 'RS' ? columns : [...columns].reverse();
  const face = faceOf(setting);
  const runs: Run[] = [];
  let next = 0;
  const work = (count: number): void => {
    for (let i = 0; i < count; i += 1) addRun(runs, face(order[next + i] ?? 0), 1);
    next += count;
  };
  laid.value.groups.forEach((group, i) => {
    work(group);
    if (i === laid.value.groups.length - 1) return;
    const facing = face(order[Math.min(next, order.length - 1)] ?? 0);
    if (by > 0) addRun(runs, facing === 'k' ? 'm1l' : 'm1p', 1);
    else {
      addRun(runs, facing === 'k' ? 'k2tog' : 'p2tog', 1);
      next += 2;
    }
  });
  if (setting.slipped) slipFirst(runs);
  return ok({
    runs,
    columns: freshColumns(columns.length + by),
    marks: [{ kind: 'across', edge: 'across', by }],
  });
}

const unworkedIn = ({ unworked = allWorked }: RowSetting): number => unworked.right + unworked.left;
