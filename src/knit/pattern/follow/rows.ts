import type { Fault } from '../../fault.ts';
import type { Statement } from '../say/statement.ts';
import type { Build, PartBuild } from './build/build.ts';
import { knownFabric } from './build/fabric.ts';
import { makeWrittenRow } from './build/make-row.ts';
import { MOST_ROWS } from './build/push-row.ts';
import { backgroundEdits, settleBackground } from './build/run-rows.ts';

export const doRows = (
  build: Build,
  part: PartBuild,
  said: Extract<Statement, { is: 'rows' }>,
): Fault | undefined => {
  for (let i = 0; i < Math.min(said.n, MOST_ROWS); i += 1) {
    const wrong = makeWrittenRow(build, part, said.items, 'row', backgroundEdits(build, part));
    if (wrong) return wrong;
    settleBackground(build, part);
  }
  const only = said.items[0];
  // 'knit 81 rows' is garter stitch, and so is what is worked even after it
  if (said.n > 2 && only?.is === 'stitches to' && only.work === 'k') part.fabric = knownFabric('garter');
  return undefined;
};
