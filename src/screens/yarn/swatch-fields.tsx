import { useState } from 'preact/hooks';
import { type FabricName, fabricNames } from '../../knit/fabric.ts';
import type { Swatch } from '../../knit/piece/garment.ts';
import { gaugeOf } from '../../knit/piece/gauges.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Group } from '../../ui/group/group.tsx';
import { saysFabric } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import type { ChangeYarn } from './change-yarn.ts';

type Weighed = NonNullable<Swatch['weighed']>;

const nothing: Weighed = { grams: 0, stitches: 0, rows: 0 };

/** A swatch on the scales: weight, and all its stitches and rows. */
export function SwatchFields({
  garment,
  change,
}: {
  readonly garment: GarmentRecord;
  readonly change: ChangeYarn;
}) {
  const swatches = garment.swatches ?? [];
  const first = swatches.find((s) => s.weighed !== undefined) ?? swatches[0];
  const [fabric, choose] = useState(first?.fabric ?? gaugeFabric(garment));
  // one swatch for each fabric: to choose another never calls this one's counts those of the other
  const of = (list: readonly Swatch[]) => list.findIndex((s) => s.fabric === fabric);
  const swatch = swatches[of(swatches)] ?? freshSwatch(garment, fabric);
  const weighed = swatch.weighed ?? nothing;
  const put = (next: Swatch) =>
    change((now) => {
      const list = [...(now.swatches ?? [])];
      const at = of(list);
      list[at < 0 ? list.length : at] = next;
      return { ...now, swatches: list };
    });
  const number = (field: keyof Weighed, label: string, unit?: string) => (
    <NumberField
      key={`${fabric} ${field}`}
      label={label}
      unit={unit}
      bare
      decimals={field === 'grams'}
      min={0}
      value={weighed[field] || undefined}
      onChange={(value) => put(withWeight(swatch, { ...weighed, [field]: value ?? 0 }))}
    />
  );
  return (
    <Group title={say('yarn.swatch')}>
      <p>{say('yarn.swatchHint')}</p>
      <div class="yarn-pair">
        <SelectField
          label={say('yarn.swatchFabric')}
          value={fabric}
          options={fabricNames.map((value) => ({ value, label: saysFabric(value) }))}
          onChange={(chosen: FabricName) => choose(chosen)}
        />
        {number('grams', say('yarn.swatchGrams'), say('yarn.unitGrams'))}
        {number('stitches', say('yarn.swatchStitches'))}
        {number('rows', say('yarn.swatchRows'))}
      </div>
    </Group>
  );
}

const gaugeFabric = ({ pieces }: GarmentRecord): FabricName =>
  pieces.find(({ recipe }) => recipe.gauge)?.recipe.gauge?.fabric ?? 'stocking';

/** Without a swatch of its own, the first piece's gauge in that fabric stands for its measured size. */
function freshSwatch(garment: GarmentRecord, fabric: FabricName): Swatch {
  const recipe = garment.pieces[0]?.recipe;
  const { stitches, rows } = gaugeOf(recipe ?? {}, fabric);
  const needle = recipe?.gauge?.needle ?? recipe?.parts[0]?.sections.at(-1)?.needle ?? 4;
  return { fabric, stitches, widthMm: 100, rows, heightMm: 100, needle };
}

/** A swatch without any weight is not weighed. */
function withWeight(swatch: Swatch, weighed: Weighed): Swatch {
  const { weighed: _before, ...rest } = swatch;
  const empty = !weighed.grams && !weighed.stitches && !weighed.rows;
  return empty ? rest : { ...rest, weighed };
}
