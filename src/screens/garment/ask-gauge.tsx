import { nameGauge } from '../../app/garments/name-gauge.ts';
import { unnamedGarterGauge } from '../../knit/piece/gauges.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { gaugeSpanMm, saysLength } from '../../words/measures.ts';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

/** Asked once of a garment of garter stitch from before tensions were kept with their fabric; the answer is the fabric. */
export function AskGauge({ garment }: { readonly garment: GarmentRecord }) {
  const gauge = unnamedGarterGauge(garment.pieces.map(({ recipe }) => recipe));
  if (!gauge) return null;
  const mm = gaugeSpanMm();
  const over = (per100: number) => saysNumber((per100 * mm) / 100, { digits: 1 });
  return (
    <Notice kind="note" title={say('gauge.askTitle')}>
      <p>
        {say('gauge.askHelp', {
          stitches: over(gauge.stitches),
          rows: over(gauge.rows),
          length: saysLength(mm),
        })}
      </p>
      <div class="ask-keys">
        <Button onPress={() => void nameGauge(garment.id, 'garter')}>{say('gauge.askYes')}</Button>
        <Button onPress={() => void nameGauge(garment.id, 'stocking')}>{say('gauge.askNo')}</Button>
      </div>
    </Notice>
  );
}
