import { change, pattern, read } from '../../app/drafts/pattern/reader.ts';
import { type FabricName, fabricNames } from '../../knit/fabric.ts';
import type { Gauge } from '../../knit/gauge.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { NeedleField } from '../../ui/field/needle-field.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { saysFabric } from '../../words/craft.ts';
import { gaugeSpanMm, saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';

/** More sizes than this are a list, not a row of buttons. */
const MOST_OPEN = 5;

/** The size is picked once and every number follows; her own gauge turns lengths into rows. */
export function SizeAndGauge() {
  return (
    <>
      <Sizes />
      <OwnGauge />
    </>
  );
}

function Sizes() {
  const sizes = read.value?.sizes ?? [];
  if (sizes.length < 2) return null;
  const options = sizes.map((label, i) => ({ value: String(i), label }));
  const told = {
    label: say('pattern.size'),
    value: String(read.value?.size ?? 0),
    options,
    onChange: (size: string) => change({ size: Number(size) }),
  };
  return sizes.length > MOST_OPEN ? <SelectField {...told} /> : <Choice {...told} />;
}

/** A gauge is kept over 100 mm and typed over what she measures. */
const toType = (per100: number | undefined): number | undefined =>
  per100 === undefined ? undefined : Math.round(per100 * gaugeSpanMm()) / 100;

function OwnGauge() {
  const gauge = pattern.value?.gauge ?? {};
  const length = saysLength(gaugeSpanMm());
  // as the pattern's own swatch, unless she says otherwise
  const fabric = gauge.fabric ?? read.value?.gauge?.fabric ?? 'stocking';
  const put = (part: keyof Gauge | 'needle', value: number | undefined) => {
    const { [part]: _, ...other } = gauge;
    change({ gauge: { ...other, fabric, ...(value === undefined ? {} : { [part]: value }) } });
  };
  const set = (part: keyof Gauge, typed: number | undefined) =>
    put(part, typed === undefined ? undefined : (typed * 100) / gaugeSpanMm());
  return (
    <fieldset class="pattern-gauge">
      <legend>{say('pattern.gauge')}</legend>
      <p class="quiet">{say('pattern.gaugeHint')}</p>
      <NumberField
        label={say('pattern.stitches', { length })}
        decimals
        min={0}
        value={toType(gauge.stitches)}
        onChange={(typed) => set('stitches', typed)}
      />
      <NumberField
        label={say('pattern.rows', { length })}
        decimals
        min={0}
        value={toType(gauge.rows)}
        onChange={(typed) => set('rows', typed)}
      />
      <SelectField
        label={say('gauge.measuredIn')}
        value={fabric}
        options={fabricNames.map((value) => ({ value, label: saysFabric(value) }))}
        onChange={(chosen: FabricName) => change({ gauge: { ...gauge, fabric: chosen } })}
      />
      <NeedleField label={say('gauge.needleNumber')} mm={gauge.needle} onChange={(mm) => put('needle', mm)}>
        <NumberField
          label={say('gauge.needle')}
          decimals
          min={0}
          value={gauge.needle}
          onChange={(mm) => put('needle', mm)}
        />
      </NeedleField>
    </fieldset>
  );
}
