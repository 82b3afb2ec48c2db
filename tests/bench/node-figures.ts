import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { built } from './build.ts';
import type { Figure } from './figure.ts';
import type { NodeTimes } from './in-node.ts';

/** The craft in plain Node: what planning and reading cost, and that they grow with the rows and no faster. */
export function nodeFigures(rounds: number): Figure[] {
  const printed = execFileSync(process.execPath, [join(built.node, 'in-node.js'), String(rounds)], {
    encoding: 'utf8',
  });
  const ms = JSON.parse(printed) as NodeTimes;
  return [
    {
      what: 'draft, plan and verify a set-in pullover',
      against: 'JSON.stringify of its plans',
      unit: 'ms',
      ours: ms.draftAndPlan,
      theirs: ms.stringify,
      times: 10,
    },
    {
      what: 'plan and verify 2,000 rows',
      against: '200 rows',
      unit: 'ms',
      ours: ms.plan2000,
      theirs: ms.plan200,
      times: 11,
    },
    {
      what: 'read a pattern of 2,000 rows',
      against: '200 rows',
      unit: 'ms',
      ours: ms.read2000,
      theirs: ms.read200,
      times: 11,
    },
  ];
}
