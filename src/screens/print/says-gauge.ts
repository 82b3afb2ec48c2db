import type { MeasuredGauge } from '../../knit/measured-gauge.ts';
import { saysFabric } from '../../words/craft.ts';
import { gaugeSpanMm, saysLength } from '../../words/measures.ts';
import { saysNeedle } from '../../words/needle.ts';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

/** Leaflets give the gauge over 10 cm or over 4 inches. */
export function saysGauge({ stitches, rows, fabric, needle }: MeasuredGauge): string {
  const mm = gaugeSpanMm();
  const over = (per100: number) => saysNumber((per100 * mm) / 100, { digits: 1 });
  const counts = say('garment.gaugeLine', {
    stitches: over(stitches),
    rows: over(rows),
    length: saysLength(mm),
  });
  const measuredIn = fabric === undefined ? [] : [saysFabric(fabric)];
  const on = needle === undefined ? [] : [saysNeedle(needle)];
  return [counts, ...measuredIn, ...on].join(', ');
}
