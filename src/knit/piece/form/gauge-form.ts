import type { Where } from '../../fault.ts';
import type { MeasuredGauge } from '../../measured-gauge.ts';
import type { GaugeForm } from './form.ts';
import { type Report, readDecimal } from './number.ts';

/** A tension as it stands in the fields; `readGauge` makes the same one of it again. */
export const writeGauge = ({ stitches, rows, fabric, needle }: MeasuredGauge): GaugeForm => ({
  stitches: String(stitches),
  rows: String(rows),
  ...(fabric === undefined ? {} : { fabric }),
  ...(needle === undefined ? {} : { needle: String(needle) }),
});

/** The tension as far as it can be read; faults are told at 'gauge stitches', 'gauge rows' and 'gauge needle'. */
export function readGauge(form: GaugeForm, at: Where, report: Report): MeasuredGauge {
  const { fabric, needle = '' } = form;
  return {
    stitches: readDecimal(form.stitches, { ...at, field: 'gauge stitches' }, report),
    rows: readDecimal(form.rows, { ...at, field: 'gauge rows' }, report),
    ...(fabric === undefined ? {} : { fabric }),
    ...(needle.trim() === ''
      ? {}
      : { needle: readDecimal(needle, { ...at, field: 'gauge needle' }, report) }),
  };
}
