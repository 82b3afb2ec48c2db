import { change, garmentFaults } from '../../app/drafts/editor/editor.ts';
import { type GarmentForm, withGauge, withNeedle } from '../../app/drafts/editor/garment-form.ts';
import { type FabricName, fabricNames } from '../../knit/fabric.ts';
import { readPiece } from '../../knit/piece/form/read-piece.ts';
import { NeedleField } from '../../ui/field/needle-field.tsx';
import { readNumber } from '../../ui/field/read-number.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { saysFabric } from '../../words/craft.ts';
import { gaugeSpanMm, saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { Guesses } from '../guesses.tsx';
import { GaugeCount } from './gauge-count.tsx';
import { saysGarmentFault } from './says-here.ts';
import { TypedNumber } from './typed-number.tsx';

/** The tension with what it was measured in: the same counts make another size in another fabric. */
export function GaugeFields({ form }: { readonly form: GarmentForm }) {
  const faults = garmentFaults.value;
  const { gauge } = form;
  const length = saysLength(gaugeSpanMm());
  const count = (field: 'stitches' | 'rows') => (typed: string) =>
    change((old) => withGauge(old, { ...old.gauge, [field]: typed }), field, `gauge ${field}`);
  const typeNeedle = (typed: string) => change((old) => withNeedle(old, typed), 'needle', 'garment needle');
  const measuredIn = (fabric: FabricName | '') =>
    fabric !== '' && change((old) => withGauge(old, { ...old.gauge, fabric }), 'fabric', 'gauge fabric');
  const fabrics = fabricNames.map((value) => ({ value, label: saysFabric(value) }));
  const unsaid = gauge.fabric === undefined ? [{ value: '' as const, label: say('gauge.unsaid') }] : [];
  return (
    <fieldset class="edit-group" aria-describedby="edit-gauge-hint">
      <legend>{say('editor.gauge')}</legend>
      <p class="field-hint" id="edit-gauge-hint">
        {say('editor.gaugeHint')}
      </p>
      <SelectField<FabricName | ''>
        label={say('gauge.measuredIn')}
        value={gauge.fabric ?? ''}
        options={[...unsaid, ...fabrics]}
        onChange={measuredIn}
      />
      <NeedleField
        label={say('editor.needleNumber')}
        hint={say('editor.needleHint')}
        mm={readNumber(form.needle)}
        error={saysGarmentFault(faults, 'needle')}
        onChange={(mm) => typeNeedle(String(mm))}
      >
        <TypedNumber
          label={say('editor.needle')}
          hint={say('editor.needleHint')}
          typed={form.needle}
          decimals
          error={saysGarmentFault(faults, 'needle')}
          onTyped={typeNeedle}
        />
      </NeedleField>
      <div class="edit-pair">
        <GaugeCount
          label={say('editor.gaugeStitches', { length })}
          typed={gauge.stitches}
          error={saysGarmentFault(faults, 'gauge stitches')}
          onTyped={count('stitches')}
        />
        <GaugeCount
          label={say('editor.gaugeRows', { length })}
          typed={gauge.rows}
          error={saysGarmentFault(faults, 'gauge rows')}
          onTyped={count('rows')}
        />
      </div>
      <Guesses pieces={form.pieces.map((entry) => readPiece(entry.form).recipe)} />
    </fieldset>
  );
}
