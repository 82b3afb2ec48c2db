import type { FabricName } from '../../fabric.ts';
import type { FabricSaid, Statement } from '../say/statement.ts';
import type { Build } from './build/build.ts';
import { fabricOf, nominal } from './build/fabric.ts';

export function doGauge(build: Build, said: Extract<Statement, { is: 'gauge' }>): void {
  if (said.stitches === undefined && said.rows === undefined) return;
  const { stitches = build.gauge?.stitches, rows = build.gauge?.rows } = said;
  if (stitches === undefined || rows === undefined || stitches <= 0 || rows <= 0) {
    build.gaugeBegun = said;
    return;
  }
  const fabric = said.fabric ? fabricOfGaugeLine(said.fabric, build) : build.gauge?.fabric;
  const main = build.gauge?.fabric;
  if (main && fabric && fabric !== main && said.stitches && said.rows) {
    // a border's beside the garment's own, which was told before it
    // of ribs that are called alike, since nobody counts another gauge where they begin otherwise
    const alike = fabric in RIBS ? RIBS : { [fabric]: true };
    for (const name of Object.keys(alike)) build.gauges = { ...build.gauges, [name]: { stitches, rows } };
    return;
  }
  const needle = said.needle ?? build.gauge?.needle;
  build.gauge = {
    stitches,
    rows,
    ...(fabric === undefined ? {} : { fabric }),
    ...(needle === undefined ? {} : { needle }),
  };
  const is = said.fabric?.is;
  // 'in pattern': the one that is knitted
  build.gaugeInPattern = is === 'pattern' || is === 'established' || (!is && build.gaugeInPattern);
}

const RIBS: Partial<Record<FabricName, true>> = { 'rib 1x1': true, 'rib 1x1 matched': true };

/** The fabric that the line names; none where it was counted in a pattern of the text's own. */
function fabricOfGaugeLine(said: FabricSaid, build: Build): FabricName | undefined {
  if (said.is !== 'rib' && said.is !== 'named') return undefined;
  const known = fabricOf(said, build, undefined);
  return known && nominal(known);
}

/** '5 sts = 1 inch' may stand in one sentence and '7 rows = 1 inch' in the next. */
export function joinGauge(
  build: Build,
  said: Extract<Statement, { is: 'gauge' }>,
): Extract<Statement, { is: 'gauge' }> {
  return { ...build.gaugeBegun, ...said };
}
