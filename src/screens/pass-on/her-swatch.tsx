import type { Gauge } from '../../knit/gauge.ts';
import type { MeasuredGauge } from '../../knit/measured-gauge.ts';
import { Card } from '../../ui/card/card.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { saysFabric } from '../../words/craft.ts';
import { gaugeSpanMm, saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';

/** A gauge is kept over 100 mm and typed over what she measures. */
const toType = (per100: number | undefined): number | undefined =>
  per100 === undefined ? undefined : Math.round(per100 * gaugeSpanMm()) / 100;
const typed = (count: number | undefined): number => ((count ?? 0) * 100) / gaugeSpanMm();

interface Props {
  readonly asked: MeasuredGauge;
  readonly gauge: Partial<Gauge>;
  readonly onChange: (gauge: Partial<Gauge>) => void;
  /** what her figures change */
  readonly says: string | undefined;
}

export function HerSwatch({ asked, gauge, onChange, says }: Props) {
  const length = saysLength(gaugeSpanMm());
  return (
    <Card label={say('passOn.yourSwatch')}>
      <h2>{say('passOn.yourSwatch')}</h2>
      <p>
        {say('passOn.openGauge', {
          stitches: toType(asked.stitches) ?? 0,
          rows: toType(asked.rows) ?? 0,
          length,
        })}
      </p>
      {asked.fabric && <p>{say('gauge.in', { fabric: saysFabric(asked.fabric) })}</p>}
      <p>{say('passOn.yourSwatchHint')}</p>
      <NumberField
        label={say('passOn.swatchStitches', { length })}
        decimals
        min={1}
        value={toType(gauge.stitches)}
        onChange={(v) => onChange({ ...gauge, stitches: typed(v) })}
      />
      <NumberField
        label={say('passOn.swatchRows', { length })}
        decimals
        min={1}
        value={toType(gauge.rows)}
        onChange={(v) => onChange({ ...gauge, rows: typed(v) })}
      />
      {says && <p aria-live="polite">{says}</p>}
    </Card>
  );
}
