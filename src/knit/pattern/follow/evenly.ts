import type { Fault } from '../../fault.ts';
import type { Statement } from '../say/statement.ts';
import type { Build, PartBuild } from './build/build.ts';
import { makeSpreadRow } from './build/make-row.ts';
import { takeBack } from './build/push-row.ts';
import { plainWork } from './build/spell.ts';

/** 'inc 6 sts evenly across next row', '… in last row of rib'. */
export function doEvenly(
  build: Build,
  part: PartBuild,
  said: Extract<Statement, { is: 'evenly' }>,
  madeHere: boolean,
): Fault | undefined {
  const last = said.on === 'last' || (said.on === 'unsaid' && madeHere);
  const back = last && part.rows.length > 0 ? takeBack(build, part) : undefined;
  const change =
    said.toCount === undefined || said.over !== undefined
      ? said.change
      : Math.sign(said.change) * Math.abs(said.toCount - part.live);
  if (back) part.fabric = back.fabric;
  return makeSpreadRow(
    build,
    part,
    said.toCount !== undefined && !said.all && Math.abs(change) !== Math.abs(said.change)
      ? said.change
      : change,
    said.over,
    back && plainWork(back, back.side),
  );
}
