import type { FabricName } from './fabric.ts';
import type { Gauge } from './gauge.ts';

/** A tension with what it was measured in. Both are absent only where it was stored before they were asked for. */
export interface MeasuredGauge extends Gauge {
  readonly fabric?: FabricName;
  /** mm */
  readonly needle?: number;
}

/** A tension that names no fabric has always been taken as that of stocking stitch. */
export const fabricOfGauge = (gauge: MeasuredGauge): FabricName => gauge.fabric ?? 'stocking';
