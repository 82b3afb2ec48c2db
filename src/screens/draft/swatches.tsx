import { change, design, drafted } from '../../app/drafts/design/designer.ts';
import {
  type DesignForm,
  isUsualSwatch,
  readSwatch,
  type SwatchForm,
  usualSwatch,
} from '../../app/drafts/design/form.ts';
import { type FabricName, fabricNames } from '../../knit/fabric.ts';
import { factsOf } from '../../knit/fabric-facts.ts';
import { gaugeOfSwatch } from '../../knit/garment/gauges.ts';
import { yarnWeights } from '../../knit/garment/yarn-weight.ts';
import { Button } from '../../ui/button/button.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { NeedleField } from '../../ui/field/needle-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { saysFabric } from '../../words/craft.ts';
import { saysFault } from '../../words/fault.ts';
import { gaugeSpanMm, saysLength } from '../../words/measures.ts';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { FaultAt } from './at-field.tsx';
import { Count, Measure } from './counted.tsx';
import { faultAt } from './troubles.ts';

/** Fabrics that a panel is worked in without a repeat to mind. */
const panelFabrics = [
  'stocking',
  'reverse stocking',
  'garter',
  'moss',
] as const satisfies readonly FabricName[];

/** What lies in the fold. */
export function Swatches({ form: now }: { readonly form: DesignForm }) {
  return (
    <>
      <p class="quiet">{say('draft.swatchHint')}</p>
      <SelectField
        label={say('draft.panelFabric')}
        value={now.fabric}
        options={panelFabrics.map((value) => ({ value, label: saysFabric(value) }))}
        onChange={chooseFabric}
      />
      {now.swatches.map((swatch) => (
        <SwatchFields key={swatch.fabric} swatch={swatch} isMain={swatch.fabric === now.fabric} />
      ))}
      <Assumed />
    </>
  );
}

/** Beside the fold's name; nothing where the swatch can be none. */
export function saysSwatch({ swatches, fabric }: DesignForm): string | undefined {
  const main = swatches.find((swatch) => swatch.fabric === fabric);
  const known = main && readSwatch(main);
  return known && saysGauge(known, isUsualSwatch(main) ? 'draft.swatchUsual' : 'draft.swatchSays');
}

const saysGauge = (
  swatch: Parameters<typeof gaugeOfSwatch>[0],
  key: 'draft.gaugeSays' | 'draft.swatchSays' | 'draft.swatchUsual' = 'draft.gaugeSays',
): string => {
  const { stitches, rows } = gaugeOfSwatch(swatch);
  return say(key, { stitches: saysOver(stitches), rows: saysOver(rows), length: saysLength(gaugeSpanMm()) });
};

/** Of so many to 10 cm, those to what a gauge is given over in her unit. */
const saysOver = (per100: number): string => saysNumber((per100 * gaugeSpanMm()) / 100, { digits: 1 });

function chooseFabric(fabric: FabricName): void {
  change((old) => {
    const has = old.swatches.some((swatch) => swatch.fabric === fabric);
    return { ...old, fabric, swatches: has ? old.swatches : [usualSwatch(fabric), ...old.swatches] };
  });
}

const setSwatch = (fabric: FabricName, by: Partial<SwatchForm>): void =>
  change((old) => ({
    ...old,
    swatches: old.swatches.map((swatch) => (swatch.fabric === fabric ? { ...swatch, ...by } : swatch)),
  }));

interface SwatchFieldsProps {
  readonly swatch: SwatchForm;
  readonly isMain: boolean;
}

function SwatchFields({ swatch, isMain }: SwatchFieldsProps) {
  const { fabric, inRidges } = swatch;
  const set = (by: Partial<SwatchForm>) => setSwatch(fabric, by);
  const read = readSwatch(swatch);
  const path = `gauges.${fabric}`;
  const wrong = faultAt(path);
  const weight = read && fabric === 'stocking' ? yarnWeights(gaugeOfSwatch(read).stitches)[0] : undefined;
  return (
    <section
      class="draft-stack draft-swatch"
      aria-label={say('draft.swatchOf', { fabric: saysFabric(fabric) })}
    >
      <h3>{say('draft.swatchOf', { fabric: saysFabric(fabric) })}</h3>
      <div class="draft-grid" data-field={wrong && path}>
        <Count
          label={say('draft.stitches')}
          value={swatch.stitches}
          error={needs(swatch.stitches) ?? (wrong && saysFault(wrong))}
          onChange={(stitches) => set({ stitches })}
        />
        <Measure
          label={say('draft.overWidth')}
          mm={swatch.widthMm}
          error={needs(swatch.widthMm)}
          onChange={(widthMm) => set({ widthMm })}
        />
        <Count
          label={say(inRidges ? 'draft.ridges' : 'draft.rows')}
          value={swatch.rows}
          error={needs(swatch.rows)}
          onChange={(rows) => set({ rows })}
        />
        <Measure
          label={say('draft.overHeight')}
          mm={swatch.heightMm}
          error={needs(swatch.heightMm)}
          onChange={(heightMm) => set({ heightMm })}
        />
        <NeedleField
          label={say('draft.needleNumber')}
          mm={swatch.needle ?? undefined}
          error={needs(swatch.needle)}
          onChange={(needle) => set({ needle })}
        >
          <Count
            label={say('draft.needle')}
            value={swatch.needle}
            error={needs(swatch.needle)}
            onChange={(needle) => set({ needle })}
          />
        </NeedleField>
      </div>
      {factsOf(fabric).ridges && (
        <Toggle label={say('draft.inRidges')} on={inRidges} onChange={(on) => set({ inRidges: on })} />
      )}
      {read && (
        <p class="quiet">
          {saysGauge(read)} {weight && say('draft.yarnWeight', { weight: weight.weight })}
        </p>
      )}
      <Washing swatch={swatch} />
      <Weighing swatch={swatch} />
      {!wrong && <FaultAt path={path} />}
      {!isMain && (
        <Button kind="quiet" icon="trash" onPress={() => removeSwatch(fabric)}>
          {say('draft.removeSwatch')}
        </Button>
      )}
    </section>
  );
}

