import type { Fault } from '../../knit/fault.ts';
import { provePart } from '../../knit/piece/prove.ts';
import { stepWeight } from '../../knit/row/step-weight.ts';
import { BACKUP_LIMITS, type Backup } from './document.ts';
import { backupFault } from './faults.ts';

/** Knits every plan of a backup: no plan enters the box that was not worked stitch by stitch. */
export function provePlans(plans: Backup['plans']): Fault | undefined {
  let work = 0;
  for (const [i, { id, plan }] of plans.entries()) {
    for (const row of plan.rows) work += stepWeight(row.steps, row.before);
    if (work > BACKUP_LIMITS.work)
      return backupFault('backup-damaged', { path: `plans.${i}`, what: 'endless rows' });
    const wild = plan.rows.findIndex(
      (row, at) => row.n !== at + 1 || plan.sections[row.section] === undefined,
    );
    if (wild >= 0)
      return backupFault('backup-damaged', { path: `plans.${i}.plan.rows.${wild}`, what: 'row number' });
    const [trouble] = provePart(plan);
    if (trouble !== undefined)
      return backupFault('backup-not-knittable', { plan: id, row: trouble.at.row ?? 0 });
  }
  return undefined;
}
