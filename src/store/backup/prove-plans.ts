import { type Fault, fault } from '../../knit/fault.ts';
import { provePart } from '../../knit/piece/prove.ts';
import { stepWeight } from '../../knit/row/step-weight.ts';
import { BACKUP_LIMITS, type Backup } from './document.ts';

/** Knits every plan of a backup: no plan enters the box that was not worked stitch by stitch. */
export function provePlans(plans: Backup['plans']): Fault | undefined {
  let work = 0;
  for (const [i, { plan }] of plans.entries()) {
    for (const row of plan.rows) work += stepWeight(row.steps, row.before);
    if (work > BACKUP_LIMITS.work) return fault('backup-damaged', { pathText: `plans.${i}` });
    const wild = plan.rows.findIndex(
      (row, at) => row.n !== at + 1 || plan.sections[row.section] === undefined,
    );
    if (wild >= 0) return fault('backup-damaged', { pathText: `plans.${i}.plan.rows.${wild}` });
    const proven = provePart(plan);
    if (!proven.ok)
      return fault('backup-not-knittable', { pieceName: plan.piece, row: proven.faults[0]?.at.row ?? 0 });
  }
  return undefined;
}
