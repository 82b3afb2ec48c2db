import type { Fault } from '../../fault.ts';
import type { Statement } from '../say/statement.ts';
import { bindOffAll } from './build/bind-off.ts';
import type { Build, PartBuild } from './build/build.ts';
import { countDiffers } from './build/compare.ts';
import { makeWrittenRow } from './build/make-row.ts';
import { finishBackground } from './build/run-rows.ts';

/** 'bind off all sts', 'bind off rem 24 sts'. */
export function doBindOff(
  build: Build,
  part: PartBuild,
  said: Extract<Statement, { is: 'bind off' }>,
): Fault | undefined {
  const beside = finishBackground(build, part);
  if (beside) return beside;
  const { live } = part;
  const { stitches } = said;
  if (stitches !== undefined && stitches < live && !said.rest) {
    return makeWrittenRow(
      build,
      part,
      [
        { is: 'stitches', work: 'bo', times: stitches },
        { is: 'stitches to', work: 'patt', goal: { left: 'what follows' } },
      ],
      'groups',
    );
  }
  const wrong = bindOffAll(build, part);
  if (wrong || stitches === undefined || stitches === live) return wrong;
  return countDiffers(stitches, live);
}
