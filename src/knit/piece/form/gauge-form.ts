import type { Where } from '../../fault.ts';
import type { MeasuredGauge } from '../../measured-gauge.ts';
import type { GaugeForm } from './form.ts';
import { type Report, readDecimal } from './number.ts';

/** A tension as it stands in the fields; `readGauge` makes the same one of it again. */
export const writeGauge = ({ stitches, rows, needle, ...carried }: MeasuredGauge): GaugeForm => ({
  ...carried,
  stitches: String(stitches),
  rows: String(rows),
  ...(needle === undefined ? {} : { needle: String(needle) }),
});

/** The tension as far as it can be read; faults are told at 'gauge stitches', 'gauge rows' and 'gauge needle'. */
export function readGauge(form: GaugeForm, at: Where, report: Report): MeasuredGauge {
  const { stitches, rows, needle = '', ...carried } = form;
  return {
    ...carried,
    stitches: readDecimal(stitches, { ...at, field: 'gauge stitches' }, report),
    rows: readDecimal(rows, { ...at, field: 'gauge rows' }, report),
    ...(needle.trim() === ''
      ? {}
      : { needle: readDecimal(needle, { ...at, field: 'gauge needle' }, report) }),
  };
}
