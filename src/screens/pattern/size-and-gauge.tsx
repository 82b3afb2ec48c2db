import { change, pattern, read } from '../../app/pattern/reader.ts';
import type { Gauge } from '../../knit/gauge.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
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
  const set = (part: keyof Gauge, typed: number | undefined) => {
    const { [part]: _, ...other } = gauge;
    const per100 = typed === undefined ? {} : { [part]: (typed * 100) / gaugeSpanMm() };
    change({ gauge: { ...other, ...per100 } });
  };
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
    </fieldset>
  );
}