/** What keeps a swatch from being one, said at the field itself. */
const needs = (figure: number | null): string | undefined =>
  figure !== null && figure > 0 ? undefined : say('draft.swatchNeeds');

const removeSwatch = (fabric: FabricName): void =>
  change((old) => ({ ...old, swatches: old.swatches.filter((swatch) => swatch.fabric !== fabric) }));

function Washing({ swatch }: { readonly swatch: SwatchForm }) {
  const { before, fabric } = swatch;
  const set = (by: Partial<SwatchForm>) => setSwatch(fabric, by);
  const off = () =>
    change((old) => ({
      ...old,
      swatches: old.swatches.map(({ before: gone, ...rest }) =>
        rest.fabric === fabric ? rest : { ...rest, ...(gone ? { before: gone } : {}) },
      ),
    }));
  return (
    <>
      <Toggle
        label={say('draft.beforeWashing')}
        on={before !== undefined}
        onChange={(on) => (on ? set({ before: { stitches: swatch.stitches, rows: swatch.rows } }) : off())}
      />
      {before && (
        <div class="draft-grid">
          <Count
            label={say('draft.beforeStitches')}
            value={before.stitches}
            onChange={(stitches) => set({ before: { ...before, stitches } })}
          />
          <Count
            label={say('draft.beforeRows')}
            value={before.rows}
            onChange={(rows) => set({ before: { ...before, rows } })}
          />
        </div>
      )}
      {before?.stitches && before.rows && swatch.stitches && swatch.rows && (
        <p class="quiet">
          {say('draft.washingSays', {
            // fewer stitches over the same width: it has grown wider
            width: saysNumber(before.stitches / swatch.stitches - 1, { percent: true, digits: 1 }),
            height: saysNumber(before.rows / swatch.rows - 1, { percent: true, digits: 1 }),
          })}
        </p>
      )}
    </>
  );
}

function Weighing({ swatch }: { readonly swatch: SwatchForm }) {
  const weighed = swatch.weighed ?? { grams: null, stitches: null, rows: null };
  const set = (by: Partial<typeof weighed>) => setSwatch(swatch.fabric, { weighed: { ...weighed, ...by } });
  return (
    <details class="draft-more">
      <summary>{say('draft.weighed')}</summary>
      <div class="draft-grid">
        <Count label={say('draft.swatchGrams')} value={weighed.grams} onChange={(grams) => set({ grams })} />
        <Count
          label={say('draft.stitchesInAll')}
          value={weighed.stitches}
          onChange={(stitches) => set({ stitches })}
        />
        <Count label={say('draft.rowsInAll')} value={weighed.rows} onChange={(rows) => set({ rows })} />
      </div>
    </details>
  );
}

/** Fabrics of ribs and bands that have no swatch: what is taken instead, and the way to give one. */
function Assumed() {
  const made = drafted.value;
  const wished = design.value;
  if (!made?.ok || !wished) return null;
  return (
    <>
      {made.value.assumed.map(({ fabric, gauge }) => (
        <div class="draft-stack" key={fabric}>
          <p class="quiet">
            {say('draft.assumed', {
              fabric: saysFabric(fabric),
              stitches: saysOver(gauge.stitches),
              length: saysLength(gaugeSpanMm()),
            })}
          </p>
          <Button kind="quiet" icon="plus" onPress={() => addSwatch(fabric, gauge)}>
            {say('draft.addSwatch', { fabric: saysFabric(fabric) })}
          </Button>
        </div>
      ))}
    </>
  );
}

function addSwatch(fabric: FabricName, gauge: { readonly stitches: number; readonly rows: number }): void {
  if (!fabricNames.includes(fabric)) return;
  const begun = {
    ...usualSwatch(fabric),
    stitches: Math.round(gauge.stitches),
    rows: Math.round(gauge.rows),
    inRidges: false,
  };
  change((old) => ({
    ...old,
    swatches: [...old.swatches, { ...begun, needle: design.value?.needles.borders ?? begun.needle }],
  }));
}
