import { assumedGauge } from '../../fabric.ts';
import type { Gauge } from '../../gauge.ts';
import { fabricOfGauge, type MeasuredGauge } from '../../measured-gauge.ts';

/** Sizes of our own, those of a roomy medium adult; common practice, no published source. */
const mm = {
  width: 540,
  rib: 60,
  body: 340,
  armhole: 220,
  armholeIn: 50,
  shoulder: 110,
  cuff: 230,
  sleeveTop: 420,
  sleeve: 400,
  band: 25,
} as const;

/** Stitches and rows of the starters, in agreement with each other. */
export type StarterSizes = ReturnType<typeof starterSizes>;

export function starterSizes(gauge: MeasuredGauge) {
  const stitches = (width: number) => (width * gauge.stitches) / 100;
  /** rows come in pairs, so that each section begins on an RS row */
  const rows = (height: number, of: Gauge = gauge) => Math.max(2, 2 * Math.round((height * of.rows) / 200));
  const rib = assumedGauge('rib 2x2', gauge, fabricOfGauge(gauge));
  /** the nearest count over which a rib of two and two begins and ends alike: two more than a multiple of four */
  const ribbed = (width: number) => 4 * Math.round((stitches(width) - 2) / 4) + 2;
  const width = ribbed(mm.width);
  const armholeEach = Math.max(2, Math.round(stitches(mm.armholeIn)));
  const armholeGroup = Math.ceil(armholeEach / 2);
  const shoulder = Math.max(2, Math.round(stitches(mm.shoulder)));
  const armholeRows = rows(mm.armhole);
  const shapedRows = 2 + 2 * (armholeEach - armholeGroup);
  const neckRows = Math.max(2, armholeRows - shapedRows);
  const top = width - 2 * armholeEach;
  const cuff = ribbed(mm.cuff);
  const sleeveTop = cuff + 2 * Math.round((stitches(mm.sleeveTop) - cuff) / 2);
  const steps = shoulder >= 9 ? 3 : 2;
  return {
    width,
    armholeGroup,
    armholeSingles: armholeEach - armholeGroup,
    armholeRows,
    shapedRows,
    neckRows,
    top,
    shoulder,
    backNeck: top - 2 * shoulder,
    steps,
    cuff,
    sleeveTop,
    ribRows: rows(mm.rib, rib),
    bodyRows: rows(mm.body),
    sleeveRows: rows(mm.sleeve),
    bandRows: rows(mm.band, rib),
  };
}
