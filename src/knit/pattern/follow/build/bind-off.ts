import type { Fault } from '../../../fault.ts';
import type { Build, PartBuild } from './build.ts';
import { pushRow } from './push-row.ts';

export function bindOffAll(build: Build, part: PartBuild): Fault | undefined {
  const wrong = pushRow(build, part, [{ work: 'bo', until: { left: 0 } }], {
    kind: 'bind off',
    advance: true,
  });
  if (!wrong) part.end = 'bind off';
  return wrong;
}
