import type { Gauge } from '../../knit/gauge.ts';
import { gaugeSpanMm, saysLength } from '../../words/measures.ts';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

/** Leaflets give the gauge over 10 cm or over 4 inches. */
export function saysGauge({ stitches, rows }: Gauge): string {
  const mm = gaugeSpanMm();
  const over = (per100: number) => saysNumber((per100 * mm) / 100, { digits: 1 });
  return say('garment.gaugeLine', { stitches: over(stitches), rows: over(rows), length: saysLength(mm) });
}
